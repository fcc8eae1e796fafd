import { describe, expect, it } from "vitest";
import { ladderS } from "../src/pupil/PredictPage";
import { reasonKeys } from "../src/pupil/reasons";
import { drawingUrl } from "../src/ui/Figure";
import en from "../src/words/en.json";
import es from "../src/words/es.json";

const empty = { setNumber: 1, isChoiceGone: false, trials: [], ticks: new Map() };

describe("reasonKeys", () => {
  it("offers three reasons, and a fourth about what was said where something was said", () => {
    for (const next of ["same", "harder", "easier"] as const) {
      const without = reasonKeys(next, empty);
      const withSaid = reasonKeys(next, { ...empty, prediction: { kind: "prediction", successCount: 2 } });
      expect(without.length).toBe(3);
      expect(withSaid.length).toBe(4);
      expect(withSaid.filter((k) => !without.includes(k))).toEqual([{ same: "PupilWhySaid", harder: "PupilWhyMore", easier: "PupilWhyLess" }[next]]);
    }
  });
});

describe("the pupil's words", () => {
  for (const [language, words] of Object.entries({ en, es })) {
    const own = Object.entries(words).filter(([key]) => key.startsWith("Pupil"));

    it(`praise no level and tell nobody which to take (${language})`, () => {
      const praise = /\b(good|great|well done|best|better|super|bravo|should|try level|bien hecho|muy bien|mejor|deber|genial|perfect)/i;
      expect(own.filter(([, text]) => praise.test(text))).toEqual([]);
    });

    it(`name the pupil wherever a partner is spoken to about one, and are short (${language})`, () => {
      const named = own.filter(([key]) => key.endsWith("Partner") && key.slice(0, -7) in words && key !== "PupilLookHowPartner");
      expect(named.filter(([, text]) => !text.includes("{0}"))).toEqual([]);
      expect(own.filter(([key, text]) => text.length > 72 && key !== "PupilNothing")).toEqual([]);
    });
  }
});

describe("ladderS", () => {
  it("goes up, far past what the level asks, and never past what is timed", () => {
    for (const dose of [0.5, 1, 5, 10, 60, 600]) {
      const rungs = ladderS(dose);
      expect(rungs).toEqual([...new Set(rungs)].sort((a, b) => a - b));
      expect(Math.max(...rungs)).toBeGreaterThanOrEqual(Math.min(600, 2 * dose));
      expect(Math.max(...rungs)).toBeLessThanOrEqual(600);
    }
  });
});

describe("drawingUrl", () => {
  it("has the page's colours where the drawing asks for a tone, and the drawing's own where the page has none", () => {
    const url = drawingUrl('<svg><path fill="var(--tone-ink, #15181b)" stroke="var(--tone-second, #8a5200)"/></svg>', { "--tone-ink": "#000000" });
    expect(decodeURIComponent(url)).toBe('data:image/svg+xml,<svg><path fill="#000000" stroke="var(--tone-second, #8a5200)"/></svg>');
  });
});
