import { describe, expect, it } from "vitest";
import { current } from "../../src/lesson/log";

import { lessonWithBreach, middleOfLesson } from "../../src/teacher/looks/middleOfLesson";
import { seenOf } from "../../src/teacher/seen";
import { Teaching } from "../../src/teacher/teaching";
import { Problem } from "../../src/sync/problem";

const nowMs = Date.parse("2026-03-02T09:20:00Z");
const visit = { kind: "visit", topic: "cue", form: "asked" } as const;

describe("Teaching", () => {
  it("moves no tile while the teacher looks at them, and settles them on the way back", async () => {
    const teaching = new Teaching(middleOfLesson(7, nowMs));
    const before = teaching.tileIds.value;
    const first = before[0]!;
    expect(seenOf(teaching.seen.value, first).visitCount).toBe(0);
    await teaching.floor.put({ pupilId: first }, visit);
    expect(teaching.tileIds.value).toEqual(before);
    expect(teaching.isOrderOld.value).toBe(true);
    teaching.show({ tab: "clock" });
    expect(teaching.tileIds.value).toEqual(before);
    teaching.show({ tab: "class" });
    expect(teaching.tileIds.value[0]).toBe(before[1]);
    expect(teaching.isOrderOld.value).toBe(false);
  });

  it("writes, says so, and takes it back", async () => {
    const floor = middleOfLesson(7, nowMs);
    const teaching = new Teaching(floor);
    const holding = teaching.holding.value.length;
    expect(await teaching.write("said", [[{ pupilId: teaching.tileIds.value[0]! }, visit]], "x")).toBe(true);
    expect(teaching.done.value).toMatchObject({ text: "said", visitedId: "x" });
    expect(teaching.holding.value).toHaveLength(holding + 1);
    await teaching.takeBack();
    expect(teaching.done.value).toBeUndefined();
    expect(teaching.holding.value).toHaveLength(holding);
    expect(teaching.holding.value).toEqual(current(floor.log.value));
  });

  it("says why an order went nowhere, and keeps what was done before to be taken back", async () => {
    const floor = middleOfLesson(7, nowMs);
    floor.orderLesson = () => Promise.reject(new Problem("offline"));
    const teaching = new Teaching(floor);
    await teaching.write("said", [[{}, { kind: "phaseMark", phase: "waiting" }]]);
    await teaching.order({ isStopped: true }, "TeacherStopFailed");
    expect(teaching.problem.value).toMatch(/^STOP did not reach the screens/);
    expect(teaching.done.value?.text).toBe("said");
    await teaching.write("again", [[{}, { kind: "phaseMark", phase: "activity" }]]);
    expect(teaching.problem.value).toBeUndefined();
  });

  it("counts what is unsent on this phone and on the others, this phone once", () => {
    const floor = middleOfLesson(7, nowMs);
    // As made up: 2 on this phone, of which the server has heard, and 5 on a tablet.
    expect(new Teaching(floor).unsentCount.value).toBe(7);
    floor.delivery.value = { ...floor.delivery.value, unsentCount: 9 };
    expect(new Teaching(floor).unsentCount.value).toBe(14);
  });

  it("tells of a level outside an offer without a network, with where it came from", () => {
    const teaching = new Teaching(lessonWithBreach());
    expect(teaching.floor.questions.value.some((q) => q.isSafety)).toBe(false);
    expect([...teaching.unsafe.value].map((id) => teaching.labelOf(id))).toEqual(["Bruno"]);
    expect(teaching.breaches.value).toMatchObject([{ source: "paper", setNumber: 2, trialCount: 1 }]);
  });

  it("makes the same lesson of the same seed", () => {
    expect(middleOfLesson(3, nowMs).log.value).toEqual(middleOfLesson(3, nowMs).log.value);
    expect(middleOfLesson(3, nowMs).log.value).not.toEqual(middleOfLesson(4, nowMs).log.value);
  });
});
