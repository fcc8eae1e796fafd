import { computed, signal } from "@preact/signals";
import type { BundlePupil, DeviceOrder, DeviceSeen, EntryFact, LessonOrder, LiveQuestion } from "../contracts";
import type { About, Floor } from "../lesson/floor";
import { current } from "../lesson/log";
import { serverTimeMs } from "../sync/clock";
import { problemText } from "../sync/problem";
import { say, type WordKey } from "../words/say";
import { absentIn, presentCount } from "./attendance";
import { breachesIn, unsafePupils } from "./breaches";
import { phaseClock } from "./phaseClock";
import { keptOrder, seenBy, tileOrder } from "./seen";
import { TicksSeen } from "./ticksSeen";
import { putWithUndo, type Undo } from "./undo";
import { whereaboutsIn } from "./whereabouts";

export type Tab = "class" | "clock" | "devices" | "lesson";

/** What the phone shows. */
export interface Route {
  readonly tab: Tab;
  /** The pupil whose sheet lies over the tiles. */
  readonly pupilId?: string;
  /** What lies over that, or over the tab. */
  readonly over?: "check" | "scan" | "code";
}

/** What was done last, as long as it can be taken back with one tap. */
export interface Done {
  readonly text: string;
  readonly undo: Undo;
  /** Whom a visit was logged for; none for other steps. */
  readonly visitedId?: string;
  readonly untilMs: number;
}

/** How long the last step can be taken back with one tap. */
export const undoS = 8;

/** All that the teacher's screens share: what the log says, worked out once, and where the teacher is. */
export class Teaching {
  /** By this device's clock; the face moves it on once a second. */
  readonly nowMs = signal(Date.now());
  /** The same, moved on four times a minute: enough for words such as "4 min". */
  readonly calmNowMs = computed(() => Math.floor(this.nowMs.value / 15_000) * 15_000 + 15_000);
  readonly route = signal<Route>({ tab: "class" });
  readonly done = signal<Done | undefined>(undefined);
  /** Why the last step did not work; none once it is put away. */
  readonly problem = signal<string | undefined>(undefined);
  readonly isDictationAllowed = signal(false);
  readonly putAwayBreaches = signal<ReadonlySet<string>>(new Set());

  readonly holding = computed(() => current(this.floor.log.value));
  readonly seen = computed(() => seenBy(this.holding.value));
  readonly absent = computed(() => absentIn(this.holding.value));
  readonly presentCount = computed(() => presentCount(this.floor.bundle.value.pupils, this.absent.value));
  readonly where = computed(() => whereaboutsIn(this.holding.value));
  readonly breaches = computed(() => breachesIn(this.floor.bundle.value, this.holding.value));
  readonly unsafe = computed(() => unsafePupils(this.breaches.value, this.floor.questions.value));
  readonly clock = computed(() => phaseClock(this.holding.value, this.floor.bundle.value.phases, this.nowMs.value));
  readonly pupilById = computed(() => new Map<string, BundlePupil>(this.floor.bundle.value.pupils.map((p) => [p.pupilId, p])));
  readonly questionsById = computed(() => {
    const byId = new Map<string, LiveQuestion[]>();
    for (const q of this.floor.questions.value) byId.set(q.pupilId, [...(byId.get(q.pupilId) ?? []), q]);
    return byId;
  });
  readonly deviceByPupil = computed(() => {
    const byPupil = new Map<string, DeviceSeen>();
    for (const device of this.floor.devices.value) if (!device.hasLeft) for (const id of device.pupilIds) byPupil.set(id, device);
    return byPupil;
  });
  /** Entries that are not with the server yet: this phone's and what the other devices said they hold. */
  readonly unsentCount = computed(() => {
    const others = this.floor.devices.value.filter((d) => !this.isOwn(d));
    return others.reduce((sum, d) => sum + d.unsentCount, this.floor.delivery.value.unsentCount);
  });
  /** What the server's clock shows, as far as known: devices and countdowns are told by it. */
  readonly serverMs = computed(() => serverTimeMs(this.nowMs.value));
  readonly calmServerMs = computed(() => serverTimeMs(this.calmNowMs.value));

  /** Whose sheet was left last; none where something else was. */
  lastPupilId: string | undefined;
  readonly ticksSeen: TicksSeen;
  private readonly settled = signal<readonly string[]>([]);
  private readonly fresh = computed(() => tileOrder(this.floor.bundle.value.pupils, this.seen.value, this.absent.value));
  /** The tiles: as they were settled last, so that nothing moves under a finger. */
  readonly tileIds = computed(() => keptOrder(this.settled.value, this.fresh.value));
  readonly isOrderOld = computed(() => this.tileIds.value.join() !== this.fresh.value.join());

  constructor(readonly floor: Floor) {
    this.ticksSeen = new TicksSeen(floor.bundle.peek().lessonId, typeof sessionStorage === "undefined" ? undefined : sessionStorage);
    this.settle();
  }

  /** Puts the tiles in order anew: when the teacher comes back to them, or asks for it. */
  settle(): void {
    this.settled.value = this.fresh.peek();
  }

  /** Runs the clock and hears the way back; answers how to stop. */
  start(): () => void {
    const tick = setInterval(() => {
      this.nowMs.value = Date.now();
      if ((this.done.peek()?.untilMs ?? Infinity) <= this.nowMs.value) this.done.value = undefined;
    }, 1000);
    const back = (event: PopStateEvent) => this.show((event.state as { teacherRoute?: Route } | null)?.teacherRoute ?? { tab: "class" });
    addEventListener("popstate", back);
    return () => {
      clearInterval(tick);
      removeEventListener("popstate", back);
    };
  }

  /** Another tab, in the place of what is shown. */
  turn(tab: Tab): void {
    history.replaceState({ teacherRoute: { tab } }, "");
    this.show({ tab });
  }

  /** Something that lies over what is shown, and that the device's own way back takes away. */
  open(route: Route): void {
    history.pushState({ teacherRoute: route }, "");
    this.show(route);
  }

  show(route: Route): void {
    if (route.tab === "class" && route.pupilId === undefined) this.settle();
    this.lastPupilId = this.route.peek().pupilId;
    this.route.value = route;
  }

  /** Puts facts, says so and offers to take them back. */
  async write(text: string, facts: readonly (readonly [About, EntryFact])[], visitedId?: string): Promise<boolean> {
    return this.attempt(async () => {
      const undo = await putWithUndo(this.floor, facts);
      if (undo) this.done.value = { text, undo, untilMs: Date.now() + undoS * 1000, ...(visitedId !== undefined && { visitedId }) };
    });
  }

  async takeBack(): Promise<void> {
    const done = this.done.peek();
    this.done.value = undefined;
    if (done) await this.attempt(done.undo);
  }

  /** Does a step; where it fails, says why and leaves everything as it was. */
  async attempt(step: () => Promise<void>, failed: WordKey = "TeacherNotStored"): Promise<boolean> {
    try {
      await step();
      this.problem.value = undefined;
      return true;
    } catch (problem) {
      this.problem.value = `${say(failed)} ${problemText(problem)}`;
      return false;
    }
  }

  /** An order to the lesson; it needs the network, and where it fails the words say what to do instead. */
  async order(order: LessonOrder, failed: WordKey): Promise<void> {
    await this.attempt(() => this.floor.orderLesson(order), failed);
  }

  async orderDevice(deviceId: string, order: DeviceOrder): Promise<void> {
    await this.attempt(() => this.floor.orderDevice(deviceId, order), "TeacherDeviceOrderFailed");
  }

  /** Whether it is this phone, whose own count of unsent entries is the fresher one. */
  isOwn(device: DeviceSeen): boolean {
    return device.kind === "teacher" && device.name === this.floor.state.value.deviceName;
  }

  labelOf(pupilId: string): string {
    return this.pupilById.value.get(pupilId)?.label ?? "–";
  }
}
