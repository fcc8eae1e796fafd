import type { FloorState } from "../contracts";

/**
 * How far the server's clock is ahead of this device's, in milliseconds.
 * @param heardAtMs By this device's clock, when the state was heard; none where that is not known, and the two are taken to agree.
 */
export function serverAheadMs(state: FloorState, heardAtMs: number | undefined): number {
  return heardAtMs === undefined ? 0 : Date.parse(state.serverNow) - heardAtMs;
}

/** Whole seconds left of the countdown, the begun one included; 0 once it is over, none where none runs. */
export function countdownLeftS(state: FloorState, aheadMs: number, nowMs: number): number | undefined {
  if (state.countdownUntil === undefined) return undefined;
  return Math.max(0, Math.ceil((Date.parse(state.countdownUntil) - nowMs - aheadMs) / 1000));
}

/** Minutes and seconds as a clock shows them. */
export function clockText(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds));
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}
