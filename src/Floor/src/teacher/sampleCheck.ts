import type { Entry, EntryFact, LessonBundle } from "../contracts";
import type { About } from "../lesson/floor";
import type { Whereabouts } from "./whereabouts";

/** A set of a pupil, of which cues are checked. */
export interface SetPlace {
  readonly pupilId: string;
  readonly taskId: string;
  readonly setNumber: number;
}

/** What the teacher saw of a cue. */
export type CueSight = "met" | "notMet" | "notSeen";

/** A cue as the teacher and the pupil saw it. */
export interface CuePair {
  /** From 1. */
  readonly cueNumber: number;
  /** What the pupil ticked; none where they have said nothing of it. */
  readonly isTicked?: boolean;
  /** What the teacher saw; none where it was not seen. */
  readonly isMet?: boolean;
  /** Whether the teacher looked before seeing the tick. */
  readonly isBlind?: boolean;
}

/** The cues of a set, each with both views as far as they are written. */
export function cuePairs(cueCount: number, holding: readonly Entry[], place: SetPlace): CuePair[] {
  const there = holding.filter((e) => e.pupilId === place.pupilId && e.taskId === place.taskId && e.setNumber === place.setNumber && e.trialNumber === undefined);
  return Array.from({ length: cueCount }, (_, i) => {
    const pair: { cueNumber: number; isTicked?: boolean; isMet?: boolean; isBlind?: boolean } = { cueNumber: i + 1 };
    for (const { fact } of there) {
      if (fact.kind === "cueTick" && fact.cueNumber === pair.cueNumber) pair.isTicked = fact.isTicked;
      if (fact.kind === "teacherCheck" && fact.cueNumber === pair.cueNumber) Object.assign(pair, { isMet: fact.isMet, isBlind: fact.isBlind });
    }
    return pair;
  });
}

/** How many cues both have spoken of, and of how many they say the same; only of those that can be compared. */
export function agreement(pairs: readonly CuePair[]): { readonly bothCount: number; readonly sameCount: number } {
  const both = pairs.filter((p) => p.isTicked !== undefined && p.isMet !== undefined);
  return { bothCount: both.length, sameCount: both.filter((p) => p.isTicked === p.isMet).length };
}

/** The facts of a check; a cue that was not seen leaves none. */
export function checkFacts(place: SetPlace, sights: readonly CueSight[], isBlind: boolean): (readonly [About, EntryFact])[] {
  return sights.flatMap((sight, i): (readonly [About, EntryFact])[] =>
    sight === "notSeen" ? [] : [[{ ...place }, { kind: "teacherCheck", cueNumber: i + 1, isMet: sight === "met", isBlind }]],
  );
}

/** The set to check unless another is picked: where the pupil is, or the first set of the first task. None for a sheet without tasks. */
export function latestPlace(bundle: LessonBundle, pupilId: string, where: Whereabouts | undefined): SetPlace | undefined {
  const taskId = where?.taskId ?? bundle.tasks[0]?.taskId;
  return taskId === undefined ? undefined : { pupilId, taskId, setNumber: where?.setNumber ?? 1 };
}
