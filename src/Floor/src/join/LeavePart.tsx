import { Button } from "../ui/Button";
import { say } from "../words/say";
import { later } from "./later";
import type { Session } from "./session";

const HandOver = later(async () => (await import("../chain/HandOver")).HandOver);

/** The way out of a lesson. It is open once everything was delivered; until then it says what is left, and how that could go another way. */
export function LeavePart({ session }: { readonly session: Session }) {
  const lesson = session.lesson.value;
  const waitingCount = session.floor.value?.delivery.value.unsentCount ?? 0;
  if (!lesson) return null;
  if (waitingCount === 0) {
    return (
      <div class="stack-s">
        <p>{say("SettingsLeaveReady")}</p>
        <Button kind="grave" onPress={async () => void (await session.leave())}>{say("SettingsLeaveSure")}</Button>
      </div>
    );
  }
  return (
    <div class="stack-s">
      <p role="status">{say("SettingsLeaveWaits", waitingCount)}</p>
      <Button onPress={() => session.tryNow()}>{say("SyncTryNow")}</Button>
      <HandOver entries={() => session.waitingOf(lesson.key)} name={lesson.className} />
    </div>
  );
}
