import { describe, expect, it } from "vitest";
import type { Entry } from "../src/contracts";
import { current, inOrder } from "../src/lesson/log";
import written from "./log-cases.json?raw";

interface Case {
  readonly seed: number;
  readonly log: readonly Omit<Entry, "schoolId" | "lessonId" | "source">[];
  readonly holds: readonly string[];
}

// Written by the program's own tests from its own reading of a log (LogCases): random corrections, withdrawals, events, three devices, clocks wrong by up to a year.
// In every second case the last entries of one device have no receipt; what holds is what the server will say once it has them.
const cases = JSON.parse(written) as readonly Case[];

const shared = { schoolId: "s", lessonId: "l", source: "floor" } as const;
const entry = (id: string, parts: Partial<Entry>): Entry => ({
  ...shared,
  id,
  pupilId: "p",
  taskId: "t",
  setNumber: 1,
  fact: { kind: "choice", levelId: id },
  deviceId: "b",
  deviceSequence: 1,
  madeAt: "2026-03-02T09:00:00+00:00",
  ...parts,
});

describe("current", () => {
  it.each(cases)("reads the log of seed $seed as the program does", ({ log, holds }) => {
    expect(current(log.map((e) => ({ ...shared, ...e }))).map((e) => e.id)).toEqual(holds);
  });

  it("takes what is not received yet as what the server will receive next, whatever the clock of the device says", () => {
    // By hand: two devices chose in one set, neither knowing of the other. The one on its way comes last, though its clock is a year behind and its name comes first.
    const theirs = entry("1", { receivedAt: "2026-03-02T10:00:00+00:00" });
    const own = entry("2", { deviceId: "a", madeAt: "2025-03-02T09:00:00.000Z" });
    expect(current([own, theirs])).toEqual([own]);
    expect(current([theirs, { ...own, receivedAt: "2026-03-02T09:59:00+00:00" }])).toEqual([theirs]);
  });

  it("reads a fraction of a second as later than the whole one", () => {
    const [whole, half, most] = ["", ".5", ".75"].map((f, i) => entry(`${9 - i}`, { receivedAt: `2026-03-02T10:00:00${f}+00:00` })) as [Entry, Entry, Entry];
    expect(inOrder([most, half, whole])).toEqual([whole, half, most]);
  });
});
