import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { longestHoldS, type SetSheet, type TaskSheet } from "../lesson/pupilSheet";
import { Button } from "../ui/Button";
import { doseWords, numberWords } from "../ui/doseWords";
import { say } from "../words/say";
import { nextWords } from "./nextWords";
import { OwnWords } from "./OwnWords";
import { SheetPage } from "./SheetPage";
import { Tries } from "./Tries";
import type { PupilView } from "./view";

/** The pupil's own page: chosen, said, done, seen, decided; beside nobody else's. */
export function MyPage({ view }: { readonly view: PupilView }) {
  const { sheet, bundle } = view;
  const written = sheet.tasks.filter((t) => t.sets.some(isWritten));
  return (
    <SheetPage
      view={view}
      title={say("PupilMine")}
      above={bundle.sheetTitle}
      step="mine"
      foot={footOf(view)}
    >
      {written.length === 0 && <p>{say("PupilMineEmpty")}</p>}
      {written.map((t) => (
        <TaskPart key={t.task.taskId} view={view} sheet={t} />
      ))}
    </SheetPage>
  );
}

function footOf({ session, sheet, bundle, isOver, onLeave }: PupilView): ComponentChildren {
  const isDone = isOver || sheet.tasks.every((t) => t.step.kind === "finished");
  if (!isDone) {
    return (
      <Button kind="main" isLarge mark="back" onPress={() => void (session.isMine.value = false)}>
        {say("UiBack")}
      </Button>
    );
  }
  if (bundle.kind === "pair" || bundle.kind === "station") {
    return (
      <Button kind="main" isLarge onPress={() => session.handOver(undefined)}>
        {say("PupilNextPupil")}
      </Button>
    );
  }
  return (
    onLeave && (
      <Button kind="quiet" onPress={onLeave}>
        {say("PupilLeave")}
      </Button>
    )
  );
}

function TaskPart({ view, sheet }: { readonly view: PupilView; readonly sheet: TaskSheet }) {
  const longest = longestHoldS(sheet.sets);
  const decided = [...sheet.sets].reverse().find((s) => s.decision);
  return (
    <section class="mine">
      <h2>{sheet.task.name}</h2>
      {longest !== undefined && (
        <p class="longest">
          {say("PupilMineLongest")} <strong class="numbers">{numberWords(longest)} s</strong>
        </p>
      )}
      {decided && <NextPart view={view} sheet={sheet} set={decided} />}
      <ol class="sets">
        {sheet.sets.filter(isWritten).map((set) => (
          <li key={set.setNumber}>
            <h3>{say("PupilSet", set.setNumber, view.bundle.setCount)}</h3>
            <SetPart view={view} sheet={sheet} set={set} />
          </li>
        ))}
      </ol>
    </section>
  );
}

function SetPart({ view, sheet, set }: { readonly view: PupilView; readonly sheet: TaskSheet; readonly set: SetSheet }) {
  const { chosen, prediction, trials, ticks, decision } = set;
  const seen = sheet.task.cues.filter((_, i) => ticks.get(i + 1));
  return (
    <dl>
      {chosen && (
        <div>
          <dt>{say("PupilMineChose")}</dt>
          <dd>
            {say("PupilLevel", chosen.number)}, {doseWords(chosen.level)}
          </dd>
        </div>
      )}
      {prediction && (
        <div>
          <dt>{say("PupilMineSaid")}</dt>
          <dd>{prediction.holdS !== undefined ? `${numberWords(prediction.holdS)} s` : say("PupilMineOf", prediction.successCount ?? "", view.bundle.trialCount)}</dd>
        </div>
      )}
      {trials.length > 0 && (
        <div>
          <dt>{say("PupilMineDid")}</dt>
          <dd>
            <Tries trials={trials} />
          </dd>
        </div>
      )}
      {ticks.size > 0 && (
        <div>
          <dt>{say("PupilMineSaw")}</dt>
          <dd>{seen.length > 0 ? seen.map((cue) => <p key={cue}>{cue}</p>) : say("PupilNotSeen")}</dd>
        </div>
      )}
      {decision && (
        <div>
          <dt>{say("PupilMineDecided")}</dt>
          <dd>
            {nextWords(decision.next)}
            {decision.reason && `: ${decision.reason}`}
          </dd>
        </div>
      )}
    </dl>
  );
}

/** What the pupil wants to try next: the last decision. Its words can be changed here, and are the decision's reason from then on. */
function NextPart({ view, sheet, set }: { readonly view: PupilView; readonly sheet: TaskSheet; readonly set: SetSheet }) {
  const [isWriting, setWriting] = useState(false);
  const { next, reason = "" } = set.decision!;
  const save = async (words: string) => {
    const about = { pupilId: view.sheet.pupil.pupilId, taskId: sheet.task.taskId, setNumber: set.setNumber };
    if (await view.session.save([[about, { kind: "decision", next, reason: words }]])) setWriting(false);
  };
  return (
    <div class="next">
      <p>
        {say("PupilMineNext")}: <strong>{nextWords(next)}</strong>
      </p>
      {reason && <p class="quote">{reason}</p>}
      {view.isOver ? null : isWriting ? (
        <OwnWords first={reason} onSave={save} />
      ) : (
        <Button kind="quiet" onPress={() => setWriting(true)}>
          {say("PupilMineOwn")}
        </Button>
      )}
    </div>
  );
}

function isWritten(set: SetSheet): boolean {
  return !!set.chosen || set.isChoiceGone || set.trials.length > 0 || set.ticks.size > 0 || !!set.decision;
}
