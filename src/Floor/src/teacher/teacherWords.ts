import type { BundleTask, DeviceSeen, EntrySource, LessonBundle, PhaseKind, VisitForm, VisitTopic } from "../contracts";
import { readable } from "../lesson/readable";
import { language, say, type WordKey } from "../words/say";

export const topics: readonly VisitTopic[] = ["decision", "cue", "cause", "safety"];
export const forms: readonly VisitForm[] = ["asked", "described", "corrected", "valued"];

export const topicWords: Readonly<Record<VisitTopic, WordKey>> = {
  decision: "TeacherTopicDecision",
  cue: "TeacherTopicCue",
  cause: "TeacherTopicCause",
  safety: "TeacherTopicSafety",
};

export const formWords: Readonly<Record<VisitForm, WordKey>> = {
  asked: "TeacherFormAsked",
  described: "TeacherFormDescribed",
  corrected: "TeacherFormCorrected",
  valued: "TeacherFormValued",
};

export const phaseWords: Readonly<Record<PhaseKind, WordKey>> = {
  management: "TeacherPhaseManagement",
  transition: "TeacherPhaseTransition",
  instruction: "TeacherPhaseInstruction",
  activity: "TeacherPhaseActivity",
  waiting: "TeacherPhaseWaiting",
};

const sourceWords: Readonly<Record<EntrySource, WordKey>> = {
  desk: "TeacherSourceDesk",
  paper: "TeacherSourcePaper",
  floor: "TeacherSourceFloor",
  file: "TeacherSourceFile",
};

const kindWords: Readonly<Record<DeviceSeen["kind"], WordKey>> = {
  pupil: "TeacherKindPupil",
  pair: "TeacherKindPair",
  station: "TeacherKindStation",
  teacher: "TeacherKindTeacher",
  board: "TeacherKindBoard",
};

/** How long ago, in the fewest words: a glance lasts two seconds. */
export function agoShort(atMs: number, nowMs: number): string {
  const min = Math.floor((nowMs - atMs) / 60_000);
  return min < 1 ? say("TeacherNow") : say("TeacherMin", min);
}

/** How long ago, as part of a sentence. */
export function ago(atMs: number, nowMs: number): string {
  const min = Math.floor((nowMs - atMs) / 60_000);
  return min < 1 ? say("TeacherJustNow") : min === 1 ? say("TeacherMinuteAgo") : min < 120 ? say("TeacherMinutesAgo", min) : say("TeacherHoursAgo", Math.floor(min / 60));
}

/** What a device is called; one that has only a number yet says what the number is of. */
export function deviceText(name: string): string {
  return /^\d+$/.test(name) ? say("TeacherDeviceNumber", name) : name;
}

export function sourceText(source: EntrySource, deviceId: string, devices: readonly DeviceSeen[]): string {
  const name = devices.find((d) => d.deviceId === deviceId)?.name;
  return source === "floor" && name ? say("TeacherSourceDevice", deviceText(name)) : say(sourceWords[source]);
}

export function kindText(kind: DeviceSeen["kind"]): string {
  return say(kindWords[kind]);
}

/** One word for one, another for more. */
export function count(n: number, one: WordKey, many: WordKey): string {
  return n === 1 ? say(one) : say(many, n);
}

/** The tasks in the device's language, as far as the bundle has them. */
export function tasksSaid(bundle: LessonBundle): readonly BundleTask[] {
  return readable(bundle, language.value).tasks;
}

/** A task's letter, A for the first: short enough for a tile. */
export function taskLetter(index: number): string {
  return String.fromCharCode(65 + Math.max(0, index) % 26);
}
