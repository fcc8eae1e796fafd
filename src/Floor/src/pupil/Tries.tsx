import type { TrialAt } from "../lesson/pupilSheet";
import { numberWords } from "../ui/doseWords";
import { Mark } from "../ui/Mark";
import { say } from "../words/say";

export interface TriesProps {
  readonly trials: readonly TrialAt[];
  /** How many there can be; those to come are shown as places. None: only those there are. */
  readonly count?: number;
  /** The one that comes now. */
  readonly now?: number;
}

/** Tries of a set in their order: a tick or an open circle, and the seconds where they were timed. */
export function Tries({ trials, count, now }: TriesProps) {
  const numbers = count === undefined ? trials.map((t) => t.trialNumber) : Array.from({ length: count }, (_, i) => i + 1);
  return (
    <ol class="tries">
      {numbers.map((n) => {
        const trial = trials.find((t) => t.trialNumber === n);
        return (
          <li key={n} class={trial ? "made" : n === now ? "now" : ""} aria-current={n === now ? "step" : undefined}>
            {trial ? (
              <>
                <Mark name={trial.isSuccess ? "check" : "circle"} />
                <span class="unseen">{say(trial.isSuccess ? "PupilYes" : "PupilNotYet")}</span>
                {trial.heldS !== undefined && <span class="numbers">{numberWords(trial.heldS)} s</span>}
              </>
            ) : (
              <span class="numbers">{n}</span>
            )}
          </li>
        );
      })}
    </ol>
  );
}
