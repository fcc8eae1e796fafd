import type { BundleLevel, DoseKind, Entry, EntryFact, LessonBundle } from "../src/contracts";
import type { About } from "../src/lesson/floor";
import { made } from "../src/lesson/making";

export const level = (levelId: string, doseKind: DoseKind = "holdS", doseAmount = 5): BundleLevel => ({ levelId, name: `how ${levelId}`, doseKind, doseAmount });

/** Two tasks, three levels each, two sets of three; Mia is offered all of them, Leo all but the first task's last. */
export function bundleOf(part: Partial<LessonBundle> = {}): LessonBundle {
  return {
    format: 1,
    schoolId: "school",
    lessonId: "lesson",
    date: "2026-03-02",
    lessonTitle: "",
    className: "7 Heron",
    kind: "pupil",
    sheetVersion: 1,
    sheetTitle: "Balances",
    setCount: 2,
    trialCount: 3,
    predicts: "successCount",
    tasks: [
      { taskId: "a", name: "A", purpose: "", cues: ["one", "two"], caution: "", levels: [level("a1"), level("a2"), level("a3", "holdS", 4.2)] },
      { taskId: "b", name: "B", purpose: "", cues: [], caution: "", levels: [level("b1", "repetitionsCount"), level("b2"), level("b3")] },
    ],
    figures: [],
    translations: [],
    pupils: [
      { pupilId: "mia", label: "Mia", offers: [{ taskId: "a", levelIds: ["a1", "a2", "a3"] }, { taskId: "b", levelIds: ["b1", "b2", "b3"] }] },
      { pupilId: "leo", label: "Leo", offers: [{ taskId: "a", levelIds: ["a1", "a2"] }, { taskId: "b", levelIds: [] }] },
    ],
    phases: [],
    entries: [],
    ...part,
  };
}

/** A log that grows, from several devices. */
export class Writing {
  log: Entry[] = [];

  put(about: About | Entry, fact: EntryFact, deviceId = "here"): this {
    const lastSequence = this.log.filter((e) => e.deviceId === deviceId).length;
    this.log.push(...made(this.log, [[about, fact]], { schoolId: "school", lessonId: "lesson", deviceId, lastSequence, now: new Date(Date.UTC(2026, 2, 2, 9, 0, this.log.length)) }));
    return this;
  }

  takeBack(entries: readonly Entry[], deviceId = "here"): this {
    for (const entry of entries) this.put(entry, { kind: "withdrawal" }, deviceId);
    return this;
  }
}
