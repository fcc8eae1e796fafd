import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { numberWords } from "../ui/doseWords";
import { Mark } from "../ui/Mark";
import { language, say } from "../words/say";
import { countInS, heldS, type HoldTimer } from "./holdTimer";

/** A hold under way, for the far end of the gym: digits over the whole screen, and a ring along its edge that is full when the level's seconds are reached. */
export function HoldFace({ timer, doseS }: { readonly timer: HoldTimer; readonly doseS: number }) {
  const face = useRef<HTMLElement>(null);
  const whole = useRef<HTMLSpanElement>(null);
  const tenth = useRef<HTMLSpanElement>(null);
  const arc = useRef<SVGPathElement>(null);
  const ring = useEdge(face);

  // Drawn past the renderer: sixty times a second on an old tablet. A layout effect ends before the face is gone.
  useLayoutEffect(() => {
    if (timer.kind !== "counting" && timer.kind !== "running") return;
    const point = language.value === "es" ? "," : ".";
    let frame = 0;
    const draw = () => {
      const now = performance.now();
      const seconds = timer.kind === "running" ? heldS(timer.startedMs, now) : Math.max(1, countInS - Math.floor((now - timer.startedMs) / 1000));
      const text = String(Math.floor(seconds));
      whole.current!.textContent = text;
      face.current!.style.setProperty("--digits", String(text.length));
      if (timer.kind === "running") {
        tenth.current!.textContent = `${point}${Math.round(seconds * 10) % 10}`;
        arc.current!.style.strokeDashoffset = String(Math.max(0, 1 - (now - timer.startedMs) / (doseS * 1000)));
        face.current!.toggleAttribute("data-reached", seconds >= doseS);
      }
      frame = requestAnimationFrame(draw);
    };
    draw();
    return () => cancelAnimationFrame(frame);
  }, [timer, doseS]);

  const isCounting = timer.kind === "counting";
  return (
    <main ref={face} class="hold-face" data-kind={timer.kind}>
      <svg class="ring" aria-hidden="true">
        <path class="track" d={ring} />
        <path ref={arc} class="arc" d={ring} pathLength={1} style="stroke-dasharray:1;stroke-dashoffset:1" />
      </svg>
      <p class="digits numbers" role="timer" aria-live="off">
        <span ref={whole} />
        <span ref={tenth} class="tenth" />
      </p>
      <p class="goal">
        <Mark name="check" />
        <span>{numberWords(doseS)} s</span>
      </p>
      <h1 class="hint">{say(isCounting ? "PupilTapCancel" : "PupilTapStop")}</h1>
    </main>
  );
}

/** A line along the edge of a box, clockwise from the middle of its top, as wide as the box is now. */
function useEdge(box: { readonly current: HTMLElement | null }): string {
  const [path, setPath] = useState("");
  useLayoutEffect(() => {
    const measure = () => {
      const { clientWidth: w, clientHeight: h } = box.current!;
      const inset = Math.min(w, h) * 0.03;
      const r = Math.min(w, h) * 0.08;
      const [right, bottom] = [w - inset, h - inset];
      setPath(
        `M${w / 2} ${inset}H${right - r}A${r} ${r} 0 0 1 ${right} ${inset + r}V${bottom - r}A${r} ${r} 0 0 1 ${right - r} ${bottom}` +
          `H${inset + r}A${r} ${r} 0 0 1 ${inset} ${bottom - r}V${inset + r}A${r} ${r} 0 0 1 ${inset + r} ${inset}Z`,
      );
    };
    measure();
    addEventListener("resize", measure);
    return () => removeEventListener("resize", measure);
  }, []);
  return path;
}
