// Screens of the pupil to look at without a server; not part of what is published.
// ?look=pupil/sheet&kind=pair&tasks=1&predicts=holdS&facts=cphhn&do=tap:Mia~key~wait:2000~key&theme=dark
import { useEffect, useState } from "preact/hooks";
import type { EntryFact, LessonBundle } from "../contracts";
import type { About } from "../lesson/floor";
import { MemoryFloor } from "../lesson/memoryFloor";
import { lookSheet } from "./look/sheet";
import { PupilFace } from "./PupilFace";

const asked = new URLSearchParams(location.search);
const get = (name: string) => asked.get(name) ?? undefined;
const kind = (get("kind") ?? "pupil") as LessonBundle["kind"];
const predicts = (get("predicts") ?? "successCount") as LessonBundle["predicts"];

/** Entries of set after set: c choice, p prediction, h held, n not yet, t ticks, d decision. */
async function write(floor: MemoryFloor, facts: string): Promise<void> {
  const taskId = get("task") ?? "foot";
  const pupilId = floor.bundle.value.pupils[0]!.pupilId;
  let [setNumber, trialNumber] = [1, 0];
  for (const letter of facts) {
    const about: About = { pupilId, taskId, setNumber };
    const put = (fact: EntryFact, more: Partial<About> = {}) => floor.put({ ...about, ...more }, fact);
    if (letter === "c") await put({ kind: "choice", levelId: `${taskId}${setNumber + 1}` });
    if (letter === "p") await put(predicts === "holdS" ? { kind: "prediction", holdS: 8 } : { kind: "prediction", successCount: 4 });
    if (letter === "h" || letter === "n") {
      trialNumber++;
      await put({ kind: "trial", isSuccess: letter === "h", heldS: letter === "h" ? 5 + trialNumber * 0.7 : 1.1 * trialNumber }, { trialNumber });
    }
    if (letter === "t") for (const cueNumber of [1, 2, 3, 4]) await put({ kind: "cueTick", cueNumber, isTicked: cueNumber !== 3 });
    if (letter === "d") {
      await put({ kind: "decision", next: setNumber === 1 ? "harder" : "same", reason: "I met the cues" });
      [setNumber, trialNumber] = [setNumber + 1, 0];
    }
  }
}

async function act(steps: string): Promise<void> {
  for (const step of steps.split("~")) {
    await new Promise((done) => setTimeout(done, 450));
    const [what, ...rest] = step.split(":");
    const text = rest.join(":");
    if (what === "wait") await new Promise((done) => setTimeout(done, Number(text)));
    if (what === "key") document.body.dispatchEvent(new KeyboardEvent("keydown", { key: text || "x", bubbles: true }));
    if (what === "tap") [...document.querySelectorAll<HTMLElement>("button, input, summary")].find((e) => (e.closest("label") ?? e).textContent!.includes(text) || e.title.includes(text))?.click();
    if (what === "scroll") scrollTo(0, 1e6);
  }
  document.documentElement.dataset["done"] = "";
}

function Sheet() {
  const [floor, setFloor] = useState<MemoryFloor>();
  useEffect(() => {
    if (get("theme")) document.documentElement.dataset["theme"] = get("theme")!;
    const made = new MemoryFloor(lookSheet({ kind, predicts }, Number(get("tasks") ?? 1)));
    void write(made, get("facts") ?? "").then(() => {
      if (get("fails")) made.putAll = () => Promise.reject(new Error("no room"));
      Object.assign(globalThis, { floor: made });
      setFloor(made);
      void act(get("do") ?? "");
    });
  }, []);
  return floor ? <PupilFace floor={floor} /> : null;
}

export const looks = { sheet: Sheet };
