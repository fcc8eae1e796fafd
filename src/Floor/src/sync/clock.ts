import { signal } from "@preact/signals";

/** How far the server's clock is ahead of this device's: 0 until the server has said. */
export const clockOffsetMs = signal(0);

const samples: number[] = [];
const mostSamples = 7;

/** What the server's clock shows now, as far as known. For countdowns; entries carry the device's own time. */
export function serverTimeMs(nowMs = Date.now()): number {
  return nowMs + clockOffsetMs.value;
}

/** Learns from an answer: the server's time belongs to the middle between asking and hearing; the median is not moved by one slow answer. */
export function learnClock(serverNow: string, askedMs: number, heardMs: number): void {
  const offset = Date.parse(serverNow) - (askedMs + heardMs) / 2;
  if (!Number.isFinite(offset)) return;
  // The device's clock was set: what was learnt before tells nothing any more.
  if (samples.length > 0 && Math.abs(offset - clockOffsetMs.peek()) > 60_000) samples.length = 0;
  samples.push(offset);
  if (samples.length > mostSamples) samples.shift();
  const sorted = [...samples].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  clockOffsetMs.value = sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** Starts from what was known when the page was left. */
export function recallClock(offsetMs: number): void {
  samples.length = 0;
  clockOffsetMs.value = offsetMs;
}
