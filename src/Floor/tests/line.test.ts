import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { BatchAnswer, EntryBatch } from "../src/contracts";
import type { Keep } from "../src/keep/keep";
import type { KeptFloor } from "../src/keep/keptFloor";
import type { Api } from "../src/sync/api";
import { Line } from "../src/sync/line";
import { Problem } from "../src/sync/problem";
import { bundle, lesson, state } from "./keptWorld";

/** A browser's window and document, as far as a line listens to them. */
class Window {
  readonly events = new EventTarget();
  visibilityState: "visible" | "hidden" = "visible";
  addEventListener = this.events.addEventListener.bind(this.events);
  removeEventListener = this.events.removeEventListener.bind(this.events);
}

class World {
  readonly heard: string[] = [];
  readonly delivered: EntryBatch[] = [];
  readonly tags: (string | undefined)[] = [];
  streams: ReadableStreamDefaultController<Uint8Array>[] = [];
  problem: Problem | undefined;
  tag = '"a"';

  readonly line = new Line(
    { waiting: async () => [], waitingCount: async () => 0, settle: async () => undefined, patchLesson: async () => undefined } as unknown as Keep,
    {
      lesson,
      onKept: () => undefined,
      reached: (isOnline: boolean) => void this.heard.push(isOnline ? "online" : "offline"),
      takeState: async () => void this.heard.push("state"),
      takeNews: async (news: { entries: unknown[] }) => void this.heard.push(`news ${news.entries.length}`),
      takeBundle: async (_: unknown, tag: string) => void this.heard.push(`bundle ${tag}`),
      settled: () => undefined,
    } as unknown as KeptFloor,
    {
      events: async () => {
        if (this.problem) throw this.problem;
        return new ReadableStream<Uint8Array>({ start: (controller) => void this.streams.push(controller) });
      },
      bundle: async (tag?: string) => {
        this.tags.push(tag);
        return tag === this.tag ? undefined : { bundle, tag: this.tag };
      },
      deliver: async (batch: EntryBatch): Promise<BatchAnswer> => {
        this.delivered.push(batch);
        return { takenIds: [], refused: [], state };
      },
    } as unknown as Api,
    { onTokenInvalid: () => void this.heard.push("token"), onState: () => undefined },
    '"before"',
  );

  async pass(ms: number): Promise<void> {
    await vi.advanceTimersByTimeAsync(ms);
    for (let n = 0; n < 20; n++) await Promise.resolve();
  }

  send(text: string): void {
    this.streams[this.streams.length - 1]!.enqueue(new TextEncoder().encode(text));
  }
}

let page: Window;
let world: World;

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
  page = new Window();
  vi.stubGlobal("document", page);
  vi.stubGlobal("addEventListener", page.addEventListener);
  vi.stubGlobal("removeEventListener", page.removeEventListener);
  vi.spyOn(Math, "random").mockReturnValue(1);
  world = new World();
});

afterEach(() => {
  world.line.stop();
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

describe("Line", () => {
  it("gives a sign of life, listens, and fetches what it missed by the bundle's tag", async () => {
    world.line.start();
    await world.pass(0);
    expect(world.delivered).toEqual([{ entries: [], unsentCount: 0 }]);
    expect(world.tags).toEqual(['"before"']);
    world.send(`event: state\ndata: ${JSON.stringify(state)}\n\nevent: news\ndata: {"entries":[1,2]}\n\nevent: state\ndata: not json\n\nevent: else\ndata: {}\n\n`);
    await world.pass(0);
    expect(world.heard.filter((h) => h.startsWith("news") || h.startsWith("bundle"))).toEqual(['bundle "a"', "news 2"]);
  });

  it("connects again after the stream ended, and asks whether the bundle is another", async () => {
    world.line.start();
    await world.pass(0);
    world.streams[0]!.close();
    await world.pass(2000);
    expect(world.streams).toHaveLength(2);
    expect(world.tags).toEqual(['"before"', '"a"']);
  });

  it("gives up a stream without a heartbeat, and not one with", async () => {
    world.line.start();
    await world.pass(0);
    for (let n = 0; n < 10; n++) {
      await world.pass(15_000);
      world.send(": beat\n\n");
    }
    expect(world.streams).toHaveLength(1);
    await world.pass(42_000);
    expect(world.streams).toHaveLength(2);
  });

  it("waits longer after each failure, and not at all when the network says it is back", async () => {
    let tries = 0;
    world.problem = new Problem("offline");
    const events = vi.spyOn(world.line["api"], "events").mockImplementation(async () => {
      tries++;
      throw world.problem;
    });
    world.line.start();
    await world.pass(0);
    // At once, then 2, 4, 8, 16 and 30 seconds later.
    await world.pass(59_000);
    expect(tries).toBe(5);
    await world.pass(2000);
    expect(tries).toBe(6);
    expect(world.heard).toContain("offline");
    page.events.dispatchEvent(new Event("online"));
    await world.pass(0);
    expect(tries).toBe(7);
    page.visibilityState = "hidden";
    page.events.dispatchEvent(new Event("visibilitychange"));
    await world.pass(0);
    expect(tries).toBe(7);
    events.mockRestore();
  });

  it("says that the token holds no more, and stays with what it has", async () => {
    world.problem = new Problem("tokenInvalid", "No.", 401);
    world.line.start();
    await world.pass(0);
    expect(world.heard).toContain("token");
  });

  it("is silent once it was stopped", async () => {
    world.line.start();
    await world.pass(0);
    world.line.stop();
    const before = world.heard.length;
    page.events.dispatchEvent(new Event("online"));
    await world.pass(120_000);
    expect(world.heard.length).toBe(before);
    expect(world.streams).toHaveLength(1);
  });
});
