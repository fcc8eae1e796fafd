import { useEffect, useRef, useState } from "preact/hooks";

/** A tap this soon after the last one on the same thing is the same finger, in milliseconds. */
export const bounceMs = 350;

/**
 * Lets something be done once at a time: what is pressed while the last press is under way, or right after it, does nothing.
 * What it does handles its own failures.
 */
export function useOnce(act: () => void | Promise<void>): readonly [isBusy: boolean, press: () => void] {
  const [isBusy, setBusy] = useState(false);
  const gate = useRef({ isBusy: false, endedAt: -bounceMs, isGone: false });
  useEffect(() => {
    gate.current.isGone = false;
    return () => void (gate.current.isGone = true);
  }, []);
  const press = () => {
    const own = gate.current;
    if (own.isBusy || performance.now() - own.endedAt < bounceMs) return;
    const done = act();
    if (!(done instanceof Promise)) return;
    own.isBusy = true;
    setBusy(true);
    const free = () => {
      own.isBusy = false;
      own.endedAt = performance.now();
      if (!own.isGone) setBusy(false);
    };
    done.then(free, (problem: unknown) => {
      free();
      throw problem;
    });
  };
  return [isBusy, press];
}
