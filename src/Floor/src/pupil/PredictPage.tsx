import { useState } from "preact/hooks";
import type { FactOf, Step, TaskSheet } from "../lesson/pupilSheet";
import { Button } from "../ui/Button";
import { Choice } from "../ui/Choice";
import { doseWords } from "../ui/doseWords";
import { say } from "../words/say";
import { mostHoldS } from "./holdTimer";
import { SheetPage } from "./SheetPage";
import { tell } from "./tell";
import type { PupilView } from "./view";

export interface PredictPageProps {
  readonly view: PupilView;
  readonly sheet: TaskSheet;
  readonly step: Extract<Step, { kind: "predict" }>;
}

/** What the pupil expects of the set: how many will work, or how long the longest hold will be. */
export function PredictPage({ view, sheet, step }: PredictPageProps) {
  const { session, bundle, isPartner, name } = view;
  const [holdS, setHoldS] = useState<number>();
  const { taskId } = sheet.task;
  const isHold = bundle.predicts === "holdS";
  const save = async (said: Omit<FactOf<"prediction">, "kind">) => {
    await session.save([[{ pupilId: view.sheet.pupil.pupilId, taskId, setNumber: step.setNumber }, { kind: "prediction", ...said }]]);
  };
  const stepTo = (by: number) => setHoldS(Math.min(mostHoldS, Math.max(0, Math.round(holdS ?? 0) + by)));
  return (
    <SheetPage
      view={view}
      title={isHold ? tell(isPartner, "PupilPredictHold", name) : tell(isPartner, "PupilPredictCount", name, bundle.trialCount)}
      above={`${say("PupilLevel", step.chosen.number)} · ${doseWords(step.chosen.level)}`}
      step={`predict-${taskId}-${step.setNumber}`}
      foot={
        <>
          <Button kind="quiet" onPress={() => session.pass(taskId, step.setNumber, "predict")}>
            {say("PupilPredictNone")}
          </Button>
          {isHold && (
            <Button kind="main" isLarge isDisabled={holdS === undefined} onPress={() => (holdS === undefined ? undefined : save({ holdS }))}>
              {holdS === undefined ? say("PupilPredictPick") : say("PupilPredictSay", holdS)}
            </Button>
          )}
        </>
      }
    >
      {isHold ? (
        <>
          <div class="stepper">
            <Button isLarge mark="minus" label={say("PupilSecondLess")} isDisabled={!holdS} onPress={() => stepTo(-1)} />
            <output class="numbers">{holdS === undefined ? "…" : `${holdS} s`}</output>
            <Button isLarge mark="plus" label={say("PupilSecondMore")} onPress={() => stepTo(1)} />
          </div>
          <Choice label={say("PupilPredictPick")} chosen={holdS} onChoose={setHoldS} cardWidth="5rem" options={ladderS(step.chosen.level.doseAmount).map((s) => ({ value: s, face: <span class="rung">{s}</span> }))} />
        </>
      ) : (
        <ul class="choice counts" style="--card:4.5rem">
          {Array.from({ length: bundle.trialCount + 1 }, (_, n) => (
            <li key={n}>
              <button type="button" class="card centred" onClick={() => save({ successCount: n })}>
                <span class="count">{n}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </SheetPage>
  );
}

/** Seconds to pick from, far enough past what the level asks that it stands in the middle of nothing. */
export function ladderS(doseS: number): number[] {
  return [1, 2, 3, 5, 8, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 300, 450, 600].filter((s) => s <= Math.max(20, Math.min(mostHoldS, 4 * doseS)));
}
