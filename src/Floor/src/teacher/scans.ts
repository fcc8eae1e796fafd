import type { Entry } from "../contracts";

/** One look around the hall. */
export interface Scan {
  readonly engagedCount: number;
  readonly presentCount: number;
  readonly atMs: number;
}

/** The looks around of a lesson, in the order that counts. */
export function scansIn(holding: readonly Entry[]): Scan[] {
  return holding.flatMap(({ fact, madeAt }) =>
    fact.kind === "engagementScan" ? [{ engagedCount: fact.engagedCount, presentCount: fact.presentCount, atMs: Date.parse(madeAt) }] : [],
  );
}
