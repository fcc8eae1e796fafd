import { describe, expect, it } from "vitest";
import type { LessonBundle } from "../../src/contracts";
import { breachesIn, unsafePupils } from "../../src/teacher/breaches";
import { entries } from "./entries";

const bundle = {
  pupils: [
    { pupilId: "a", label: "A", offers: [{ taskId: "t", levelIds: ["easy"] }] },
    { pupilId: "b", label: "B", offers: [{ taskId: "t", levelIds: ["easy", "hard"] }] },
  ],
} as unknown as LessonBundle;
const set = (pupilId: string, setNumber = 1) => ({ pupilId, taskId: "t", setNumber });

describe("breachesIn", () => {
  it("tells a choice outside the offer, with its tries and where it came from", () => {
    const log = entries(
      [1, set("a"), { kind: "choice", levelId: "hard" }],
      [1, set("b"), { kind: "choice", levelId: "hard" }],
      [2, { ...set("a"), trialNumber: 1 }, { kind: "trial", isSuccess: true }],
      [3, { ...set("a", 2), trialNumber: 1 }, { kind: "trial", isSuccess: true }],
    ).map((e) => ({ ...e, source: "paper" as const, deviceId: "desk" }));
    expect(breachesIn(bundle, log)).toEqual([{ pupilId: "a", taskId: "t", setNumber: 1, levelId: "hard", trialCount: 1, source: "paper", deviceId: "desk" }]);
  });

  it("is none once the choice was put right", () => {
    expect(breachesIn(bundle, entries([1, set("a"), { kind: "choice", levelId: "easy" }]))).toEqual([]);
  });

  it("does not judge pupils the bundle does not hold", () => {
    expect(breachesIn(bundle, entries([1, set("other"), { kind: "choice", levelId: "hard" }]))).toEqual([]);
  });
});

describe("unsafePupils", () => {
  it("hears both this device and the server, and no other question", () => {
    const question = (pupilId: string, isSafety: boolean) => ({ pupilId, isSafety, question: "", reason: "" });
    const log = entries([1, set("a"), { kind: "choice", levelId: "hard" }]);
    expect([...unsafePupils(breachesIn(bundle, log), [question("b", true), question("c", false)])]).toEqual(["a", "b"]);
  });
});
