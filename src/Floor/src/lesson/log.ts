import type { Entry, EntryFact } from "../contracts";
import type { About } from "./floor";

/** The one question an entry answers: two entries in one slot cannot both hold. As `EntrySlot` on the server. */
export function slotOf(about: About, fact: EntryFact): string {
  const cue = fact.kind === "cueTick" || fact.kind === "teacherCheck" ? fact.cueNumber : "";
  return [fact.kind, about.pupilId ?? "", about.taskId ?? "", about.setNumber ?? "", about.trialNumber ?? "", cue].join("|");
}

/** Events, not answers to one question: each one counts. */
export function isEvent(fact: EntryFact): boolean {
  return fact.kind === "visit" || fact.kind === "phaseMark" || fact.kind === "engagementScan" || fact.kind === "note";
}

/**
 * In the order that counts: by receipt, then by device and its own sequence. What has no receipt yet comes last, as what the server will receive next, in the order
 * made here and whatever this device's clock says. (The program, which reads whole logs of other devices, goes by their clocks instead where there is no receipt.)
 * Receipts are all the server's, in UTC and one form, so that their texts sort as their times do.
 */
export function inOrder(entries: readonly Entry[]): Entry[] {
  return [...entries].sort(
    (a, b) =>
      compare(a.receivedAt ?? "9", b.receivedAt ?? "9") ||
      compare(a.deviceId, b.deviceId) ||
      a.deviceSequence - b.deviceSequence ||
      compare(a.id, b.id),
  );
}

/** The entries that hold: superseded ones and withdrawals left out, the last word where two devices wrote about one thing. As `EntryLog.Current` on the server. */
export function current(log: readonly Entry[]): Entry[] {
  const all = inOrder(log);
  const superseded = new Set(all.map((e) => e.supersedesId).filter((id) => id !== undefined));
  const last = new Map<string, Entry>();
  const events: Entry[] = [];
  for (const entry of all) {
    if (superseded.has(entry.id) || entry.fact.kind === "withdrawal") continue;
    if (isEvent(entry.fact)) events.push(entry);
    else last.set(slotOf(entry, entry.fact), entry);
  }
  return inOrder([...events, ...last.values()]);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
