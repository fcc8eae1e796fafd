import { Banner } from "../ui/Banner";
import { say } from "../words/say";
import { ago, count, sourceText, tasksSaid } from "./teacherWords";
import type { Teaching } from "./teaching";

/** What could be asked of a pupil, with what stands behind it; safety first. Questions, never a level to take. */
export function PupilQuestions({ teaching, pupilId }: { readonly teaching: Teaching; readonly pupilId: string }) {
  const { floor } = teaching;
  const questions = teaching.questionsById.value.get(pupilId) ?? [];
  const { isOnline, lastAnswerAt } = floor.delivery.value;
  return (
    <>
      <BreachesOf teaching={teaching} pupilId={pupilId} />
      {questions.map((q) => (
        <div key={q.question} class={q.isSafety ? "question safety" : "question"}>
          <p class="question-text">{q.question}</p>
          <p class="small">{q.reason}</p>
        </div>
      ))}
      {questions.length > 0 && !isOnline && (
        <p class="small muted">{lastAnswerAt === undefined ? say("TeacherQuestionsOffline") : say("TeacherQuestionsAge", ago(lastAnswerAt, teaching.calmNowMs.value))}</p>
      )}
    </>
  );
}

/** What was entered outside a pupil's levels, and where it came from. */
export function BreachesOf({ teaching, pupilId }: { readonly teaching: Teaching; readonly pupilId: string }) {
  const tasks = tasksSaid(teaching.floor.bundle.value);
  return (
    <>
      {teaching.breaches.value
        .filter((b) => b.pupilId === pupilId)
        .map((b) => {
          const task = tasks.find((t) => t.taskId === b.taskId);
          const level = task?.levels.find((l) => l.levelId === b.levelId)?.name ?? say("TeacherLevelUnknown");
          return (
            <Banner key={`${b.taskId}${b.setNumber}`} kind="problem">
              <p><strong>{say("TeacherBreach", level)}</strong></p>
              <p class="small">
                {say("TeacherBreachWhere", task?.name ?? "", b.setNumber, count(b.trialCount, "TeacherTryOne", "TeacherTryMany"), sourceText(b.source, b.deviceId, teaching.floor.devices.value))}
              </p>
            </Banner>
          );
        })}
    </>
  );
}
