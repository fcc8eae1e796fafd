import type { BundleFigure, BundleTask } from "../contracts";
import { Figure } from "../ui/Figure";
import { doseWords } from "../ui/doseWords";
import { Mark } from "../ui/Mark";
import { say } from "../words/say";

/** A task for the whole class: what it is for, its levels side by side, its cues, what to mind. No level is marked before another. */
export function BoardTask({ task, figures }: { readonly task: BundleTask; readonly figures: readonly BundleFigure[] }) {
  return (
    <article class="board-task" data-levels={Math.min(task.levels.length, 6)}>
      <header>
        <h1>{task.name}</h1>
        {task.purpose !== "" && <p class="board-purpose">{task.purpose}</p>}
      </header>
      <ul class="board-levels" aria-label={say("BoardLevels")}>
        {task.levels.map((level) => {
          const figure = figures.find((f) => f.key === level.figureKey);
          return (
            <li key={level.levelId}>
              {figure && <Figure figure={figure} />}
              <span class="board-level">{level.name}</span>
              <span class="board-dose">{doseWords(level)}</span>
            </li>
          );
        })}
      </ul>
      <ol class="board-cues" aria-label={say("BoardCues")}>
        {task.cues.map((cue, i) => (
          <li key={i}>
            <span class="board-box" aria-hidden="true" />
            <span>{cue}</span>
          </li>
        ))}
      </ol>
      {task.caution !== "" && (
        <p class="board-caution">
          <Mark name="caution" />
          <span>{task.caution}</span>
        </p>
      )}
    </article>
  );
}
