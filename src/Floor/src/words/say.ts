import { signal } from "@preact/signals";
import en from "./en.json";
import es from "./es.json";

/** What can be said; a test holds every language to the same keys and the same places to fill. */
export type WordKey = keyof typeof en;

export type Language = "en" | "es";

const words: Record<Language, Record<WordKey, string>> = { en, es };

/** The language of this device. */
export const language = signal<Language>(firstLanguage());

/** A text in the device's language, `{0}`, `{1}` … filled in. */
export function say(key: WordKey, ...parts: readonly (string | number)[]): string {
  return words[language.value][key].replace(/\{(\d)\}/g, (_, place: string) => String(parts[Number(place)] ?? ""));
}

function firstLanguage(): Language {
  return typeof navigator !== "undefined" && navigator.language.toLowerCase().startsWith("es") ? "es" : "en";
}
