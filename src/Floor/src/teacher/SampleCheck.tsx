import { useMemo, useState } from "preact/hooks";
import { Banner } from "../ui/Banner";
import { Button } from "../ui/Button";
import { Mark } from "../ui/Mark";
import { say, type WordKey } from "../words/say";
import { pupilSets } from "./pupilSets";
import { agreement, checkFacts, cuePairs, latestPlace, type CuePair, type CueSight, type SetPlace } from "./sampleCheck";
import { SheetTop } from "./SheetTop";
import { tasksSaid } from "./teacherWords";
import type { Teaching } from "./teaching";

const sights: readonly (readonly [CueSight, WordKey])[] = [["met", "TeacherCueMet"], ["notMet", "TeacherCueNotMet"], ["notSeen", "TeacherCueNotSeen"]];

/** The teacher looks at the cues of a set first; only then the pupil's own ticks lie beside. */
export function SampleCheck({ teaching, pupilId }: { readonly teaching: Teaching; readonly pupilId: string }) {
  const tasks = tasksSaid(teaching.floor.bundle.value);
  const holding = teaching.holding.value;
  // Where the pupil was when the teacher began to look: it does not change under the teacher's eyes.
  const latest = useMemo(() => latestPlace(teaching.floor.bundle.value, pupilId, teaching.where.value.get(pupilId)), [pupilId]);
  const [place, setPlace] = useState<SetPlace | undefined>(latest);
  const places = useMemo(() => {
    const known = pupilSets(tasks.map((t) => t.taskId), holding, pupilId).map(({ taskId, setNumber }) => ({ pupilId, taskId, setNumber }));
    return known.length > 0 ? known.reverse() : latest ? [latest] : [];
  }, [holding, pupilId]);
  const task = tasks.find((t) => t.taskId === place?.taskId);
  const pairs = task && place ? cuePairs(task.cues.length, holding, place) : [];
  const isChecked = pairs.some((p) => p.isMet !== undefined);

  return (
    <div class="sheet">
      <SheetTop title={say("TeacherCheckTitle", teaching.labelOf(pupilId))} step={`check-${pupilId}-${isChecked}`} />
      <div class="sheet-body">
        {places.length > 1 && (
          <label class="field">
            <span>{say("TeacherCheckWhich")}</span>
            <select value={place && nameOf(place)} onChange={(e) => setPlace(places.find((p) => nameOf(p) === e.currentTarget.value))}>
              {places.map((p) => (
                <option key={nameOf(p)} value={nameOf(p)}>{say("TeacherSetHead", tasks.find((t) => t.taskId === p.taskId)?.name ?? "", p.setNumber)}</option>
              ))}
            </select>
          </label>
        )}
        {place && task && places.length === 1 && <p class="muted">{say("TeacherSetHead", task.name, place.setNumber)}</p>}
        {!place || !task ? (
          <p>{say("TeacherCheckNothing")}</p>
        ) : isChecked ? (
          <BothViews cues={task.cues} pairs={pairs} />
        ) : (
          <Looking key={nameOf(place)} teaching={teaching} place={place} cues={task.cues} />
        )}
      </div>
    </div>
  );
}

function Looking({ teaching, place, cues }: { readonly teaching: Teaching; readonly place: SetPlace; readonly cues: readonly string[] }) {
  const [seen, setSeen] = useState<readonly CueSight[]>(() => cues.map(() => "notSeen"));
  const isBlind = !teaching.ticksSeen.has(place);
  const save = async () => {
    const text = say("TeacherSaidCheck", teaching.labelOf(place.pupilId));
    // From here on the pupil's ticks lie beside: a check made after taking this one back is not blind any more.
    if (await teaching.write(text, checkFacts(place, seen, isBlind))) teaching.ticksSeen.add(place);
  };
  return (
    <>
      {!isBlind && <Banner>{say("TeacherCheckNotBlind")}</Banner>}
      {cues.map((cue, i) => (
        <fieldset key={i} class="sight">
          <legend>{cue}</legend>
          <div class="sight-keys">
            {sights.map(([sight, word]) => (
              <label key={sight} class="sight-key" data-sight={sight} data-chosen={seen[i] === sight ? "" : undefined}>
                <input type="radio" name={`cue-${i}`} checked={seen[i] === sight} onChange={() => setSeen(seen.map((s, j) => (j === i ? sight : s)))} />
                {sight !== "notSeen" && <Mark name={sight === "met" ? "check" : "minus"} />}
                <span>{say(word)}</span>
              </label>
            ))}
          </div>
        </fieldset>
      ))}
      <div class="sheet-foot">
        <Button kind="main" isLarge isDisabled={seen.every((s) => s === "notSeen")} onPress={save}>{say("TeacherCheckSave")}</Button>
      </div>
    </>
  );
}

function BothViews({ cues, pairs }: { readonly cues: readonly string[]; readonly pairs: readonly CuePair[] }) {
  const { bothCount, sameCount } = agreement(pairs);
  const word = (isMet: boolean | undefined, yes: WordKey, no: WordKey, none: WordKey) => say(isMet === undefined ? none : isMet ? yes : no);
  return (
    <>
      <p class="lead">{bothCount === 0 ? say("TeacherCheckAlone") : say("TeacherCheckSame", sameCount, bothCount)}</p>
      <table class="both" data-checked>
        <thead>
          <tr>
            <th scope="col">{say("TeacherCue")}</th>
            <th scope="col">{say("TeacherYou")}</th>
            <th scope="col">{say("TeacherPupil")}</th>
          </tr>
        </thead>
        <tbody>
          {pairs.map((p) => (
            <tr key={p.cueNumber} class={p.isMet !== undefined && p.isTicked !== undefined && p.isMet !== p.isTicked ? "differ" : undefined}>
              <th scope="row">{cues[p.cueNumber - 1]}</th>
              <td>{p.isMet !== undefined && <Mark name={p.isMet ? "check" : "minus"} />}{word(p.isMet, "TeacherCueMet", "TeacherCueNotMet", "TeacherCueNotSeen")}</td>
              <td>{p.isTicked !== undefined && <Mark name={p.isTicked ? "check" : "minus"} />}{word(p.isTicked, "TeacherTicked", "TeacherTickOpen", "TeacherTickNone")}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small muted">{say(pairs.every((p) => p.isBlind !== false) ? "TeacherCheckWasBlind" : "TeacherCheckWasOpen")}</p>
      {bothCount > sameCount && <p class="question question-text">{say("TeacherCheckAsk")}</p>}
    </>
  );
}

function nameOf({ taskId, setNumber }: SetPlace): string {
  return `${taskId}|${setNumber}`;
}
