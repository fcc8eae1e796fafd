import { effect, signal } from "@preact/signals";
import type { Keep } from "../keep/keep";
import { language, type Language } from "../words/say";

/** How this device looks and speaks: whoever holds it sets it, and it stays. */
export interface Settings {
  readonly text: "normal" | "large" | "larger";
  readonly contrast: "normal" | "high";
  readonly motion: "normal" | "less";
  readonly hand: "right" | "left";
  readonly read: "off" | "on";
}

export const settings = signal<Settings>({ text: "normal", contrast: "normal", motion: "normal", hand: "right", read: "off" });

/** Whether cues are read out as they come. */
export function readsAloud(): boolean {
  return settings.value.read === "on";
}

const ordinary: readonly string[] = ["normal", "right", "off"];

/** Takes up what is kept, shows it as `data-…` on the page, and keeps every change. */
export async function startSettings(keep: Keep | undefined): Promise<void> {
  const kept = await keep?.setting<{ settings: Settings; language: Language }>("look").catch(() => undefined);
  if (kept) {
    settings.value = { ...settings.peek(), ...kept.settings };
    language.value = kept.language;
  }
  let isFirst = true;
  effect(() => {
    const look = { settings: settings.value, language: language.value };
    const page = document.documentElement;
    page.lang = look.language;
    for (const [name, value] of Object.entries(look.settings)) {
      if (ordinary.includes(value)) delete page.dataset[name];
      else page.dataset[name] = value;
    }
    if (!isFirst) void keep?.setSetting("look", look).catch(() => undefined);
    isFirst = false;
  });
}
