import { useState } from "preact/hooks";
import type { Step, TaskSheet } from "../lesson/pupilSheet";
import { Banner } from "../ui/Banner";
import { Button } from "../ui/Button";
import { doseWords } from "../ui/doseWords";
import { Mark } from "../ui/Mark";
import { say } from "../words/say";
import { HoldPage } from "./HoldPage";
import { SheetPage } from "./SheetPage";
import { tell } from "./tell";
import { Tries } from "./Tries";
import type { PupilView } from "./view";

export interface TryPageProps {
  readonly view: PupilView;
  readonly sheet: TaskSheet;
  readonly step: Extract<Step, { kind: "try" }>;
}

/** One try: a hold by the timer, anything else, or a hold nobody times, by yes or not yet. */
export function TryPage({ view, sheet, step }: TryPageProps) {
  const { session, bundle, isPartner, name } = view;
  const [isUntimed, setUntimed] = useState(false);
  const { task } = sheet;
  const isHold = step.chosen.level.doseKind === "holdS";
  const { trials } = sheet.sets[step.setNumber - 1]!;
  const above = `${say("PupilLevel", step.chosen.number)} · ${doseWords(step.chosen.level)} · ${say("PupilSet", step.setNumber, bundle.setCount)}`;
  const title = tell(isPartner, "PupilTry", name, step.trialNumber, bundle.trialCount);
  const key = `try-${task.taskId}-${step.setNumber}-${step.trialNumber}`;
  const save = (isSuccess: boolean, heldS?: number) =>
    session.save([
      [
        { pupilId: view.sheet.pupil.pupilId, taskId: task.taskId, setNumber: step.setNumber, trialNumber: step.trialNumber },
        { kind: "trial", isSuccess, ...(heldS !== undefined && { heldS }) },
      ],
    ]);
  const tries = (
    <>
      {sheet.adaptation && <p>{sheet.adaptation}</p>}
      {task.caution && trials.length === 0 && <Banner kind="caution">{task.caution}</Banner>}
      <Tries trials={trials} count={bundle.trialCount} now={step.trialNumber} />
    </>
  );
  const enough = trials.length > 0 && (
    <Button kind="quiet" onPress={() => session.pass(task.taskId, step.setNumber, "try")}>
      {say("PupilEnough")}
    </Button>
  );
  if (isHold && !isUntimed) return <HoldPage view={view} level={step.chosen.level} title={title} above={above} step={key} tries={tries} enough={enough} onSave={save} onUntimed={() => setUntimed(true)} />;
  return (
    <SheetPage
      view={view}
      title={title}
      above={above}
      step={key}
      foot={
        <>
          {isHold && (
            <Button kind="quiet" onPress={() => setUntimed(false)}>
              {say("PupilTimer")}
            </Button>
          )}
          {enough}
        </>
      }
    >
      {tries}
      <p class="ask">
        {tell(isPartner, "PupilDid", name)} <span class="muted">{doseWords(step.chosen.level)}</span>
      </p>
      <ul class="choice wide" style="--card:12rem">
        {[true, false].map((isSuccess) => (
          <li key={String(isSuccess)}>
            <button type="button" class="card centred large" onClick={() => void save(isSuccess)}>
              <Mark name={isSuccess ? "check" : "circle"} />
              {say(isSuccess ? "PupilYes" : "PupilNotYet")}
            </button>
          </li>
        ))}
      </ul>
    </SheetPage>
  );
}
