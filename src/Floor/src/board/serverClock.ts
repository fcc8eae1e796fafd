import type { FloorState } from "../contracts";

/**
 * Whole seconds left of the countdown, to the nearest, since clocks agree to less than half a second only: a minute must not begin with 1:01. 0 once it is over, none where none runs.
 * @param serverMs What the server's clock shows now.
 */
export function countdownLeftS(state: Pick<FloorState, "countdownUntil">, serverMs: number): number | undefined {
  if (state.countdownUntil === undefined) return undefined;
  return Math.max(0, Math.round((Date.parse(state.countdownUntil) - serverMs) / 1000));
}

/** Minutes and seconds as a clock shows them. */
export function clockText(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds));
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}
