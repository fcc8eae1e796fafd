import type { Entry, EntryFact } from "../contracts";
import type { About } from "./floor";
import { current, isEvent, slotOf } from "./log";

/** Who makes entries, and from where its own numbers go on. */
export interface Maker {
  readonly schoolId: string;
  readonly lessonId: string;
  readonly deviceId: string;
  /** The device's last number; 0 before the first. */
  readonly lastSequence: number;
  readonly now: Date;
}

/**
 * The entries that make facts hold: nothing where one holds already, a correction where something else does. As `Recorder` on the server.
 * A withdrawal is about an entry: give the entry itself as what it is about.
 */
export function made(log: readonly Entry[], facts: readonly (readonly [About | Entry, EntryFact])[], maker: Maker): Entry[] {
  const holds = new Map(current(log).filter((e) => !isEvent(e.fact)).map((e) => [slotOf(e, e.fact), e]));
  const entries: Entry[] = [];
  for (const [about, fact] of facts) {
    const slot = slotOf(about, fact);
    const before = fact.kind === "withdrawal" ? (about as Entry) : isEvent(fact) ? undefined : holds.get(slot);
    if (before && fact.kind !== "withdrawal" && isSame(before.fact, fact)) continue;
    const entry: Entry = {
      schoolId: maker.schoolId,
      id: newId(maker.now.getTime()),
      lessonId: maker.lessonId,
      ...(about.pupilId !== undefined && { pupilId: about.pupilId }),
      ...(about.taskId !== undefined && { taskId: about.taskId }),
      ...(about.setNumber !== undefined && { setNumber: about.setNumber }),
      ...(about.trialNumber !== undefined && { trialNumber: about.trialNumber }),
      fact,
      source: "floor",
      deviceId: maker.deviceId,
      deviceSequence: maker.lastSequence + entries.length + 1,
      madeAt: maker.now.toISOString(),
      ...(before && { supersedesId: before.id }),
    };
    entries.push(entry);
    if (fact.kind === "withdrawal") holds.delete(slotOf(about, (about as Entry).fact));
    else holds.set(slot, entry);
  }
  return entries;
}

/** A UUIDv7: sorts by the time it was made. Source: RFC 9562, section 5.7. */
export function newId(nowMs: number): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  for (let i = 0; i < 6; i++) bytes[i] = Math.floor(nowMs / 2 ** (8 * (5 - i))) & 0xff;
  bytes[6] = (bytes[6]! & 0x0f) | 0x70;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  const hex = Array.from(bytes, (b) => b.toString(16).padStart(2, "0")).join("");
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-${hex.slice(12, 16)}-${hex.slice(16, 20)}-${hex.slice(20)}`;
}

function isSame(a: EntryFact, b: EntryFact): boolean {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].every((k) => (a as Record<string, unknown>)[k] === (b as Record<string, unknown>)[k]);
}
