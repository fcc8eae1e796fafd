import { useId, useState } from "preact/hooks";
import { Button } from "../ui/Button";
import { say } from "../words/say";

/** The longest reason a decision takes, in characters. */
const mostCharacters = 300;

/** A reason in the pupil's own words, by keyboard. */
export function OwnWords({ first = "", onSave }: { readonly first?: string; readonly onSave: (words: string) => Promise<void> }) {
  const [words, setWords] = useState(first);
  const id = useId();
  return (
    <div class="own">
      <label for={id}>{say("PupilOwnWords")}</label>
      <div class="row">
        <textarea id={id} rows={2} maxLength={mostCharacters} value={words} onInput={(event) => setWords(event.currentTarget.value)} />
        <Button isDisabled={!words.trim()} onPress={() => onSave(words.trim())}>
          {say("PupilOwnSave")}
        </Button>
      </div>
    </div>
  );
}
