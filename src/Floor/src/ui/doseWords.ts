import type { BundleLevel, DoseKind } from "../contracts";
import { language, say, type WordKey } from "../words/say";

const keys: Readonly<Record<DoseKind, WordKey>> = {
  holdS: "UiDoseHoldS",
  repetitionsCount: "UiDoseRepetitionsCount",
  distanceM: "UiDoseDistanceM",
  heightM: "UiDoseHeightM",
  targetSizeM: "UiDoseTargetSizeM",
};

/** What makes a success at a level, in words: "hold 5 s". */
export function doseWords(level: BundleLevel): string {
  return say(keys[level.doseKind], numberWords(level.doseAmount));
}

/** A number as the language writes it, with as many decimals as it has, at most two. */
export function numberWords(value: number): string {
  return value.toLocaleString(language.value, { maximumFractionDigits: 2 });
}
