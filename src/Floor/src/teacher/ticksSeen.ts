import type { SetPlace } from "./sampleCheck";

/**
 * Whose ticks the teacher has looked at on this device: a check after that is not blind. Kept for the tab, so that a reload does not
 * forget it; a place where nothing can be kept remembers until then.
 */
export class TicksSeen {
  private readonly key: string;
  private readonly places: Set<string>;

  constructor(lessonId: string, private readonly store: Pick<Storage, "getItem" | "setItem"> | undefined) {
    this.key = `ticks-seen-${lessonId}`;
    this.places = new Set((read(store, this.key) ?? "").split(" ").filter((p) => p !== ""));
  }

  has(place: SetPlace): boolean {
    return this.places.has(nameOf(place));
  }

  add(place: SetPlace): void {
    this.places.add(nameOf(place));
    try {
      this.store?.setItem(this.key, [...this.places].join(" "));
    } catch {
      // A full or forbidden store: it is remembered until the page is left.
    }
  }
}

function nameOf({ pupilId, taskId, setNumber }: SetPlace): string {
  return `${pupilId}|${taskId}|${setNumber}`;
}

function read(store: Pick<Storage, "getItem"> | undefined, key: string): string | null {
  try {
    return store?.getItem(key) ?? null;
  } catch {
    return null;
  }
}
