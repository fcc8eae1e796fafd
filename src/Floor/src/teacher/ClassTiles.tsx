import { useEffect, useState } from "preact/hooks";
import { namesThatBegin } from "../join/names";
import { Button } from "../ui/Button";
import { say } from "../words/say";
import { Sign } from "./Sign";
import { Tile } from "./Tile";
import { seenOf } from "./seen";
import { count } from "./teacherWords";
import type { Teaching } from "./teaching";

/** Fewer first letters than this are no help in finding somebody. */
const fewestLetters = 4;

/** The class as tiles, those seen least first. */
export function ClassTiles({ teaching }: { readonly teaching: Teaching }) {
  const [mode, setMode] = useState<"look" | "find" | "register">("look");
  const [start, setStart] = useState("");
  // Whoever came back from a pupil goes on from there.
  useEffect(() => {
    if (teaching.lastPupilId) document.querySelector<HTMLElement>(`[data-pupil="${teaching.lastPupilId}"]`)?.focus({ preventScroll: true });
  }, []);
  const labels = teaching.tileIds.value.map((id) => teaching.labelOf(id));
  const letters = [...new Set(labels.map(initial))].sort((a, b) => a.localeCompare(b));
  const shown = mode === "find" ? namesThatBegin(teaching.tileIds.value.map((id) => ({ pupilId: id, label: teaching.labelOf(id), isServed: false })), start).map((p) => p.pupilId) : teaching.tileIds.value;
  const present = teaching.tileIds.value.filter((id) => !teaching.absent.value.has(id));
  const unseenCount = present.filter((id) => seenOf(teaching.seen.value, id).visitCount === 0).length;
  const turn = (next: "find" | "register") => {
    setStart("");
    if (mode === "register") teaching.settle();
    setMode(mode === next ? "look" : next);
  };

  return (
    <section class="tiles-page" aria-label={say("TeacherTabClass")}>
      <div class="tools">
        <h1 class="tools-head">
          {mode === "register" ? say("TeacherRegisterHow") : unseenCount > 0 ? say("TeacherUnseen", unseenCount, present.length) : say("TeacherAllSeen")}
        </h1>
        <button type="button" class="tool" aria-pressed={mode === "find"} onClick={() => turn("find")}>
          <Sign name="find" />
          <span>{say("TeacherFind")}</span>
        </button>
        <button type="button" class="tool" aria-pressed={mode === "register"} onClick={() => turn("register")}>
          <Sign name="register" />
          <span>{say("TeacherRegister")}</span>
        </button>
        <button type="button" class="tool" disabled={!teaching.isOrderOld.value} onClick={() => teaching.settle()}>
          <Sign name="sort" />
          <span>{say("TeacherSort")}</span>
        </button>
      </div>

      {mode === "find" && (
        <div class="finder">
          <input
            type="search"
            aria-label={say("TeacherFindName")}
            placeholder={say("TeacherFindName")}
            value={start}
            onInput={(e) => setStart(e.currentTarget.value)}
          />
          {letters.length >= fewestLetters && (
            <div class="letters" role="group" aria-label={say("TeacherLetters")}>
              {letters.map((letter) => (
                <button key={letter} type="button" class="letter" aria-pressed={start === letter} onClick={() => setStart(start === letter ? "" : letter)}>
                  {letter}
                </button>
              ))}
            </div>
          )}
        </div>
      )}

      {shown.length === 0 ? (
        <div class="empty">
          <p>{labels.length === 0 ? say("TeacherNobody") : say("TeacherNobodyFound", start)}</p>
          {labels.length > 0 && <Button onPress={() => setStart("")}>{say("TeacherFindAll")}</Button>}
        </div>
      ) : (
        <div class={mode === "register" ? "tiles register" : "tiles"}>
          {shown.map((id) => (
            <Tile key={id} teaching={teaching} pupilId={id} isRegister={mode === "register"} />
          ))}
        </div>
      )}
      {mode === "register" && (
        <p class="tiles-foot">{count(present.length, "TeacherHereOne", "TeacherHereMany")}</p>
      )}
    </section>
  );
}

function initial(label: string): string {
  return (label[0] ?? "").normalize("NFD").charAt(0).toLocaleUpperCase();
}
