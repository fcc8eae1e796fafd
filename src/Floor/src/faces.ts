import type { ComponentChildren, ComponentType } from "preact";
import type { ReadonlySignal } from "@preact/signals";
import type { JoinShown } from "./board/boardLink";
import type { Floor } from "./lesson/floor";
import { loadWords } from "./words/say";

/** What a browser can show of a lesson; the address says which. */
export type FaceName = "pupil" | "teacher" | "board";

/** A face: everything it knows and does goes through the floor. What else it gets are places for what all faces share. */
export type Face = ComponentType<{
  readonly floor: Floor;
  /** The teacher's: where entries come in by file or by a chain of codes. */
  readonly inbox?: ComponentChildren;
  readonly settings?: ComponentChildren;
  /** What the class joins with, for the teacher and the board. */
  readonly join?: ReadonlySignal<JoinShown | undefined>;
  readonly onRenewCode?: () => Promise<void>;
}>;

/** The face an address asks for. */
export function faceOf(path: string): FaceName {
  return path.startsWith("/floor/teacher") ? "teacher" : path.startsWith("/floor/board") ? "board" : "pupil";
}

// By pattern, each a part of its own: a pupil's tablet never loads what only the teacher needs.
const parts = import.meta.glob<Record<string, Face>>(["./pupil/PupilFace.tsx", "./teacher/TeacherFace.tsx", "./board/BoardFace.tsx"]);

const places: Record<FaceName, readonly [string, string]> = {
  pupil: ["./pupil/PupilFace.tsx", "PupilFace"],
  teacher: ["./teacher/TeacherFace.tsx", "TeacherFace"],
  board: ["./board/BoardFace.tsx", "BoardFace"],
};

/** Loads a face; asked twice, it is loaded once. */
export async function loadFace(name: FaceName): Promise<Face> {
  const [path, member] = places[name];
  await loadWords(name === "pupil" ? "shared" : "class");
  const face = (await parts[path]?.())?.[member];
  if (!face) throw new Error(`The floor was built without ${path}.`);
  return face;
}
