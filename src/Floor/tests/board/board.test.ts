import { describe, expect, it } from "vitest";
import { joinInLink } from "../../src/board/boardLink";
import { taskShown, turnS } from "../../src/board/boardTurn";
import { boardKey } from "../../src/board/boardKeys";
import { clockText, countdownLeftS } from "../../src/board/serverClock";

describe("countdownLeftS", () => {
  const startMs = Date.parse("2026-03-02T09:00:00Z");
  it("counts to the nearest second, and stays at 0", () => {
    const until = { countdownUntil: "2026-03-02T09:01:00Z" };
    expect([-400, 0, 49_999, 50_400, 59_400, 60_000, 70_000].map((ms) => countdownLeftS(until, startMs + ms))).toEqual([60, 60, 10, 10, 1, 0, 0]);
  });
  it("is none where none runs", () => {
    expect(countdownLeftS({}, startMs)).toBeUndefined();
  });
});

describe("clockText", () => {
  it("shows minutes and seconds", () => {
    expect([0, 9, 60, 61.9, 600, -3].map(clockText)).toEqual(["0:00", "0:09", "1:00", "1:01", "10:00", "0:00"]);
  });
});

describe("taskShown", () => {
  it("takes turns, unless one is fixed", () => {
    expect([0, turnS - 0.25, turnS, 2 * turnS].map((s) => taskShown(2, undefined, s))).toEqual([0, 0, 1, 0]);
    expect(taskShown(2, 1, 0)).toBe(1);
    expect(taskShown(1, undefined, 999)).toBe(0);
    expect(taskShown(2, 5, turnS)).toBe(1);
    expect(taskShown(0, undefined, 999)).toBe(0);
  });
});

describe("joinInLink", () => {
  it("reads the code and until when it holds", () => {
    expect(joinInLink("#ticket=x%2By&code=H7KM3P&until=2026-03-02T10:00:00Z", "http://gym:5080", 0)).toEqual({
      code: "H7KM3P",
      url: "http://gym:5080/floor/#join=H7KM3P",
      untilMs: Date.parse("2026-03-02T10:00:00Z"),
    });
  });
  it("believes a link that does not say so for half an hour", () => {
    expect(joinInLink("#code=H7KM3P", "http://gym", 1000)?.untilMs).toBe(1000 + 1_800_000);
    expect(joinInLink("#code=H7KM3P&until=soon", "http://gym", 1000)?.untilMs).toBe(1000 + 1_800_000);
  });
  it("shows nothing without a code", () => {
    expect(joinInLink("#ticket=x&until=2026-03-02T10:00:00Z", "http://gym", 0)).toBeUndefined();
    expect(joinInLink("", "http://gym", 0)).toBeUndefined();
  });
});

describe("boardKey", () => {
  it("fixes by number, goes on and back around the ends, and lets go", () => {
    expect(["1", "2", "3", "ArrowRight", "ArrowLeft", " ", "0", "Escape", "x"].map((key) => boardKey(key, 2, 1))).toEqual([0, 1, undefined, 0, 0, "turns", "turns", "turns", undefined]);
    expect(boardKey("ArrowLeft", 3, 0)).toBe(2);
    expect(boardKey("ArrowRight", 0, 0)).toBeUndefined();
  });
});
