import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";

type Handler = (event: Record<string, unknown>) => void;

const origin = "https://slantwise.example";
const handlers = new Map<string, Handler>();
const stores = new Map<string, Map<string, string>>();
const asked: { url: string; cache: string }[] = [];
const calls: string[] = [];

const cacheOf = (name: string) => {
  const store = stores.get(name) ?? new Map<string, string>();
  stores.set(name, store);
  return {
    addAll: async (requests: Request[]) => {
      for (const request of requests) {
        asked.push({ url: request.url, cache: request.cache });
        store.set(request.url, `kept ${name}`);
      }
    },
    match: async (request: Request | string, options: { ignoreSearch: boolean }) => {
      const url = new URL(typeof request === "string" ? request : request.url);
      if (options.ignoreSearch) url.search = "";
      const body = store.get(url.href);
      return body === undefined ? undefined : new Response(body);
    },
  };
};

beforeAll(async () => {
  vi.stubGlobal("__VERSION__", "new");
  vi.stubGlobal("__FILES__", ["./", "assets/a.js"]);
  vi.stubGlobal("self", {
    addEventListener: (name: string, handler: Handler) => void handlers.set(name, handler),
    location: { origin },
    registration: { scope: `${origin}/floor/` },
    skipWaiting: () => void calls.push("skipWaiting"),
    clients: { claim: () => void calls.push("claim") },
  });
  vi.stubGlobal("caches", { open: async (name: string) => cacheOf(name), keys: async () => [...stores.keys()], delete: async (name: string) => stores.delete(name) });
  vi.stubGlobal("fetch", async (request: Request) => new Response(`network ${request.url}`));
  // It is checked with a worker's types, not with these.
  const path = "../src/worker/sw.ts";
  await import(/* @vite-ignore */ path);
});

afterAll(() => vi.unstubAllGlobals());
beforeEach(() => void (calls.length = 0));

async function fire(name: string, part: Record<string, unknown> = {}): Promise<void> {
  const waits: Promise<unknown>[] = [];
  handlers.get(name)!({ waitUntil: (work: Promise<unknown>) => waits.push(work), ...part });
  await Promise.all(waits);
}

/** What the worker answers; none where it leaves the request to the network. */
async function answer(path: string, part: { method?: string; mode?: string } = {}): Promise<string | undefined> {
  let answered: Promise<Response> | undefined;
  const request = { url: new URL(path, origin).href, method: "GET", mode: "cors", ...part };
  await fire("fetch", { request, respondWith: (response: Promise<Response>) => (answered = response) });
  return answered && (await (await answered).text());
}

describe("The worker", () => {
  it("keeps all files of its version, past the browser's own cache, and takes nothing over", async () => {
    await fire("install");
    expect(asked).toEqual([
      { url: `${origin}/floor/`, cache: "no-cache" },
      { url: `${origin}/floor/assets/a.js`, cache: "no-cache" },
    ]);
    expect(calls).toEqual([]);
  });

  it("answers every page under /floor/ with the page it keeps, and parts that it keeps", async () => {
    for (const path of ["/floor/", "/floor/teacher?x=1", "/floor/board"]) expect(await answer(path, { mode: "navigate" })).toBe("kept slantwise-floor-new");
    expect(await answer("/floor/assets/a.js")).toBe("kept slantwise-floor-new");
    expect(await answer("/floor/assets/other.js")).toBe(`network ${origin}/floor/assets/other.js`);
  });

  it("never touches what is said to the server, the desk, or another origin", async () => {
    for (const path of ["/sync/entries", "/sync/events", "/sync/bundle", "/", "/lessons", "https://elsewhere.example/floor/"]) expect(await answer(path), path).toBeUndefined();
    expect(await answer("/floor/", { method: "POST" })).toBeUndefined();
  });

  it("removes other versions of these pages once it is in charge, and nothing else", async () => {
    cacheOf("slantwise-floor-old");
    cacheOf("somebody else's");
    await fire("activate");
    expect([...stores.keys()].sort()).toEqual(["slantwise-floor-new", "somebody else's"]);
    expect(calls).toEqual(["claim"]);
  });

  it("takes over only when a page asks it to", async () => {
    await fire("message", { data: "else" });
    expect(calls).toEqual([]);
    await fire("message", { data: "takeOver" });
    expect(calls).toEqual(["skipWaiting"]);
  });
});
