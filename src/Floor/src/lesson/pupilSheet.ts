import type { BundleLevel, BundleOffer, BundlePupil, BundleTask, Entry, EntryFact, LessonBundle } from "../contracts";
import { current } from "./log";

export type FactOf<K extends EntryFact["kind"]> = Extract<EntryFact, { kind: K }>;

/** A level a pupil may be offered, with the pupil's own number for it, from 1. */
export interface OfferedLevel {
  readonly number: number;
  readonly level: BundleLevel;
}

/** One try of a set. */
export interface TrialAt extends FactOf<"trial"> {
  /** From 1. */
  readonly trialNumber: number;
}

/** What stands about one set of a pupil. Any part may be missing: another device may have written the rest. */
export interface SetSheet {
  /** From 1. */
  readonly setNumber: number;
  /** The chosen level, as long as it is offered. */
  readonly chosen?: OfferedLevel;
  /** Something was chosen that is not offered any more. */
  readonly isChoiceGone: boolean;
  readonly prediction?: FactOf<"prediction">;
  /** By number; there may be gaps. */
  readonly trials: readonly TrialAt[];
  /** By cue number, from 1; a cue nobody answered is not in it. */
  readonly ticks: ReadonlyMap<number, boolean>;
  readonly decision?: FactOf<"decision">;
}

/** What comes next in a task. */
export type Step =
  | { readonly kind: "choose"; readonly setNumber: number; readonly isAgain: boolean }
  | { readonly kind: "predict"; readonly setNumber: number; readonly chosen: OfferedLevel }
  | { readonly kind: "try"; readonly setNumber: number; readonly chosen: OfferedLevel; readonly trialNumber: number }
  | { readonly kind: "look"; readonly setNumber: number; readonly chosen: OfferedLevel }
  | { readonly kind: "decide"; readonly setNumber: number; readonly chosen: OfferedLevel }
  | { readonly kind: "finished" };

/** A task as it stands for a pupil. */
export interface TaskSheet {
  readonly task: BundleTask;
  /** In the order to show them. */
  readonly levels: readonly OfferedLevel[];
  /** How this pupil does the task; none where as everybody does. */
  readonly adaptation?: string;
  /** All sets of the task, touched or not. */
  readonly sets: readonly SetSheet[];
  readonly step: Step;
}

/** A pupil's sheet as it stands. */
export interface PupilSheet {
  readonly pupil: BundlePupil;
  /** The tasks of which something is offered, in order. */
  readonly tasks: readonly TaskSheet[];
  /** The task in the middle of a set, the last one touched where there are several. */
  readonly openTaskId?: string;
}

/** What a pupil may go past without an entry, for as long as the page is open. */
export type Pass = "predict" | "try" | "look";

export function passKey(pupilId: string, taskId: string, setNumber: number, pass: Pass): string {
  return `${pupilId}|${taskId}|${setNumber}|${pass}`;
}

/** Where a pupil is, from the entries that hold. Nothing in it is a level that is not offered. */
export function pupilSheet(bundle: LessonBundle, pupilId: string, log: readonly Entry[], passed: ReadonlySet<string> = new Set()): PupilSheet | undefined {
  const pupil = bundle.pupils.find((p) => p.pupilId === pupilId);
  if (!pupil) return undefined;
  const own = holding(log, pupilId);
  const tasks: TaskSheet[] = [];
  for (const task of bundle.tasks) {
    const offer = pupil.offers.find((o) => o.taskId === task.taskId);
    const levels = offered(task, offer);
    if (levels.length === 0) continue;
    const sets = setsOf(bundle, task, levels, own);
    const has = (setNumber: number, pass: Pass) => passed.has(passKey(pupilId, task.taskId, setNumber, pass));
    tasks.push({ task, levels, ...(offer?.adaptation && { adaptation: offer.adaptation }), sets, step: stepOf(bundle, task, sets, has) });
  }
  const isOpen = (taskId: string | undefined) => tasks.some((t) => t.task.taskId === taskId && isInSet(t));
  const open = [...own].reverse().find((e) => isOpen(e.taskId))?.taskId;
  return { pupil, tasks, ...(open !== undefined && { openTaskId: open }) };
}

/** Whether a set of the task has begun and not ended. */
export function isInSet({ step }: TaskSheet): boolean {
  return step.kind !== "finished" && step.kind !== "choose";
}

/** Whether a set of a hold or a count is predicted: there is no best hold where nothing is held. */
export function isPredicted(bundle: LessonBundle, level: BundleLevel): boolean {
  return bundle.predicts === "successCount" || (bundle.predicts === "holdS" && level.doseKind === "holdS");
}

/** What undo would take back, the newest first: the pupil's last step made on this device, with all ticks of a set as one step. Empty where there is none. */
export function lastStep(log: readonly Entry[], pupilId: string, deviceId: string): readonly Entry[] {
  const own = holding(log, pupilId)
    .filter((e) => e.deviceId === deviceId)
    .sort((a, b) => b.deviceSequence - a.deviceSequence);
  const last = own[0];
  if (!last) return [];
  if (last.fact.kind !== "cueTick") return [last];
  const end = own.findIndex((e) => e.fact.kind !== "cueTick" || e.taskId !== last.taskId || e.setNumber !== last.setNumber);
  return end < 0 ? own : own.slice(0, end);
}

/** The longest hold of a task, seconds; none where nothing was timed. */
export function longestHoldS(sets: readonly SetSheet[]): number | undefined {
  const holds = sets.flatMap((s) => s.trials.map((t) => t.heldS ?? -1)).filter((s) => s >= 0);
  return holds.length === 0 ? undefined : Math.max(...holds);
}

/** A pupil's entries that hold. The class is left out first: a station's log is long, and this is asked at every tap. */
function holding(log: readonly Entry[], pupilId: string): Entry[] {
  return current(log.filter((e) => e.pupilId === pupilId || e.fact.kind === "withdrawal")).filter((e) => isPupils(e.fact));
}

function isPupils(fact: EntryFact): boolean {
  return fact.kind === "choice" || fact.kind === "prediction" || fact.kind === "trial" || fact.kind === "cueTick" || fact.kind === "decision";
}

function offered(task: BundleTask, offer: BundleOffer | undefined): OfferedLevel[] {
  const ids = offer?.levelIds ?? [];
  const levels = ids.map((id) => task.levels.find((l) => l.levelId === id)).filter((l) => l !== undefined);
  return levels.map((level, i) => ({ number: i + 1, level }));
}

function setsOf(bundle: LessonBundle, task: BundleTask, levels: readonly OfferedLevel[], own: readonly Entry[]): SetSheet[] {
  return Array.from({ length: Math.max(0, bundle.setCount) }, (_, i) => {
    const setNumber = i + 1;
    const entries = own.filter((e) => e.taskId === task.taskId && e.setNumber === setNumber);
    const choice = factOf(entries, "choice");
    const chosen = choice && levels.find((l) => l.level.levelId === choice.levelId);
    const prediction = factOf(entries, "prediction");
    const decision = factOf(entries, "decision");
    const trials: TrialAt[] = [];
    const ticks = new Map<number, boolean>();
    for (const { fact, trialNumber } of entries) {
      if (fact.kind === "trial" && trialNumber !== undefined && trialNumber >= 1 && trialNumber <= bundle.trialCount) trials.push({ ...fact, trialNumber });
      if (fact.kind === "cueTick" && fact.cueNumber >= 1 && fact.cueNumber <= task.cues.length) ticks.set(fact.cueNumber, fact.isTicked);
    }
    trials.sort((a, b) => a.trialNumber - b.trialNumber);
    return {
      setNumber,
      ...(chosen && { chosen }),
      isChoiceGone: choice !== undefined && chosen === undefined,
      ...(prediction && { prediction }),
      trials,
      ticks,
      ...(decision && { decision }),
    };
  });
}

function factOf<K extends EntryFact["kind"]>(entries: readonly Entry[], kind: K): FactOf<K> | undefined {
  return entries.find((e) => e.fact.kind === kind)?.fact as FactOf<K> | undefined;
}

function isTouched(set: SetSheet): boolean {
  return !!set.chosen || set.isChoiceGone || !!set.prediction || set.trials.length > 0 || set.ticks.size > 0 || !!set.decision;
}

function stepOf(bundle: LessonBundle, task: BundleTask, sets: readonly SetSheet[], isPassed: (setNumber: number, pass: Pass) => boolean): Step {
  // The last set anybody wrote about is where the pupil is; what is missing before it stays missing.
  const here = [...sets].reverse().find(isTouched) ?? sets[0];
  if (!here) return { kind: "finished" };
  const { setNumber, chosen } = here;
  // A set is tries at one level: where that level went away in the middle, the set ends there and the next begins with a new choice.
  if (here.decision || (here.isChoiceGone && here.trials.length > 0)) {
    return setNumber < bundle.setCount ? { kind: "choose", setNumber: setNumber + 1, isAgain: !here.decision } : { kind: "finished" };
  }
  if (!chosen) return { kind: "choose", setNumber, isAgain: here.isChoiceGone };
  const isAtStart = !here.prediction && here.trials.length === 0 && here.ticks.size === 0;
  if (isAtStart && isPredicted(bundle, chosen.level) && !isPassed(setNumber, "predict")) return { kind: "predict", setNumber, chosen };
  const trialNumber = firstFree(here.trials, bundle.trialCount);
  if (trialNumber !== undefined && here.ticks.size === 0 && !isPassed(setNumber, "try")) return { kind: "try", setNumber, chosen, trialNumber };
  if (here.ticks.size < task.cues.length && !isPassed(setNumber, "look")) return { kind: "look", setNumber, chosen };
  return { kind: "decide", setNumber, chosen };
}

function firstFree(trials: readonly TrialAt[], trialCount: number): number | undefined {
  const taken = new Set(trials.map((t) => t.trialNumber));
  for (let n = 1; n <= trialCount; n++) if (!taken.has(n)) return n;
  return undefined;
}
