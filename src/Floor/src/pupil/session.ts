import { signal } from "@preact/signals";
import type { EntryFact } from "../contracts";
import type { About, Floor } from "../lesson/floor";
import { lastStep, type Pass, passKey } from "../lesson/pupilSheet";
import { bounceMs } from "../ui/useOnce";

interface Passing {
  readonly key: string;
  readonly pupilId: string;
  /** The device's last number when it was passed: whatever is undone before that undoes the passing too. */
  readonly afterSequence: number;
}

/** What the pupils' screens keep between them while the page is open: whose turn it is, at what, and that nothing is saved twice. */
export class Session {
  readonly pupilId = signal<string | undefined>(undefined);
  readonly taskId = signal<string | undefined>(undefined);
  /** Their own page is open. */
  readonly isMine = signal(false);
  /** A partner holds the tablet. */
  readonly isPartner;
  /** What was done last could not be saved. */
  readonly hasProblem = signal(false);
  readonly passed = signal<readonly Passing[]>([]);
  /** The set whose cues are being looked at: answered or not, the pupil says when it is enough. */
  readonly looking = signal<string | undefined>(undefined);
  /** Count in, and beep. */
  readonly hasCountIn = signal(false);
  /** Who was here before the tablet was handed over. */
  readonly before = signal<string | undefined>(undefined);

  private isSaving = false;
  private savedAtMs = -Infinity;

  constructor(
    readonly floor: Floor,
    private readonly nowMs: () => number = () => performance.now(),
  ) {
    this.isPartner = signal(floor.bundle.peek().kind === "pair");
  }

  /** A tap that comes right after something was saved is the same finger on the next page. */
  get isBouncing(): boolean {
    return this.isSaving || this.nowMs() - this.savedAtMs < bounceMs;
  }

  /** Makes facts hold, once however often it is tapped. True once they are durable; false where nothing was done. */
  async save(facts: readonly (readonly [About, EntryFact])[]): Promise<boolean> {
    return this.once(() => this.floor.putAll(facts));
  }

  /** Makes a fact hold that may be tapped back and forth: the last tap counts. True once it is durable. */
  async saveTick(about: About, fact: EntryFact): Promise<boolean> {
    try {
      await this.floor.put(about, fact);
      this.hasProblem.value = false;
      return true;
    } catch (problem) {
      this.fail(problem);
      return false;
    }
  }

  /** Nothing is saved for a moment: the finger that stopped a timer is still on the screen. */
  rest(): void {
    this.savedAtMs = this.nowMs();
  }

  /** The pupil goes on without an entry. */
  pass(taskId: string, setNumber: number, pass: Pass): void {
    const pupilId = this.pupilId.value;
    if (pupilId === undefined || this.isBouncing) return;
    const afterSequence = lastStep(this.floor.log.value, pupilId, this.floor.deviceId)[0]?.deviceSequence ?? 0;
    this.passed.value = [...this.passed.value, { key: passKey(pupilId, taskId, setNumber, pass), pupilId, afterSequence }];
    this.rest();
  }

  passedKeys(): ReadonlySet<string> {
    return new Set(this.passed.value.map((p) => p.key));
  }

  /** Whether there is something to take back for the pupil whose turn it is. */
  canUndo(): boolean {
    const pupilId = this.pupilId.value;
    if (pupilId === undefined) return false;
    return this.passed.value.some((p) => p.pupilId === pupilId) || lastStep(this.floor.log.value, pupilId, this.floor.deviceId).length > 0;
  }

  /** Takes the pupil's last step on this device back, be it an entry or a going past; the newest first. */
  async undo(): Promise<boolean> {
    const pupilId = this.pupilId.value;
    if (pupilId === undefined) return false;
    this.isMine.value = false;
    this.looking.value = undefined;
    const step = lastStep(this.floor.log.value, pupilId, this.floor.deviceId);
    const last = step[0]?.deviceSequence ?? 0;
    const newest = [...this.passed.value].reverse().find((p) => p.pupilId === pupilId);
    if (newest && newest.afterSequence >= last) {
      this.passed.value = this.passed.value.filter((p) => p !== newest);
      return true;
    }
    return this.once(async () => {
      for (const entry of step) await this.floor.takeBack(entry);
      const taskId = step[0]?.taskId;
      if (taskId !== undefined) this.taskId.value = taskId;
    });
  }

  /** The next pupil. */
  handOver(pupilId: string | undefined): void {
    this.before.value = this.pupilId.value;
    this.looking.value = undefined;
    this.pupilId.value = pupilId;
    this.taskId.value = undefined;
    this.isMine.value = false;
    this.hasProblem.value = false;
  }

  private async once(act: () => Promise<void>): Promise<boolean> {
    if (this.isBouncing) return false;
    this.isSaving = true;
    try {
      await act();
      this.hasProblem.value = false;
      return true;
    } catch (problem) {
      this.fail(problem);
      return false;
    } finally {
      this.isSaving = false;
      this.rest();
    }
  }

  private fail(problem: unknown): void {
    console.error(problem);
    this.hasProblem.value = true;
  }
}
