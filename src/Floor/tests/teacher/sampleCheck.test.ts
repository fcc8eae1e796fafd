import { describe, expect, it } from "vitest";
import { agreement, checkFacts, cuePairs } from "../../src/teacher/sampleCheck";
import { TicksSeen } from "../../src/teacher/ticksSeen";
import { entries } from "./entries";

const place = { pupilId: "a", taskId: "t", setNumber: 2 };

describe("cuePairs", () => {
  it("puts both views of a set side by side and says nothing for who has not spoken", () => {
    const pairs = cuePairs(
      3,
      entries(
        [1, place, { kind: "cueTick", cueNumber: 1, isTicked: true }],
        [2, place, { kind: "cueTick", cueNumber: 2, isTicked: false }],
        [3, place, { kind: "teacherCheck", cueNumber: 1, isMet: false, isBlind: true }],
        [3, place, { kind: "teacherCheck", cueNumber: 3, isMet: true, isBlind: true }],
        [4, { ...place, setNumber: 1 }, { kind: "cueTick", cueNumber: 3, isTicked: true }],
        [4, { ...place, pupilId: "b" }, { kind: "cueTick", cueNumber: 3, isTicked: true }],
      ),
      place,
    );
    expect(pairs).toEqual([
      { cueNumber: 1, isTicked: true, isMet: false, isBlind: true },
      { cueNumber: 2, isTicked: false },
      { cueNumber: 3, isMet: true, isBlind: true },
    ]);
    expect(agreement(pairs)).toEqual({ bothCount: 1, sameCount: 0 });
  });

  it("agrees on what both left open too", () => {
    expect(agreement([{ cueNumber: 1, isTicked: false, isMet: false }, { cueNumber: 2, isTicked: true, isMet: true }, { cueNumber: 3 }])).toEqual({ bothCount: 2, sameCount: 2 });
  });
});

describe("checkFacts", () => {
  it("leaves nothing for a cue that was not seen", () => {
    expect(checkFacts(place, ["met", "notSeen", "notMet"], true)).toEqual([
      [place, { kind: "teacherCheck", cueNumber: 1, isMet: true, isBlind: true }],
      [place, { kind: "teacherCheck", cueNumber: 3, isMet: false, isBlind: true }],
    ]);
  });
});

describe("TicksSeen", () => {
  it("remembers across a reload, lesson by lesson and set by set", () => {
    const kept = new Map<string, string>();
    const store = { getItem: (k: string) => kept.get(k) ?? null, setItem: (k: string, v: string) => void kept.set(k, v) };
    new TicksSeen("l", store).add(place);
    expect(new TicksSeen("l", store).has(place)).toBe(true);
    expect(new TicksSeen("l", store).has({ ...place, setNumber: 1 })).toBe(false);
    expect(new TicksSeen("other", store).has(place)).toBe(false);
  });

  it("remembers until the page is left where nothing can be kept", () => {
    const broken = { getItem: () => { throw new Error("forbidden"); }, setItem: () => { throw new Error("full"); } };
    const seen = new TicksSeen("l", broken);
    seen.add(place);
    expect(seen.has(place)).toBe(true);
    expect(new TicksSeen("l", undefined).has(place)).toBe(false);
  });
});
