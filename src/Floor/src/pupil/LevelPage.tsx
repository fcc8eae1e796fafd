import { useState } from "preact/hooks";
import type { OfferedLevel, Step, TaskSheet } from "../lesson/pupilSheet";
import { Banner } from "../ui/Banner";
import { Button } from "../ui/Button";
import { Choice } from "../ui/Choice";
import { doseWords } from "../ui/doseWords";
import { Figure } from "../ui/Figure";
import { say } from "../words/say";
import { nextWords } from "./nextWords";
import { SheetPage } from "./SheetPage";
import { tell } from "./tell";
import type { PupilView } from "./view";

export interface LevelPageProps {
  readonly view: PupilView;
  readonly sheet: TaskSheet;
  readonly step: Extract<Step, { kind: "choose" }>;
}

/** The levels side by side. None is chosen before the pupil does; the last choice is marked as what it is. */
export function LevelPage({ view, sheet, step }: LevelPageProps) {
  const { session, bundle, isPartner, name } = view;
  const [levelId, setLevelId] = useState<string>();
  const chosen = sheet.levels.find((l) => l.level.levelId === levelId);
  const before = sheet.sets[step.setNumber - 2];
  const last = [...sheet.sets.slice(0, step.setNumber - 1)].reverse().find((s) => s.chosen)?.chosen;
  const { task } = sheet;
  const save = async () => {
    if (!chosen) return;
    await session.save([[{ pupilId: view.sheet.pupil.pupilId, taskId: task.taskId, setNumber: step.setNumber }, { kind: "choice", levelId: chosen.level.levelId }]]);
  };
  return (
    <SheetPage
      view={view}
      title={tell(isPartner, step.isAgain ? "PupilAgain" : "PupilLevels", name)}
      above={`${task.name} · ${say("PupilSet", step.setNumber, bundle.setCount)}`}
      step={`level-${task.taskId}-${step.setNumber}`}
      foot={
        <>
          {view.sheet.tasks.length > 1 && (
            <Button kind="quiet" mark="back" onPress={() => void (session.taskId.value = undefined)}>
              {say("PupilOtherTask")}
            </Button>
          )}
          <Button kind="main" isLarge isDisabled={!chosen} onPress={save}>
            {chosen ? tell(isPartner, "PupilTake", name, chosen.number) : say("PupilTakeNone")}
          </Button>
        </>
      }
    >
      {sheet.adaptation && <p>{sheet.adaptation}</p>}
      {task.caution && <Banner kind="caution">{task.caution}</Banner>}
      {before?.decision && <p class="muted">{tell(isPartner, "PupilSaid", name, before.setNumber, nextWords(before.decision.next))}</p>}
      <Choice
        label={say("PupilLevelsLabel")}
        chosen={levelId}
        onChoose={setLevelId}
        cardWidth="var(--level-card)"
        options={sheet.levels.map((l) => ({ value: l.level.levelId, face: <LevelFace view={view} offered={l} isLast={l === last} /> }))}
      />
    </SheetPage>
  );
}

function LevelFace({ view, offered, isLast }: { readonly view: PupilView; readonly offered: OfferedLevel; readonly isLast: boolean }) {
  const { level, number } = offered;
  const figure = view.bundle.figures.find((f) => f.key === level.figureKey);
  return (
    <span class={`level${figure ? "" : " bare"}`}>
      <strong class="number">
        <span class="unseen">{say("PupilLevel", "")}</span>
        {number}
      </strong>
      {figure && <Figure figure={figure} />}
      <strong class="dose">{doseWords(level)}</strong>
      <span class="how">{level.name}</span>
      {isLast && <span class="tag">{say("PupilLastTime")}</span>}
    </span>
  );
}
