import type { FloorState, TeacherNews } from "../contracts";
import type { Keep } from "../keep/keep";
import type { KeptFloor } from "../keep/keptFloor";
import type { KeptLesson } from "../keep/schema";
import type { Api } from "./api";
import { clockOffsetMs } from "./clock";
import { readEvents, type StreamEvent } from "./events";
import { Outbox } from "./outbox";
import { Problem } from "./problem";

/** What the line cannot settle by itself. */
export interface LineHooks {
  /** The token holds no more; entries stay here until the device has joined again. */
  onTokenInvalid(): void;
  /** The server has said how lesson and device stand: freed, closed, renamed. */
  onState(state: FloorState): void;
}

const longestWaitMs = 30_000;
const openingMs = 15_000;

/** The line of an open lesson to the server: entries up, events down, for as long as the lesson is open on this device. */
export class Line {
  readonly outbox: Outbox;
  private isStopped = false;
  private stream: AbortController | undefined;
  private wake: () => void = () => undefined;
  private tag: string | undefined;

  constructor(
    private readonly keep: Keep,
    private readonly floor: KeptFloor,
    private readonly api: Api,
    private readonly hooks: LineHooks,
    tag?: string,
  ) {
    this.tag = tag;
    this.outbox = new Outbox(outboxPlace(keep, floor.lesson.key), (batch) => api.deliver(batch), {
      onAnswer: (state) => this.heard(state),
      onSettled: (taken, refused, at) => floor.settled(taken, refused, at),
      onProblem: (problem) => this.failed(problem),
    });
    floor.onKept = () => this.outbox.nudge();
  }

  start(): void {
    addEventListener("online", this.again);
    addEventListener("offline", this.lost);
    document.addEventListener("visibilitychange", this.again);
    void this.listen();
    void this.outbox.run(true);
  }

  stop(): void {
    this.isStopped = true;
    removeEventListener("online", this.again);
    removeEventListener("offline", this.lost);
    document.removeEventListener("visibilitychange", this.again);
    this.outbox.stop();
    this.stream?.abort();
    this.wake();
  }

  /** Tries at once, whatever it was waiting for. */
  readonly again = (): void => {
    if (document.visibilityState === "hidden") return;
    this.outbox.now();
    this.wake();
  };

  private readonly lost = (): void => this.floor.reached(false);

  private async listen(): Promise<void> {
    let failureCount = 0;
    while (!this.isStopped) {
      this.stream = new AbortController();
      const timer = setTimeout(() => this.stream?.abort(), openingMs);
      try {
        const body = await this.api.events(this.stream.signal);
        clearTimeout(timer);
        failureCount = 0;
        this.floor.reached(true);
        this.outbox.now();
        void this.refresh();
        await readEvents(body, (event) => this.hear(event));
        this.stream.abort();
      } catch (failure) {
        failureCount++;
        this.failed(failure instanceof Problem ? failure : new Problem("offline", String(failure)));
      } finally {
        clearTimeout(timer);
      }
      if (this.isStopped) return;
      const most = Math.min(longestWaitMs, 1000 * 2 ** Math.min(failureCount, 10));
      await this.pause(most / 2 + (Math.random() * most) / 2);
    }
  }

  private hear(event: StreamEvent): void {
    try {
      if (event.name === "state") this.heard(JSON.parse(event.data) as FloorState);
      else if (event.name === "news") void this.floor.takeNews(JSON.parse(event.data) as TeacherNews).catch(() => undefined);
    } catch {
      // An event that cannot be read is one that was not sent: the next state or bundle says the same again.
    }
  }

  private heard(state: FloorState): void {
    this.floor.reached(true);
    void this.floor.takeState(state).catch(() => undefined);
    void this.keep.patchLesson(this.floor.lesson.key, { clockOffsetMs: clockOffsetMs.peek(), lastAnswerAt: Date.now() }).catch(() => undefined);
    this.hooks.onState(state);
  }

  /** What came in while nobody listened: other devices' entries about the same pupils, a restriction changed meanwhile. */
  private async refresh(): Promise<void> {
    try {
      const answer = await this.api.bundle(this.tag);
      if (!answer || this.isStopped) return;
      this.tag = answer.tag;
      await this.floor.takeBundle(answer.bundle, answer.tag);
    } catch (failure) {
      if (failure instanceof Problem) this.failed(failure);
    }
  }

  private failed(problem: Problem): void {
    if (this.isStopped) return;
    if (problem.state) this.heard(problem.state);
    if (problem.code === "offline" || problem.code === "unreadable") this.floor.reached(false);
    if (problem.code === "tokenInvalid") this.hooks.onTokenInvalid();
  }

  private pause(ms: number): Promise<void> {
    return new Promise((done) => {
      const timer = setTimeout(done, ms);
      this.wake = () => {
        clearTimeout(timer);
        done();
      };
    });
  }
}

/** The outbox's place in the keep. */
export function outboxPlace(keep: Keep, lessonKey: string) {
  return {
    waiting: (most: number) => keep.waiting(lessonKey, most),
    waitingCount: () => keep.waitingCount(lessonKey),
    settle: keep.settle.bind(keep),
  };
}

/** Delivers what a lesson that is not open any more still has. @returns Whether nothing waits. */
export async function deliverParked(keep: Keep, lesson: KeptLesson, api: Api): Promise<boolean> {
  const quiet = { onAnswer: () => undefined, onSettled: () => undefined, onProblem: () => undefined };
  const outbox = new Outbox(outboxPlace(keep, lesson.key), (batch) => api.deliver(batch), quiet, { after: () => () => undefined, random: () => 0 });
  return outbox.run();
}
