import { describe, expect, it } from "vitest";
import type { LessonBundle } from "../../src/contracts";
import { current } from "../../src/lesson/log";
import { MemoryFloor } from "../../src/lesson/memoryFloor";
import { putNoteToVisit, putWithUndo } from "../../src/teacher/undo";

const floor = () => new MemoryFloor({ schoolId: "s", lessonId: "l", pupils: [], entries: [] } as unknown as LessonBundle);
const facts = (f: MemoryFloor) => current(f.log.value).map((e) => e.fact);

describe("putWithUndo", () => {
  it("takes a visit back", async () => {
    const f = floor();
    const undo = await putWithUndo(f, [[{ pupilId: "a" }, { kind: "visit", topic: "cue", form: "asked" }]]);
    expect(facts(f)).toHaveLength(1);
    await undo!();
    expect(facts(f)).toEqual([]);
  });

  it("puts back what stood there before", async () => {
    const f = floor();
    await f.put({ pupilId: "a" }, { kind: "presence", isPresent: true });
    const undo = await putWithUndo(f, [[{ pupilId: "a" }, { kind: "presence", isPresent: false }]]);
    await undo!();
    expect(facts(f)).toEqual([{ kind: "presence", isPresent: true }]);
  });

  it("takes back each fact of a step, and only those", async () => {
    const f = floor();
    const place = { pupilId: "a", taskId: "t", setNumber: 1 };
    await f.put(place, { kind: "cueTick", cueNumber: 1, isTicked: true });
    const undo = await putWithUndo(f, [
      [place, { kind: "teacherCheck", cueNumber: 1, isMet: true, isBlind: true }],
      [place, { kind: "teacherCheck", cueNumber: 2, isMet: false, isBlind: true }],
    ]);
    await undo!();
    expect(facts(f)).toEqual([{ kind: "cueTick", cueNumber: 1, isTicked: true }]);
  });

  it("has nothing to take back where it held already", async () => {
    const f = floor();
    await f.put({ pupilId: "a" }, { kind: "presence", isPresent: false });
    expect(await putWithUndo(f, [[{ pupilId: "a" }, { kind: "presence", isPresent: false }]])).toBeUndefined();
  });
});

describe("putNoteToVisit", () => {
  it("leaves one visit, with the note", async () => {
    const f = floor();
    await f.put({ pupilId: "a" }, { kind: "visit", topic: "cause", form: "asked" });
    await putNoteToVisit(f, f.log.value[0]!, "left hand heavier");
    expect(facts(f)).toEqual([{ kind: "visit", topic: "cause", form: "asked", note: "left hand heavier" }]);
  });
});
