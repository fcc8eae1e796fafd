import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { BundleFigure, BundleTask } from "../contracts";
import { Figure } from "../ui/Figure";
import { doseWords } from "../ui/doseWords";
import { Mark } from "../ui/Mark";
import { say } from "../words/say";
import { turnS } from "./boardTurn";

/** A figure lower than this part of the board's height says nothing from the back of a hall. */
const leastFigureFraction = 0.14;
/** Each half of a task stays so long where both do not fit: a turn shows both. */
const halfS = turnS / 2;

export interface BoardTaskProps {
  readonly task: BundleTask;
  readonly figures: readonly BundleFigure[];
  /** Changes whenever there is more or less room for it. */
  readonly room: string;
  /** Seconds since the board began. */
  readonly sinceS: number;
}

/**
 * A task for the whole class: what it is for, its levels side by side, its cues, what to mind. No level is marked before another.
 * Letters never get smaller than what is read from 8 m: where levels and cues do not fit together, they take turns.
 */
export function BoardTask({ task, figures, room, sinceS }: BoardTaskProps) {
  const box = useRef<HTMLElement>(null);
  const [tight, setTight] = useState<string | undefined>();
  const now = `${task.taskId} ${room}`;
  const isSplit = tight === now;
  useLayoutEffect(() => {
    const look = () => {
      if (box.current && isCramped(box.current)) setTight(now);
    };
    look();
    // The printed type is a little wider than what stands in for it until it is there.
    void document.fonts?.ready.then(look);
  }, [now]);
  const shown = !isSplit ? "all" : Math.floor(sinceS / halfS) % 2 === 0 ? "levels" : "cues";
  return (
    <article ref={box} class="board-task" data-shown={shown}>
      <header>
        <h1>{task.name}</h1>
        {task.purpose !== "" && <p class="board-purpose">{task.purpose}</p>}
      </header>
      {shown !== "cues" && (
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
      )}
      {shown !== "levels" && (
        <ol class="board-cues" aria-label={say("BoardCues")}>
          {task.cues.map((cue, i) => (
            <li key={i}>
              <span class="board-box" aria-hidden="true" />
              <span>{cue}</span>
            </li>
          ))}
        </ol>
      )}
      {task.caution !== "" && (
        <p class="board-caution">
          <Mark name="caution" />
          <span>{task.caution}</span>
        </p>
      )}
    </article>
  );
}

function isCramped(box: HTMLElement): boolean {
  const cards = [...box.querySelectorAll(".board-levels > li")];
  const drawings = [...box.querySelectorAll(".board-levels .drawing")];
  return (
    box.scrollHeight > box.clientHeight + 1 ||
    cards.some((card) => card.scrollHeight > card.clientHeight + 1) ||
    drawings.some((drawing) => drawing.clientHeight < leastFigureFraction * innerHeight)
  );
}
