import type { BundleLevel, DoseKind } from "../contracts";
import { say, type WordKey } from "../words/say";

const doseWords: Readonly<Record<DoseKind, WordKey>> = {
  holdS: "BoardDoseHold",
  repetitionsCount: "BoardDoseRepetitions",
  distanceM: "BoardDoseDistance",
  heightM: "BoardDoseHeight",
  targetSizeM: "BoardDoseTarget",
};

/** What makes a success at a level, in the fewest words. */
export function doseText({ doseKind, doseAmount }: Pick<BundleLevel, "doseKind" | "doseAmount">): string {
  return say(doseWords[doseKind], doseAmount);
}
