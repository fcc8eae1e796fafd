import type { ReadonlySignal } from "@preact/signals";
import type { DeviceOrder, DeviceSeen, Entry, EntryFact, FloorState, LessonBundle, LessonOrder, LiveQuestion } from "../contracts";

/** What an entry is about; what is left out is not meant. */
export interface About {
  readonly pupilId?: string;
  readonly taskId?: string;
  /** From 1. */
  readonly setNumber?: number;
  /** From 1. */
  readonly trialNumber?: number;
}

/** How the entries made here stand with the server. */
export interface Delivery {
  /** Entries that are safe on this device and not yet acknowledged by the server. */
  readonly unsentCount: number;
  /** Entries the server would not take, with its reason; they stay on the device until the teacher has seen them. */
  readonly refused: readonly { readonly entry: Entry; readonly text: string }[];
  /** Whether the last try to reach the server succeeded. */
  readonly isOnline: boolean;
  /** Milliseconds since 1970 by this device's clock, of the last answer; none before the first. */
  readonly lastAnswerAt?: number;
}

/**
 * A lesson on this device: all that screens know and do. They know nothing of the network, nor of where entries are kept.
 * There are two: `KeptFloor` over IndexedDB and the outbox, and `MemoryFloor` for tests and for looking at screens.
 */
export interface Floor {
  /** The device's own name for itself, as its entries carry it. */
  readonly deviceId: string;
  readonly bundle: ReadonlySignal<LessonBundle>;
  /** Every entry of the lesson this device knows, its own and those it was given, superseded ones included, in the order that counts. */
  readonly log: ReadonlySignal<readonly Entry[]>;
  readonly delivery: ReadonlySignal<Delivery>;
  readonly state: ReadonlySignal<FloorState>;
  /** The teacher's: all devices; empty for others. */
  readonly devices: ReadonlySignal<readonly DeviceSeen[]>;
  /** The teacher's: what could be asked; empty for others. */
  readonly questions: ReadonlySignal<readonly LiveQuestion[]>;

  /**
   * Makes a fact hold: appends an entry that supersedes what stood in its place. Nothing happens where it holds already.
   * Resolves once the entry is durable on this device, and only then does `log` show it. Rejects where it could not be stored, and nothing has changed.
   */
  put(about: About, fact: EntryFact): Promise<void>;
  /** Several facts in one durable step, all or none, in this order. */
  putAll(facts: readonly (readonly [About, EntryFact])[]): Promise<void>;
  /** Takes an entry back, that what stood before it holds no more. */
  takeBack(entry: Entry): Promise<void>;

  /** The teacher's orders; they need the network and reject with a `Problem` without it. */
  orderDevice(deviceId: string, order: DeviceOrder): Promise<void>;
  orderLesson(order: LessonOrder): Promise<void>;
}
