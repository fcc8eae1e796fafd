import { useEffect } from "preact/hooks";

/** Keeps the screen awake while something is on it, where the browser can. */
export function useWakeLock(): void {
  useEffect(() => {
    if (!("wakeLock" in navigator)) return;
    let lock: WakeLockSentinel | undefined;
    let isGone = false;
    const take = async () => {
      if (document.visibilityState !== "visible") return;
      // Refused when the battery is low or the page is hidden again: then the screen sleeps as it would have.
      const taken = await navigator.wakeLock.request("screen").catch(() => undefined);
      if (isGone) void taken?.release();
      else lock = taken;
    };
    void take();
    document.addEventListener("visibilitychange", take);
    return () => {
      isGone = true;
      document.removeEventListener("visibilitychange", take);
      void lock?.release();
    };
  }, []);
}
