import { describe, expect, it } from "vitest";
import { languageOf, readable } from "../src/lesson/readable";
import { bundleOf } from "./floorBundle";

const plain = bundleOf();
const other = {
  ...plain.tasks[0]!,
  name: "A en español",
  cues: ["uno", "dos"],
  levels: plain.tasks[0]!.levels.map((l) => ({ ...l, name: `cómo ${l.levelId}`, doseAmount: 99 })).reverse(),
};
const bundle = bundleOf({
  figures: [{ key: "f", svg: "<svg/>", description: "standing" }],
  translations: [{ language: "es", tasks: [other], figureDescriptions: { f: "de pie" } }],
});

describe("readable", () => {
  it("takes the words of a translation and leaves order and doses as the sheet has them", () => {
    const read = readable(bundle, "es");
    expect(read.tasks[0]).toMatchObject({ name: "A en español", cues: ["uno", "dos"] });
    expect(read.tasks[0]!.levels.map((l) => [l.levelId, l.name, l.doseAmount])).toEqual([["a1", "cómo a1", 5], ["a2", "cómo a2", 5], ["a3", "cómo a3", 4.2]]);
    expect(read.figures[0]!.description).toBe("de pie");
  });

  it("keeps a task that is not translated, and everything in a language there is none for", () => {
    expect(readable(bundle, "es").tasks[1]).toBe(bundle.tasks[1]);
    expect(readable(bundle, "fr")).toBe(bundle);
  });

  it("keeps a task whose cues are not the same number: a tick must stay with its cue", () => {
    const short = bundleOf({ translations: [{ language: "es", tasks: [{ ...other, cues: ["uno"] }], figureDescriptions: {} }] });
    expect(readable(short, "es").tasks[0]!.cues).toEqual(["one", "two"]);
  });
});

describe("languageOf", () => {
  it("is the device's where the task is translated or nothing is, else the one the sheet is not translated into", () => {
    expect(languageOf(bundle, "a", "es", ["en", "es"])).toBe("es");
    expect(languageOf(bundle, "a", "en", ["en", "es"])).toBe("en");
    expect(languageOf(bundle, "b", "es", ["en", "es"])).toBe("en");
    expect(languageOf(plain, "a", "es", ["en", "es"])).toBe("es");
  });
});
