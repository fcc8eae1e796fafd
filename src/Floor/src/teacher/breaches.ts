import type { Entry, EntrySource, LessonBundle, LiveQuestion } from "../contracts";

/** A pupil of whom a level is written that is not among those offered to them. */
export interface Breach {
  readonly pupilId: string;
  readonly taskId: string;
  readonly setNumber: number;
  readonly levelId: string;
  /** Tries written down at it so far. */
  readonly trialCount: number;
  /** Where the choice came from. */
  readonly source: EntrySource;
  readonly deviceId: string;
}

/**
 * Choices outside what a pupil may be offered, the last one first. Worked out here, so that it shows without a network too.
 * @param holding The entries that hold, in the order that counts.
 */
export function breachesIn(bundle: LessonBundle, holding: readonly Entry[]): Breach[] {
  const offered = new Map(bundle.pupils.map((p) => [p.pupilId, new Map(p.offers.map((o) => [o.taskId, new Set(o.levelIds)]))]));
  const breaches: Breach[] = [];
  for (const { fact, pupilId, taskId, setNumber, source, deviceId } of holding) {
    if (fact.kind !== "choice" || pupilId === undefined || taskId === undefined || setNumber === undefined) continue;
    const own = offered.get(pupilId);
    if (!own || own.get(taskId)?.has(fact.levelId)) continue;
    const isThere = (e: Entry) => e.pupilId === pupilId && e.taskId === taskId && e.setNumber === setNumber;
    const trialCount = holding.filter((e) => e.fact.kind === "trial" && isThere(e)).length;
    breaches.unshift({ pupilId, taskId, setNumber, levelId: fact.levelId, trialCount, source, deviceId });
  }
  return breaches;
}

/** Whom safety is about now: by the entries on this device and by what the server says. */
export function unsafePupils(breaches: readonly Breach[], questions: readonly LiveQuestion[]): ReadonlySet<string> {
  return new Set([...breaches.map((b) => b.pupilId), ...questions.filter((q) => q.isSafety).map((q) => q.pupilId)]);
}
