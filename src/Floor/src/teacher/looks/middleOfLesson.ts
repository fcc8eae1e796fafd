import type { DeviceSeen, Entry, EntryFact, LessonBundle, LiveQuestion } from "../../contracts";
import type { About } from "../../lesson/floor";
import { MemoryFloor } from "../../lesson/memoryFloor";
import { sampleBundle } from "../../look/sampleBundle";

const classSize = 28;
const lessonMin = 19;
const teacherDevice = "memory";

/** A made-up class in the middle of a made-up lesson: some at the second task, some seen twice, two absent, a few devices quiet. The same seed makes the same lesson. */
export function middleOfLesson(seed = 7, nowMs = Date.now()): MemoryFloor {
  const whole = sampleBundle("teacher");
  const pupils = whole.pupils.slice(0, classSize);
  const bundle: LessonBundle = {
    ...whole,
    pupils,
    phases: [
      { phase: "management", durationMin: 3, note: "Mats out in pairs" },
      { phase: "instruction", durationMin: 6, note: "Show the levels and the sheet" },
      { phase: "activity", durationMin: 28, note: "Two tasks, two sets each" },
      { phase: "instruction", durationMin: 4, note: "What did you look at to decide?" },
      { phase: "management", durationMin: 4, note: "Mats away" },
    ],
  };
  const draw = draws(seed);
  const log: Entry[] = [];
  const put = (min: number, deviceId: string, about: About, fact: EntryFact, source: Entry["source"] = "floor") =>
    log.push({
      schoolId: bundle.schoolId,
      lessonId: bundle.lessonId,
      id: `00000000-0000-7000-9000-${String(log.length + 1).padStart(12, "0")}`,
      ...about,
      fact,
      source,
      deviceId,
      deviceSequence: log.filter((e) => e.deviceId === deviceId).length + 1,
      madeAt: new Date(nowMs - (lessonMin - min) * 60_000).toISOString(),
    });

  put(0, teacherDevice, {}, { kind: "phaseMark", phase: "management" });
  put(3.5, teacherDevice, {}, { kind: "phaseMark", phase: "instruction" });
  put(9, teacherDevice, {}, { kind: "phaseMark", phase: "transition" });
  put(10.5, teacherDevice, {}, { kind: "phaseMark", phase: "activity" });
  put(15, teacherDevice, {}, { kind: "engagementScan", engagedCount: 23, presentCount: 26 });
  for (const at of [8, 21]) put(1, teacherDevice, { pupilId: pupils[at]!.pupilId }, { kind: "presence", isPresent: false });

  const topics = ["decision", "cue", "cause", "decision"] as const;
  const forms = ["asked", "asked", "described", "corrected"] as const;
  pupils.forEach(({ pupilId, offers }, i) => {
    if (i === 8 || i === 21 || i === 25) return;
    const deviceId = `tablet-${Math.floor(i / 2) + 1}`;
    const sets = 1 + draw(3);
    for (let set = 0; set < sets; set++) {
      const task = bundle.tasks[Math.floor(set / bundle.setCount)]!;
      const offered = offers.find((o) => o.taskId === task.taskId)!.levelIds;
      const place = { pupilId, taskId: task.taskId, setNumber: (set % bundle.setCount) + 1 };
      const min = 10.5 + set * 2.6 + draw(100) / 100;
      const tries = set < sets - 1 ? bundle.trialCount : draw(bundle.trialCount + 1);
      put(min, deviceId, place, { kind: "choice", levelId: offered[draw(offered.length)]! });
      if (draw(8) > 0) put(min, deviceId, place, { kind: "prediction", successCount: 1 + draw(bundle.trialCount) });
      for (let t = 1; t <= tries; t++) {
        const heldS = task === bundle.tasks[0] ? Math.round(10 + draw(120)) / 10 : undefined;
        put(min + t / 4, deviceId, { ...place, trialNumber: t }, { kind: "trial", isSuccess: heldS === undefined ? draw(3) > 0 : heldS > 6, ...(heldS !== undefined && { heldS }) });
      }
      if (set < sets - 1) {
        task.cues.forEach((_, c) => put(min + 1.8, deviceId, place, { kind: "cueTick", cueNumber: c + 1, isTicked: draw(4) > 0 }));
        put(min + 2, deviceId, place, { kind: "decision", next: (["same", "harder", "easier"] as const)[draw(3)]!, reason: ["It felt steady", "", "I wobbled at the end", "Four of five"][draw(4)]! });
      }
    }
    const talks = draw(10) < 4 ? 0 : draw(10) < 8 ? 1 : 2;
    for (let n = 0; n < talks; n++) put(11 + draw(75) / 10, teacherDevice, { pupilId }, { kind: "visit", topic: topics[draw(4)]!, form: forms[draw(4)]! });
  });
  log.sort((a, b) => (a.madeAt < b.madeAt ? -1 : a.madeAt > b.madeAt ? 1 : 0));

  const floor = new MemoryFloor({ ...bundle, entries: log }, { deviceName: "Phone" });
  floor.delivery.value = { unsentCount: 2, refused: [], isOnline: true, lastAnswerAt: nowMs - 4000 };
  floor.devices.value = devices(bundle, nowMs);
  floor.questions.value = questions(bundle);
  return floor;
}

/** As above, and a level outside Bruno's offer was typed in from paper. */
export function lessonWithBreach(): MemoryFloor {
  const floor = middleOfLesson();
  const { pupils, tasks, schoolId, lessonId } = floor.bundle.value;
  const place = { schoolId, lessonId, pupilId: pupils[1]!.pupilId, taskId: tasks[0]!.taskId, setNumber: 2, source: "paper" as const, deviceId: "desk", madeAt: new Date().toISOString() };
  const entries: Entry[] = [
    { ...place, id: "00000000-0000-7000-9001-000000000001", deviceSequence: 1, fact: { kind: "choice", levelId: tasks[0]!.levels[2]!.levelId } },
    { ...place, id: "00000000-0000-7000-9001-000000000002", deviceSequence: 2, trialNumber: 1, fact: { kind: "trial", isSuccess: true } },
  ];
  floor.log.value = [...floor.log.value, ...entries];
  return floor;
}

function devices(bundle: LessonBundle, nowMs: number): DeviceSeen[] {
  const ago = (s: number) => new Date(nowMs - s * 1000).toISOString();
  const pairs = Array.from({ length: 9 }, (_, i): DeviceSeen => ({
    deviceId: `tablet-${i + 1}`,
    name: `Tablet ${i + 1}`,
    kind: "pair",
    pupilIds: bundle.pupils.slice(2 * i, 2 * i + 2).map((p) => p.pupilId),
    isLocked: i === 5,
    seenAt: ago(i === 3 ? 260 : 3 + i),
    unsentCount: i === 3 ? 5 : 0,
    hasLeft: false,
  }));
  return [
    ...pairs,
    { deviceId: "station", name: "By the wall bars", kind: "station", pupilIds: [], isLocked: false, seenAt: ago(5), unsentCount: 0, hasLeft: false },
    { deviceId: "board", name: "Board", kind: "board", pupilIds: [], isLocked: false, seenAt: ago(2), unsentCount: 0, hasLeft: false },
    { deviceId: "memory", name: "Phone", kind: "teacher", pupilIds: [], isLocked: false, seenAt: ago(2), unsentCount: 2, hasLeft: false },
    { deviceId: "gone", name: "Tablet 10", kind: "pair", pupilIds: [], isLocked: false, seenAt: ago(500), unsentCount: 0, hasLeft: true },
  ];
}

function questions(bundle: LessonBundle): LiveQuestion[] {
  const of = (i: number, question: string, reason: string): LiveQuestion => ({ pupilId: bundle.pupils[i]!.pupilId, isSafety: false, question, reason });
  return [
    of(4, "You have stayed twice. How did you decide?", "Set 1 and set 2: none of five done, level unchanged."),
    of(12, "What surprised you?", "Predicted 1, done 5 of 5 tries."),
    of(19, "What did you look at when you predicted?", "Predicted 5 twice, done 2 of 5 and 1 of 5 tries."),
  ];
}

/** Numbers from 0 below a bound, the same for a seed: Park and Miller's minimal generator, from memory. */
function draws(seed: number): (below: number) => number {
  let state = (seed * 7919 + 11) % 2147483647;
  return (below) => (state = (state * 48271) % 2147483647) % below;
}
