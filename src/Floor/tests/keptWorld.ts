import { IDBFactory } from "fake-indexeddb";
import type { Entry, EntryBatch, BatchAnswer, FloorState } from "../src/contracts";
import { Keep } from "../src/keep/keep";
import { KeptFloor, type Orders } from "../src/keep/keptFloor";
import type { KeptLesson } from "../src/keep/schema";
import { sampleBundle } from "../src/look/sampleBundle";
import { outboxPlace } from "../src/sync/line";
import { Outbox } from "../src/sync/outbox";
import { Problem } from "../src/sync/problem";

/** A device's disk of its own. */
export function newDisk(): void {
  globalThis.indexedDB = new IDBFactory();
}

export const bundle = sampleBundle("pupil");

export const state: FloorState = { serverNow: "2026-03-02T09:00:00.000Z", deviceName: "1", pupilIds: bundle.pupils.map((p) => p.pupilId), isLocked: false, appVersion: "0" };

export const lesson: KeptLesson = {
  key: `${bundle.lessonId}/d1`, face: "pupil", deviceId: "d1", schoolId: bundle.schoolId, lessonId: bundle.lessonId, kind: "pupil", title: "", className: "",
  token: "t", pupils: [], state, clockOffsetMs: 0, isOpen: true,
};

export const noOrders: Orders = {
  orderDevice: () => Promise.reject(new Problem("offline")),
  orderLesson: () => Promise.reject(new Problem("offline")),
};

/** A tab of the device: its own objects over the one disk. */
export async function openTab(nowMs?: () => number): Promise<{ keep: Keep; floor: KeptFloor }> {
  const keep = await Keep.open();
  if (!(await keep.openLesson("pupil"))) {
    await keep.saveLesson(lesson);
    await keep.saveBundle({ lessonKey: lesson.key, bundle });
  }
  const floor = await KeptFloor.open(keep, lesson, (await keep.bundle(lesson.key))!, noOrders, nowMs);
  return { keep, floor };
}

export function about(n: number) {
  return { pupilId: bundle.pupils[0]!.pupilId, taskId: bundle.tasks[0]!.taskId, setNumber: 1 + (n % 2), trialNumber: 1 + (n % 5) };
}

/** What the server of the contracts does with entries, and nothing else: keeps each id once, refuses some, answers. */
export class ModelServer {
  readonly kept = new Map<string, Entry>();
  readonly refusedIds = new Set<string>();
  /** Ids in the order in which they first arrived. */
  readonly arrivals: Entry[] = [];

  constructor(private readonly refuses: (entry: Entry) => boolean = () => false) {}

  take(batch: EntryBatch): BatchAnswer {
    const takenIds: string[] = [];
    const refused: BatchAnswer["refused"] = [];
    for (const entry of batch.entries) {
      if (!this.kept.has(entry.id) && !this.refusedIds.has(entry.id)) this.arrivals.push(entry);
      if (this.refuses(entry)) {
        this.refusedIds.add(entry.id);
        refused.push({ id: entry.id, reason: "Model", text: "no" });
        continue;
      }
      const before = this.kept.get(entry.id);
      if (before && JSON.stringify(before) !== JSON.stringify(entry)) throw new Error(`${entry.id} came twice and differs`);
      this.kept.set(entry.id, entry);
      takenIds.push(entry.id);
    }
    return { takenIds, refused, state };
  }
}

/** An outbox that is driven step by step: it never acts by itself. */
export function outboxOf(keep: Keep, floor: KeptFloor, send: (batch: EntryBatch) => Promise<BatchAnswer>): Outbox {
  return new Outbox(
    outboxPlace(keep, lesson.key),
    send,
    { onAnswer: () => undefined, onSettled: (...settled) => floor.settled(...settled), onProblem: () => undefined },
    { after: () => () => undefined, random: () => 0 },
  );
}
