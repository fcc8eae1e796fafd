import { describe, expect, it } from "vitest";
import type { BatchAnswer, Entry, EntryBatch } from "../src/contracts";
import { Outbox } from "../src/sync/outbox";
import { Problem } from "../src/sync/problem";
import { state } from "./keptWorld";

/** A clock that only the test turns. */
class Clock {
  nowMs = 0;
  private timers: { atMs: number; work: () => void }[] = [];
  after = (ms: number, work: () => void) => {
    const timer = { atMs: this.nowMs + ms, work };
    this.timers.push(timer);
    return () => void (this.timers = this.timers.filter((t) => t !== timer));
  };
  random = () => 1;

  async turn(ms: number): Promise<void> {
    const until = this.nowMs + ms;
    for (;;) {
      await settle();
      const next = this.timers.filter((t) => t.atMs <= until).sort((a, b) => a.atMs - b.atMs)[0];
      if (!next) break;
      this.timers = this.timers.filter((t) => t !== next);
      this.nowMs = next.atMs;
      next.work();
    }
    this.nowMs = until;
  }
}

async function settle(): Promise<void> {
  for (let n = 0; n < 60; n++) await Promise.resolve();
}

class World {
  readonly clock = new Clock();
  readonly sent: { atMs: number; batch: EntryBatch }[] = [];
  readonly problems: string[] = [];
  waits: Entry[] = [];
  answer: (batch: EntryBatch) => Promise<BatchAnswer> = async (batch) => ({ takenIds: batch.entries.map((e) => e.id), refused: [], state });
  readonly outbox = new Outbox(
    {
      waiting: async (most) => this.waits.slice(0, most),
      waitingCount: async () => this.waits.length,
      settle: async (taken, refused) => void (this.waits = this.waits.filter((e) => !taken.includes(e.id) && !refused.some((r) => r.id === e.id))),
    },
    (batch) => {
      this.sent.push({ atMs: this.clock.nowMs, batch });
      return this.answer(batch);
    },
    { onAnswer: () => undefined, onSettled: () => undefined, onProblem: (problem) => void this.problems.push(problem.code) },
    this.clock,
  );

  add(count: number): void {
    for (let n = 0; n < count; n++) this.waits.push({ id: `e${this.waits.length}-${this.clock.nowMs}` } as Entry);
    this.outbox.nudge();
  }
}

describe("Outbox", () => {
  it("waits a second for what comes right after, and sends it as one", async () => {
    const world = new World();
    world.add(1);
    await world.clock.turn(400);
    world.add(2);
    await world.clock.turn(500);
    expect(world.sent).toEqual([]);
    await world.clock.turn(200);
    expect(world.sent.map((s) => [s.atMs, s.batch.entries.length, s.batch.unsentCount])).toEqual([[1000, 3, 3]]);
  });

  it("sends what came during a request afterwards, one request at a time", async () => {
    const world = new World();
    let release: () => void = () => undefined;
    const { answer } = world;
    world.answer = (batch) => new Promise((done) => (release = () => done(answer(batch))));
    world.add(1);
    await world.clock.turn(1000);
    world.add(1);
    world.outbox.now();
    await world.clock.turn(5000);
    expect(world.sent).toHaveLength(1);
    world.answer = answer;
    release();
    await world.clock.turn(2000);
    expect(world.sent).toHaveLength(2);
    expect(world.waits).toEqual([]);
  });

  it("delivers five hundred in batches of two hundred", async () => {
    const world = new World();
    world.add(500);
    await world.clock.turn(1000);
    expect(world.sent.map((s) => [s.batch.entries.length, s.batch.unsentCount])).toEqual([[200, 500], [200, 300], [100, 100]]);
  });

  it("doubles its patience up to thirty seconds, and tries at once when asked", async () => {
    const world = new World();
    const { answer } = world;
    world.answer = () => Promise.reject(new Problem("offline"));
    world.add(1);
    await world.clock.turn(150_000);
    const gaps = world.sent.map((s, i) => s.atMs - (world.sent[i - 1]?.atMs ?? 0));
    expect(gaps).toEqual([1000, 1000, 2000, 4000, 8000, 16_000, 30_000, 30_000, 30_000]);
    world.add(1);
    await world.clock.turn(1500);
    expect(world.sent).toHaveLength(gaps.length);
    world.answer = answer;
    world.outbox.now();
    await world.clock.turn(0);
    expect(world.sent).toHaveLength(gaps.length + 1);
    expect(world.waits).toEqual([]);
  });

  it("spreads its tries over the second half of the time", async () => {
    const world = new World();
    world.clock.random = () => 0;
    world.answer = () => Promise.reject(new Problem("busy", undefined, 503));
    world.add(1);
    await world.clock.turn(3000);
    expect(world.sent.map((s) => s.atMs)).toEqual([1000, 1500, 2500]);
  });

  it("makes smaller batches where the server says they are too large", async () => {
    const world = new World();
    const { answer } = world;
    world.answer = (batch) => (batch.entries.length > 20 ? Promise.reject(new Problem("bodyTooLarge", undefined, 413)) : answer(batch));
    world.add(30);
    await world.clock.turn(120_000);
    expect(world.waits).toEqual([]);
  });

  it("does not ask for ever about entries the answer does not name", async () => {
    const world = new World();
    world.answer = async () => ({ takenIds: ["somebody else's"], refused: [], state });
    world.add(1);
    await world.clock.turn(4500);
    expect(world.sent).toHaveLength(3);
    expect(world.waits).toHaveLength(1);
  });

  it("does nothing more once it was stopped", async () => {
    const world = new World();
    world.add(1);
    world.outbox.stop();
    await world.clock.turn(60_000);
    world.outbox.now();
    world.outbox.nudge();
    await world.clock.turn(60_000);
    expect(world.sent).toEqual([]);
  });
});
