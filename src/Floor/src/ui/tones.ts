import { signal } from "@preact/signals";

/** What drawings call their colours, and the token each takes. */
const tones: Readonly<Record<string, string>> = {
  "--tone-ink": "--ink",
  "--tone-muted": "--muted",
  "--tone-faint": "--faint",
  "--tone-ground": "--surface",
  "--tone-accent": "--accent",
  "--tone-accent-soft": "--accent-soft",
  "--tone-accent-middle": "--accent-middle",
  "--tone-second": "--second",
  "--tone-second-soft": "--second-soft",
  "--tone-second-middle": "--second-middle",
  "--tone-caution": "--caution",
};

/** The tones of the page as it looks now: a drawing in an `img` sees nothing of the page around it. */
export const pageTones = signal<Readonly<Record<string, string>>>({});

if (typeof document !== "undefined") {
  const read = () => {
    const style = getComputedStyle(document.documentElement);
    pageTones.value = Object.fromEntries(
      Object.entries(tones)
        .map(([tone, token]) => [tone, style.getPropertyValue(token).trim()] as const)
        .filter(([, colour]) => colour),
    );
  };
  read();
  addEventListener("load", read);
  matchMedia("(prefers-color-scheme: dark)").addEventListener?.("change", read);
  new MutationObserver(read).observe(document.documentElement, { attributes: true, attributeFilter: ["data-contrast", "data-theme"] });
}
