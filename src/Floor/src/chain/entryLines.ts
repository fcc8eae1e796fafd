import type { Entry } from "../contracts";
import { Problem } from "../sync/problem";

/** Entries one a line, as `slantwise entries add` and the desk read them. */
export function linesOf(entries: readonly Entry[]): string {
  return entries.map((e) => `${JSON.stringify(e)}\n`).join("");
}

/** Reads such lines. Throws a `Problem` where one is no entry: half a file is not brought in. */
export function entriesOfLines(text: string): Entry[] {
  const entries: Entry[] = [];
  for (const line of text.replace(/^\uFEFF/, "").split(/\r?\n/)) {
    if (!line.trim()) continue;
    const entry = parsed(line);
    if (!entry) throw new Problem("notOurs");
    const { receivedAt: _, ...told } = entry;
    entries.push(told);
  }
  if (entries.length === 0) throw new Problem("notOurs");
  return entries;
}

function parsed(line: string): Entry | undefined {
  try {
    const entry = JSON.parse(line) as Partial<Entry>;
    const isEntry =
      [entry.id, entry.schoolId, entry.lessonId, entry.deviceId, entry.madeAt].every((text) => typeof text === "string") &&
      Number.isInteger(entry.deviceSequence) &&
      typeof entry.fact?.kind === "string";
    return isEntry ? (entry as Entry) : undefined;
  } catch {
    return undefined;
  }
}
