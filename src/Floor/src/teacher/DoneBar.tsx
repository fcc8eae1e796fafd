import { Button } from "../ui/Button";
import { say } from "../words/say";
import type { Teaching } from "./teaching";

/** What was done last, with one tap to take it back; over the pupil's own pad the pad says it itself. */
export function DoneBar({ teaching }: { readonly teaching: Teaching }) {
  const done = teaching.done.value;
  const { pupilId, over } = teaching.route.value;
  if (!done || (done.visitedId !== undefined && done.visitedId === pupilId && over === undefined)) return null;
  return (
    <div class="done-bar" data-saved>
      <p role="status">{done.text}</p>
      <Button mark="undo" onPress={() => teaching.takeBack()}>{say("TeacherUndo")}</Button>
    </div>
  );
}
