import { describe, expect, it } from "vitest";
import { absentIn, presentCount } from "../../src/teacher/attendance";
import { keptOrder, seenBy, seenOf, tileOrder } from "../../src/teacher/seen";
import { atMs, entries, pupil } from "./entries";

const visit = { kind: "visit", topic: "cue", form: "asked" } as const;

describe("seenBy", () => {
  it("counts visits and keeps the last, whatever the order they came in", () => {
    const seen = seenBy(entries([9, { pupilId: "a" }, visit], [4, { pupilId: "a" }, visit], [5, { pupilId: "b" }, visit]));
    expect(seenOf(seen, "a")).toEqual({ visitCount: 2, lastAtMs: atMs(9) });
    expect(seenOf(seen, "b")).toEqual({ visitCount: 1, lastAtMs: atMs(5) });
    expect(seenOf(seen, "c")).toEqual({ visitCount: 0 });
  });

  it("takes nothing else for a visit", () => {
    expect(seenBy(entries([1, { pupilId: "a" }, { kind: "note", text: "n" }], [2, {}, { kind: "phaseMark", phase: "activity" }])).size).toBe(0);
  });
});

describe("tileOrder", () => {
  it("puts seen least first, then longest ago, then by label with numbers as numbers, the absent last", () => {
    const log = entries(
      [3, { pupilId: "once-early" }, visit],
      [8, { pupilId: "once-late" }, visit],
      [1, { pupilId: "twice" }, visit],
      [2, { pupilId: "twice" }, visit],
      [0, { pupilId: "gone" }, { kind: "presence", isPresent: false }],
    );
    const pupils = [pupil("gone", "A"), pupil("twice", "B"), pupil("once-late", "C"), pupil("once-early", "D"), pupil("p10", "P10"), pupil("p9", "p9")];
    expect(tileOrder(pupils, seenBy(log), absentIn(log))).toEqual(["p9", "p10", "once-early", "once-late", "twice", "gone"]);
    expect(presentCount(pupils, absentIn(log))).toBe(5);
  });

  it("does not hang on the order it is given", () => {
    const pupils = ["Zoe", "Ana", "Ana", "Li"].map((label, i) => pupil(`p${i}`, label));
    const first = tileOrder(pupils, new Map(), new Set());
    expect(tileOrder([...pupils].reverse(), new Map(), new Set())).toEqual(first);
    expect(first).toEqual(["p1", "p2", "p3", "p0"]);
  });
});

describe("keptOrder", () => {
  it("moves nobody who was there", () => {
    expect(keptOrder(["b", "a", "c"], ["a", "b", "c"])).toEqual(["b", "a", "c"]);
  });

  it("puts who came last and leaves out who left", () => {
    expect(keptOrder(["b", "a"], ["new", "a"])).toEqual(["a", "new"]);
  });
});

describe("absentIn", () => {
  it("lets go of whoever came after all", () => {
    expect([...absentIn(entries([1, { pupilId: "a" }, { kind: "presence", isPresent: true }], [1, { pupilId: "b" }, { kind: "presence", isPresent: false }]))]).toEqual(["b"]);
  });
});
