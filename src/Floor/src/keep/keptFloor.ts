import { computed, signal, type ReadonlySignal } from "@preact/signals";
import type { DeviceOrder, DeviceSeen, Entry, EntryFact, FloorState, LessonBundle, LessonOrder, LiveQuestion, RefusedEntry, TeacherNews } from "../contracts";
import type { About, Delivery, Floor } from "../lesson/floor";
import { inOrder } from "../lesson/log";
import { made } from "../lesson/making";
import { Problem } from "../sync/problem";
import type { Keep } from "./keep";
import type { KeptBundle, KeptEntry, KeptLesson } from "./schema";

/** The teacher's orders, as the network takes them. */
export interface Orders {
  orderDevice(deviceId: string, order: DeviceOrder): Promise<readonly DeviceSeen[]>;
  orderLesson(order: LessonOrder): Promise<FloorState>;
}

/** A lesson kept on this device: every entry is on its disk before a screen shows it. */
export class KeptFloor implements Floor {
  readonly deviceId;
  readonly bundle;
  readonly log: ReadonlySignal<readonly Entry[]>;
  readonly delivery;
  readonly state;
  readonly devices = signal<readonly DeviceSeen[]>([]);
  readonly questions = signal<readonly LiveQuestion[]>([]);

  /** Called when an entry is kept, so that it goes out soon. */
  onKept: () => void = () => undefined;

  private readonly own = signal<ReadonlyMap<string, KeptEntry>>(new Map());
  private readonly given = signal<ReadonlyMap<string, Entry>>(new Map());
  private readonly channel: BroadcastChannel | undefined;
  private lastSequence = 0;

  private constructor(
    private readonly keep: Keep,
    readonly lesson: KeptLesson,
    bundle: LessonBundle,
    private readonly orders: Orders,
    private readonly nowMs: () => number,
  ) {
    this.deviceId = lesson.deviceId;
    this.bundle = signal(bundle);
    // The kept state is as old as the last answer: its clock is set to now, so that a countdown shown from it is right.
    this.state = signal<FloorState>({ ...lesson.state, serverNow: new Date(nowMs() + lesson.clockOffsetMs).toISOString() });
    this.delivery = signal<Delivery>({ unsentCount: 0, refused: [], isOnline: false, ...(lesson.lastAnswerAt !== undefined && { lastAnswerAt: lesson.lastAnswerAt }) });
    this.log = computed(() => this.merged());
    if (typeof BroadcastChannel !== "undefined") {
      this.channel = new BroadcastChannel(`slantwise-floor.${lesson.key}`);
      // A tab whose database was closed for a newer page finds its entries at the next start.
      this.channel.onmessage = () => void this.reread().catch(() => undefined);
    }
  }

  /** Opens what is kept of a lesson. */
  static async open(keep: Keep, lesson: KeptLesson, bundle: KeptBundle, orders: Orders, nowMs: () => number = () => Date.now()): Promise<KeptFloor> {
    const floor = new KeptFloor(keep, lesson, bundle.bundle, orders, nowMs);
    floor.given.value = new Map((await keep.given(lesson.key)).map((e) => [e.id, e]));
    await floor.reread();
    return floor;
  }

  async put(about: About, fact: EntryFact): Promise<void> {
    await this.putAll([[about, fact]]);
  }

  async takeBack(entry: Entry): Promise<void> {
    await this.putAll([[entry, { kind: "withdrawal" }]]);
  }

  async putAll(facts: readonly (readonly [About | Entry, EntryFact])[]): Promise<void> {
    const { key, deviceId, schoolId, lessonId } = this.lesson;
    const result = await this.keep.append(key, deviceId, this.lastSequence, ({ lastSequence, unknown }) => {
      const log = unknown.length > 0 ? [...this.log.peek(), ...unknown] : this.log.peek();
      return made(log, facts, { schoolId, lessonId, deviceId, lastSequence, now: new Date(this.nowMs()) });
    });
    if (result.made.length === 0 && result.unknown.length === 0) return;
    const own = new Map(this.own.peek());
    for (const kept of result.unknown) own.set(kept.id, kept);
    for (const entry of result.made) own.set(entry.id, { deviceId, deviceSequence: entry.deviceSequence, id: entry.id, lessonKey: key, entry, standing: "waits", waitsIn: key });
    this.take(own);
    if (result.made.length > 0) {
      this.channel?.postMessage("kept");
      this.onKept();
    }
  }

  async orderDevice(deviceId: string, order: DeviceOrder): Promise<void> {
    this.devices.value = await this.orders.orderDevice(deviceId, order);
  }

  async orderLesson(order: LessonOrder): Promise<void> {
    await this.takeState(await this.orders.orderLesson(order));
  }

  /** Entries that wait for a device without a network are brought in: they show at once, and go out with this device's own. */
  async takeIn(entries: readonly Entry[]): Promise<number> {
    const foreign = entries.filter((e) => e.schoolId === this.lesson.schoolId && e.lessonId === this.lesson.lessonId);
    if (foreign.length < entries.length) throw new Problem("notOurs");
    const { newCount } = await this.keep.takeIn(this.lesson.key, foreign);
    await this.reread();
    if (newCount > 0) this.onKept();
    return newCount;
  }

  /** The server's newest word on how lesson and device stand. */
  async takeState(state: FloorState): Promise<void> {
    this.state.value = state;
    await this.keep.patchLesson(this.lesson.key, { state });
  }

  /** A newer bundle: what other devices wrote about these pupils comes with it. */
  async takeBundle(bundle: LessonBundle, tag: string | undefined): Promise<void> {
    await this.keep.saveBundle({ lessonKey: this.lesson.key, bundle, ...(tag !== undefined && { tag }) });
    this.bundle.value = bundle;
  }

  /** What the teacher is told as it happens. */
  async takeNews(news: TeacherNews): Promise<void> {
    if (news.devices) this.devices.value = news.devices;
    if (news.questions) this.questions.value = news.questions;
    if (news.entries.length === 0) return;
    const given = new Map(this.given.peek());
    for (const entry of news.entries) given.set(entry.id, entry);
    this.given.value = given;
    await this.keep.saveGiven(this.lesson.key, news.entries);
  }

  /** The server has said of these entries what becomes of them, and that is kept already. */
  settled(taken: readonly string[], refused: readonly RefusedEntry[], receivedAt: string): void {
    const own = new Map(this.own.peek());
    for (const id of taken) {
      const kept = own.get(id);
      if (kept) own.set(id, { ...kept, standing: "taken", entry: { ...kept.entry, receivedAt } });
    }
    for (const { id, text } of refused) {
      const kept = own.get(id);
      if (kept) own.set(id, { ...kept, standing: "refused", refusal: text });
    }
    this.take(own);
    this.channel?.postMessage("settled");
  }

  reached(isOnline: boolean): void {
    const { lastAnswerAt } = this.delivery.peek();
    const at = isOnline ? this.nowMs() : lastAnswerAt;
    this.delivery.value = { ...this.delivery.peek(), isOnline, ...(at !== undefined && { lastAnswerAt: at }) };
  }

  close(): void {
    this.channel?.close();
  }

  /** From the disk, as another tab may have left it. */
  async reread(): Promise<void> {
    const onDisk = await this.keep.entries(this.lesson.key);
    // What was made or settled while this was read is newer than what was read.
    const own = new Map(this.own.peek());
    for (const kept of onDisk) if ((own.get(kept.id)?.standing ?? "waits") === "waits") own.set(kept.id, kept);
    this.take(own);
  }

  private take(own: ReadonlyMap<string, KeptEntry>): void {
    this.own.value = own;
    let unsentCount = 0;
    const refused: { entry: Entry; text: string }[] = [];
    for (const kept of own.values()) {
      if (kept.deviceId === this.lesson.deviceId) this.lastSequence = Math.max(this.lastSequence, kept.deviceSequence);
      if (kept.standing === "waits") unsentCount++;
      else if (kept.standing === "refused") refused.push({ entry: kept.entry, text: kept.refusal ?? "" });
    }
    this.delivery.value = { ...this.delivery.peek(), unsentCount, refused };
  }

  private merged(): readonly Entry[] {
    const { pupils, entries } = this.bundle.value;
    const served = new Set(pupils.map((p) => p.pupilId));
    const all = new Map<string, Entry>();
    // What the server sent carries the time of receipt that everybody orders by: it has the last word. A refused entry holds nowhere.
    for (const kept of this.own.value.values()) if (kept.standing !== "refused") all.set(kept.id, kept.entry);
    for (const entry of entries) all.set(entry.id, entry);
    for (const entry of this.given.value.values()) all.set(entry.id, entry);
    return inOrder([...all.values()].filter((e) => e.pupilId === undefined || served.has(e.pupilId)));
  }
}
