import { useEffect, useRef } from "preact/hooks";
import { numberWords } from "../ui/doseWords";
import { Mark } from "../ui/Mark";
import { language, say } from "../words/say";
import { countInS, heldS, type HoldTimer } from "./holdTimer";

const ring = 2 * Math.PI * 46;

/** The timer itself: digits for the far end of the gym, and a ring that is full when the level's seconds are reached. */
export function HoldFace({ timer, doseS }: { readonly timer: HoldTimer; readonly doseS: number }) {
  const face = useRef<HTMLDivElement>(null);
  const whole = useRef<HTMLSpanElement>(null);
  const tenth = useRef<HTMLSpanElement>(null);
  const arc = useRef<SVGCircleElement>(null);

  // Drawn past the renderer: sixty times a second on an old tablet.
  useEffect(() => {
    if (timer.kind !== "counting" && timer.kind !== "running") return;
    const point = language.value === "es" ? "," : ".";
    let frame = 0;
    const draw = () => {
      const now = performance.now();
      if (timer.kind === "counting") {
        whole.current!.textContent = String(Math.max(1, countInS - Math.floor((now - timer.startedMs) / 1000)));
      } else {
        const seconds = heldS(timer.startedMs, now);
        const text = String(Math.floor(seconds));
        whole.current!.textContent = text;
        tenth.current!.textContent = `${point}${Math.round(seconds * 10) % 10}`;
        arc.current!.style.strokeDashoffset = String(ring * Math.max(0, 1 - (now - timer.startedMs) / (doseS * 1000)));
        face.current!.dataset["digits"] = String(text.length);
        face.current!.toggleAttribute("data-reached", seconds >= doseS);
      }
      frame = requestAnimationFrame(draw);
    };
    draw();
    return () => cancelAnimationFrame(frame);
  }, [timer, doseS]);

  const hint = timer.kind === "running" ? "PupilTapStop" : timer.kind === "counting" ? "PupilTapCancel" : "PupilTapStart";
  return (
    <div ref={face} class="hold-face" data-kind={timer.kind} data-digits="1">
      <div class="dial" role="timer" aria-live="off">
        <svg viewBox="0 0 100 100" aria-hidden="true">
          <circle class="track" cx="50" cy="50" r="46" />
          <circle ref={arc} class="arc" cx="50" cy="50" r="46" style={`stroke-dasharray:${ring};stroke-dashoffset:${ring}`} />
        </svg>
        <p class="digits numbers">
          <span ref={whole}>0</span>
          {timer.kind !== "counting" && (
            <span ref={tenth} class="tenth">
              {language.value === "es" ? ",0" : ".0"}
            </span>
          )}
        </p>
        <p class="goal">
          <Mark name="check" />
          <span>{numberWords(doseS)} s</span>
        </p>
      </div>
      <p class="hint">{say(hint)}</p>
    </div>
  );
}
