import type { ComponentChildren } from "preact";
import { useEffect } from "preact/hooks";
import type { KeptFloor } from "../keep/keptFloor";
import { Banner } from "../ui/Banner";
import { Button } from "../ui/Button";
import type { Delivery } from "../lesson/floor";
import { say } from "../words/say";
import { Cover } from "./Cover";
import { later } from "./later";
import type { Session } from "./session";
import { SettingsButton } from "./SettingsButton";
import { StatusLine } from "./StatusLine";
import { isNewerThere } from "./update";

const HandOver = later(async () => (await import("../chain/HandOver")).HandOver);

/** What lies around and over every face: how things stand, stop, rest and the end of the lesson. */
export function Frame({ session, floor, children }: { readonly session: Session; readonly floor: KeptFloor; readonly children: ComponentChildren }) {
  const { stoppedAt, isLocked, closedAt } = floor.state.value;
  const { unsentCount, refused } = floor.delivery.value;
  const isTeacher = session.face === "teacher";
  const isStopped = stoppedAt !== undefined && !isTeacher;
  const isEnded = closedAt !== undefined && !isTeacher;
  const isOver = session.stage.value === "over";
  useEffect(() => {
    if (isEnded && unsentCount === 0 && refused.length === 0) void session.finishEnded();
  }, [isEnded, unsentCount, refused.length]);
  return (
    <div class="frame" data-face={session.face} data-unsent={unsentCount} data-online={floor.delivery.value.isOnline ? "" : undefined}>
      {session.face === "pupil" && <StatusLine session={session} floor={floor} />}
      {session.mustRejoin.value && (
        <Banner kind="caution" isNews>
          <p>{say(session.face === "pupil" ? "SyncTokenInvalid" : "JoinTicketInvalid")}</p>
          {session.face === "pupil" && <Button onPress={() => session.rejoin()}>{say("JoinRepeatCode")}</Button>}
        </Banner>
      )}
      {isTeacher && isNewerThere.value && <p class="quiet-note small muted">{say("SyncNewVersion")}</p>}
      {children}
      {session.face === "board" && (
        <div class="corner">
          <SettingsButton session={session} />
        </div>
      )}
      {/* Always there, so that a screen reader hears what comes into it. */}
      <div aria-live="assertive" role="alert" class="covers">
        {isStopped ? (
          <Cover kind="stop" title={say("JoinStop")} text={say("JoinStopText")} />
        ) : isEnded || isOver ? (
          <Ended session={session} unsentCount={unsentCount} refused={refused} isOver={isOver} />
        ) : isLocked && !isTeacher ? (
          <Cover kind="rest" title={say("JoinLocked")} text={say("JoinLockedText")} />
        ) : null}
      </div>
    </div>
  );
}

interface EndedProps {
  readonly session: Session;
  readonly unsentCount: number;
  readonly refused: Delivery["refused"];
  readonly isOver: boolean;
}

function Ended({ session, unsentCount, refused, isOver }: EndedProps) {
  if (session.isLookingBack.value) return null;
  if (isOver) {
    return (
      <Cover kind="end" title={say("JoinLessonEnded")} text={say("JoinLessonEndedClear")}>
        <Button kind="main" isLarge onPress={() => session.toStart()}>{say("JoinStartAgain")}</Button>
        {session.face === "pupil" && <Button onPress={() => session.lookBack()}>{say("JoinSeePage")}</Button>}
      </Cover>
    );
  }
  if (unsentCount > 0) {
    return (
      <Cover kind="end" title={say("JoinLessonEnded")} text={say("JoinLessonEndedWaiting", unsentCount)}>
        <Button onPress={() => session.tryNow()}>{say("SyncTryNow")}</Button>
        <SettingsButton session={session} isPlain />
      </Cover>
    );
  }
  return (
    <Cover kind="end" title={say("JoinLessonEnded")} text={refused.length > 0 ? say("JoinLessonEndedRefused", refused.length) : say("JoinChecking")}>
      {refused.length > 0 && (
        <>
          <Button kind="main" onPress={() => session.finishEnded()}>{say("JoinSeenByTeacher")}</Button>
          <HandOver entries={async () => refused.map((r) => r.entry)} name={session.lesson.value?.className ?? ""} />
        </>
      )}
    </Cover>
  );
}
