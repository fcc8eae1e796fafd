import { useEffect, useRef, useState } from "preact/hooks";
import { Button } from "../ui/Button";
import { Dialog } from "../ui/Dialog";
import { say } from "../words/say";
import { canDictate, dictate } from "./dictation";
import { Sign } from "./Sign";
import type { Teaching } from "./teaching";

/** As long as the server takes a note. */
const longest = 300;

export interface NoteFieldProps {
  readonly teaching: Teaching;
  readonly label: string;
  /** Answers whether it was saved; then the field closes. */
  readonly onSave: (text: string) => Promise<boolean>;
  readonly onClose: () => void;
  /** Whether the keyboard opens at once. */
  readonly isFirst?: boolean;
}

/** A note by keyboard, or spoken where the browser can and the teacher has agreed to what that means. */
export function NoteField({ teaching, label, onSave, onClose, isFirst }: NoteFieldProps) {
  const [text, setText] = useState("");
  const [stop, setStop] = useState<(() => void) | undefined>();
  const [isAsking, setAsking] = useState(false);
  const field = useRef<HTMLTextAreaElement>(null);
  useEffect(() => {
    if (isFirst) field.current?.focus();
  }, []);
  useEffect(() => stop, [stop]);

  const listen = () =>
    setStop(() =>
      dictate(
        (heard) => setText((before) => `${before} ${heard}`.trim().slice(0, longest)),
        () => setStop(undefined),
      ),
    );
  const save = async () => {
    if (await onSave(text.trim())) onClose();
  };

  return (
    <div class="note-field">
      <label>
        <span class="pad-head">{label}</span>
        <textarea ref={field} rows={2} maxLength={longest} value={text} onInput={(e) => setText(e.currentTarget.value)} />
      </label>
      <div class="row">
        {canDictate() && (
          <button type="button" class="tool" aria-pressed={stop !== undefined} onClick={() => (stop ? stop() : teaching.isDictationAllowed.value ? listen() : setAsking(true))}>
            <Sign name="speak" />
            <span>{say(stop ? "TeacherListening" : "TeacherSpeak")}</span>
          </button>
        )}
        <Button kind="quiet" onPress={onClose}>{say("TeacherCancel")}</Button>
        <Button kind="main" isDisabled={text.trim() === ""} onPress={save}>{say("TeacherSave")}</Button>
      </div>
      {isAsking && (
        <Dialog
          title={say("TeacherSpeakTitle")}
          onClose={() => setAsking(false)}
          foot={
            <>
              <Button onPress={() => setAsking(false)}>{say("TeacherSpeakNo")}</Button>
              <Button
                onPress={() => {
                  teaching.isDictationAllowed.value = true;
                  setAsking(false);
                  listen();
                }}
              >
                {say("TeacherSpeakYes")}
              </Button>
            </>
          }
        >
          <p>{say("TeacherSpeakMeans")}</p>
        </Dialog>
      )}
    </div>
  );
}
