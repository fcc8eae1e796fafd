import { useEffect, useRef, useState } from "preact/hooks";
import { readsAloud } from "../join/settings";
import { languageOf } from "../lesson/readable";
import { passKey, type SetSheet, type TaskSheet } from "../lesson/pupilSheet";
import { Button } from "../ui/Button";
import { Mark } from "../ui/Mark";
import { language, say } from "../words/say";
import { SheetPage } from "./SheetPage";
import { canSpeak, speak } from "./speak";
import { tell } from "./tell";
import type { PupilView } from "./view";

export interface LookPageProps {
  readonly view: PupilView;
  readonly sheet: TaskSheet;
  readonly set: SetSheet;
}

/** The cues, each a large row: met or not yet, by the pupil's own eyes or a partner's. */
export function LookPage({ view, sheet, set }: LookPageProps) {
  const { session, isPartner, name } = view;
  const { task } = sheet;
  const about = { pupilId: view.sheet.pupil.pupilId, taskId: task.taskId, setNumber: set.setNumber };
  const key = passKey(about.pupilId, task.taskId, set.setNumber, "look");
  // What was tapped shows at once; what stands once it is stored comes from the sheet.
  const [tapped, setTapped] = useState<ReadonlyMap<number, boolean>>(new Map());
  useEffect(() => void (session.looking.value = key), [key]);

  const spoken = languageOf(view.bundle, task.taskId, language.value, ["en", "es"]);
  const isReadToMe = readsAloud() && canSpeak(spoken);
  useEffect(() => (isReadToMe ? speak(task.cues, spoken) : undefined), [key, isReadToMe]);
  const saving = useRef(new Map<number, Promise<boolean>>());
  const answer = async (cueNumber: number, isTicked: boolean) => {
    setTapped((before) => new Map(before).set(cueNumber, isTicked));
    const saved = session.saveTick(about, { kind: "cueTick", cueNumber, isTicked });
    saving.current.set(cueNumber, saved);
    await saved;
    if (saving.current.get(cueNumber) !== saved) return;
    saving.current.delete(cueNumber);
    setTapped((before) => new Map([...before].filter(([n]) => n !== cueNumber)));
  };
  // "Next" may come before the last answer is stored: it waits for it, and stays where one could not be.
  const done = async () => {
    if (session.isBouncing) return;
    const isComplete = task.cues.every((_, i) => set.ticks.has(i + 1) || saving.current.has(i + 1) || tapped.has(i + 1));
    if ((await Promise.all(saving.current.values())).includes(false)) return;
    if (!isComplete) session.pass(task.taskId, set.setNumber, "look");
    session.looking.value = undefined;
    session.rest();
  };
  const isAll = task.cues.every((_, i) => set.ticks.has(i + 1) || tapped.has(i + 1));
  return (
    <SheetPage
      view={view}
      title={tell(isPartner, "PupilLook", name)}
      above={`${task.name} · ${say("PupilSet", set.setNumber, view.bundle.setCount)}`}
      step={`look-${task.taskId}-${set.setNumber}`}
      foot={
        <Button kind={isAll ? "main" : "plain"} isLarge mark="next" onPress={done}>
          {say(isAll ? "PupilNext" : "PupilRestOpen")}
        </Button>
      }
    >
      <div class="row">
        <p class="muted">{tell(isPartner, "PupilLookHow", name)}</p>
        {canSpeak(spoken) && (
          <Button mark="hear" onPress={() => speak(task.cues, spoken)}>
            {say("PupilReadAll")}
          </Button>
        )}
      </div>
      <div class="cues">
        {task.cues.map((cue, i) => {
          const stands = tapped.get(i + 1) ?? set.ticks.get(i + 1);
          return (
            <div key={i} class="row-cue" role="group" aria-label={cue}>
              <div class="cue">
                <p lang={spoken}>{cue}</p>
                {canSpeak(spoken) && <Button kind="quiet" mark="hear" label={say("PupilRead", cue)} onPress={() => speak([cue], spoken)} />}
              </div>
              <div class="answers">
                <button type="button" class="button answer" aria-pressed={stands === true} onClick={() => void answer(i + 1, true)}>
                  <Mark name="check" />
                  {say("PupilSeen")}
                </button>
                <button type="button" class="button answer" aria-pressed={stands === false} onClick={() => void answer(i + 1, false)}>
                  <Mark name="circle" />
                  {say("PupilNotSeen")}
                </button>
              </div>
            </div>
          );
        })}
      </div>
    </SheetPage>
  );
}
