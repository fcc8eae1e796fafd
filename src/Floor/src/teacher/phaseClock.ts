import type { BundlePhase, Entry, PhaseKind } from "../contracts";

/** The phases, in the order the clock shows them. */
export const phases: readonly PhaseKind[] = ["management", "transition", "instruction", "activity", "waiting"];

/** One phase against its plan. */
export interface PhaseShare {
  readonly phase: PhaseKind;
  readonly elapsedS: number;
  /** Of the time the clock has run, 0 to 1; 0 before it runs. */
  readonly elapsedFraction: number;
  /** Minutes planned for the whole lesson; 0 where none are. */
  readonly plannedMin: number;
  /** Of the planned time, 0 to 1; 0 without a plan. */
  readonly plannedFraction: number;
}

/** The lesson's clock at one moment. */
export interface PhaseClock {
  /** What runs now; none before the first mark. */
  readonly running?: PhaseKind;
  /** How long it has run without a break. */
  readonly runningS: number;
  readonly totalS: number;
  /** All five, in the order of `phases`. */
  readonly shares: readonly PhaseShare[];
}

/**
 * The clock from its marks: a phase lasts until the next mark, the last one until now. Two marks of one phase in a row are one.
 * @param holding The entries that hold, in the order that counts; a mark whose clock says it was before the one in front of it takes no time from that.
 */
export function phaseClock(holding: readonly Entry[], plan: readonly BundlePhase[], nowMs: number): PhaseClock {
  const marks = marksIn(holding);
  const elapsedMs = new Map<PhaseKind, number>();
  marks.forEach((mark, i) => {
    const endMs = marks[i + 1]?.atMs ?? Math.max(nowMs, mark.atMs);
    elapsedMs.set(mark.phase, (elapsedMs.get(mark.phase) ?? 0) + endMs - mark.atMs);
  });
  const totalMs = [...elapsedMs.values()].reduce((a, b) => a + b, 0);
  const totalMin = plan.reduce((sum, p) => sum + p.durationMin, 0);
  const last = marks.at(-1);
  return {
    ...(last && { running: last.phase }),
    runningS: last ? Math.max(0, nowMs - last.atMs) / 1000 : 0,
    totalS: totalMs / 1000,
    shares: phases.map((phase) => {
      const plannedMin = plan.filter((p) => p.phase === phase).reduce((sum, p) => sum + p.durationMin, 0);
      const ms = elapsedMs.get(phase) ?? 0;
      return {
        phase,
        elapsedS: ms / 1000,
        elapsedFraction: totalMs > 0 ? ms / totalMs : 0,
        plannedMin,
        plannedFraction: totalMin > 0 ? plannedMin / totalMin : 0,
      };
    }),
  };
}

/** The block of the plan that a lesson is in after so much time by the clock; none past the end of the plan or without one. */
export function plannedAt(plan: readonly BundlePhase[], totalS: number): BundlePhase | undefined {
  let endS = 0;
  return plan.find((block) => (endS += block.durationMin * 60) > totalS);
}

function marksIn(holding: readonly Entry[]): { phase: PhaseKind; atMs: number }[] {
  const marks: { phase: PhaseKind; atMs: number }[] = [];
  for (const { fact, madeAt } of holding) {
    if (fact.kind !== "phaseMark") continue;
    const before = marks.at(-1);
    if (before?.phase === fact.phase) continue;
    marks.push({ phase: fact.phase, atMs: Math.max(Date.parse(madeAt), before?.atMs ?? -Infinity) });
  }
  return marks;
}
