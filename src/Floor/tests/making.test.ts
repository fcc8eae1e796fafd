import { describe, expect, it } from "vitest";
import { current } from "../src/lesson/log";
import { made, newId } from "../src/lesson/making";

const maker = { schoolId: "s", lessonId: "l", deviceId: "d", lastSequence: 0, now: new Date("2026-03-02T09:00:00Z") };
const about = { pupilId: "p", taskId: "t", setNumber: 1, trialNumber: 1 };

describe("made", () => {
  it("supersedes what stood there, and says nothing where the fact holds already", () => {
    const first = made([], [[about, { kind: "trial", isSuccess: true }]], maker);
    expect(made(first, [[about, { kind: "trial", isSuccess: true }]], { ...maker, lastSequence: 1 })).toEqual([]);
    const second = made(first, [[about, { kind: "trial", isSuccess: false }]], { ...maker, lastSequence: 1 });
    expect(second).toMatchObject([{ supersedesId: first[0]!.id, deviceSequence: 2 }]);
    expect(current([...second, ...first])).toEqual(second);
  });

  it("takes back", () => {
    const first = made([], [[about, { kind: "trial", isSuccess: true }]], maker);
    const back = made(first, [[first[0]!, { kind: "withdrawal" }]], { ...maker, lastSequence: 1 });
    expect(current([...first, ...back])).toEqual([]);
  });
});

describe("newId", () => {
  it("is a UUIDv7 with the time in front", () => {
    // RFC 9562, appendix A.6: 0x017F22E279B0 is Tuesday, February 22, 2022 2:22:22.00 PM GMT-05:00.
    expect(newId(0x017f22e279b0)).toMatch(/^017f22e2-79b0-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  });
});
