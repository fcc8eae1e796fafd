import type { Entry } from "../contracts";

/** Where in the sheet a pupil is. */
export interface Whereabouts {
  readonly taskId: string;
  readonly setNumber: number;
  /** Trials of that set so far. */
  readonly trialCount: number;
  /** Whether the set was decided on, so that the next one is due. */
  readonly isDecided: boolean;
}

/**
 * Where each pupil is: the set they wrote about last. Whoever has written nothing is not in it.
 * @param holding The entries that hold, in the order that counts.
 */
export function whereaboutsIn(holding: readonly Entry[]): ReadonlyMap<string, Whereabouts> {
  const byPupil = new Map<string, Whereabouts>();
  const trials = new Map<string, number>();
  const decided = new Set<string>();
  for (const { fact, pupilId, taskId, setNumber } of holding) {
    if (pupilId === undefined || taskId === undefined || setNumber === undefined || !isPupilsWork(fact.kind)) continue;
    const set = `${pupilId}|${taskId}|${setNumber}`;
    if (fact.kind === "trial") trials.set(set, (trials.get(set) ?? 0) + 1);
    if (fact.kind === "decision") decided.add(set);
    byPupil.set(pupilId, { taskId, setNumber, trialCount: trials.get(set) ?? 0, isDecided: decided.has(set) });
  }
  return byPupil;
}

function isPupilsWork(kind: Entry["fact"]["kind"]): boolean {
  return kind === "choice" || kind === "prediction" || kind === "trial" || kind === "cueTick" || kind === "decision";
}
