import type { JSX } from "preact";
import { MemoryFloor } from "../lesson/memoryFloor";
import { sampleBundle } from "../look/sampleBundle";
import type { FloorState } from "../contracts";
import { Cover } from "../join/Cover";
import { say } from "../words/say";
import { BoardFace } from "./BoardFace";

const join = { code: "H7KM3P", url: "http://192.168.1.20:5080/floor/#join=H7KM3P", untilMs: Date.now() + 3_600_000 };

function board(state: Partial<FloorState> = {}, isJoining = false): () => JSX.Element {
  const floor = new MemoryFloor(sampleBundle("board"), state);
  return () => <BoardFace floor={floor} {...(isJoining && { join })} />;
}

const inS = (s: number) => new Date(Date.now() + s * 1000).toISOString();

/** The board as a projector shows it. */
export const looks = {
  tasks: board(),
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
