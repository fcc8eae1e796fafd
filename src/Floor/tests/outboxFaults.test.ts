import "fake-indexeddb/auto";
import { describe, expect, it } from "vitest";
import type { BatchAnswer, Entry, EntryBatch } from "../src/contracts";
import type { Keep } from "../src/keep/keep";
import type { KeptFloor } from "../src/keep/keptFloor";
import type { Outbox } from "../src/sync/outbox";
import { Problem } from "../src/sync/problem";
import { about, lesson, ModelServer, newDisk, openTab, outboxOf } from "./keptWorld";
import { seeded } from "./seeded";

interface Tab {
  readonly keep: Keep;
  readonly floor: KeptFloor;
  readonly outbox: Outbox;
}

const worldCount = 250;
const stepCount = 32;

/**
 * A device with one or two tabs, a server, and between them a network that loses requests and answers, sends twice, and delivers late. Tabs are killed
 * in the middle of whatever they do, the clock jumps, the server restarts (what it has acknowledged it has). At the end the network is well.
 */
async function world(seed: number) {
  const chance = seeded(seed);
  newDisk();
  const server = new ModelServer((entry) => Number.parseInt(entry.id.slice(-1), 16) === 0);
  const acknowledged = new Map<string, Entry>();
  const late: EntryBatch[] = [];
  const faults: Record<string, number> = {};
  let clockMs = Date.parse("2026-03-02T09:00:00Z");
  let isWell = false;
  const fault = (name: string) => void (faults[name] = (faults[name] ?? 0) + 1);

  const send = async (batch: EntryBatch): Promise<BatchAnswer> => {
    const copy = JSON.parse(JSON.stringify(batch)) as EntryBatch;
    // Turns of the loop in which anything else may come between.
    for (let n = chance() * 3; n > 0; n--) await new Promise((done) => setTimeout(done, 0));
    const dice = isWell ? 1 : chance();
    if (dice < 0.12) return fault("request lost"), Promise.reject(new Problem("offline"));
    if (dice < 0.2) return fault("late"), late.push(copy), Promise.reject(new Problem("offline"));
    if (dice < 0.25) return fault("busy"), Promise.reject(new Problem("busy", undefined, 503));
    if (dice < 0.3) return fault("portal"), Promise.reject(new Problem("unreadable", undefined, 200));
    const answer = server.take(copy);
    if (dice < 0.42) return fault("answer lost"), Promise.reject(new Problem("offline"));
    if (dice < 0.5) fault("twice"), server.take(copy);
    if (dice < 0.55) fault("late copy"), late.push(copy);
    return answer;
  };
  const open = async (): Promise<Tab> => {
    const { keep, floor } = await openTab(() => clockMs);
    return { keep, floor, outbox: outboxOf(keep, floor, send) };
  };
  const kill = (tab: Tab) => {
    // As the system kills an app: nothing is finished, and no code of ours runs.
    tab.outbox.stop();
    tab.floor.close();
    tab.keep.close();
  };
  const put = async (tab: Tab, n: number) => {
    const before = new Set(tab.floor.log.peek().map((e) => e.id));
    const facts = Array.from({ length: 1 + Math.floor(chance() * 3) }, (_, i) => [about(n + i), { kind: "trial", isSuccess: chance() < 0.5 }] as const);
    if (chance() < 0.1 && before.size > 0) await tab.floor.takeBack(tab.floor.log.peek()[0]!);
    else await tab.floor.putAll(facts);
    // What the screen shows now, it has acknowledged.
    for (const entry of tab.floor.log.peek()) if (!before.has(entry.id)) acknowledged.set(entry.id, entry);
  };

  const tabs = [await open()];
  for (let step = 0; step < stepCount; step++) {
    clockMs += chance() < 0.05 ? (chance() - 0.5) * 86_400_000 : 1000;
    const tab = tabs[Math.floor(chance() * tabs.length)]!;
    const dice = chance();
    if (dice < 0.5) await put(tab, step);
    else if (dice < 0.72) await tab.outbox.run();
    else if (dice < 0.8) await Promise.all([put(tab, step), tab.outbox.run(), tabs[0]!.outbox.run()]);
    else if (dice < 0.86) {
      // Killed in the middle: of a delivery, and perhaps of an entry whose tap was not answered yet.
      fault("killed");
      const running = [tab.outbox.run(), ...(chance() < 0.5 ? [tab.floor.put(about(step), { kind: "trial", isSuccess: true })] : [])];
      for (let n = chance() * 6; n > 0; n--) await new Promise((done) => setTimeout(done, 0));
      kill(tab);
      await Promise.allSettled(running);
      tabs.splice(tabs.indexOf(tab), 1);
      if (tabs.length === 0) tabs.push(await open());
    } else if (dice < 0.92 && tabs.length < 2) fault("second tab"), tabs.push(await open());
    else if (late.length > 0) server.take(late.splice(Math.floor(chance() * late.length), 1)[0]!);
  }

  isWell = true;
  for (const tab of tabs) kill(tab);
  const last = await open();
  for (let n = 0; n < 20 && (await last.keep.waitingCount(lesson.key)) > 0; n++) await last.outbox.run();
  for (const batch of late) server.take(batch);
  const result = { server, acknowledged, faults, kept: await last.keep.entries(lesson.key), shown: last.floor.log.peek(), refused: last.floor.delivery.peek().refused };
  kill(last);
  return result;
}

describe("Outbox over IndexedDB, against a model server", () => {
  it(`holds exactly what the screens acknowledged, through ${worldCount} worlds of ${stepCount} steps of faults`, async () => {
    const seen: Record<string, number> = {};
    for (let seed = 1; seed <= worldCount; seed++) {
      const { server, acknowledged, faults, kept, shown, refused } = await world(seed);
      for (const [name, count] of Object.entries(faults)) seen[name] = (seen[name] ?? 0) + count;
      const told = new Map([...server.kept].map(([id, e]) => [id, JSON.stringify(e)]));
      for (const [id, entry] of acknowledged) {
        const isRefused = server.refusedIds.has(id);
        expect(isRefused || told.has(id), `seed ${seed}: ${id} was acknowledged and is nowhere`).toBe(true);
        const { receivedAt: _, ...sent } = entry;
        if (!isRefused) expect(told.get(id), `seed ${seed}: ${id} changed on its way`).toBe(JSON.stringify(sent));
      }
      // Nothing else is there, but for what was on the disk when a tab was killed before it could say so.
      const onDisk = new Set(kept.map((k) => k.id));
      for (const id of [...server.kept.keys(), ...server.refusedIds]) expect(onDisk.has(id), `seed ${seed}: ${id} came from nowhere`).toBe(true);
      expect(kept.filter((k) => k.standing === "waits"), `seed ${seed}`).toEqual([]);
      expect(kept.filter((k) => k.standing === "taken").map((k) => k.id).sort(), `seed ${seed}`).toEqual([...server.kept.keys()].sort());
      expect(refused.map((r) => r.entry.id).sort(), `seed ${seed}`).toEqual([...server.refusedIds].sort());
      expect(shown.map((e) => e.id).sort(), `seed ${seed}: the screen shows what holds`).toEqual([...server.kept.keys()].sort());
      // Two tabs never gave one number twice, and whatever came first came in the device's order.
      const numbers = kept.map((k) => k.deviceSequence).sort((a, b) => a - b);
      expect(new Set(numbers).size, `seed ${seed}`).toBe(numbers.length);
      const arrived = server.arrivals.map((e) => e.deviceSequence);
      expect(arrived, `seed ${seed}: in order`).toEqual([...arrived].sort((a, b) => a - b));
    }
    // A schedule without a fault would prove nothing.
    for (const name of ["request lost", "answer lost", "late", "late copy", "twice", "busy", "portal", "killed", "second tab"]) expect(seen[name], name).toBeGreaterThan(50);
  });
});
