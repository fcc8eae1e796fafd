import { describe, expect, it } from "vitest";
import { pupilSets } from "../../src/teacher/pupilSets";
import { whereaboutsIn } from "../../src/teacher/whereabouts";
import { entries } from "./entries";

const set = (taskId: string, setNumber: number, trialNumber?: number) => ({ pupilId: "a", taskId, setNumber, ...(trialNumber && { trialNumber }) });

describe("whereaboutsIn", () => {
  it("is the set written about last, with its trials", () => {
    const where = whereaboutsIn(
      entries(
        [1, set("t", 1), { kind: "choice", levelId: "l" }],
        [2, set("t", 1, 1), { kind: "trial", isSuccess: true }],
        [3, set("t", 1), { kind: "decision", next: "same", reason: "" }],
        [4, set("t", 2), { kind: "choice", levelId: "l" }],
        [5, set("t", 2, 1), { kind: "trial", isSuccess: false }],
        [6, set("t", 2, 2), { kind: "trial", isSuccess: true }],
      ),
    );
    expect(where.get("a")).toEqual({ taskId: "t", setNumber: 2, trialCount: 2, isDecided: false });
  });

  it("takes no notice of what the teacher writes", () => {
    expect(whereaboutsIn(entries([1, set("t", 3), { kind: "teacherCheck", cueNumber: 1, isMet: true, isBlind: true }], [2, set("t", 3), { kind: "visit", topic: "cue", form: "asked" }])).size).toBe(0);
  });
});

describe("pupilSets", () => {
  it("tells a set as it was written, trials by number, tasks in the order of the sheet", () => {
    const sets = pupilSets(
      ["first", "second"],
      entries(
        [1, set("second", 1), { kind: "choice", levelId: "y" }],
        [2, set("first", 1, 2), { kind: "trial", isSuccess: false, heldS: 1.5 }],
        [3, set("first", 1, 1), { kind: "trial", isSuccess: true }],
        [4, set("first", 1), { kind: "prediction", successCount: 3 }],
        [5, set("first", 1), { kind: "cueTick", cueNumber: 1, isTicked: true }],
        [6, set("first", 1), { kind: "decision", next: "easier", reason: "wobbly" }],
        [7, { ...set("first", 1, 3), pupilId: "b" }, { kind: "trial", isSuccess: true }],
      ),
      "a",
    );
    expect(sets).toEqual([
      {
        taskId: "first",
        setNumber: 1,
        predictedCount: 3,
        trials: [{ trialNumber: 1, isSuccess: true }, { trialNumber: 2, isSuccess: false, heldS: 1.5 }],
        next: "easier",
        reason: "wobbly",
        hasTicks: true,
      },
      { taskId: "second", setNumber: 1, levelId: "y", trials: [], reason: "", hasTicks: false },
    ]);
  });
});
