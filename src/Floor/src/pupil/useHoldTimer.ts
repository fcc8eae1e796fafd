import { type RefObject } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { beep } from "./beep";
import { type HoldTimer, tapped, ticked } from "./holdTimer";
import type { Session } from "./session";

/** Keys that move the focus or belong to the system; any other starts and stops. */
const otherKeys = new Set(["Tab", "Shift", "Control", "Alt", "AltGraph", "Meta", "CapsLock", "Fn", "OS", "ContextMenu"]);

export interface HoldTiming {
  /** The part of the page whose taps count. */
  readonly root: RefObject<HTMLDivElement | null>;
  readonly timer: HoldTimer;
  /** Ready for the next hold, the last one forgotten. */
  readonly reset: () => void;
}

/** A hold timer that starts and stops with any tap and any key, times by the clock that never goes back, and is called off when the teacher says stop. */
export function useHoldTimer(session: Session, isHalted: boolean, doseS: number): HoldTiming {
  const root = useRef<HTMLDivElement>(null);
  const [timer, setTimer] = useState<HoldTimer>({ kind: "ready" });
  const latest = useRef(timer);
  const go = (next: HoldTimer) => {
    if (next === latest.current) return;
    latest.current = next;
    setTimer(next);
  };

  useEffect(() => {
    if (isHalted && latest.current.kind !== "stopped") go({ kind: "ready" });
    if (isHalted) return;
    const tap = (event: Event): boolean => {
      const before = latest.current;
      const target = event.target instanceof Element ? event.target : document.body;
      if (before.kind === "stopped") return false;
      if (before.kind === "ready") {
        const isHere = root.current?.contains(target) || (event.type === "keydown" && target === document.body);
        if (!isHere || target.closest("button, a, input, textarea, select, dialog") || session.isBouncing) return false;
      }
      const now = performance.now();
      // Some old browsers stamp events by another clock.
      const at = Math.abs(now - event.timeStamp) < 2000 ? Math.min(now, event.timeStamp) : now;
      go(tapped(before, at, session.hasCountIn.value));
      if (latest.current === before) return true;
      if (session.hasCountIn.value && latest.current.kind !== "ready") beep(latest.current.kind === "stopped" ? 440 : 660, 0.12);
      if (latest.current.kind === "stopped") session.rest();
      return true;
    };
    const key = (event: KeyboardEvent) => {
      if (event.repeat || event.ctrlKey || event.metaKey || event.altKey || otherKeys.has(event.key) || (event.key === "Escape" && latest.current.kind === "ready")) return;
      if (tap(event)) event.preventDefault();
    };
    const point = (event: PointerEvent) => {
      if (event.button <= 0 && tap(event)) addEventListener("pointerup", () => session.rest(), { once: true });
    };
    document.addEventListener("keydown", key);
    document.addEventListener("pointerdown", point);
    return () => {
      document.removeEventListener("keydown", key);
      document.removeEventListener("pointerdown", point);
    };
  }, [isHalted, session]);

  useEffect(() => {
    if (timer.kind !== "counting" && timer.kind !== "running") return;
    let frame = 0;
    let beats = 0;
    const look = () => {
      const now = performance.now();
      const before = latest.current;
      go(ticked(before, now));
      if (session.hasCountIn.value && before.kind === "counting") {
        const second = Math.floor((now - before.startedMs) / 1000);
        if (latest.current.kind === "running") beep(990, 0.35);
        else if (second > beats) beep(660, 0.12);
        beats = second;
      }
      if (session.hasCountIn.value && before.kind === "running") {
        const isReached = now - before.startedMs >= doseS * 1000;
        if (isReached && beats === 0) beep(880, 0.2);
        beats = isReached ? 1 : 0;
      }
      frame = requestAnimationFrame(look);
    };
    frame = requestAnimationFrame(look);
    return () => cancelAnimationFrame(frame);
  }, [timer.kind]);

  return { root, timer, reset: () => go({ kind: "ready" }) };
}
