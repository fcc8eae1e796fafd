import { signal } from "@preact/signals";
import type { DeviceOrder, DeviceSeen, Entry, EntryFact, FloorState, LessonBundle, LessonOrder, LiveQuestion } from "../contracts";
import type { About, Delivery, Floor } from "./floor";
import { made } from "./making";

/** A lesson that lives in memory only: for tests, and to look at screens without a server. */
export class MemoryFloor implements Floor {
  readonly deviceId = "memory";
  readonly bundle;
  readonly log;
  readonly delivery = signal<Delivery>({ unsentCount: 0, refused: [], isOnline: true });
  readonly state;
  readonly devices = signal<readonly DeviceSeen[]>([]);
  readonly questions = signal<readonly LiveQuestion[]>([]);

  constructor(bundle: LessonBundle, state: Partial<FloorState> = {}) {
    this.bundle = signal(bundle);
    this.log = signal<readonly Entry[]>(bundle.entries);
    this.state = signal<FloorState>({
      serverNow: new Date().toISOString(),
      deviceName: "1",
      pupilIds: bundle.pupils.map((p) => p.pupilId),
      isLocked: false,
      appVersion: "0",
      ...state,
    });
  }

  async put(about: About, fact: EntryFact): Promise<void> {
    await this.putAll([[about, fact]]);
  }

  async putAll(facts: readonly (readonly [About, EntryFact])[]): Promise<void> {
    this.log.value = [...this.log.value, ...made(this.log.value, facts, this.maker())];
  }

  async takeBack(entry: Entry): Promise<void> {
    await this.putAll([[{ ...entry }, { kind: "withdrawal" }]]);
  }

  async orderDevice(deviceId: string, order: DeviceOrder): Promise<void> {
    this.devices.value = this.devices.value.map((d) =>
      d.deviceId !== deviceId
        ? d
        : { ...d, name: order.name ?? d.name, isLocked: order.isLocked ?? d.isLocked, pupilIds: order.isFreed ? [] : d.pupilIds },
    );
  }

  async orderLesson(order: LessonOrder): Promise<void> {
    const { stoppedAt, countdownUntil, closedAt, ...rest } = this.state.value;
    const now = new Date();
    const at = (isOn: boolean | undefined, before: string | undefined) => (isOn === undefined ? before : isOn ? now.toISOString() : undefined);
    const until = order.countdownS === undefined ? countdownUntil : order.countdownS > 0 ? new Date(now.getTime() + order.countdownS * 1000).toISOString() : undefined;
    const [stop, close] = [at(order.isStopped, stoppedAt), at(order.isClosed, closedAt)];
    this.state.value = { ...rest, ...(stop && { stoppedAt: stop }), ...(until && { countdownUntil: until }), ...(close && { closedAt: close }) };
  }

  private maker() {
    const bundle = this.bundle.value;
    const own = this.log.value.filter((e) => e.deviceId === this.deviceId);
    return { schoolId: bundle.schoolId, lessonId: bundle.lessonId, deviceId: this.deviceId, lastSequence: own.length, now: new Date() };
  }
}
