import { useMemo, useState } from "preact/hooks";
import type { Entry } from "../contracts";
import { Button } from "../ui/Button";
import { say } from "../words/say";
import { NoteField } from "./NoteField";
import { PupilQuestions } from "./PupilQuestions";
import { pupilSets } from "./pupilSets";
import { SetTold } from "./SetTold";
import { SheetTop } from "./SheetTop";
import { Sign } from "./Sign";
import { ago, formWords, tasksSaid, topicWords } from "./teacherWords";
import type { Teaching } from "./teaching";
import { VisitPad } from "./VisitPad";

/** One pupil in this lesson: what could be asked, what they did, the talks so far; and under the thumb two taps for the next one. */
export function PupilSheet({ teaching, pupilId }: { readonly teaching: Teaching; readonly pupilId: string }) {
  const [isNoting, setNoting] = useState(false);
  const tasks = tasksSaid(teaching.floor.bundle.value);
  const holding = teaching.holding.value;
  const sets = useMemo(() => pupilSets(tasks.map((t) => t.taskId), holding, pupilId).reverse(), [holding, pupilId]);
  const said = holding.filter((e) => e.pupilId === pupilId && (e.fact.kind === "visit" || e.fact.kind === "note")).reverse();
  const isAbsent = teaching.absent.value.has(pupilId);
  const label = teaching.labelOf(pupilId);

  const saveNote = (text: string) => teaching.write(say("TeacherSaidNote", label), [[{ pupilId }, { kind: "note", text }]]);
  return (
    <div class="sheet">
      <SheetTop title={label} step={pupilId}>
        <button
          type="button"
          class="tool"
          aria-pressed={isAbsent}
          onClick={() => void teaching.write(say(isAbsent ? "TeacherSaidHere" : "TeacherSaidAbsent", label), [[{ pupilId }, { kind: "presence", isPresent: isAbsent }]])}
        >
          <Sign name="register" />
          <span>{say("TeacherAbsent")}</span>
        </button>
      </SheetTop>

      <div class="sheet-body">
        <PupilQuestions teaching={teaching} pupilId={pupilId} />
        <div class="row">
          <Button onPress={() => teaching.open({ ...teaching.route.value, over: "check" })} mark="check">{say("TeacherCheckCues")}</Button>
          <Button onPress={() => setNoting(true)} mark="page">{say("TeacherNote")}</Button>
        </div>
        {isNoting && <NoteField teaching={teaching} label={say("TeacherNoteAbout", label)} onSave={saveNote} onClose={() => setNoting(false)} isFirst />}

        <section class="stack-s">
          <h2>{say("TeacherThisLesson")}</h2>
          {sets.length === 0 ? (
            <p class="muted">{say("TeacherNoSetYet")}</p>
          ) : (
            sets.map((set) => <SetTold key={`${set.taskId}${set.setNumber}`} teaching={teaching} pupilId={pupilId} set={set} tasks={tasks} />)
          )}
        </section>

        <section class="stack-s">
          <h2>{say("TeacherTalks")}</h2>
          {said.length === 0 ? <p class="muted">{say("TeacherNoTalkYet")}</p> : said.map((e) => <Said key={e.id} teaching={teaching} entry={e} />)}
        </section>
      </div>
      <VisitPad key={pupilId} teaching={teaching} pupilId={pupilId} />
    </div>
  );
}

function Said({ teaching, entry }: { readonly teaching: Teaching; readonly entry: Entry }) {
  const { fact } = entry;
  const what = fact.kind === "visit" ? say("TeacherTalk", say(topicWords[fact.topic]), say(formWords[fact.form])) : fact.kind === "note" ? fact.text : "";
  return (
    <div class="told said">
      <p>
        {what}
        {fact.kind === "visit" && fact.note && <span class="quote">{fact.note}</span>} <span class="muted">{ago(Date.parse(entry.madeAt), teaching.calmNowMs.value)}</span>
      </p>
      <Button kind="quiet" mark="undo" label={say("TeacherTakeBackThis", what)} onPress={async () => void (await teaching.attempt(() => teaching.floor.takeBack(entry)))} />
    </div>
  );
}
