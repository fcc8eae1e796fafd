import type { BundlePupil, Entry } from "../contracts";

/** Those marked as absent; whoever is not marked is taken to be here. */
export function absentIn(holding: readonly Entry[]): ReadonlySet<string> {
  const absent = new Set<string>();
  for (const { fact, pupilId } of holding) if (fact.kind === "presence" && pupilId !== undefined && !fact.isPresent) absent.add(pupilId);
  return absent;
}

/** How many of a bundle's pupils are here. */
export function presentCount(pupils: readonly BundlePupil[], absent: ReadonlySet<string>): number {
  return pupils.filter((p) => !absent.has(p.pupilId)).length;
}
