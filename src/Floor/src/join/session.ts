import { signal } from "@preact/signals";
import type { FloorDeviceKind, FloorState, JoinAnswer } from "../contracts";
import { joinInLink, joinShown, type JoinShown } from "../board/boardLink";
import { loadFace, type Face, type FaceName } from "../faces";
import { Keep } from "../keep/keep";
import type { KeptFloor } from "../keep/keptFloor";
import type { KeptLesson } from "../keep/schema";
import { Api } from "../sync/api";
import { clockOffsetMs, recallClock } from "../sync/clock";
import type { Line } from "../sync/line";
import { Problem } from "../sync/problem";
import { fetchAhead } from "./ahead";
import { readBundleFile } from "./bundleFile";
import { isWholeCode, linkOf, restOf, type JoinLink } from "./link";
import { loadWords } from "../words/say";
import { startSettings } from "./settings";
import { compareVersion, hasWorker, isNewerThere, startWorker, takeNewer } from "./update";

/** Where the device is on its way into a lesson and out of it. */
export type Stage = "opening" | "unable" | "start" | "kind" | "pick" | "lesson" | "over";

/** A lesson that is left and has something to deliver still. */
export interface Held {
  readonly lesson: KeptLesson;
  readonly waitingCount: number;
}

/** A tablet that is put down goes back to its start, and shows nobody's page to whoever takes it next. */
const lookBackMs = 5 * 60_000;

// What runs a lesson comes when one is joined: the first page is there sooner without it.
const loadEngine = async () => ({ ...(await import("../keep/keptFloor")), ...(await import("../sync/line")) });

/** The device's way into a lesson, through it and out again. One a page. */
export class Session {
  readonly stage = signal<Stage>("opening");
  readonly floor = signal<KeptFloor | undefined>(undefined);
  readonly lesson = signal<KeptLesson | undefined>(undefined);
  readonly shown = signal<Face | undefined>(undefined);
  readonly link = signal<JoinLink | undefined>(undefined);
  /** What the last step could not do; a screen says it and what to do. */
  readonly problem = signal<unknown>(undefined);
  readonly isBusy = signal(false);
  /** The server does not know the device's token any more. */
  readonly mustRejoin = signal(false);
  /** The lesson is over and gone from the disk; the page that was open may be looked at until it is left. */
  readonly isLookingBack = signal(false);
  /** What the class joins with, as far as this device knows it. */
  readonly code = signal<JoinShown | undefined>(undefined);
  readonly held = signal<readonly Held[]>([]);

  private keep: Keep | undefined;
  private line: Line | undefined;
  private isFinishing = false;

  constructor(readonly face: FaceName) {}

  /** Opens what the device has: where it was, also without a network; else the way to join. */
  async start(): Promise<void> {
    // A device that has these pages already looks whether there are newer ones; another gets them once it is in a lesson.
    const worker = hasWorker() ? startWorker() : Promise.resolve();
    try {
      this.keep = await Keep.open();
    } catch (failure) {
      await startSettings(undefined);
      await loadWords("shared");
      this.problem.value = failure;
      this.stage.value = "unable";
      return;
    }
    await startSettings(this.keep);
    await loadWords("shared");
    this.link.value = linkOf(location.hash);
    // The ticket is in nobody's history, and a reload does not join a second time.
    this.code.value = joinInLink(location.hash, location.origin, Date.now());
    if (this.link.value) history.replaceState(null, "", location.pathname + restOf(location.hash));
    const lessons = await this.keep.lessons();
    const open = lessons.find((l) => l.isOpen && l.face === this.face);
    if (this.link.value) await this.follow(open);
    else if (open) await this.enter(open);
    else this.stage.value = "start";
    if (this.stage.value === "opening") this.stage.value = open ? "lesson" : "start";
    void this.deliverHeld();
    if (!lessons.some((l) => l.isOpen)) void worker.then(() => (isNewerThere.value && this.stage.value === "start" && !this.link.value ? takeNewer() : undefined));
    addEventListener("online", () => void this.deliverHeld());
  }

  /** A code was typed: the next thing is what the device is there for. */
  typed(code: string): void {
    if (!isWholeCode(code)) return;
    this.prepare();
    this.problem.value = undefined;
    this.link.value = { code };
    this.stage.value = "kind";
  }

  back(): void {
    this.problem.value = undefined;
    this.link.value = undefined;
    const { value: lesson } = this.lesson;
    if (this.floor.value) this.stage.value = "lesson";
    else if (lesson) void this.busy(() => this.enter(lesson));
    else this.stage.value = "start";
  }

  /** Fetches what a lesson needs while the child is still choosing: there is a network now, and later there may be none. */
  private prepare(): void {
    void Promise.all([loadEngine(), loadFace(this.face)]).catch(() => undefined);
  }

  /** The way to the code, over a lesson that stays as it is. */
  rejoin(): void {
    this.problem.value = undefined;
    this.stage.value = "start";
  }

  lookBack(): void {
    this.isLookingBack.value = true;
    setTimeout(() => this.stage.value === "over" && this.toStart(), lookBackMs);
  }

  /** Joins as what was chosen. */
  async join(kind: FloorDeviceKind): Promise<void> {
    const { link } = this;
    if (!link.value) return;
    await this.busy(async () => {
      const keep = this.keep!;
      const before = this.lesson.value ?? (await keep.openLesson(this.face));
      const answer = await this.asked(kind, link.value!, before);
      const { deviceId, ...joined } = answer;
      const isSame = before?.lessonId === joined.lessonId && before.deviceId === deviceId;
      const lesson: KeptLesson = {
        key: `${joined.lessonId}/${deviceId}`,
        face: this.face,
        deviceId,
        schoolId: joined.schoolId,
        lessonId: joined.lessonId,
        kind,
        title: joined.lessonTitle,
        className: joined.className,
        token: joined.token,
        pupils: joined.pupils,
        state: joined.state,
        clockOffsetMs: clockOffsetMs.peek(),
        lastAnswerAt: Date.now(),
        isOpen: true,
      };
      await keep.saveLesson(lesson);
      if (navigator.storage?.persist && !(await keep.setting("askedToPersist"))) {
        await keep.setSetting("askedToPersist", true);
        void navigator.storage.persist().catch(() => undefined);
      }
      link.value = undefined;
      this.mustRejoin.value = false;
        this.closeFloor();
      this.lesson.value = lesson;
      compareVersion(joined.state.appVersion);
      this.hearCode(joined.state);
      if (isSame && before.kind === kind && (await keep.bundle(lesson.key))) return this.enter(lesson);
      if (kind === "pupil" || kind === "pair") this.stage.value = "pick";
      else await this.claimNow([]);
    });
    // A code that is wrong is typed again; a network that is away is tried again from where one is.
    const { value: problem } = this.problem;
    if (problem instanceof Problem && !problem.isPassing && this.stage.value === "kind") this.stage.value = "start";
  }

  /** The pupils are picked. */
  async claim(pupilIds: readonly string[]): Promise<void> {
    await this.busy(() => this.claimNow(pupilIds));
  }

  /** The teacher's: another code for the class. */
  async renewCode(): Promise<void> {
    const { code, codeUntil } = await new Api(this.lesson.value?.token).renewCode();
    this.code.value = joinShown(code, location.origin, Date.parse(codeUntil));
  }

  /** Delivers at once. */
  tryNow(): void {
    this.line?.again();
    void this.deliverHeld();
  }

  /** Leaves the lesson: only what was delivered is ever removed. @returns Whether the device is empty now. */
  async leave(): Promise<boolean> {
    const { value: lesson } = this.lesson;
    if (!lesson) return true;
    await this.line?.outbox.run();
    if (!(await this.finish(lesson))) return false;
    this.toStart();
    return true;
  }

  /** After the end: the page that is still shown is let go too. */
  toStart(): void {
    this.closeFloor();
    this.lesson.value = undefined;
    this.problem.value = undefined;
    this.mustRejoin.value = false;
    this.isLookingBack.value = false;
    this.stage.value = "start";
  }

  /** The lesson is over and everything has arrived: the device is emptied. What is on the screen stays until it is left. */
  async finishEnded(): Promise<void> {
    const { value: lesson } = this.lesson;
    if (!lesson || this.isFinishing || this.stage.value !== "lesson") return;
    this.isFinishing = true;
    try {
      if (await this.finish(lesson)) this.stage.value = "over";
    } finally {
      this.isFinishing = false;
    }
  }

  /** Opens a lesson that was handed over as a file. */
  async openFile(file: Blob): Promise<void> {
    await this.busy(async () => {
      const { lesson, bundle } = readBundleFile(await file.text(), this.face);
      const known = (await this.keep!.lessons()).find((l) => l.key === lesson.key);
      // The same file once more: what the device has been given since stays.
      const opened = known?.token !== undefined ? { ...lesson, token: known.token } : lesson;
      await this.keep!.saveLesson(opened);
      await this.keep!.saveBundle({ lessonKey: opened.key, bundle });
      this.closeFloor();
      await this.enter(opened);
    });
  }

  /** Entries of a lesson that is not open, to be handed over otherwise. */
  async waitingOf(lessonKey: string) {
    return this.keep!.waiting(lessonKey);
  }

  /** Goes where the link leads: a pupil says first what the device is for. */
  private async follow(open: KeptLesson | undefined): Promise<void> {
    this.prepare();
    if (this.face === "pupil") {
      this.lesson.value = open;
      this.stage.value = "kind";
      return;
    }
    await this.join(this.face);
    // A link that does not hold any more is no reason to lose sight of the lesson that is open.
    if (this.stage.value !== "lesson" && open) await this.enter(open);
  }

  private async asked(kind: FloorDeviceKind, link: JoinLink, before: KeptLesson | undefined): Promise<JoinAnswer & { deviceId: string }> {
    const deviceId = before?.deviceId ?? (await this.keep!.deviceId(this.face));
    try {
      return { ...(await new Api().join({ deviceId, kind, ...link })), deviceId };
    } catch (failure) {
      if (!(failure instanceof Problem) || failure.code !== "deviceIdTaken") throw failure;
      const other = await this.keep!.deviceId(this.face, true);
      return { ...(await new Api().join({ deviceId: other, kind, ...link })), deviceId: other };
    }
  }

  private async claimNow(pupilIds: readonly string[]): Promise<void> {
    const lesson = this.lesson.value!;
    const api = new Api(lesson.token);
    const needsNoClaim = lesson.kind === "teacher" || lesson.kind === "board";
    const answer = needsNoClaim ? await api.bundle() : await api.claim({ pupilIds: [...pupilIds] });
    const { bundle, tag } = answer!;
    await this.keep!.saveBundle({ lessonKey: lesson.key, bundle, ...(tag !== undefined && { tag }) });
    await this.keep!.forgetOthers(lesson.key, bundle.pupils.map((p) => p.pupilId));
    const claimed = { ...lesson, state: { ...lesson.state, pupilIds: [...pupilIds] } };
    await this.keep!.patchLesson(lesson.key, { state: claimed.state });
    this.closeFloor();
    await this.enter(claimed);
  }

  private async enter(lesson: KeptLesson): Promise<void> {
    const keep = this.keep!;
    const bundle = await keep.bundle(lesson.key);
    this.lesson.value = lesson;
    const picks = lesson.kind === "pupil" || lesson.kind === "pair";
    // Joined, or freed, and the battery died before a name was picked.
    if (picks && (!bundle || lesson.state.pupilIds.length === 0)) {
      this.stage.value = "pick";
      return;
    }
    if (!bundle) return this.claimNow([]);
    recallClock(lesson.clockOffsetMs);
    const api = new Api(lesson.token);
    const [{ KeptFloor, Line }, face] = await Promise.all([loadEngine(), loadFace(this.face)]);
    const floor = await KeptFloor.open(keep, lesson, bundle, api);
    this.floor.value = floor;
    this.shown.value = face;
    this.stage.value = "lesson";
    void startWorker();
    void fetchAhead(this.face);
    if (lesson.token === undefined) return;
    this.line = new Line(keep, floor, api, { onTokenInvalid: () => (this.mustRejoin.value = true), onState: (state) => this.heard(state) }, bundle.tag);
    this.line.start();
  }

  /** The class's code, which the teacher's devices and the board are told: a new one replaces the old one there, too. */
  private hearCode(state: FloorState): void {
    if (state.joinCode !== undefined && state.joinCodeUntil !== undefined) this.code.value = joinShown(state.joinCode, location.origin, Date.parse(state.joinCodeUntil));
  }

  private heard(state: FloorState): void {
    const { value: lesson } = this.lesson;
    compareVersion(state.appVersion);
    this.hearCode(state);
    if (!lesson || this.stage.value !== "lesson") return;
    if ((lesson.kind === "pupil" || lesson.kind === "pair") && state.pupilIds.length === 0 && !state.closedAt) {
      // The teacher has freed the device. What waits is kept and goes out; the next pupil picks a name.
      this.lesson.value = { ...lesson, state };
      this.stage.value = "pick";
    }
  }

  private async finish(lesson: KeptLesson): Promise<boolean> {
    if ((await this.keep!.waitingCount(lesson.key)) > 0) return false;
    if (lesson.token !== undefined) await new Api(lesson.token).leave().catch(() => undefined);
    if (!(await this.keep!.removeLesson(lesson.key))) return false;
    this.line?.stop();
    this.line = undefined;
    return true;
  }

  private closeFloor(): void {
    this.line?.stop();
    this.line = undefined;
    this.floor.value?.close();
    this.floor.value = undefined;
    this.shown.value = undefined;
  }

  private async deliverHeld(): Promise<void> {
    const keep = this.keep!;
    const left: Held[] = [];
    const parked = (await keep.lessons()).filter((l) => !l.isOpen);
    if (parked.length === 0) return void (this.held.value = left);
    const { deliverParked } = await loadEngine();
    for (const lesson of parked) {
      const isDone = lesson.token !== undefined && (await deliverParked(keep, lesson, new Api(lesson.token)));
      if (isDone || (await keep.waitingCount(lesson.key)) === 0) {
        if (await keep.removeLesson(lesson.key)) continue;
      }
      left.push({ lesson, waitingCount: await keep.waitingCount(lesson.key) });
    }
    this.held.value = left;
  }

  private async busy(work: () => Promise<void>): Promise<void> {
    if (this.isBusy.value) return;
    this.isBusy.value = true;
    this.problem.value = undefined;
    try {
      await work();
    } catch (failure) {
      this.problem.value = failure;
    } finally {
      this.isBusy.value = false;
    }
  }
}

