import type { Entry, NextLevel } from "../contracts";

/** A set as the entries tell it: what was chosen, foretold, tried and decided; a level that is not offered to the pupil included, which the pupil's own sheet never shows. */
export interface PupilSet {
  readonly taskId: string;
  readonly setNumber: number;
  readonly levelId?: string;
  readonly predictedCount?: number;
  readonly predictedS?: number;
  /** By trial number; one left out was not written. */
  readonly trials: readonly { readonly trialNumber: number; readonly isSuccess: boolean; readonly heldS?: number }[];
  readonly next?: NextLevel;
  /** Why, in the pupil's words; may be empty. */
  readonly reason: string;
  /** Whether the pupil has said something of the cues; what they said is for another place, after the teacher's own look. */
  readonly hasTicks: boolean;
}

type Draft = { -readonly [K in keyof PupilSet]: PupilSet[K] };

/**
 * A pupil's sets of this lesson, task by task in the order of the sheet.
 * @param holding The entries that hold, any order.
 */
export function pupilSets(taskIds: readonly string[], holding: readonly Entry[], pupilId: string): PupilSet[] {
  const sets = new Map<string, Draft>();
  for (const { fact, taskId, setNumber, trialNumber, pupilId: whose } of holding) {
    if (whose !== pupilId || taskId === undefined || setNumber === undefined || fact.kind === "visit" || fact.kind === "teacherCheck" || fact.kind === "note") continue;
    const key = `${taskId}|${setNumber}`;
    const set = sets.get(key) ?? { taskId, setNumber, trials: [], reason: "", hasTicks: false };
    sets.set(key, set);
    if (fact.kind === "choice") set.levelId = fact.levelId;
    else if (fact.kind === "prediction") {
      if (fact.successCount !== undefined) set.predictedCount = fact.successCount;
      if (fact.holdS !== undefined) set.predictedS = fact.holdS;
    } else if (fact.kind === "trial" && trialNumber !== undefined) {
      const trial = { trialNumber, isSuccess: fact.isSuccess, ...(fact.heldS !== undefined && { heldS: fact.heldS }) };
      set.trials = [...set.trials, trial].sort((a, b) => a.trialNumber - b.trialNumber);
    } else if (fact.kind === "decision") Object.assign(set, { next: fact.next, reason: fact.reason ?? "" });
    else if (fact.kind === "cueTick") set.hasTicks = true;
  }
  return [...sets.values()].sort((a, b) => taskIds.indexOf(a.taskId) - taskIds.indexOf(b.taskId) || a.setNumber - b.setNumber);
}
