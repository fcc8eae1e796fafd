import { Mark } from "../ui/Mark";
import { say } from "../words/say";
import { sourceText, tasksSaid } from "./teacherWords";
import type { Teaching } from "./teaching";

/** Safety, at once and above everything: who, what was entered and where it came from. Only this is spoken by a screen reader as it arrives. */
export function SafetyNews({ teaching }: { readonly teaching: Teaching }) {
  const open = [...teaching.unsafe.value].filter((id) => !teaching.putAwayBreaches.value.has(newsOf(teaching, id)));
  const away = () => {
    teaching.putAwayBreaches.value = new Set([...teaching.putAwayBreaches.value, ...open.map((id) => newsOf(teaching, id))]);
  };
  return (
    <div class="safety" role="alert" aria-live="assertive" data-open={open.length > 0 ? "" : undefined}>
      {open.map((id) => (
        <button key={id} type="button" class="safety-news" onClick={() => teaching.open({ tab: "class", pupilId: id })}>
          <Mark name="caution" />
          <span>
            <strong>{say("TeacherSafetyWho", teaching.labelOf(id))}</strong> {whatOf(teaching, id)}
          </span>
        </button>
      ))}
      {open.length > 0 && (
        <button type="button" class="safety-away" onClick={away}>{say("TeacherSafetyKnown")}</button>
      )}
    </div>
  );
}

function whatOf(teaching: Teaching, pupilId: string): string {
  const breach = teaching.breaches.value.find((b) => b.pupilId === pupilId);
  if (!breach) return teaching.questionsById.value.get(pupilId)?.find((q) => q.isSafety)?.reason ?? "";
  const level = tasksSaid(teaching.floor.bundle.value).flatMap((t) => t.levels).find((l) => l.levelId === breach.levelId)?.name;
  return say("TeacherSafetyWhat", level ?? say("TeacherLevelUnknown"), sourceText(breach.source, breach.deviceId, teaching.floor.devices.value));
}

/** Another set or another level is news again, though the same pupil was put away before. */
function newsOf(teaching: Teaching, pupilId: string): string {
  const own = teaching.breaches.value.filter((b) => b.pupilId === pupilId).map((b) => `${b.taskId}|${b.setNumber}|${b.levelId}`);
  const said = (teaching.questionsById.value.get(pupilId) ?? []).filter((q) => q.isSafety).length;
  return [pupilId, ...own, said].join(" ");
}
