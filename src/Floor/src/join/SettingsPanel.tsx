import { useSignal } from "@preact/signals";
import { Button } from "../ui/Button";
import { Dialog } from "../ui/Dialog";
import { language, say, type Language, type WordKey } from "../words/say";
import { LeavePart } from "./LeavePart";
import type { Session } from "./session";
import { settings, type Settings } from "./settings";

const texts: readonly (readonly [Settings["text"], WordKey])[] = [
  ["normal", "SettingsTextNormal"],
  ["large", "SettingsTextLarge"],
  ["larger", "SettingsTextLarger"],
];

const languages: readonly (readonly [Language, string])[] = [
  ["en", "English"],
  ["es", "Español"],
];

/** How the device looks and speaks, and the way out of the lesson. Every change shows at once. */
export function SettingsPanel({ session, onClose }: { readonly session: Session; readonly onClose: () => void }) {
  const isLeaving = useSignal(false);
  const look = settings.value;
  const set = (part: Partial<Settings>) => (settings.value = { ...settings.peek(), ...part });
  const deviceName = session.floor.value?.state.value.deviceName;
  return (
    <Dialog title={say("SettingsHeading")} onClose={onClose} foot={<Button kind="main" onPress={onClose}>{say("SettingsClose")}</Button>}>
      <div class="settings">
        <Options label={say("SettingsLanguage")} options={languages} chosen={language.value} onChoose={(value) => (language.value = value)} />
        <Options label={say("SettingsText")} options={texts.map(([value, key]) => [value, say(key)] as const)} chosen={look.text} onChoose={(text) => set({ text })} />
        <Switch label={say("SettingsContrast")} isOn={look.contrast === "high"} onSet={(on) => set({ contrast: on ? "high" : "normal" })} />
        <Switch label={say("SettingsMotion")} isOn={look.motion === "less"} onSet={(on) => set({ motion: on ? "less" : "normal" })} />
        <Switch label={say("SettingsHand")} isOn={look.hand === "left"} onSet={(on) => set({ hand: on ? "left" : "right" })} />
        {"speechSynthesis" in window && <Switch label={say("SettingsRead")} isOn={look.read === "on"} onSet={(on) => set({ read: on ? "on" : "off" })} />}
        <section class="stack-s device-part">
          {deviceName && <p class="muted">{say("SettingsDeviceCalled", deviceName)}</p>}
          {session.lesson.value &&
            (isLeaving.value ? (
              <LeavePart session={session} />
            ) : (
              <Button kind="quiet" onPress={() => void (isLeaving.value = true)}>{say("SettingsLeave")}</Button>
            ))}
          <p class="small muted">{say("SettingsVersion", __FLOOR_VERSION__)}</p>
        </section>
      </div>
    </Dialog>
  );
}

interface OptionsProps<T extends string> {
  readonly label: string;
  readonly options: readonly (readonly [T, string])[];
  readonly chosen: T;
  readonly onChoose: (value: T) => void;
}

function Options<T extends string>({ label, options, chosen, onChoose }: OptionsProps<T>) {
  return (
    <fieldset class="options">
      <legend>{label}</legend>
      <div class="option-row">
        {options.map(([value, words]) => (
          <label key={value} class="option" data-chosen={chosen === value ? "" : undefined}>
            <input type="radio" name={label} checked={chosen === value} onChange={() => onChoose(value)} />
            {words}
          </label>
        ))}
      </div>
    </fieldset>
  );
}

function Switch({ label, isOn, onSet }: { readonly label: string; readonly isOn: boolean; readonly onSet: (isOn: boolean) => void }) {
  return (
    <label class="switch">
      <span>{label}</span>
      <input type="checkbox" role="switch" checked={isOn} onChange={(event) => onSet(event.currentTarget.checked)} />
    </label>
  );
}
