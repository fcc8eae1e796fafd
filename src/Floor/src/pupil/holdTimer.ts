/** A hold longer than this is not timed on, seconds. */
export const mostHoldS = 600;

/** Seconds from 3 to the start of a hold. */
export const countInS = 3;

/** A second tap this soon after a start is the same hand, milliseconds. */
export const startBounceMs = 300;

/** Where a hold timer stands. Instants are milliseconds of one clock that never goes back. */
export type HoldTimer =
  | { readonly kind: "ready" }
  | { readonly kind: "counting"; readonly startedMs: number }
  | { readonly kind: "running"; readonly startedMs: number }
  | { readonly kind: "stopped"; readonly heldS: number };

/** Anything that starts and stops: a tap anywhere, a key, a partner's tap. A tap in the count-in calls it off. */
export function tapped(timer: HoldTimer, nowMs: number, hasCountIn: boolean): HoldTimer {
  const now = ticked(timer, nowMs);
  switch (now.kind) {
    case "ready":
      return { kind: hasCountIn ? "counting" : "running", startedMs: nowMs };
    case "counting":
      return nowMs - now.startedMs < startBounceMs ? now : { kind: "ready" };
    case "running":
      return nowMs - now.startedMs < startBounceMs ? now : { kind: "stopped", heldS: heldS(now.startedMs, nowMs) };
    case "stopped":
      return now;
  }
}

/** What time alone changes: the count-in ends, and a hold ends by itself at its most. */
export function ticked(timer: HoldTimer, nowMs: number): HoldTimer {
  if (timer.kind === "counting" && nowMs - timer.startedMs >= countInS * 1000) return ticked({ kind: "running", startedMs: timer.startedMs + countInS * 1000 }, nowMs);
  if (timer.kind === "running" && nowMs - timer.startedMs >= mostHoldS * 1000) return { kind: "stopped", heldS: mostHoldS };
  return timer;
}

/** Full tenths of a second, as the screen showed them: 4.96 s is 4.9 s, not yet 5. */
export function heldS(startedMs: number, nowMs: number): number {
  return Math.min(mostHoldS * 10, Math.max(0, Math.floor((nowMs - startedMs) / 100))) / 10;
}
