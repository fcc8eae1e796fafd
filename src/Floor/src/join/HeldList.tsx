import { Button } from "../ui/Button";
import { say } from "../words/say";
import { later } from "./later";
import type { Session } from "./session";

const HandOver = later(async () => (await import("../chain/HandOver")).HandOver);

/** Entries of earlier lessons that nobody has yet: they are said, and they can be sent or carried away. */
export function HeldList({ session }: { readonly session: Session }) {
  const held = session.held.value;
  if (held.length === 0) return null;
  return (
    <section class="held stack-s" aria-label={say("JoinHeld")}>
      <h2>{say("JoinHeld")}</h2>
      {held.map(({ lesson, waitingCount }) => (
        <div key={lesson.key} class="stack-s">
          <p>{say("JoinHeldLesson", [lesson.className, lesson.title].filter(Boolean).join(" · "), waitingCount)}</p>
          <div class="row">
            <Button onPress={() => session.tryNow()}>{say("JoinHeldSend")}</Button>
          </div>
          <HandOver entries={() => session.waitingOf(lesson.key)} name={lesson.className} />
        </div>
      ))}
    </section>
  );
}
