// A page to look at the pupil's screens without a server; not part of the build.
// look.html?kind=pair&tasks=1&predicts=holdS&lang=es&facts=choice,prediction,3&do=tap:Mia~key~wait:2000~key
import { render } from "preact";
import type { EntryFact, LessonBundle } from "../src/contracts";
import type { About } from "../src/lesson/floor";
import { MemoryFloor } from "../src/lesson/memoryFloor";
import { PupilFace } from "../src/pupil/PupilFace";
import { language } from "../src/words/say";
import { lookBundle } from "./bundle";

const asked = new URLSearchParams(location.search);
const get = (name: string) => asked.get(name) ?? undefined;
for (const name of ["text", "contrast", "motion", "hand", "theme"]) if (get(name)) document.documentElement.dataset[name] = get(name)!;
if (get("lang") === "es") language.value = "es";
document.documentElement.lang = language.value;

const kind = (get("kind") ?? "pupil") as LessonBundle["kind"];
const predicts = (get("predicts") ?? "successCount") as LessonBundle["predicts"];
const bundle = lookBundle({ kind, predicts }, Number(get("tasks") ?? 1));
const floor = new MemoryFloor(bundle);
if (get("fails")) floor.putAll = () => Promise.reject(new Error("no room"));

/** Entries of set after set: c choice, p prediction, h held, n not yet, t ticks, d decision. */
async function write(facts: string): Promise<void> {
  const taskId = get("task") ?? "foot";
  const pupilId = bundle.pupils[0]!.pupilId;
  let [setNumber, trialNumber] = [1, 0];
  for (const letter of facts) {
    const about: About = { pupilId, taskId, setNumber };
    const put = (fact: EntryFact, more: Partial<About> = {}) => MemoryFloor.prototype.putAll.call(floor, [[{ ...about, ...more }, fact]]);
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

await write(get("facts") ?? "");
render(<PupilFace floor={floor} onLeave={() => console.log("left")} />, document.getElementById("floor")!);
await act(get("do") ?? "");
