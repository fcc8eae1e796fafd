import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const css = readFileSync(new URL("../src/ui/tokens.css", import.meta.url), "utf8");

/** The colours of every rule with this selector, the later ones over the earlier. */
function colours(...selectors: readonly string[]): Record<string, string> {
  const found: Record<string, string> = {};
  for (const selector of selectors) {
    const rules = css.split("}").filter((rule) => rule.split("{").slice(0, -1).some((head) => head.trim().split("\n").pop()!.trim() === selector));
    expect(rules.length, selector).toBeGreaterThan(0);
    for (const rule of rules) for (const [, name, value] of rule.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)) found[name!] = value!;
  }
  return found;
}

/** Contrast of two colours. Source: WCAG 2.2, the definitions of contrast ratio and relative luminance. */
function contrast(a: string, b: string): number {
  const [x, y] = [luminance(a), luminance(b)];
  return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
}

function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((i) => parseInt(colour.slice(i, i + 2), 16) / 255).map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

const light = ":root";
const dark = ':root[data-theme="dark"]';
const high = ':root[data-contrast="high"]';
const highDark = ':root[data-contrast="high"][data-theme="dark"]';

/** What is written on what. */
const texts = [
  ["ink", "ground"], ["ink", "surface"], ["ink", "rail"], ["ink", "accent-soft"], ["ink", "second-soft"], ["ink", "caution-soft"],
  ["muted", "ground"], ["muted", "surface"], ["muted", "rail"], ["accent", "ground"], ["accent", "surface"], ["accent", "rail"],
  ["accent-deep", "accent-soft"], ["on-accent", "accent"], ["on-accent", "accent-deep"], ["caution", "ground"], ["caution", "surface"], ["on-caution", "caution"],
] as const;

/** Edges and signs that say something. */
const edges = [["edge", "ground"], ["edge", "surface"], ["accent", "accent-soft"], ["focus", "ground"], ["focus", "surface"], ["second", "second-soft"]] as const;

describe("tokens.css", () => {
  it("holds the two known contrasts", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
    // From memory of the usual examples: #767676 just passes on white, #777777 just fails.
    expect(contrast("#767676", "#ffffff")).toBeGreaterThan(4.5);
    expect(contrast("#777777", "#ffffff")).toBeLessThan(4.5);
  });

  for (const [name, themes, least] of [
    ["light", [light], 4.5],
    ["dark", [light, dark], 4.5],
    ["high contrast", [light, high], 7],
    ["dark high contrast", [light, dark, high, highDark], 7],
  ] as const) {
    it(`can be read: ${name}, at least ${least} : 1`, () => {
      const palette = colours(...themes);
      for (const [text, ground] of texts) expect(contrast(palette[text]!, palette[ground]!), `${text} on ${ground}`).toBeGreaterThanOrEqual(least);
      for (const [edge, ground] of edges) expect(contrast(palette[edge]!, palette[ground]!), `${edge} on ${ground}`).toBeGreaterThanOrEqual(3);
    });
  }

  it("says the same for a device that is dark as for one that was set to dark", () => {
    for (const [asked, set] of [
      [':root:not([data-theme="light"])', dark],
      [':root[data-contrast="high"]:not([data-theme="light"])', highDark],
    ] as const) {
      expect(colours(asked)).toEqual(colours(set));
    }
  });
});
