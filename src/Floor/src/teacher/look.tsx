import type { JSX } from "preact";
import { useEffect, useMemo } from "preact/hooks";
import { joinShown, type JoinShown } from "../board/boardLink";
import { signal, untracked } from "@preact/signals";
import type { MemoryFloor } from "../lesson/memoryFloor";
import { Problem } from "../sync/problem";
import { lessonWithBreach, middleOfLesson } from "./looks/middleOfLesson";
import { TeacherFace } from "./TeacherFace";
import type { Route } from "./teaching";

const join = signal<JoinShown | undefined>({ code: "H7KM3P", url: "http://192.168.1.20:5080/floor/#join=H7KM3P", untilMs: Date.now() + 1_500_000 });

function face(make: () => MemoryFloor, route?: (floor: MemoryFloor) => Route, then?: (page: Document) => void): () => JSX.Element {
  return () => {
    // Untracked: what the making reads would else draw the page anew when it writes.
    const floor = useMemo(() => untracked(make), []);
    useEffect(() => {
      if (route) dispatchEvent(new PopStateEvent("popstate", { state: { teacherRoute: route(floor) } }));
      if (then) setTimeout(() => then(document), 300);
    }, []);
    return <TeacherFace floor={floor} join={join} onRenewCode={async () => void (join.value = joinShown("P4W9TX", location.origin, Date.now() + 5_400_000))} inbox={<p>Here entries come in.</p>} />;
  };
}

const pupil = (at: number, over?: "check") => (floor: MemoryFloor): Route => ({ tab: "class", pupilId: floor.bundle.value.pupils[at]!.pupilId, ...(over && { over }) });
const press = (...selectors: string[]) => (page: Document) =>
  selectors.forEach((s, i) => setTimeout(() => [...page.querySelectorAll<HTMLElement>(s)].at(0)?.click(), 250 * i));

function offline(floor: MemoryFloor): MemoryFloor {
  floor.delivery.value = { ...floor.delivery.value, isOnline: false, unsentCount: 14, lastAnswerAt: Date.now() - 400_000 };
  floor.orderLesson = () => Promise.reject(new Problem("offline"));
  return floor;
}

/** The teacher's phone in the middle of a lesson. */
export const looks = {
  class: face(middleOfLesson),
  breach: face(lessonWithBreach),
  breachSheet: face(lessonWithBreach, pupil(1)),
  find: face(middleOfLesson, undefined, press(".tool")),
  register: face(middleOfLesson, undefined, press(".tools .tool:nth-of-type(2)")),
  pupil: face(middleOfLesson, pupil(4)),
  form: face(middleOfLesson, pupil(4), press("[data-topic=decision]")),
  saved: face(middleOfLesson, pupil(4), press("[data-topic=decision]", "[data-form=asked]")),
  savedOnTiles: face(middleOfLesson, undefined, press(".tile", "[data-topic=cue]", "[data-form=asked]", ".pad-done .main")),
  note: face(middleOfLesson, pupil(4), press("[data-topic=decision]", "[data-form=asked]", ".pad-done .button:nth-child(2)")),
  speak: face(middleOfLesson, pupil(4), press("[data-topic=decision]", "[data-form=asked]", ".pad-done .button:nth-child(2)", ".note-field .tool")),
  ticks: face(middleOfLesson, pupil(12), press(".told .link")),
  check: face(middleOfLesson, pupil(12, "check")),
  checked: face(middleOfLesson, pupil(12, "check"), (page) => {
    const select = page.querySelector("select");
    if (select) {
      select.value = select.options[1]!.value;
      select.dispatchEvent(new Event("change", { bubbles: true }));
    }
    setTimeout(() => page.querySelectorAll<HTMLElement>(".sight-key:nth-child(1) input").forEach((i, n, all) => setTimeout(() => (n === all.length - 1 ? press(".sight:last-of-type .sight-key:nth-child(2) input", ".sheet-foot .button")(page) : i.click()), 100 * n)), 100);
  }),
  clock: face(middleOfLesson, () => ({ tab: "clock" })),
  scan: face(middleOfLesson, () => ({ tab: "clock", over: "scan" }), press(".small-tiles .tile", ".small-tiles .tile:nth-child(9)")),
  devices: face(middleOfLesson, () => ({ tab: "devices" }), press(".device:nth-child(4) .device-head", ".device:nth-child(5) .device-head")),
  lesson: face(middleOfLesson, () => ({ tab: "lesson" })),
  ending: face(middleOfLesson, () => ({ tab: "lesson" }), press(".ending .button")),
  code: face(middleOfLesson, () => ({ tab: "lesson", over: "code" })),
  offline: face(() => offline(middleOfLesson()), () => ({ tab: "lesson" }), press(".hold.large", ".hold.large")),
  stopped: face(() => {
    const floor = middleOfLesson();
    void floor.orderLesson({ isStopped: true });
    return floor;
  }),
};
