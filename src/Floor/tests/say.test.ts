import { describe, expect, it } from "vitest";
import en from "../src/words/en.json";
import es from "../src/words/es.json";
import { language, say } from "../src/words/say";

const places = (text: string) => [...text.matchAll(/\{(\d)\}/g)].map((m) => m[1]).sort();

describe("The floor's words", () => {
  it("are the same keys in both languages, in order, none of them empty", () => {
    expect(Object.keys(es)).toEqual(Object.keys(en));
    expect(Object.keys(en)).toEqual([...Object.keys(en)].sort());
    for (const [key, text] of [...Object.entries(en), ...Object.entries(es)]) expect(text.trim(), key).not.toBe("");
  });

  it("have the same places to fill", () => {
    for (const [key, text] of Object.entries(en)) expect(places((es as Record<string, string>)[key]!), key).toEqual(places(text));
  });

  it("are said in the device's language, filled in", () => {
    language.value = "en";
    expect(say("SyncChainPart", 2, 5)).toBe("Code 2 of 5");
    language.value = "es";
    expect(say("SyncChainPart", 2, 5)).toBe("Código 2 de 5");
    language.value = "en";
  });
});
