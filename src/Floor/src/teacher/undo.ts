import type { Entry, EntryFact } from "../contracts";
import type { About, Floor } from "../lesson/floor";
import { current, isEvent, slotOf } from "../lesson/log";

/** Takes back one step of the teacher's: each answer becomes what it was before, or nothing where it was nothing. */
export type Undo = () => Promise<void>;

/**
 * Puts facts and says how to take the step back.
 * @returns None where everything held already, so that there is nothing to take back.
 */
export async function putWithUndo(floor: Floor, facts: readonly (readonly [About, EntryFact])[]): Promise<Undo | undefined> {
  const known = new Set(floor.log.value.map((e) => e.id));
  const before = new Map(current(floor.log.value).filter((e) => !isEvent(e.fact)).map((e) => [slotOf(e, e.fact), e]));
  await floor.putAll(facts);
  const wanted = new Set(facts.map(([about, fact]) => step(about, fact)));
  const made = floor.log.value.filter((e) => !known.has(e.id) && wanted.has(step(e, e.fact)));
  if (made.length === 0) return undefined;
  return async () => {
    for (const entry of made) {
      const stood = before.get(slotOf(entry, entry.fact));
      if (stood && !isEvent(entry.fact)) await floor.put(aboutOf(stood), stood.fact);
      else await floor.takeBack(entry);
    }
  };
}

/** Puts a visit again with a note to it; the first one is taken back in the same step. */
export async function putNoteToVisit(floor: Floor, visit: Entry, note: string): Promise<void> {
  if (visit.fact.kind !== "visit") return;
  await floor.putAll([[visit, { kind: "withdrawal" }], [aboutOf(visit), { ...visit.fact, note }]]);
}

function aboutOf({ pupilId, taskId, setNumber, trialNumber }: Entry): About {
  return {
    ...(pupilId !== undefined && { pupilId }),
    ...(taskId !== undefined && { taskId }),
    ...(setNumber !== undefined && { setNumber }),
    ...(trialNumber !== undefined && { trialNumber }),
  };
}

function step(about: About, fact: EntryFact): string {
  return slotOf(about, fact) + JSON.stringify(Object.entries(fact).sort());
}
