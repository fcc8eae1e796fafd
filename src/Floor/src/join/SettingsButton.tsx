import { useSignal } from "@preact/signals";
import { say } from "../words/say";
import type { Session } from "./session";
import { later } from "./later";

const SettingsPanel = later(async () => (await import("./SettingsPanel")).SettingsPanel);

/** The way to the settings; it is in the same corner on every page. */
export function SettingsButton({ session, isPlain }: { readonly session: Session; readonly isPlain?: boolean }) {
  const isOpen = useSignal(false);
  return (
    <>
      <button type="button" class={isPlain ? "button" : "button quiet settings-key"} onClick={() => (isOpen.value = true)}>
        <svg class="mark" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
          <path d="M4 7h9M19 7h1M4 17h1M11 17h9M16 4.5v5M8 14.5v5" />
        </svg>
        <span>{say("SettingsOpen")}</span>
      </button>
      {isOpen.value && <SettingsPanel session={session} onClose={() => (isOpen.value = false)} />}
    </>
  );
}
