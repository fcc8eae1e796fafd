import type { NextLevel } from "../contracts";
import { say, type WordKey } from "../words/say";

const keys: Readonly<Record<NextLevel, WordKey>> = { same: "PupilSame", harder: "PupilHarder", easier: "PupilEasier" };

/** What was decided, in words. */
export function nextWords(next: NextLevel): string {
  return say(keys[next]);
}
