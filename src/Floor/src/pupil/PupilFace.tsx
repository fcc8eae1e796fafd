import { useLayoutEffect, useMemo } from "preact/hooks";
import type { Floor } from "../lesson/floor";
import { passKey, pupilSheet, type TaskSheet } from "../lesson/pupilSheet";
import { readable } from "../lesson/readable";
import { language, say } from "../words/say";
import { DecidePage } from "./DecidePage";
import { LevelPage } from "./LevelPage";
import { LookPage } from "./LookPage";
import { MyPage } from "./MyPage";
import { PredictPage } from "./PredictPage";
import { Session } from "./session";
import { SheetPage } from "./SheetPage";
import { TaskPage } from "./TaskPage";
import { TryPage } from "./TryPage";
import { useWakeLock } from "./useWakeLock";
import type { PupilView } from "./view";
import { WhoPage } from "./WhoPage";

export interface PupilFaceProps {
  readonly floor: Floor;
  /** The pupil wants to leave the lesson; whoever is asked first is not this face's matter. None: leaving is elsewhere. */
  readonly onLeave?: () => void;
}

/** The lesson as its pupils have it: one thing at a time, from whose turn it is to their own page. */
export function PupilFace({ floor, onLeave }: PupilFaceProps) {
  useWakeLock();
  useLayoutEffect(() => {
    document.documentElement.dataset["face"] = "pupil";
    return () => void delete document.documentElement.dataset["face"];
  }, []);
  const session = useMemo(() => new Session(floor), [floor]);
  const taken = floor.bundle.value;
  const bundle = useMemo(() => readable(taken, language.value), [taken, language.value]);
  const only = bundle.kind === "pupil" && bundle.pupils.length === 1 ? bundle.pupils[0]!.pupilId : undefined;
  if (only !== undefined && session.pupilId.peek() !== only) session.pupilId.value = only;

  const leave = onLeave && { onLeave };
  const pupilId = session.pupilId.value;
  const sheet = pupilId === undefined ? undefined : pupilSheet(bundle, pupilId, floor.log.value, session.passedKeys());
  if (!sheet) return <WhoPage session={session} bundle={bundle} {...leave} />;
  const view: PupilView = { session, bundle, sheet, name: sheet.pupil.label, isPartner: session.isPartner.value, isOver: floor.state.value.closedAt !== undefined, ...leave };
  return <Step view={view} />;
}

function Step({ view }: { readonly view: PupilView }) {
  const { session, sheet, bundle } = view;
  if (sheet.tasks.length === 0) return <SheetPage view={view} title={say("PupilNothing")} step="nothing" />;
  const isFinished = sheet.tasks.every((t) => t.step.kind === "finished");
  if (session.isMine.value || isFinished || view.isOver) return <MyPage view={view} />;

  const taskId = session.taskId.value ?? sheet.openTaskId;
  const here: TaskSheet | undefined = sheet.tasks.length === 1 ? sheet.tasks[0] : sheet.tasks.find((t) => t.task.taskId === taskId);
  if (!here || here.step.kind === "finished") return <TaskPage view={view} />;

  const { step } = here;
  // Another set of another task is another page: nothing chosen on the last one is kept.
  const key = `${sheet.pupil.pupilId}|${here.task.taskId}|${step.setNumber}`;
  const set = here.sets[step.setNumber - 1]!;
  const isLooking = session.looking.value === passKey(sheet.pupil.pupilId, here.task.taskId, step.setNumber, "look");
  if (step.kind === "look" || (step.kind === "decide" && isLooking)) return <LookPage key={key} view={view} sheet={here} set={set} />;
  const onDecided = () => {
    const after = pupilSheet(bundle, sheet.pupil.pupilId, session.floor.log.peek());
    const isDone = after?.tasks.every((t) => t.step.kind === "finished");
    // The tablet goes round after each set; the last set ends on the pupil's own page.
    if (bundle.kind !== "pupil" && !isDone) session.handOver(undefined);
  };
  switch (step.kind) {
    case "choose":
      return <LevelPage key={key} view={view} sheet={here} step={step} />;
    case "predict":
      return <PredictPage key={key} view={view} sheet={here} step={step} />;
    case "try":
      return <TryPage key={key} view={view} sheet={here} step={step} />;
    case "decide":
      return <DecidePage key={key} view={view} sheet={here} step={step} onDecided={onDecided} />;
  }
}
