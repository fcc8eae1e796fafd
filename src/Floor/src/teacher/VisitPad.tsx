import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { VisitForm, VisitTopic } from "../contracts";
import { current } from "../lesson/log";
import { Button } from "../ui/Button";
import { say } from "../words/say";
import { NoteField } from "./NoteField";
import { forms, formWords, topics, topicWords } from "./teacherWords";
import type { Teaching } from "./teaching";
import { putNoteToVisit } from "./undo";

/** Two taps under the thumb log a visit: what it was about, then how the teacher spoke. */
export function VisitPad({ teaching, pupilId }: { readonly teaching: Teaching; readonly pupilId: string }) {
  const [topic, setTopic] = useState<VisitTopic | undefined>();
  const [isNoting, setNoting] = useState(false);
  const done = teaching.done.value;
  const box = useRef<HTMLDivElement>(null);
  // A key that was pressed is gone with its stage: the keyboard goes on at the first one of the next.
  useLayoutEffect(() => {
    if (document.activeElement === document.body) box.current?.querySelector<HTMLElement>(".pad-keys button")?.focus({ preventScroll: true });
  }, [topic, done?.visitedId, isNoting]);
  const where = teaching.where.value.get(pupilId);

  const log = async (form: VisitForm) => {
    const about = { pupilId, ...(where && { taskId: where.taskId, setNumber: where.setNumber }) };
    const text = say("TeacherSaidVisit", teaching.labelOf(pupilId), say(topicWords[topic!]), say(formWords[form]));
    await teaching.write(text, [[about, { kind: "visit", topic: topic!, form }]], pupilId);
    setTopic(undefined);
  };
  const note = async (text: string) => {
    const visit = current(teaching.floor.log.value).filter((e) => e.pupilId === pupilId && e.fact.kind === "visit").at(-1);
    if (!visit) return false;
    teaching.done.value = undefined;
    return teaching.attempt(() => putNoteToVisit(teaching.floor, visit, text));
  };

  if (isNoting) return <div class="pad" ref={box}><NoteField teaching={teaching} label={say("TeacherNoteToVisit")} onSave={note} onClose={() => setNoting(false)} isFirst /></div>;
  if (done?.visitedId === pupilId)
    return (
      <div class="pad pad-done" data-saved="visit" ref={box}>
        <p class="pad-head" role="status">{done.text}</p>
        <div class="pad-keys">
          <Button onPress={() => teaching.takeBack()} mark="undo">{say("TeacherUndo")}</Button>
          <Button onPress={() => setNoting(true)}>{say("TeacherAddNote")}</Button>
          <Button onPress={() => history.back()} kind="main" mark="people">{say("TeacherBackToClass")}</Button>
        </div>
      </div>
    );
  return (
    <div class="pad" role="group" aria-labelledby="pad-head" ref={box}>
      <p class="pad-head" id="pad-head">
        {topic === undefined ? say("TeacherVisitAbout") : say("TeacherVisitHow", say(topicWords[topic]))}
        {topic !== undefined && (
          <button type="button" class="link" onClick={() => setTopic(undefined)}>{say("TeacherVisitOther")}</button>
        )}
      </p>
      <div class="pad-keys">
        {topic === undefined
          ? topics.map((t) => <button key={t} type="button" class="key" data-topic={t} onClick={() => setTopic(t)}>{say(topicWords[t])}</button>)
          : forms.map((f) => <button key={f} type="button" class="key second" data-form={f} onClick={() => void log(f)}>{say(formWords[f])}</button>)}
      </div>
    </div>
  );
}
