import { useState } from "preact/hooks";
import type { NextLevel } from "../contracts";
import type { Step, TaskSheet } from "../lesson/pupilSheet";
import { Button } from "../ui/Button";
import { Mark } from "../ui/Mark";
import { say } from "../words/say";
import { nextWords } from "./nextWords";
import { OwnWords } from "./OwnWords";
import { reasonKeys } from "./reasons";
import { SheetPage } from "./SheetPage";
import { tell } from "./tell";
import { Tries } from "./Tries";
import type { PupilView } from "./view";

export interface DecidePageProps {
  readonly view: PupilView;
  readonly sheet: TaskSheet;
  readonly step: Extract<Step, { kind: "decide" }>;
  readonly onDecided: () => void;
}

/** The same, harder or easier, and why. What the pupil did stands beside it; what to make of it is the pupil's. */
export function DecidePage({ view, sheet, step, onDecided }: DecidePageProps) {
  const { session, isPartner, name, bundle } = view;
  const [next, setNext] = useState<NextLevel>();
  const { task } = sheet;
  const set = sheet.sets[step.setNumber - 1]!;
  const above = `${task.name} · ${say("PupilSet", step.setNumber, bundle.setCount)} · ${say("PupilLevel", step.chosen.number)}`;
  const save = async (reason: string) => {
    if (!next) return;
    const about = { pupilId: view.sheet.pupil.pupilId, taskId: task.taskId, setNumber: step.setNumber };
    if (await session.save([[about, { kind: "decision", next, ...(reason && { reason }) }]])) onDecided();
  };

  if (next) {
    return (
      <SheetPage
        view={view}
        title={tell(isPartner, "PupilWhy", name)}
        above={nextWords(next)}
        step={`why-${task.taskId}-${step.setNumber}`}
        onUndo={() => setNext(undefined)}
        foot={
          <>
            <Button kind="quiet" mark="back" onPress={() => setNext(undefined)}>
              {say("PupilWhyAgain")}
            </Button>
            <Button onPress={() => save("")}>{say("PupilWhyNone")}</Button>
          </>
        }
      >
        <ul class="choice reasons" style="--card:16rem">
          {reasonKeys(next, set).map((key) => (
            <li key={key}>
              <button type="button" class="card" onClick={() => void save(say(key))}>
                {say(key)}
              </button>
            </li>
          ))}
        </ul>
        <OwnWords onSave={save} />
      </SheetPage>
    );
  }

  const first = sheet.levels[0]!;
  const last = sheet.levels[sheet.levels.length - 1]!;
  const options = (["easier", "same", "harder"] as const).filter((o) => (o === "easier" ? step.chosen.number > first.number : o === "harder" ? step.chosen.number < last.number : true));
  return (
    <SheetPage
      view={view}
      title={tell(isPartner, step.setNumber < bundle.setCount ? "PupilDecide" : "PupilDecideLast", name)}
      above={above}
      step={`decide-${task.taskId}-${step.setNumber}`}
    >
      <Tries trials={set.trials} />
      <ul class="choice wide" style="--card:10.5rem">
        {options.map((option) => (
          <li key={option}>
            <button type="button" class="card centred large" data-next={option} onClick={() => void (session.isBouncing || setNext(option))}>
              <Mark name={option} />
              {nextWords(option)}
            </button>
          </li>
        ))}
      </ul>
    </SheetPage>
  );
}
