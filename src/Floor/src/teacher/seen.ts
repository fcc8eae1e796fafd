import type { BundlePupil, Entry } from "../contracts";

/** How often the teacher has talked with a pupil in this lesson, and when last. */
export interface Seen {
  readonly visitCount: number;
  /** Milliseconds since 1970 by the clock that noted it; none before the first visit. */
  readonly lastAtMs?: number;
}

const never: Seen = { visitCount: 0 };

/**
 * Who has been seen, by pupil.
 * @param holding The entries that hold, any order.
 */
export function seenBy(holding: readonly Entry[]): ReadonlyMap<string, Seen> {
  const seen = new Map<string, Seen>();
  for (const { fact, pupilId, madeAt } of holding) {
    if (fact.kind !== "visit" || pupilId === undefined) continue;
    const before = seen.get(pupilId) ?? never;
    seen.set(pupilId, { visitCount: before.visitCount + 1, lastAtMs: Math.max(before.lastAtMs ?? 0, Date.parse(madeAt)) });
  }
  return seen;
}

/** A pupil's part of it; nobody is missing. */
export function seenOf(seen: ReadonlyMap<string, Seen>, pupilId: string): Seen {
  return seen.get(pupilId) ?? never;
}

/**
 * Pupils in the order to look for them: those seen least, then those seen longest ago, then by label; those who are absent last.
 * It says whom the teacher has talked with, and nothing of how a pupil does.
 */
export function tileOrder(pupils: readonly BundlePupil[], seen: ReadonlyMap<string, Seen>, absent: ReadonlySet<string>): string[] {
  const byLabel = new Intl.Collator(undefined, { numeric: true, sensitivity: "base" });
  return [...pupils]
    .sort((a, b) => {
      const [s, t] = [seenOf(seen, a.pupilId), seenOf(seen, b.pupilId)];
      return (
        Number(absent.has(a.pupilId)) - Number(absent.has(b.pupilId)) ||
        s.visitCount - t.visitCount ||
        (s.lastAtMs ?? 0) - (t.lastAtMs ?? 0) ||
        byLabel.compare(a.label, b.label) ||
        (a.pupilId < b.pupilId ? -1 : 1)
      );
    })
    .map((p) => p.pupilId);
}

/** An order that stays under a finger: whoever was there keeps the place, whoever came is put last, whoever left is left out. */
export function keptOrder(settled: readonly string[], fresh: readonly string[]): string[] {
  const [there, before] = [new Set(fresh), new Set(settled)];
  return [...settled.filter((id) => there.has(id)), ...fresh.filter((id) => !before.has(id))];
}
