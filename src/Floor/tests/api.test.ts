import { beforeEach, describe, expect, it } from "vitest";
import { Api } from "../src/sync/api";
import { clockOffsetMs, recallClock } from "../src/sync/clock";
import { bundle, state } from "./keptWorld";

let nowMs = Date.parse("2026-03-02T09:00:00Z");

function apiOf(...answers: (Response | Error)[]) {
  const asked: { url: string; init: RequestInit }[] = [];
  const api = new Api("token", {
    nowMs: () => nowMs,
    fetch: (async (url: string, init: RequestInit) => {
      asked.push({ url, init });
      const answer = answers.shift()!;
      if (answer instanceof Error) throw answer;
      return answer;
    }) as typeof fetch,
  });
  return { api, asked };
}

const json = (body: unknown, status = 200, headers: Record<string, string> = {}) =>
  new Response(JSON.stringify(body), { status, headers: { "content-type": status >= 400 ? "application/problem+json" : "application/json; charset=utf-8", ...headers } });

beforeEach(() => recallClock(0));

describe("Api", () => {
  it("shows its token, its language and its batch", async () => {
    const { api, asked } = apiOf(json({ takenIds: [], refused: [], state }));
    await api.deliver({ entries: [], unsentCount: 0 });
    expect(asked[0]).toMatchObject({ url: "/sync/entries", init: { method: "POST", headers: { Authorization: "Bearer token", "Accept-Language": "en" }, body: '{"entries":[],"unsentCount":0}' } });
  });

  it("takes no page of a hotel's or school's gate for an answer", async () => {
    const page = () => new Response("<html>Welcome</html>", { headers: { "content-type": "text/html" } });
    for (const answer of [page(), json({ hello: 1 }), json([]), json({ takenIds: [], refused: [] })]) {
      await expect(apiOf(answer).api.deliver({ entries: [], unsentCount: 0 })).rejects.toMatchObject({ code: "unreadable" });
    }
    await expect(apiOf(new Response("{", { headers: { "content-type": "application/json" } })).api.deliver({ entries: [], unsentCount: 0 })).rejects.toMatchObject({ code: "offline", isPassing: true });
  });

  it("says which problem it is, with the state that came along", async () => {
    const problem = await apiOf(json({ status: 401, title: "No.", code: "tokenInvalid", state }, 401)).api.bundle().catch((p: unknown) => p);
    expect(problem).toMatchObject({ code: "tokenInvalid", title: "No.", status: 401, state, isPassing: false });
    await expect(apiOf(json({}, 500)).api.bundle()).rejects.toMatchObject({ code: "unreadable", isPassing: true });
    await expect(apiOf(new TypeError("Failed to fetch")).api.bundle()).rejects.toMatchObject({ code: "offline", isPassing: true });
  });

  it("asks for a bundle by its tag, and refuses a making it does not know", async () => {
    const { api, asked } = apiOf(json(bundle, 200, { etag: '"a"' }), new Response(null, { status: 304 }), json({ ...bundle, format: 2 }));
    expect(await api.bundle()).toEqual({ bundle, tag: '"a"' });
    expect(await api.bundle('"a"')).toBeUndefined();
    expect(asked[1]!.init.headers).toMatchObject({ "If-None-Match": '"a"' });
    await expect(api.bundle('"a"')).rejects.toMatchObject({ code: "bundleNewer" });
  });

  it("learns how far the server's clock is ahead, and is not misled by one slow answer", async () => {
    const at = (ms: number) => json({ takenIds: [], refused: [], state: { ...state, serverNow: new Date(ms).toISOString() } });
    const deliver = (serverMs: number) => apiOf(at(serverMs)).api.deliver({ entries: [], unsentCount: 0 });
    await deliver(nowMs + 5000);
    expect(clockOffsetMs.value).toBe(5000);
    await deliver(nowMs + 5200);
    await deliver(nowMs + 25_000);
    expect(clockOffsetMs.value).toBe(5200);
    // The device's clock is set back by an hour.
    nowMs -= 3_600_000;
    await deliver(nowMs + 3_605_000);
    expect(clockOffsetMs.value).toBe(3_605_000);
  });
});
