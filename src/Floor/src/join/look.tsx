import { useMemo } from "preact/hooks";
import { MemoryFloor } from "../lesson/memoryFloor";
import type { KeptFloor } from "../keep/keptFloor";
import type { FloorDeviceKind, FloorState } from "../contracts";
import { sampleBundle, samplePick } from "../look/sampleBundle";
import { Problem } from "../sync/problem";
import { App } from "./App";
import { Session, type Stage } from "./session";
import { SettingsPanel } from "./SettingsPanel";
import { ShowChain } from "../chain/ShowChain";

function at(stage: Stage, change: (session: Session) => void = () => undefined) {
  return function Screen() {
    const session = useMemo(() => {
      const made = new Session("pupil");
      made.stage.value = stage;
      change(made);
      return made;
    }, []);
    return <App session={session} />;
  };
}

function lesson(kind: FloorDeviceKind) {
  const bundle = sampleBundle("pupil");
  return {
    key: "l/d", face: "pupil" as const, deviceId: "d", schoolId: bundle.schoolId, lessonId: bundle.lessonId, kind, title: bundle.lessonTitle, className: bundle.className,
    token: "t", pupils: samplePick(), state: { serverNow: "", deviceName: "Tablet 4", pupilIds: [], isLocked: false, appVersion: "0" }, clockOffsetMs: 0, isOpen: true,
  };
}

function inLesson(state: Partial<FloorState>, delivery: Partial<KeptFloor["delivery"]["value"]> = {}, stage: Stage = "lesson") {
  return at(stage, (session) => {
    const floor = Object.assign(new MemoryFloor(sampleBundle("pupil"), { deviceName: "Tablet 4", ...state }), { lesson: lesson("pupil") });
    floor.delivery.value = { ...floor.delivery.value, ...delivery };
    session.floor.value = floor as unknown as KeptFloor;
    session.lesson.value = lesson("pupil");
    session.shown.value = () => <div class="page"><main class="page-main"><h1>…</h1></main></div>;
  });
}

const entries = Array.from({ length: 40 }, (_, i) => ({
  schoolId: "0198c0de-0000-7000-8000-000000000001", lessonId: "0198c0de-0000-7000-8000-000000000002", id: `0198c0de-${String(i).padStart(4, "0")}-7000-8000-00000000a${String(i).padStart(3, "0")}`,
  fact: { kind: "trial" as const, isSuccess: i % 3 > 0 }, source: "floor" as const, deviceId: "0198c0de-0000-7000-8000-0000000000d1", deviceSequence: i + 1, madeAt: "2026-03-02T09:00:00.000Z",
}));

/** The screens of this folder. */
export const looks = {
  start: at("start"),
  startWrong: at("start", (s) => (s.problem.value = new Problem("codeUnknown"))),
  startHeld: at("start", (s) => (s.held.value = [{ lesson: lesson("pupil"), waitingCount: 12 }])),
  unable: at("unable", (s) => (s.problem.value = new Problem("keepMissing"))),
  kind: at("kind", (s) => (s.link.value = { code: "BCD234" })),
  kindOffline: at("kind", (s) => (s.problem.value = new Problem("offline"))),
  pick: at("pick", (s) => (s.lesson.value = lesson("pupil"))),
  pickTwo: at("pick", (s) => (s.lesson.value = lesson("pair"))),
  online: inLesson({}),
  offline: inLesson({}, { isOnline: false, unsentCount: 7 }),
  refused: inLesson({}, { refused: [{ entry: entries[0]!, text: "" }] }),
  stop: inLesson({ stoppedAt: "2026-03-02T09:00:00Z" }),
  rest: inLesson({ isLocked: true }),
  ended: inLesson({ closedAt: "2026-03-02T09:00:00Z" }, { unsentCount: 7, isOnline: false }),
  over: inLesson({ closedAt: "2026-03-02T09:00:00Z" }, {}, "over"),
  settings: () => {
    const session = useMemo(() => {
      const made = new Session("pupil");
      made.lesson.value = lesson("pupil");
      return made;
    }, []);
    return <SettingsPanel session={session} onClose={() => undefined} />;
  },
  chain: () => <ShowChain entries={entries} onClose={() => undefined} />,
};
