// Keeps the pages of one version on the device, so that they start without a network. It never touches /sync, and it never takes over from the
// version that a page is running: that page's later parts lie in the cache of its own version until the page has ended.

declare const __VERSION__: string;
declare const __FILES__: readonly string[];

const worker = self as unknown as ServiceWorkerGlobalScope;
const prefix = "slantwise-floor-";
const own = prefix + __VERSION__;

worker.addEventListener("install", (event) => {
  event.waitUntil(keepAll());
});

worker.addEventListener("activate", (event) => {
  event.waitUntil(forgetOthers());
});

worker.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== worker.location.origin || !url.pathname.startsWith("/floor/")) return;
  event.respondWith(answer(request));
});

// A page asks for this on its start screen only, never during a lesson.
worker.addEventListener("message", (event) => {
  if (event.data === "takeOver") void worker.skipWaiting();
});

async function keepAll(): Promise<void> {
  const cache = await caches.open(own);
  // Past the browser's own cache: what is kept here must be what the server has now.
  await cache.addAll(__FILES__.map((file) => new Request(new URL(file, worker.registration.scope), { cache: "no-cache" })));
}

async function forgetOthers(): Promise<void> {
  for (const name of await caches.keys()) if (name.startsWith(prefix) && name !== own) await caches.delete(name);
  // The page that brought this worker in has parts to load yet, perhaps when the network is gone.
  await worker.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(own);
  const asked = request.mode === "navigate" ? worker.registration.scope : request;
  return (await cache.match(asked, { ignoreSearch: request.mode === "navigate", ignoreVary: true })) ?? fetch(request);
}

export {};
