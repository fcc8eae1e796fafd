import { useState } from "preact/hooks";
import type { BundleTask, NextLevel } from "../contracts";
import { doseWords, numberWords } from "../ui/doseWords";
import { Mark } from "../ui/Mark";
import { say, type WordKey } from "../words/say";
import { cuePairs } from "./sampleCheck";
import type { PupilSet } from "./pupilSets";
import type { Teaching } from "./teaching";

const nextWords: Readonly<Record<NextLevel, WordKey>> = { same: "TeacherNextSame", harder: "TeacherNextHarder", easier: "TeacherNextEasier" };

export interface SetToldProps {
  readonly teaching: Teaching;
  readonly pupilId: string;
  readonly set: PupilSet;
  readonly tasks: readonly BundleTask[];
}

/** A set in a few lines: level, prediction, tries, decision. The pupil's ticks stay closed until the teacher opens them, and that is remembered. */
export function SetTold({ teaching, pupilId, set, tasks }: SetToldProps) {
  const place = { pupilId, taskId: set.taskId, setNumber: set.setNumber };
  const [isOpen, setOpen] = useState(false);
  const task = tasks.find((t) => t.taskId === set.taskId);
  const level = task?.levels.find((l) => l.levelId === set.levelId);
  const heldCount = set.trials.filter((t) => t.isSuccess).length;
  const times = set.trials.filter((t) => t.heldS !== undefined);
  const ticked = isOpen ? cuePairs(task?.cues.length ?? 0, teaching.holding.value, place) : [];
  const open = () => {
    teaching.ticksSeen.add(place);
    setOpen(true);
  };
  return (
    <div class="told">
      <h3>{say("TeacherSetHead", task?.name ?? "", set.setNumber)}</h3>
      <p>{set.levelId === undefined ? say("TeacherNoChoice") : level ? `${level.name} · ${doseWords(level)}` : say("TeacherLevelUnknown")}</p>
      <p>
        {set.predictedCount !== undefined && say("TeacherPredictedCount", set.predictedCount)}
        {set.predictedS !== undefined && say("TeacherPredictedS", numberWords(set.predictedS))}
        {set.predictedCount === undefined && set.predictedS === undefined && say("TeacherPredictedNone")}{" "}
        <strong>{set.trials.length === 0 ? say("TeacherNoTryYet") : say("TeacherHeldOf", heldCount, set.trials.length)}</strong>
        {times.length > 0 && <> {say("TeacherBestS", numberWords(Math.max(...times.map((t) => t.heldS!))))}</>}
      </p>
      {set.trials.length > 0 && (
        <p class="tries" aria-hidden="true">
          {set.trials.map((t) => (
            <span key={t.trialNumber} class={t.isSuccess ? "try held" : "try"}>
              <Mark name={t.isSuccess ? "check" : "minus"} />
              {t.heldS !== undefined && <small>{numberWords(t.heldS)} s</small>}
            </span>
          ))}
        </p>
      )}
      {set.next && (
        <p>
          {say(nextWords[set.next])}
          {set.reason !== "" && <span class="quote">{set.reason}</span>}
        </p>
      )}
      {set.hasTicks && !isOpen && <button type="button" class="link" onClick={open}>{say("TeacherShowTicks")}</button>}
      {isOpen && (
        <ul class="ticks">
          {ticked.map((p) => (
            <li key={p.cueNumber}>
              <Mark name={p.isTicked ? "check" : "minus"} />
              <span>{task?.cues[p.cueNumber - 1]}</span>
              <span class="muted small">{p.isTicked === undefined ? say("TeacherTickNone") : say(p.isTicked ? "TeacherTicked" : "TeacherTickOpen")}</span>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
