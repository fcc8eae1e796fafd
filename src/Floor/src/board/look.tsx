import { signal } from "@preact/signals";
import type { JSX } from "preact";
import { MemoryFloor } from "../lesson/memoryFloor";
import { sampleBundle } from "../look/sampleBundle";
import type { FloorState } from "../contracts";
import { Cover } from "../join/Cover";
import { say } from "../words/say";
import { BoardFace } from "./BoardFace";

const join = signal({ code: "H7KM3P", url: "http://192.168.1.20:5080/floor/#join=H7KM3P", untilMs: Date.now() + 3_600_000 });

function board(state: Partial<FloorState> = {}, isJoining = false): () => JSX.Element {
  const floor = new MemoryFloor(sampleBundle("board"), state);
  return () => <BoardFace floor={floor} {...(isJoining && { join })} />;
}

const inS = (s: number) => new Date(Date.now() + s * 1000).toISOString();

/** As much text as a sheet may bring: five levels, four cues, long sentences. */
function full(state: Partial<FloorState> = {}, isJoining = false): () => JSX.Element {
  const bundle = sampleBundle("board");
  const [first, second] = bundle.tasks;
  const names = ["Crouch on tiptoe, knees on elbows, hands hovering", "Hands flat, lean until the heels lift", "Hands flat, one foot floats", "Hands flat, both feet float", "Hands flat, both feet float"];
  const task = {
    ...first!,
    name: "Frog balance with a slow lean",
    purpose: "Lean slowly onto your hands until your feet get light and float.",
    cues: ["My fingers spread wide and grip the floor.", "My knees rest on my bent elbows.", "I look at the floor ahead of me.", "I lean slowly; my toes leave last.", "I come back the way I went."],
    caution: "Use a mat with clear space in front. Keep your head off the floor; step down when your wrists get tired.",
    levels: names.map((name, i) => ({ levelId: String(i), name, doseKind: "holdS" as const, doseAmount: i + 1, figureKey: ["wide", "crossed", "raised"][i % 3]! })),
  };
  const floor = new MemoryFloor({ ...bundle, tasks: [task, second!] }, state);
  return () => <BoardFace floor={floor} {...(isJoining && { join })} />;
}

/** The board as a projector shows it. */
export const looks = {
  tasks: board(),
  full: full(),
  fullJoinAndCountdown: full({ countdownUntil: inS(95) }, true),
  join: board({}, true),
  countdown: board({ countdownUntil: inS(95) }),
  joinAndCountdown: board({ countdownUntil: inS(95) }, true),
  last: board({ countdownUntil: inS(8) }),
  over: board({ countdownUntil: inS(-2) }),
  stop: () => (
    <div class="frame" data-face="board">
      <Cover kind="stop" title={say("JoinStop")} text={say("JoinStopText")} />
    </div>
  ),
};
