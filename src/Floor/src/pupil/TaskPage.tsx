import type { TaskSheet } from "../lesson/pupilSheet";
import { Figure } from "../ui/Figure";
import { Mark } from "../ui/Mark";
import { say } from "../words/say";
import { SheetPage } from "./SheetPage";
import { tell } from "./tell";
import type { PupilView } from "./view";

/** Which task: the order is the pupil's. */
export function TaskPage({ view }: { readonly view: PupilView }) {
  const { session, sheet, bundle, isPartner, name } = view;
  // A task that is done leads to what was done in it: a card that does nothing would be tapped again and again.
  const open = ({ task, step }: TaskSheet) => {
    if (step.kind === "finished") session.isMine.value = true;
    else session.taskId.value = task.taskId;
  };
  return (
    <SheetPage view={view} title={tell(isPartner, "PupilTask", name)} above={bundle.sheetTitle} step="task">
      <ul class="choice tasks" style="--card:16rem">
        {sheet.tasks.map((t) => (
          <li key={t.task.taskId}>
            <button type="button" class="card task" onClick={() => open(t)}>
              <FirstFigure view={view} task={t} />
              <span class="words">
                <strong>{t.task.name}</strong>
                {t.task.purpose && <span>{t.task.purpose}</span>}
                {t.adaptation && <span>{t.adaptation}</span>}
                <span class="muted">{stateWords(view, t)}</span>
              </span>
            </button>
          </li>
        ))}
      </ul>
    </SheetPage>
  );
}

function FirstFigure({ view, task }: { readonly view: PupilView; readonly task: TaskSheet }) {
  const keys = task.levels.map((l) => l.level.figureKey);
  const figure = view.bundle.figures.find((f) => keys.includes(f.key));
  return figure ? <Figure figure={figure} description="" /> : null;
}

function stateWords(view: PupilView, { step }: TaskSheet) {
  if (step.kind !== "finished") return say("PupilSet", step.setNumber, view.bundle.setCount);
  return (
    <span class="row">
      <Mark name="check" /> {say("PupilTaskDone")}
    </span>
  );
}
