import type { FloorState } from "../contracts";
import { say, type WordKey } from "../words/say";

/** Problems of this side: no answer, an answer that is not ours, and a device that cannot keep what it should. */
export type OwnProblem = "offline" | "unreadable" | "bundleNewer" | "keepMissing" | "keepFull" | "keepFailed" | "notOurs" | "noCode" | "cannotUnpack" | "noCamera";

/** Why something was not done, in a way that a program can tell apart and a person can read. */
export class Problem extends Error {
  constructor(
    /** One of the server's codes, or of this side's own. */
    readonly code: OwnProblem | (string & {}),
    /** The server's sentence, in the language asked for. */
    readonly title?: string,
    /** The HTTP status; none where there was no answer. */
    readonly status?: number,
    /** How lesson and device stand, where the server knew the device. */
    readonly state?: FloorState,
  ) {
    super(title ?? code);
    this.name = "Problem";
  }

  /** Whether the same request may well succeed later, unchanged. */
  get isPassing(): boolean {
    return this.code === "offline" || this.code === "unreadable" || this.code === "busy" || this.code === "tooOften" || (this.status ?? 0) >= 500;
  }
}

// The sentences of this side say what to do next; the server's title says only what is the matter.
const sentences: Readonly<Record<string, WordKey>> = {
  offline: "SyncOffline",
  unreadable: "SyncUnreadable",
  bundleNewer: "SyncBundleNewer",
  keepMissing: "KeepMissing",
  keepFull: "KeepFull",
  keepFailed: "KeepFailed",
  notOurs: "JoinFileNotOurs",
  noCode: "SyncChainNoCode",
  cannotUnpack: "SyncChainCannotUnpack",
  noCamera: "SyncChainNoCamera",
  codeUnknown: "JoinCodeUnknown",
  codeExpired: "JoinCodeExpired",
  ticketInvalid: "JoinTicketInvalid",
  tooManyTries: "JoinTooManyTries",
  tokenInvalid: "SyncTokenInvalid",
  lessonClosed: "SyncLessonClosed",
  lessonWithoutSheet: "JoinLessonWithoutSheet",
  pupilUnknown: "JoinPupilUnknown",
  busy: "SyncBusy",
  tooOften: "SyncBusy",
};

/** A problem as a sentence that says what to do. */
export function problemText(problem: unknown): string {
  if (!(problem instanceof Problem)) return say("SyncUnexpected", String(problem));
  const key = sentences[problem.code];
  return key ? say(key) : (problem.title ?? say("SyncUnexpected", problem.code));
}
