import { describe, expect, it } from "vitest";
import { heldS, tapped, ticked, type HoldTimer } from "../src/pupil/holdTimer";
import { seeded } from "./seeded";

const ready: HoldTimer = { kind: "ready" };

describe("tapped", () => {
  it("starts at the first tap and stops at the second", () => {
    const running = tapped(ready, 1000, false);
    expect(running).toEqual({ kind: "running", startedMs: 1000 });
    expect(tapped(running, 6234, false)).toEqual({ kind: "stopped", heldS: 5.2 });
  });

  it("takes two quick taps for one", () => {
    expect(tapped(tapped(ready, 1000, false), 1299, false).kind).toBe("running");
    expect(tapped(tapped(ready, 1000, true), 1299, true).kind).toBe("counting");
  });

  it("counts three seconds in, and times from the end of them", () => {
    const counting = tapped(ready, 1000, true);
    expect(ticked(counting, 3999).kind).toBe("counting");
    expect(ticked(counting, 4000)).toEqual({ kind: "running", startedMs: 4000 });
    expect(tapped(counting, 7000, true)).toEqual({ kind: "stopped", heldS: 3 });
    expect(tapped(counting, 2000, true)).toEqual(ready);
  });

  it("leaves a stopped hold as it is", () => {
    expect(tapped({ kind: "stopped", heldS: 2 }, 9e9, false)).toEqual({ kind: "stopped", heldS: 2 });
  });
});

describe("ticked", () => {
  it("stops by itself at 600 seconds, also where the screen slept", () => {
    const running: HoldTimer = { kind: "running", startedMs: 0 };
    expect(ticked(running, 599_999).kind).toBe("running");
    expect(ticked(running, 600_000)).toEqual({ kind: "stopped", heldS: 600 });
    expect(ticked({ kind: "counting", startedMs: 0 }, 9e9)).toEqual({ kind: "stopped", heldS: 600 });
    expect(tapped(running, 9e9, false)).toEqual({ kind: "stopped", heldS: 600 });
  });
});

describe("heldS", () => {
  it("is whole tenths, never more than was held", () => {
    expect(heldS(0, 4960)).toBe(4.9);
    expect(heldS(0, 42_700)).toBe(42.7);
    expect(heldS(10, 0)).toBe(0);
    const random = seeded(5);
    for (let i = 0; i < 2000; i++) {
      const [from, ms] = [random() * 1e7, random() * 7e5];
      const held = heldS(from, from + ms);
      expect(held).toBeLessThanOrEqual(600);
      if (ms < 600_000) expect(ms / 1000 - held).toBeLessThan(0.1 + 1e-6);
      // As it is written is as it is: one decimal.
      expect(Number(held.toFixed(1))).toBe(held);
    }
  });
});
