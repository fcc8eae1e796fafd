import type { Entry, EntryFact } from "../../src/contracts";
import type { About } from "../../src/lesson/floor";

/** A moment of the lesson, minutes after nine. */
export function atMs(min: number): number {
  return Date.parse("2026-03-02T09:00:00Z") + min * 60_000;
}

/** Entries as one device made them, in order; each is a minute of the lesson, what it is about and the fact. */
export function entries(...facts: readonly (readonly [number, About, EntryFact])[]): Entry[] {
  return facts.map(([min, about, fact], i) => ({
    schoolId: "school",
    lessonId: "lesson",
    id: `entry-${i + 1}`,
    source: "floor",
    deviceId: "device",
    deviceSequence: i + 1,
    madeAt: new Date(atMs(min)).toISOString(),
    ...about,
    fact,
  }));
}

export function pupil(pupilId: string, label = pupilId) {
  return { pupilId, label, offers: [] };
}
