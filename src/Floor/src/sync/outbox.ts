import type { BatchAnswer, Entry, EntryBatch, FloorState, RefusedEntry } from "../contracts";
import { Problem } from "./problem";

/** What the outbox needs of the place where entries are kept. */
export interface OutboxPlace {
  waiting(most: number): Promise<readonly Entry[]>;
  waitingCount(): Promise<number>;
  settle(takenIds: readonly string[], refused: readonly RefusedEntry[], receivedAt: string): Promise<void>;
}

/** What it tells whoever shows it. */
export interface OutboxNews {
  onAnswer(state: FloorState): void;
  onSettled(taken: readonly string[], refused: readonly RefusedEntry[], receivedAt: string): void;
  onProblem(problem: Problem): void;
}

/** Timers and chance, so that a test can hold both. */
export interface OutboxTiming {
  after(ms: number, work: () => void): () => void;
  random(): number;
}

export const browserTiming: OutboxTiming = {
  after: (ms, work) => {
    const timer = setTimeout(work, ms);
    return () => clearTimeout(timer);
  },
  random: () => Math.random(),
};

const mostInBatch = 200;
/** A pupil ticks three cues in two seconds: they go in one request. */
const soonMs = 1000;
const firstWaitMs = 1000;
const longestWaitMs = 30_000;

/**
 * Delivers what waits: in order, in batches, one request at a time, again and again until the server has said of each entry that it has it.
 * Sending twice is harmless, since the server knows an entry by its id; nothing is forgotten before its id came back.
 */
export class Outbox {
  private cancelTimer: (() => void) | undefined;
  private dueSoon = false;
  private isRunning = false;
  private isAskedAgain = false;
  private isStopped = false;
  private failureCount = 0;
  private batchSize = mostInBatch;

  constructor(
    private readonly place: OutboxPlace,
    private readonly send: (batch: EntryBatch) => Promise<BatchAnswer>,
    private readonly news: OutboxNews,
    private readonly timing: OutboxTiming = browserTiming,
  ) {}

  /** An entry was made: it goes out within a second, unless a failure has just asked for patience. */
  nudge(): void {
    if (this.isStopped || this.isRunning || this.dueSoon || this.failureCount > 0) {
      this.isAskedAgain = this.isRunning;
      if (this.failureCount > 0 && !this.cancelTimer && !this.isRunning) this.schedule(this.waitMs());
      return;
    }
    this.schedule(soonMs);
    this.dueSoon = true;
  }

  /** The network came back, the page is seen again, or somebody tapped: at once. */
  now(): void {
    if (this.isStopped) return;
    this.failureCount = 0;
    if (this.isRunning) this.isAskedAgain = true;
    else this.schedule(0);
  }

  /** Ends it; a request under way is let go, and its answer is not waited for. */
  stop(): void {
    this.isStopped = true;
    this.cancelTimer?.();
  }

  /** Delivers until nothing waits or a request fails. @returns Whether nothing waits. */
  async run(isSignOfLife = false): Promise<boolean> {
    if (this.isRunning || this.isStopped) return false;
    this.isRunning = true;
    this.isAskedAgain = false;
    this.cancelTimer?.();
    this.cancelTimer = undefined;
    this.dueSoon = false;
    let isEmpty = false;
    try {
      do isEmpty = await this.step(isSignOfLife);
      while (!isEmpty && !this.isStopped);
      this.failureCount = 0;
    } catch (failure) {
      this.failed(failure instanceof Problem ? failure : new Problem("keepFailed", String(failure)));
    } finally {
      this.isRunning = false;
    }
    if (!this.isStopped && this.failureCount === 0 && this.isAskedAgain) this.schedule(soonMs);
    return isEmpty;
  }

  private async step(isSignOfLife: boolean): Promise<boolean> {
    const entries = await this.place.waiting(this.batchSize);
    if (entries.length === 0 && !isSignOfLife) return true;
    const answer = await this.send({ entries: [...entries], unsentCount: await this.place.waitingCount() });
    if (this.isStopped) return false;
    const asked = new Set(entries.map((e) => e.id));
    const taken = answer.takenIds.filter((id) => asked.has(id));
    const refused = answer.refused.filter((r) => asked.has(r.id));
    await this.place.settle(taken, refused, answer.state.serverNow);
    this.news.onSettled(taken, refused, answer.state.serverNow);
    this.news.onAnswer(answer.state);
    this.batchSize = Math.min(mostInBatch, this.batchSize * 2);
    if (entries.length === 0) return true;
    // An answer that says nothing about any of them would be asked for ever.
    if (taken.length + refused.length === 0) throw new Problem("unreadable");
    return (await this.place.waitingCount()) === 0;
  }

  private failed(problem: Problem): void {
    if (this.isStopped) return;
    this.failureCount++;
    if (problem.state) this.news.onAnswer(problem.state);
    this.news.onProblem(problem);
    if ((problem.code === "batchTooLarge" || problem.code === "bodyTooLarge") && this.batchSize > 1) {
      this.batchSize = Math.max(1, this.batchSize >> 2);
      this.schedule(0);
      return;
    }
    this.schedule(this.waitMs());
  }

  /** Doubles with every failure, and is spread: thirty tablets whose network comes back must not all ask in one moment. */
  private waitMs(): number {
    const most = Math.min(longestWaitMs, firstWaitMs * 2 ** Math.min(this.failureCount - 1, 10));
    return most / 2 + (this.timing.random() * most) / 2;
  }

  private schedule(ms: number): void {
    this.cancelTimer?.();
    this.dueSoon = false;
    this.cancelTimer = this.timing.after(ms, () => {
      this.cancelTimer = undefined;
      void this.run();
    });
  }
}
