import { effect, signal } from "@preact/signals";
import type en from "./en.json";

/** What can be said; a test holds every language to the same keys and the same places to fill. */
export type WordKey = keyof typeof en;

export type Language = "en" | "es";

/** What all faces say, and what only teacher and board say too. */
export type WordPart = "shared" | "class";

type Words = Readonly<Record<string, string>>;

const parts: Record<Language, Record<WordPart, () => Promise<{ default: Words }>>> = {
  en: { shared: () => import("./en.json?part=shared"), class: () => import("./en.json?part=class") },
  es: { shared: () => import("./es.json?part=shared"), class: () => import("./es.json?part=class") },
};

const known = signal<Readonly<Partial<Record<Language, Words>>>>({});
const loaded = new Set<string>();
let widest: WordPart = "shared";

/** The language of this device. */
export const language = signal<Language>(firstLanguage());

/** Loads words, those of the device's language at once. A page shows nothing before it has them. */
export async function loadWords(part: WordPart, of: Language = language.peek()): Promise<void> {
  if (part === "class") widest = part;
  for (const needed of part === "class" ? (["shared", "class"] as const) : (["shared"] as const)) {
    if (loaded.has(of + needed)) continue;
    const words = (await parts[of][needed]()).default;
    loaded.add(of + needed);
    known.value = { ...known.peek(), [of]: { ...known.peek()[of], ...words } };
  }
}

// Another language is chosen: until its words are there, what is shown stays as it was.
effect(() => {
  const wanted = language.value;
  if (loaded.size > 0) void loadWords(widest, wanted).catch(() => undefined);
});

/** A text in the device's language, `{0}`, `{1}` … filled in. */
export function say(key: WordKey, ...parts: readonly (string | number)[]): string {
  const all = known.value;
  const text = all[language.value]?.[key] ?? all.en?.[key] ?? all.es?.[key] ?? "";
  return text.replace(/\{(\d)\}/g, (_, place: string) => String(parts[Number(place)] ?? ""));
}

function firstLanguage(): Language {
  return typeof navigator !== "undefined" && navigator.language?.toLowerCase().startsWith("es") ? "es" : "en";
}
