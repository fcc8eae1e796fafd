import { signal } from "@preact/signals";

/** Whether a newer version of these pages is on the device or on the server. It is used at a start without a lesson, never during one. */
export const isNewerThere = signal(false);

let registration: ServiceWorkerRegistration | undefined;
let isStarted = false;

/** Whether a version of these pages is on the device already. */
export function hasWorker(): boolean {
  return "serviceWorker" in navigator && navigator.serviceWorker.controller !== null;
}

/** Keeps this version on the device where the browser may, and watches for the next one. */
export async function startWorker(): Promise<void> {
  if (import.meta.env.MODE !== "production" || !("serviceWorker" in navigator) || !isSecureContext || isStarted) return;
  isStarted = true;
  try {
    registration = await navigator.serviceWorker.register("/floor/sw.js", { scope: "/floor/", updateViaCache: "none" });
  } catch {
    // A browser that may not (a private window): the page works as it does on plain http.
    return;
  }
  const look = () => {
    if (registration?.waiting && navigator.serviceWorker.controller) isNewerThere.value = true;
  };
  look();
  registration.addEventListener("updatefound", () => registration?.installing?.addEventListener("statechange", look));
}

/** Whether these pages start again without a network. */
export function startsWithoutNetwork(): boolean {
  return "serviceWorker" in navigator && isSecureContext;
}

/** The server says which version it has. */
export function compareVersion(serverVersion: string): void {
  if (import.meta.env.MODE === "production" && serverVersion !== "0" && serverVersion !== __FLOOR_VERSION__) isNewerThere.value = true;
}

/** Goes over to the newer version. Only where no lesson is open on this device: the older version's parts are gone afterwards. */
export async function takeNewer(): Promise<void> {
  if (!registration) return location.reload();
  await registration.update().catch(() => undefined);
  const { waiting } = registration;
  if (!waiting) return location.reload();
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
  waiting.postMessage("takeOver");
}
