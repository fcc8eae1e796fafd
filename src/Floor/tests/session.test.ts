import { describe, expect, it } from "vitest";
import { current } from "../src/lesson/log";
import { MemoryFloor } from "../src/lesson/memoryFloor";
import { Session } from "../src/pupil/session";
import { bundleOf } from "./floorBundle";

const set = { pupilId: "mia", taskId: "a", setNumber: 1 };
const trial = { kind: "trial", isSuccess: true } as const;

function begin() {
  const floor = new MemoryFloor(bundleOf());
  const clock = { ms: 0 };
  const session = new Session(floor, () => clock.ms);
  session.handOver("mia");
  return { floor, clock, session };
}

describe("Session.save", () => {
  it("makes one trial of a double tap, under way or just done", async () => {
    const { floor, clock, session } = begin();
    const first = session.save([[{ ...set, trialNumber: 1 }, trial]]);
    expect(await session.save([[{ ...set, trialNumber: 1 }, trial]])).toBe(false);
    expect(await first).toBe(true);
    clock.ms += 200;
    expect(await session.save([[{ ...set, trialNumber: 2 }, trial]])).toBe(false);
    clock.ms += 200;
    expect(await session.save([[{ ...set, trialNumber: 2 }, trial]])).toBe(true);
    expect(floor.log.value.map((e) => e.trialNumber)).toEqual([1, 2]);
  });

  it("says so where nothing could be stored, and works again afterwards", async () => {
    const { floor, clock, session } = begin();
    const putAll = floor.putAll.bind(floor);
    floor.putAll = () => Promise.reject(new Error("the disk is full"));
    const say = console.error;
    console.error = () => {};
    expect(await session.save([[set, { kind: "choice", levelId: "a1" }]])).toBe(false);
    console.error = say;
    expect(session.hasProblem.value).toBe(true);
    expect(floor.log.value).toEqual([]);
    floor.putAll = putAll;
    clock.ms += 1000;
    expect(await session.save([[set, { kind: "choice", levelId: "a1" }]])).toBe(true);
    expect(session.hasProblem.value).toBe(false);
  });
});

describe("Session.undo", () => {
  it("takes back entries and passings in the order they were made, the newest first", async () => {
    const { floor, clock, session } = begin();
    await session.save([[set, { kind: "choice", levelId: "a1" }]]);
    clock.ms += 1000;
    session.pass("a", 1, "predict");
    clock.ms += 1000;
    await session.save([[{ ...set, trialNumber: 1 }, trial]]);
    clock.ms += 1000;
    session.pass("a", 1, "try");
    const kinds = () => [current(floor.log.value).map((e) => e.fact.kind).join(), session.passed.value.map((p) => p.key.split("|")[3]).join()];
    const seen = [kinds()];
    while (session.canUndo()) {
      clock.ms += 1000;
      await session.undo();
      seen.push(kinds());
    }
    expect(seen).toEqual([["choice,trial", "predict,try"], ["choice,trial", "predict"], ["choice", "predict"], ["choice", ""], ["", ""]]);
  });

  it("is another pupil's for another pupil", async () => {
    const { clock, session } = begin();
    await session.save([[set, { kind: "choice", levelId: "a1" }]]);
    clock.ms += 1000;
    session.pass("a", 1, "predict");
    session.handOver("leo");
    expect(session.canUndo()).toBe(false);
    expect(session.passed.value.length).toBe(1);
  });
});
