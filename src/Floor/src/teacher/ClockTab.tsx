import { clockText } from "../board/serverClock";
import { Button } from "../ui/Button";
import { say } from "../words/say";
import { plannedAt } from "./phaseClock";
import { scansIn } from "./scans";
import { ago, phaseWords } from "./teacherWords";
import type { Teaching } from "./teaching";

/** One big button a phase; each carries its own share of the lesson so far, and of the plan below it. */
export function ClockTab({ teaching }: { readonly teaching: Teaching }) {
  const clock = teaching.clock.value;
  const plan = teaching.floor.bundle.value.phases;
  const planned = plan.length > 0 && clock.running ? plannedAt(plan, clock.totalS) : undefined;
  const scan = scansIn(teaching.holding.value).at(-1);
  return (
    <section class="tab" aria-label={say("TeacherTabClock")}>
      <h1 class="tab-head">
        {clock.running ? say("TeacherClockRuns", clockText(clock.totalS)) : say("TeacherClockHow")}
        {planned && <span class="small muted">{say("TeacherClockPlan", say(phaseWords[planned.phase]), planned.note)}</span>}
      </h1>
      <div class="phases">
        {clock.shares.map((share) => {
          const isRunning = share.phase === clock.running;
          return (
            <button
              key={share.phase}
              type="button"
              class="phase"
              data-phase={share.phase}
              aria-pressed={isRunning}
              onClick={() => isRunning || void teaching.write(say("TeacherSaidPhase", say(phaseWords[share.phase])), [[{}, { kind: "phaseMark", phase: share.phase }]])}
            >
              <span class="phase-name">
                {isRunning && <i class="phase-now" />}
                {say(phaseWords[share.phase])}
              </span>
              <span class="phase-time numbers">{isRunning ? clockText(clock.runningS) : ""}</span>
              <span class="phase-share" style={{ "--share": share.elapsedFraction, "--plan": share.plannedFraction }}>
                <i class="phase-live" />
                {share.plannedFraction > 0 && <i class="phase-plan" />}
              </span>
              <span class="phase-words">
                {say("TeacherPhaseSoFar", Math.round(share.elapsedS / 60))}
                {plan.length > 0 && ` · ${share.plannedMin > 0 ? say("TeacherPhasePlanned", share.plannedMin) : say("TeacherPhaseNotPlanned")}`}
              </span>
            </button>
          );
        })}
      </div>
      <div class="scan-line">
        <p>{scan ? say("TeacherScanLast", scan.engagedCount, scan.presentCount, ago(scan.atMs, teaching.calmNowMs.value)) : say("TeacherScanNone")}</p>
        <Button isLarge onPress={() => teaching.open({ tab: "clock", over: "scan" })}>{say("TeacherScan")}</Button>
      </div>
    </section>
  );
}
