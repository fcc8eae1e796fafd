import type { IDBPDatabase } from "idb";
import type { Entry, RefusedEntry } from "../contracts";
import type { FaceName } from "../faces";
import { newId } from "../lesson/making";
import { Problem } from "../sync/problem";
import { keepProblem, openDatabase, type FloorSchema, type KeptBundle, type KeptEntry, type KeptLesson } from "./schema";

/** What is written must have reached the disk before a screen says so: a tablet's battery may die a moment later. */
const strict = { durability: "strict" } as const;

/** What an append is made from, read in the same transaction that writes it. */
export interface Before {
  /** The device's last number. */
  readonly lastSequence: number;
  /** Entries of this device that another tab wrote and the caller does not know yet. */
  readonly unknown: readonly Entry[];
}

/** Everything this device keeps. One database for all lessons and faces; every write is done when its promise resolves. */
export class Keep {
  private constructor(private readonly database: IDBPDatabase<FloorSchema>) {}

  static async open(name?: string): Promise<Keep> {
    return new Keep(await openDatabase(name));
  }

  close(): void {
    this.database.close();
  }

  async setting<T>(key: string): Promise<T | undefined> {
    return (await this.try(() => this.database.get("settings", key))) as T | undefined;
  }

  async setSetting(key: string, value: unknown): Promise<void> {
    await this.try(() => this.database.put("settings", value, key));
  }

  /** What this device calls itself as that face, made at first need. A browser that serves two faces is two devices. */
  async deviceId(face: FaceName, isRenewed = false): Promise<string> {
    return this.try(async () => {
      const tx = this.database.transaction("settings", "readwrite", strict);
      const known = (await tx.store.get(`deviceId.${face}`)) as string | undefined;
      const id = known && !isRenewed ? known : newId(Date.now());
      if (id !== known) await tx.store.put(id, `deviceId.${face}`);
      await tx.done;
      return id;
    });
  }

  async lessons(): Promise<KeptLesson[]> {
    return this.try(() => this.database.getAll("lessons"));
  }

  /** The lesson a face shows; none where it is to join one. */
  async openLesson(face: FaceName): Promise<KeptLesson | undefined> {
    return (await this.lessons()).find((l) => l.isOpen && l.face === face);
  }

  /** Keeps a lesson as the one its face shows; another stays only as long as it has something to deliver. */
  async saveLesson(lesson: KeptLesson): Promise<void> {
    await this.try(async () => {
      const tx = this.database.transaction("lessons", "readwrite", strict);
      for (const other of await tx.store.getAll()) {
        if (other.isOpen && other.face === lesson.face && other.key !== lesson.key) await tx.store.put({ ...other, isOpen: false });
      }
      await tx.store.put(lesson);
      await tx.done;
    });
  }

  /** Changes part of a lesson; nothing happens where it is gone. */
  async patchLesson(key: string, part: Partial<KeptLesson>): Promise<void> {
    await this.try(async () => {
      const tx = this.database.transaction("lessons", "readwrite");
      const lesson = await tx.store.get(key);
      if (lesson) await tx.store.put({ ...lesson, ...part });
      await tx.done;
    });
  }

  async bundle(lessonKey: string): Promise<KeptBundle | undefined> {
    return this.try(() => this.database.get("bundles", lessonKey));
  }

  async saveBundle(kept: KeptBundle): Promise<void> {
    await this.try(async () => {
      const tx = this.database.transaction("bundles", "readwrite", strict);
      await tx.store.put(kept);
      await tx.done;
    });
  }

  /**
   * Appends what `make` makes of the device's last number, in one transaction that reads that number too: two tabs never give one number twice.
   * @param known - The last number of this device that the caller knows.
   * @returns What was written, and what another tab had written since. Resolves after the transaction is complete.
   */
  async append(lessonKey: string, deviceId: string, known: number, make: (before: Before) => readonly Entry[]): Promise<{ made: readonly Entry[]; unknown: readonly KeptEntry[] }> {
    return this.try(async () => {
      const tx = this.database.transaction(["counters", "entries", "lessons"], "readwrite", strict);
      // Awaited below; without this, a transaction that fails early is also reported as a rejection nobody handles.
      const done = tx.done;
      done.catch(() => undefined);
      let made: readonly Entry[];
      let here: KeptEntry[];
      try {
        // Another tab may have left the lesson: nothing would ever deliver what is written now.
        if (!(await tx.objectStore("lessons").getKey(lessonKey))) throw new Problem("lessonClosed");
        const lastSequence = (await tx.objectStore("counters").get(deviceId))?.lastSequence ?? 0;
        const newer = () => IDBKeyRange.bound([deviceId, known], [deviceId, lastSequence], true);
        here = lastSequence > known ? (await tx.objectStore("entries").index("byDevice").getAll(newer())).filter((k) => k.lessonKey === lessonKey) : [];
        made = make({ lastSequence, unknown: here.map((k) => k.entry) });
        for (const entry of made) void tx.objectStore("entries").add(waiting(lessonKey, entry)).catch(() => undefined);
        const last = made[made.length - 1];
        if (last) void tx.objectStore("counters").put({ deviceId, lastSequence: last.deviceSequence }).catch(() => undefined);
      } catch (failure) {
        // Else what was written before the failure would stay, without its number being counted.
        tx.abort();
        throw failure;
      }
      await done;
      return { made, unknown: here };
    });
  }

  /** Takes in entries that another device made and could not deliver. Those that are here already change nothing. */
  async takeIn(lessonKey: string, entries: readonly Entry[]): Promise<{ readonly newCount: number }> {
    return this.try(async () => {
      const tx = this.database.transaction("entries", "readwrite", strict);
      let newCount = 0;
      for (const entry of entries) {
        if (await tx.store.getKey(entry.id)) continue;
        await tx.store.add(waiting(lessonKey, entry));
        newCount++;
      }
      await tx.done;
      return { newCount };
    });
  }

  /** Everything to deliver or delivered from here for a lesson. */
  async entries(lessonKey: string): Promise<KeptEntry[]> {
    return this.try(() => this.database.getAllFromIndex("entries", "byLesson", lessonKey));
  }

  /** The first entries that wait, in the order their devices made them. */
  async waiting(lessonKey: string, most?: number): Promise<Entry[]> {
    return (await this.try(() => this.database.getAllFromIndex("entries", "waits", waitsIn(lessonKey), most))).map((k) => k.entry);
  }

  async waitingCount(lessonKey: string): Promise<number> {
    return this.try(() => this.database.countFromIndex("entries", "waits", waitsIn(lessonKey)));
  }

  /** Notes what the server said of entries. One that is taken stays in the log; one that is refused is set aside with the reason. */
  async settle(takenIds: readonly string[], refused: readonly RefusedEntry[], receivedAt: string): Promise<void> {
    await this.try(async () => {
      const tx = this.database.transaction("entries", "readwrite");
      for (const id of takenIds) {
        const kept = await tx.store.get(id);
        if (kept && kept.standing !== "taken") await tx.store.put(settled(kept, { standing: "taken", entry: { ...kept.entry, receivedAt } }));
      }
      for (const { id, text } of refused) {
        const kept = await tx.store.get(id);
        if (kept?.standing === "waits") await tx.store.put(settled(kept, { standing: "refused", refusal: text }));
      }
      await tx.done;
    });
  }

  /** Keeps entries the server sent. */
  async saveGiven(lessonKey: string, entries: readonly Entry[]): Promise<void> {
    await this.try(async () => {
      const tx = this.database.transaction("given", "readwrite");
      for (const entry of entries) await tx.store.put({ lessonKey, id: entry.id, entry });
      await tx.done;
    });
  }

  async given(lessonKey: string): Promise<Entry[]> {
    return (await this.try(() => this.database.getAllFromIndex("given", "byLesson", lessonKey))).map((g) => g.entry);
  }

  /** Forgets delivered entries about pupils whom the device serves no more: whoever takes it next need not see them. */
  async forgetOthers(lessonKey: string, pupilIds: readonly string[]): Promise<void> {
    await this.try(async () => {
      const tx = this.database.transaction("entries", "readwrite");
      for (const kept of await tx.store.index("byLesson").getAll(lessonKey)) {
        const { pupilId } = kept.entry;
        if (kept.standing === "taken" && pupilId !== undefined && !pupilIds.includes(pupilId)) await tx.store.delete(kept.id);
      }
      await tx.done;
    });
  }

  /** Removes a lesson with all that is about pupils, unless something waits still. @returns Whether it is gone. */
  async removeLesson(key: string): Promise<boolean> {
    return this.try(async () => {
      const tx = this.database.transaction(["lessons", "bundles", "entries", "given"], "readwrite", strict);
      // In this transaction, so that another tab's entry of this moment is not lost.
      const waits = await tx.objectStore("entries").index("waits").count(waitsIn(key));
      if (waits === 0) {
        for (const id of await tx.objectStore("entries").index("byLesson").getAllKeys(key)) await tx.objectStore("entries").delete(id);
        for (const id of await tx.objectStore("given").index("byLesson").getAllKeys(key)) await tx.objectStore("given").delete(id);
        await tx.objectStore("bundles").delete(key);
        await tx.objectStore("lessons").delete(key);
      }
      await tx.done;
      return waits === 0;
    });
  }

  private async try<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await work();
    } catch (failure) {
      throw keepProblem(failure);
    }
  }
}

function waiting(lessonKey: string, entry: Entry): KeptEntry {
  return { deviceId: entry.deviceId, deviceSequence: entry.deviceSequence, id: entry.id, lessonKey, entry, standing: "waits", waitsIn: lessonKey };
}

function waitsIn(lessonKey: string): IDBKeyRange {
  return IDBKeyRange.bound([lessonKey], [lessonKey, []]);
}

function settled(kept: KeptEntry, part: Partial<KeptEntry>): KeptEntry {
  const { waitsIn: _, ...rest } = kept;
  return { ...rest, ...part };
}
