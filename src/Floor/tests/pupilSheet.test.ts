import { describe, expect, it } from "vitest";
import type { EntryFact, LessonBundle } from "../src/contracts";
import { current } from "../src/lesson/log";
import { lastStep, longestHoldS, passKey, pupilSheet, type Step, type TaskSheet } from "../src/lesson/pupilSheet";
import { bundleOf, Writing } from "./floorBundle";
import { seeded } from "./seeded";

const set1 = { pupilId: "mia", taskId: "a", setNumber: 1 };
const set2 = { ...set1, setNumber: 2 };
const trial = (trialNumber: number, set = set1) => ({ ...set, trialNumber });
const choice = (levelId: string): EntryFact => ({ kind: "choice", levelId });
const tick = (cueNumber: number, isTicked = true): EntryFact => ({ kind: "cueTick", cueNumber, isTicked });
const held: EntryFact = { kind: "trial", isSuccess: true };
const said: EntryFact = { kind: "prediction", successCount: 2 };
const same: EntryFact = { kind: "decision", next: "same" };

function taskA(writing: Writing, bundle = bundleOf(), passed?: ReadonlySet<string>): TaskSheet {
  return pupilSheet(bundle, "mia", writing.log, passed)!.tasks[0]!;
}

/** The step in short: its kind, set and trial. */
function at(writing: Writing, bundle?: LessonBundle, passed?: ReadonlySet<string>): string {
  const { step } = taskA(writing, bundle, passed);
  return short(step);
}

function short(step: Step): string {
  return step.kind === "finished" ? "finished" : `${step.kind} ${step.setNumber}${step.kind === "try" ? `.${step.trialNumber}` : ""}`;
}

describe("pupilSheet, one set after the other", () => {
  it("asks one thing after the other, and ends", () => {
    const w = new Writing();
    const seen = [at(w)];
    const facts: [object, EntryFact][] = [
      [set1, choice("a2")], [set1, said], [trial(1), held], [trial(2), held], [trial(3), held], [set1, tick(1)], [set1, tick(2, false)], [set1, same],
      [set2, choice("a3")], [set2, said], [trial(1, set2), held], [trial(2, set2), held], [trial(3, set2), held], [set2, tick(1)], [set2, tick(2)], [set2, same],
    ];
    for (const [about, fact] of facts) seen.push(at(w.put(about, fact)));
    expect(seen).toEqual([
      "choose 1", "predict 1", "try 1.1", "try 1.2", "try 1.3", "look 1", "look 1", "decide 1",
      "choose 2", "predict 2", "try 2.1", "try 2.2", "try 2.3", "look 2", "look 2", "decide 2", "finished",
    ]);
  });

  it("numbers the levels a pupil is offered from 1, and leaves out tasks of which nothing is offered", () => {
    const bundle = bundleOf({ pupils: [{ pupilId: "mia", label: "Mia", offers: [{ taskId: "a", levelIds: ["a2", "a3"] }, { taskId: "b", levelIds: [] }] }] });
    const sheet = pupilSheet(bundle, "mia", [])!;
    expect(sheet.tasks.map((t) => t.task.taskId)).toEqual(["a"]);
    expect(sheet.tasks[0]!.levels.map((l) => [l.number, l.level.levelId])).toEqual([[1, "a2"], [2, "a3"]]);
  });

  it("knows how this pupil does a task, and nobody else's way", () => {
    const offers = [{ taskId: "a", levelIds: ["a1"] }, { taskId: "b", levelIds: ["b1"] }];
    const bundle = bundleOf({
      pupils: [{ pupilId: "mia", label: "Mia", offers: [{ ...offers[0]!, adaptation: "One hand on the wall" }, offers[1]!] }, { pupilId: "leo", label: "Leo", offers }],
    });
    expect(pupilSheet(bundle, "mia", [])!.tasks.map((t) => t.adaptation)).toEqual(["One hand on the wall", undefined]);
    expect(pupilSheet(bundle, "leo", [])!.tasks.map((t) => t.adaptation)).toEqual([undefined, undefined]);
  });

  it("asks for no prediction where nothing is predicted, nor for a best hold where nothing is held", () => {
    expect(at(new Writing().put(set1, choice("a2")), bundleOf({ predicts: "nothing" }))).toBe("try 1.1");
    const bundle = bundleOf({ predicts: "holdS" });
    const w = new Writing().put({ ...set1, taskId: "b" }, choice("b1"));
    expect(short(pupilSheet(bundle, "mia", w.log)!.tasks[1]!.step)).toBe("try 1.1");
    expect(short(pupilSheet(bundle, "mia", w.put({ ...set1, taskId: "b" }, choice("b2")).log)!.tasks[1]!.step)).toBe("predict 1");
  });

  it("asks for no prediction once there is a trial: it would not be one", () => {
    expect(at(new Writing().put(set1, choice("a2")).put(trial(1), held))).toBe("try 1.2");
  });

  it("has no cues to look at where a task has none", () => {
    const b = { ...set1, taskId: "b" };
    const w = new Writing().put(b, choice("b1")).put(b, said).put({ ...b, trialNumber: 1 }, held).put({ ...b, trialNumber: 2 }, held).put({ ...b, trialNumber: 3 }, held);
    expect(short(pupilSheet(bundleOf(), "mia", w.log)!.tasks[1]!.step)).toBe("decide 1");
  });

  it("goes past what the pupil passes: the prediction, enough tries, the cues", () => {
    const w = new Writing().put(set1, choice("a1"));
    const passed = new Set([passKey("mia", "a", 1, "predict")]);
    expect(at(w, undefined, passed)).toBe("try 1.1");
    expect(at(w.put(trial(1), held), undefined, passed.add(passKey("mia", "a", 1, "try")))).toBe("look 1");
    expect(at(w.put(set1, tick(2)), undefined, passed.add(passKey("mia", "a", 1, "look")))).toBe("decide 1");
    expect(at(w)).toBe("look 1");
  });

  it("tells the task in the middle of a set, the last one touched", () => {
    const w = new Writing();
    const open = () => pupilSheet(bundleOf(), "mia", w.log)!.openTaskId;
    expect(open()).toBeUndefined();
    w.put(set1, choice("a1"));
    expect(open()).toBe("a");
    w.put({ ...set1, taskId: "b" }, choice("b1"));
    expect(open()).toBe("b");
    w.put({ ...set1, taskId: "b" }, same);
    expect(open()).toBe("a");
  });

  it("knows nothing of a pupil the device does not serve", () => {
    expect(pupilSheet(bundleOf(), "nobody", [])).toBeUndefined();
  });
});

describe("pupilSheet, several devices and missing entries", () => {
  it("is where the last set is that anybody wrote about", () => {
    const w = new Writing().put(set1, choice("a1")).put(trial(1), held).put(set2, choice("a2"), "there");
    expect(at(w)).toBe("predict 2");
    expect(taskA(w).sets[0]).toMatchObject({ chosen: { number: 1 }, trials: [{ trialNumber: 1 }] });
  });

  it("takes a decision without trials for the end of the set", () => {
    expect(at(new Writing().put(set1, choice("a1")).put(set1, same))).toBe("choose 2");
    expect(at(new Writing().put(set1, same, "there"))).toBe("choose 2");
    expect(at(new Writing().put(set2, same, "there"))).toBe("finished");
  });

  it("asks for the level where only trials are there, and goes on after them", () => {
    const w = new Writing().put(trial(2), held, "there");
    expect(at(w)).toBe("choose 1");
    expect(at(w.put(set1, choice("a1")))).toBe("try 1.1");
    expect(at(w.put(trial(1), held))).toBe("try 1.3");
  });

  it("leaves out sets, trials and cues the sheet does not have", () => {
    const w = new Writing()
      .put({ ...set1, setNumber: 9 }, same, "there")
      .put(trial(0), held, "there")
      .put(trial(4), held, "there")
      .put(set1, tick(3), "there");
    expect(at(w)).toBe("choose 1");
    expect(taskA(w).sets[0]).toMatchObject({ trials: [], ticks: new Map() });
  });

  it("leaves alone what is about another pupil, another task, or the teacher's", () => {
    const w = new Writing()
      .put({ ...set1, pupilId: "leo" }, choice("a1"))
      .put(set1, { kind: "teacherCheck", cueNumber: 1, isMet: true, isBlind: true }, "teacher")
      .put({ pupilId: "mia" }, { kind: "presence", isPresent: true });
    expect(at(w)).toBe("choose 1");
  });
});

describe("pupilSheet, a level that is offered no more", () => {
  const less = bundleOf({ pupils: [{ pupilId: "mia", label: "Mia", offers: [{ taskId: "a", levelIds: ["a1", "a2"] }] }] });

  it("asks to choose again before the first trial", () => {
    const w = new Writing().put(set1, choice("a3")).put(set1, said);
    expect(taskA(w, less).step).toEqual({ kind: "choose", setNumber: 1, isAgain: true });
    expect(at(w.put(set1, choice("a1")), less)).toBe("try 1.1");
  });

  it("ends the set where there are trials, so that they stay with the level they were made at", () => {
    const w = new Writing().put(set1, choice("a3")).put(trial(1), held);
    expect(taskA(w, less).step).toEqual({ kind: "choose", setNumber: 2, isAgain: true });
    w.put(set2, choice("a3")).put(trial(1, set2), held);
    expect(taskA(w, less).step).toEqual({ kind: "finished" });
  });

  it("shows the level of no set where it is gone", () => {
    const w = new Writing().put(set1, choice("a3")).put(trial(1), { kind: "trial", isSuccess: true, heldS: 4.2 }).put(set1, same);
    const set = taskA(w, less).sets[0]!;
    expect(set.chosen).toBeUndefined();
    expect(set.isChoiceGone).toBe(true);
    expect(longestHoldS(taskA(w, less).sets)).toBe(4.2);
  });

  it("shows nothing where nothing is left", () => {
    const none = bundleOf({ pupils: [{ pupilId: "mia", label: "Mia", offers: [] }] });
    expect(pupilSheet(none, "mia", new Writing().put(set1, choice("a3")).log)!.tasks).toEqual([]);
  });
});

describe("lastStep", () => {
  it("goes back one step at a time, all ticks of a set at once", () => {
    const w = new Writing().put(set1, choice("a1")).put(set1, said).put(trial(1), held).put(set1, tick(1)).put(set1, tick(2)).put(set1, tick(1, false)).put(set1, same);
    const back: string[] = [];
    for (let step = lastStep(w.log, "mia", "here"); step.length > 0; step = lastStep(w.log, "mia", "here")) {
      back.push(step.map((e) => e.fact.kind).join("+"));
      w.takeBack(step);
    }
    expect(back).toEqual(["decision", "cueTick+cueTick", "trial", "prediction", "choice"]);
    expect(current(w.log)).toEqual([]);
  });

  it("touches nothing of another device, nor of another pupil", () => {
    const w = new Writing().put(set1, choice("a1")).put(set1, said, "there").put({ ...set1, pupilId: "leo" }, choice("a1"));
    expect(lastStep(w.log, "mia", "here").map((e) => e.fact.kind)).toEqual(["choice"]);
    expect(lastStep(w.log, "mia", "elsewhere")).toEqual([]);
  });

  it("takes back a corrected answer whole, and not what was corrected", () => {
    const w = new Writing().put(set1, choice("a1")).put(set1, choice("a2"));
    w.takeBack(lastStep(w.log, "mia", "here"));
    expect(at(w)).toBe("choose 1");
    expect(lastStep(w.log, "mia", "here")).toEqual([]);
  });
});

describe("pupilSheet, laws on random logs", () => {
  const kinds = ["choose", "predict", "try", "look", "decide", "finished"];
  // Before the first trial is one place: a new choice there may ask for a prediction that the last one did not need.
  const place = ({ step }: TaskSheet): number =>
    step.kind === "finished" ? Infinity : step.setNumber * 100 + kinds.indexOf(step.kind) * 10 + (step.kind === "predict" ? 11 : step.kind === "try" ? step.trialNumber : 0);

  /** A fact a device could send, about anything, on the sheet or off it. */
  function anyFact(random: () => number, levels: readonly string[]): [object, EntryFact] {
    const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)]!;
    const about = { pupilId: "mia", taskId: pick(["a", "a", "b", "c"]), setNumber: pick([1, 1, 2, 2, 3]) };
    const levelId = pick(levels.filter((l) => l.startsWith(about.taskId)).concat(about.taskId === "c" ? ["c1"] : []));
    return pick<() => [object, EntryFact]>([
      () => [about, { kind: "choice", levelId }],
      () => [about, random() < 0.5 ? { kind: "prediction", successCount: Math.floor(random() * 4) } : { kind: "prediction", holdS: 3 }],
      () => [{ ...about, trialNumber: Math.floor(random() * 5) }, { kind: "trial", isSuccess: random() < 0.5, heldS: Math.floor(random() * 60) / 10 }],
      () => [about, { kind: "cueTick", cueNumber: Math.floor(random() * 4), isTicked: random() < 0.5 }],
      () => [about, { kind: "decision", next: pick(["same", "harder", "easier"] as const) }],
    ])();
  }

  const all = ["a1", "a2", "a3", "b1", "b2", "b3"];

  const seeds = Array.from({ length: 120 }, (_, i) => i + 1);

  it("goes forward only, whatever devices add", () => {
    for (const seed of seeds) {
      const random = seeded(seed);
      const w = new Writing();
      const bundle = bundleOf({ predicts: (["nothing", "successCount", "holdS"] as const)[seed % 3]! });
      let before = pupilSheet(bundle, "mia", w.log)!.tasks.map(place);
      for (let i = 0; i < 40; i++) {
        w.put(...anyFact(random, all), random() < 0.6 ? "here" : "there");
        const now = pupilSheet(bundle, "mia", w.log)!.tasks.map(place);
        expect(now.every((p, task) => p >= before[task]!), `seed ${seed}`).toBe(true);
        before = now;
      }
    }
  });

  it("shows only what is offered, in any order of the log, and undoes to the start", () => {
    for (const seed of seeds) {
      const random = seeded(seed + 1000);
      const w = new Writing();
      const ids = all.filter(() => random() < 0.6);
      const offers = ["a", "b"].map((taskId) => ({ taskId, levelIds: ids.filter((l) => l.startsWith(taskId)) }));
      const bundle = bundleOf({ setCount: Math.floor(random() * 4), trialCount: Math.floor(random() * 4), pupils: [{ pupilId: "mia", label: "Mia", offers }] });
      for (let i = 0; i < 40; i++) {
        const holding = current(w.log);
        if (random() < 0.15 && holding.length > 0) w.takeBack([holding[Math.floor(random() * holding.length)]!], random() < 0.5 ? "here" : "there");
        else w.put(...anyFact(random, all), random() < 0.6 ? "here" : "there");
        const sheet = pupilSheet(bundle, "mia", w.log)!;
        for (const { levels, sets, step } of sheet.tasks) {
          const shown = [...levels, ...sets.map((s) => s.chosen), "chosen" in step ? step.chosen : undefined].filter((l) => l !== undefined);
          const isRight = shown.every(({ level, number }) => levels[number - 1]!.level.levelId === level.levelId && ids.includes(level.levelId));
          expect(isRight, `seed ${seed}`).toBe(true);
        }
      }
      expect(pupilSheet(bundle, "mia", [...w.log].sort(() => random() - 0.5)), `seed ${seed}`).toEqual(pupilSheet(bundle, "mia", w.log));
      for (let step = lastStep(w.log, "mia", "here"); step.length > 0; step = lastStep(w.log, "mia", "here")) w.takeBack(step);
      expect(current(w.log).filter((e) => e.deviceId === "here"), `seed ${seed}`).toEqual([]);
    }
  });

  it("comes to an end by doing what is asked, each answer a step on", () => {
    const w = new Writing();
    for (let i = 0; i < 17; i++) {
      const { step } = taskA(w);
      if (step.kind === "finished") break;
      const about = { ...set1, setNumber: step.setNumber };
      const before = at(w);
      if (step.kind === "choose") w.put(about, choice("a3"));
      if (step.kind === "predict") w.put(about, said);
      if (step.kind === "try") w.put({ ...about, trialNumber: step.trialNumber }, held);
      if (step.kind === "look") [1, 2].forEach((n) => w.put(about, tick(n)));
      if (step.kind === "decide") w.put(about, same);
      expect(at(w)).not.toBe(before);
    }
    expect(at(w)).toBe("finished");
  });
});
