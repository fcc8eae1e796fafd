import type {
  BatchAnswer, ClaimRequest, DeviceOrder, DeviceSeen, EntryBatch, FloorProblem, FloorState, JoinAnswer, JoinRequest, LessonBundle, LessonOrder,
} from "../contracts";
import { language } from "../words/say";
import { learnClock } from "./clock";
import { Problem } from "./problem";

/** How to reach the server; a test puts its own in. */
export interface Reach {
  readonly fetch: typeof fetch;
  readonly nowMs: () => number;
}

/** The making of bundles that these pages read. */
const bundleFormat = 1;

/** What the floor asks of the server. Every failure is a `Problem`; what is not clearly the server's own answer counts as none. */
export class Api {
  constructor(
    private readonly token?: string,
    private readonly reach: Reach = { fetch: (...a) => fetch(...a), nowMs: () => Date.now() },
  ) {}

  async join(request: JoinRequest): Promise<JoinAnswer> {
    const answer = await this.ask<JoinAnswer>("POST", "/sync/join", request);
    return checked(answer.body, typeof answer.body?.token === "string" && Array.isArray(answer.body.pupils));
  }

  async claim(request: ClaimRequest): Promise<{ bundle: LessonBundle; tag?: string }> {
    return bundleOf(await this.ask<LessonBundle>("POST", "/sync/claim", request, 30_000));
  }

  /** The bundle as it is now; none where it still is what `tag` names. */
  async bundle(tag?: string): Promise<{ bundle: LessonBundle; tag?: string } | undefined> {
    const answer = await this.ask<LessonBundle>("GET", "/sync/bundle", undefined, 30_000, tag);
    return answer.status === 304 ? undefined : bundleOf(answer);
  }

  async deliver(batch: EntryBatch): Promise<BatchAnswer> {
    const { body } = await this.ask<BatchAnswer>("POST", "/sync/entries", batch);
    // A gate that answers 200 with a page of its own must never make an entry count as delivered.
    return checked(body, Array.isArray(body?.takenIds) && Array.isArray(body.refused) && isState(body.state));
  }

  async leave(): Promise<FloorState> {
    const { body } = await this.ask<FloorState>("POST", "/sync/leave");
    return checked(body, isState(body));
  }

  async orderDevice(deviceId: string, order: DeviceOrder): Promise<DeviceSeen[]> {
    const { body } = await this.ask<DeviceSeen[]>("POST", `/sync/devices/${encodeURIComponent(deviceId)}`, order);
    return checked(body, Array.isArray(body));
  }

  async orderLesson(order: LessonOrder): Promise<FloorState> {
    const { body } = await this.ask<FloorState>("POST", "/sync/lesson", order);
    return checked(body, isState(body));
  }

  /** Has a new code made; the one before joins nobody any more. */
  async renewCode(): Promise<{ code: string; codeUntil: string }> {
    const { body } = await this.ask<{ code: string; codeUntil: string }>("POST", "/sync/code");
    return checked(body, typeof body?.code === "string" && typeof body.codeUntil === "string");
  }

  /** The stream of events, open: its body is read by `readEvents`. */
  async events(signal: AbortSignal): Promise<ReadableStream<Uint8Array>> {
    const response = await this.send("GET", "/sync/events", undefined, signal);
    if (response.status !== 200 || !response.headers.get("content-type")?.startsWith("text/event-stream") || !response.body) throw await problemOf(response);
    return response.body;
  }

  private async ask<T>(method: string, path: string, body?: unknown, timeoutMs = 15_000, tag?: string): Promise<{ status: number; body: T; tag?: string }> {
    const stop = new AbortController();
    const timer = setTimeout(() => stop.abort(), timeoutMs);
    try {
      const asked = this.reach.nowMs();
      const response = await this.send(method, path, body, stop.signal, tag);
      if (response.status === 304) return { status: 304, body: undefined as T };
      if (!response.ok || !isJson(response)) throw await problemOf(response);
      const value = (await response.json()) as T & { state?: FloorState; serverNow?: string };
      const serverNow = value?.state?.serverNow ?? value?.serverNow;
      if (serverNow) learnClock(serverNow, asked, this.reach.nowMs());
      const newTag = response.headers.get("etag");
      return { status: response.status, body: value, ...(newTag && { tag: newTag }) };
    } catch (failure) {
      if (failure instanceof Problem) throw failure;
      // An answer that broke off is no answer: whether the server did it is found out by asking again.
      throw new Problem("offline", String(failure));
    } finally {
      clearTimeout(timer);
    }
  }

  private async send(method: string, path: string, body: unknown, signal: AbortSignal, tag?: string): Promise<Response> {
    try {
      return await this.reach.fetch(path, {
        method,
        signal,
        cache: "no-store",
        credentials: "omit",
        redirect: "error",
        headers: {
          Accept: path === "/sync/events" ? "text/event-stream" : "application/json",
          "Accept-Language": language.peek(),
          ...(body !== undefined && { "Content-Type": "application/json" }),
          ...(this.token !== undefined && { Authorization: `Bearer ${this.token}` }),
          ...(tag !== undefined && { "If-None-Match": tag }),
        },
        ...(body !== undefined && { body: JSON.stringify(body) }),
      });
    } catch (failure) {
      throw new Problem("offline", String(failure));
    }
  }
}

async function problemOf(response: Response): Promise<Problem> {
  if (isJson(response)) {
    const said = (await response.json().catch(() => undefined)) as FloorProblem | undefined;
    if (typeof said?.code === "string") return new Problem(said.code, said.title, response.status, isState(said.state) ? said.state : undefined);
  }
  return new Problem("unreadable", undefined, response.status);
}

function bundleOf(answer: { body: LessonBundle; tag?: string }): { bundle: LessonBundle; tag?: string } {
  const bundle = checked(answer.body, typeof answer.body?.lessonId === "string" && Array.isArray(answer.body.tasks));
  if ((bundle.format ?? bundleFormat) !== bundleFormat) throw new Problem("bundleNewer");
  return { bundle, ...(answer.tag !== undefined && { tag: answer.tag }) };
}

function isJson(response: Response): boolean {
  return /^application\/(problem\+)?json/.test(response.headers.get("content-type") ?? "");
}

function isState(value: unknown): value is FloorState {
  return typeof (value as FloorState | undefined)?.serverNow === "string";
}

function checked<T>(value: T, isOurs: boolean): T {
  if (!isOurs) throw new Problem("unreadable");
  return value;
}
