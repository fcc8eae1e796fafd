import { openDB, type DBSchema, type IDBPDatabase } from "idb";
import type { Entry, FloorDeviceKind, FloorState, LessonBundle, PupilToPick } from "../contracts";
import type { FaceName } from "../faces";
import { Problem } from "../sync/problem";

/** A lesson this device has joined. */
export interface KeptLesson {
  /** Lesson and device: the teacher's phone may also be the board's. */
  readonly key: string;
  readonly face: FaceName;
  readonly deviceId: string;
  readonly schoolId: string;
  readonly lessonId: string;
  readonly kind: FloorDeviceKind;
  readonly title: string;
  readonly className: string;
  /** What it shows the server; none where the lesson came as a file. */
  readonly token?: string;
  readonly pupils: readonly PupilToPick[];
  readonly state: FloorState;
  /** How far the server's clock is ahead of this one, as last known. */
  readonly clockOffsetMs: number;
  readonly lastAnswerAt?: number;
  /** Whether it is what its face shows; one that is not waits only for its entries to be delivered. */
  readonly isOpen: boolean;
}

/** What a lesson needs, apart from how it stands: large, and changed seldom. */
export interface KeptBundle {
  readonly lessonKey: string;
  readonly bundle: LessonBundle;
  readonly tag?: string;
}

/** An entry to deliver: this device's own, or one that came by code or file from a device without a network. */
export interface KeptEntry {
  readonly deviceId: string;
  readonly deviceSequence: number;
  readonly id: string;
  readonly lessonKey: string;
  readonly entry: Entry;
  readonly standing: "waits" | "taken" | "refused";
  /** The lesson's key while it waits, and gone afterwards: an index over it holds only what waits, in the device's order. */
  readonly waitsIn?: string;
  readonly refusal?: string;
}

/** An entry the server sent: never delivered from here. */
export interface GivenEntry {
  readonly lessonKey: string;
  readonly id: string;
  readonly entry: Entry;
}

/** The device's last number. It outlives lessons, so that a number is never given twice. */
export interface Counter {
  readonly deviceId: string;
  readonly lastSequence: number;
}

export interface FloorSchema extends DBSchema {
  settings: { key: string; value: unknown };
  counters: { key: string; value: Counter };
  lessons: { key: string; value: KeptLesson };
  bundles: { key: string; value: KeptBundle };
  entries: { key: string; value: KeptEntry; indexes: { byLesson: string; byDevice: [string, number]; waits: [string, string, number] } };
  given: { key: [string, string]; value: GivenEntry; indexes: { byLesson: string } };
}

/** The making of the database; a later one upgrades what is there, and an older page refuses a newer database instead of harming it. */
export const schemaVersion = 1;

/** Opens the device's database. */
export async function openDatabase(name = "slantwise-floor"): Promise<IDBPDatabase<FloorSchema>> {
  if (typeof indexedDB === "undefined" || indexedDB === null) throw new Problem("keepMissing");
  try {
    return await openDB<FloorSchema>(name, schemaVersion, {
      upgrade(database, before) {
        if (before < 1) {
          database.createObjectStore("settings");
          database.createObjectStore("counters", { keyPath: "deviceId" });
          database.createObjectStore("lessons", { keyPath: "key" });
          database.createObjectStore("bundles", { keyPath: "lessonKey" });
          const entries = database.createObjectStore("entries", { keyPath: "id" });
          entries.createIndex("byLesson", "lessonKey");
          entries.createIndex("byDevice", ["deviceId", "deviceSequence"]);
          entries.createIndex("waits", ["waitsIn", "deviceId", "deviceSequence"]);
          database.createObjectStore("given", { keyPath: ["lessonKey", "id"] }).createIndex("byLesson", "lessonKey");
        }
      },
      // A newer page in another tab wants to upgrade: this one must let go, or that one waits for ever.
      blocking: (_, __, event) => (event.target as IDBDatabase).close(),
    });
  } catch (failure) {
    const problem = keepProblem(failure);
    // Whatever the reason: it could not be opened, and a page that keeps nothing must not pretend.
    throw problem.code === "keepFailed" ? new Problem("keepMissing", problem.title) : problem;
  }
}

/** What a failure of the database means to whoever holds the device. */
export function keepProblem(failure: unknown): Problem {
  if (failure instanceof Problem) return failure;
  const name = failure instanceof Error || failure instanceof DOMException ? failure.name : "";
  if (name === "QuotaExceededError") return new Problem("keepFull");
  if (name === "SecurityError" || name === "NotSupportedError") return new Problem("keepMissing");
  return new Problem("keepFailed", String(failure));
}
