import type { ReadonlySignal } from "@preact/signals";
import { useEffect, useMemo, useState } from "preact/hooks";
import type { Floor } from "../lesson/floor";
import { readable } from "../lesson/readable";
import { serverTimeMs } from "../sync/clock";
import { language, say } from "../words/say";
import { joinInLink, type JoinShown } from "./boardLink";
import { boardKey } from "./boardKeys";
import { taskShown, turnS } from "./boardTurn";
import { BoardTask } from "./BoardTask";
import { QrCode } from "./QrCode";
import { clockText, countdownLeftS } from "./serverClock";
import "./board.css";

export interface BoardFaceProps {
  readonly floor: Floor;
  /** What the class joins with; until the server has told it the code in the page's own link. Shown only as long as it was said to hold. */
  readonly join?: ReadonlySignal<JoinShown | undefined>;
}

const lastS = 10;
/** How long "time is up" stays after a countdown. */
const overS = 20;

/** The projector page: the tasks, cues and figures for the whole class. It knows no pupil, so it can show none. Stop and the end of the lesson lie over it as over every face. */
export function BoardFace({ floor, join }: BoardFaceProps) {
  const linked = useMemo(() => joinInLink(location.hash, location.origin), []);
  const shown = join?.value ?? linked;
  const [fixedAt, setFixedAt] = useState<number | undefined>();
  const [startMs, setStartMs] = useState(() => Date.now());
  const [nowMs, setNowMs] = useState(() => Date.now());
  const [size, setSize] = useState(() => `${innerWidth}x${innerHeight}`);
  const state = floor.state.value;
  const bundle = readable(floor.bundle.value, language.value);
  const count = bundle.tasks.length;
  const sinceS = Math.max(0, nowMs - startMs) / 1000;
  const at = taskShown(count, fixedAt, sinceS);

  const fix = (task: number | undefined) => {
    setFixedAt(task);
    // Alternating begins with the first task, a whole turn long.
    if (task === undefined) setStartMs(Date.now());
  };
  useEffect(() => {
    const tick = setInterval(() => setNowMs(Date.now()), 250);
    const resize = () => setSize(`${innerWidth}x${innerHeight}`);
    addEventListener("resize", resize);
    return () => {
      clearInterval(tick);
      removeEventListener("resize", resize);
    };
  }, []);
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.altKey || event.ctrlKey || event.metaKey) return;
      // A key pressed on something means that: a button's space, a dialog's Escape, a field's letters.
      const on = event.target instanceof Element ? event.target : undefined;
      if (on?.closest("dialog, input, select, textarea") || (event.key === " " && on?.closest("button, a, label"))) return;
      const next = boardKey(event.key, count, at);
      if (next === undefined) return;
      event.preventDefault();
      fix(next === "turns" ? undefined : next);
    };
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  }, [count, at]);

  const serverMs = serverTimeMs(nowMs);
  const leftS = countdownLeftS(state, serverMs);
  const sinceOverS = state.countdownUntil ? (serverMs - Date.parse(state.countdownUntil)) / 1000 : Infinity;
  const isCounting = leftS !== undefined && (leftS > 0 || sinceOverS < overS);
  const isJoining = shown !== undefined && shown.untilMs > serverMs;
  const task = bundle.tasks[at];

  return (
    <main class="board" data-joining={isJoining ? "" : undefined} data-counting={isCounting ? "" : undefined}>
      {task ? (
        <BoardTask key={task.taskId} task={task} figures={bundle.figures} room={`${isCounting} ${isJoining} ${size}`} sinceS={sinceS} />
      ) : (
        <p class="board-end">{say("BoardNoTask")}</p>
      )}
      {(isCounting || isJoining) && (
        <aside class="board-side">
          {isCounting && (
            <div class="board-count" data-last={leftS <= lastS ? "" : undefined} data-over={leftS === 0 ? "" : undefined}>
              <strong class="numbers">{leftS === 0 ? say("BoardTimeUp") : leftS <= lastS ? leftS : clockText(leftS)}</strong>
              {leftS > 0 && leftS <= lastS && (
                <span class="board-beads" aria-hidden="true">
                  {Array.from({ length: lastS }, (_, i) => <i key={i} class={i < leftS ? "bead on" : "bead"} />)}
                </span>
              )}
            </div>
          )}
          {isJoining && (
            <div class="board-join">
              <QrCode text={shown.url} label={say("BoardJoinQr")} />
              <p>{say("BoardJoin")}</p>
              <p class="board-code">{shown.code}</p>
            </div>
          )}
        </aside>
      )}
      {count > 1 && (
        <nav class="board-tasks" aria-label={say("BoardTasks")}>
          {bundle.tasks.map((t, i) => (
            <button key={t.taskId} type="button" aria-current={i === at ? "true" : undefined} aria-pressed={fixedAt === i} onClick={() => fix(fixedAt === i ? undefined : i)}>
              {fixedAt === i && <span aria-hidden="true">● </span>}
              {t.name}
            </button>
          ))}
          <span class="unseen">{say(fixedAt === undefined ? "BoardTurns" : "BoardFixed", turnS)}</span>
        </nav>
      )}
    </main>
  );
}
