import { say, type WordKey } from "../words/say";

/** What is said to the pupil in one way, and about the pupil to the partner who holds the tablet in another: a key and the same with "Partner". */
export type ToldKey = { [K in WordKey]: `${K}Partner` extends WordKey ? K : never }[WordKey];

/** A text for whoever holds the tablet; `{0}` is the pupil's name, the parts follow. */
export function tell(isPartner: boolean, key: ToldKey, name: string, ...parts: readonly (string | number)[]): string {
  return say(isPartner ? (`${key}Partner` as WordKey) : key, name, ...parts);
}
