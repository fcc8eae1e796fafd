import { describe, expect, it } from "vitest";
import type { FloorState } from "../../src/contracts";
import { joinInLink } from "../../src/board/boardLink";
import { taskShown, turnS } from "../../src/board/boardTurn";
import { clockText, countdownLeftS, serverAheadMs } from "../../src/board/serverClock";

const state = (countdownUntil?: string) => ({ serverNow: "2026-03-02T09:00:00Z", ...(countdownUntil && { countdownUntil }) }) as FloorState;

describe("countdownLeftS", () => {
  const heardAtMs = Date.parse("2026-03-02T08:57:00Z");
  it("goes by the server's clock where this one is wrong", () => {
    const until = state("2026-03-02T09:01:00Z");
    const ahead = serverAheadMs(until, heardAtMs);
    expect(ahead).toBe(180_000);
    expect(countdownLeftS(until, ahead, heardAtMs)).toBe(60);
    expect(countdownLeftS(until, ahead, heardAtMs + 50_500)).toBe(10);
    expect(countdownLeftS(until, ahead, heardAtMs + 70_000)).toBe(0);
  });
  it("is none where none runs", () => {
    expect(countdownLeftS(state(), 0, heardAtMs)).toBeUndefined();
  });
  it("takes the clocks to agree where nothing was heard", () => {
    expect(serverAheadMs(state(), undefined)).toBe(0);
  });
});

describe("clockText", () => {
  it("shows minutes and seconds", () => {
    expect([0, 9, 60, 61.9, 600, -3].map(clockText)).toEqual(["0:00", "0:09", "1:00", "1:01", "10:00", "0:00"]);
  });
});

describe("taskShown", () => {
  it("takes turns, unless one is fixed", () => {
    expect([0, turnS - 1, turnS, 2 * turnS].map((s) => taskShown(2, undefined, s))).toEqual([0, 0, 1, 0]);
    expect(taskShown(2, 1, 0)).toBe(1);
    expect(taskShown(1, undefined, 999)).toBe(0);
    expect(taskShown(2, 5, turnS)).toBe(1);
    expect(taskShown(0, undefined, 999)).toBe(0);
  });
});

describe("joinInLink", () => {
  it("reads the code and until when it holds", () => {
    expect(joinInLink("#ticket=x%2By&code=H7KM3P&until=2026-03-02T10:00:00Z", "http://gym:5080")).toEqual({
      code: "H7KM3P",
      url: "http://gym:5080/floor/#join=H7KM3P",
      untilMs: Date.parse("2026-03-02T10:00:00Z"),
    });
  });
  it("shows no code that may be dead", () => {
    expect(joinInLink("#ticket=x&code=H7KM3P", "http://gym")).toBeUndefined();
    expect(joinInLink("#ticket=x&until=2026-03-02T10:00:00Z", "http://gym")).toBeUndefined();
    expect(joinInLink("", "http://gym")).toBeUndefined();
  });
});
