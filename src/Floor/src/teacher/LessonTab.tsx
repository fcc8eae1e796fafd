import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { clockText, countdownLeftS } from "../board/serverClock";
import { Button } from "../ui/Button";
import { Dialog } from "../ui/Dialog";
import { say } from "../words/say";
import { StopKey } from "./StopKey";
import { count, deviceText } from "./teacherWords";
import type { Teaching } from "./teaching";

const presetsS = [30, 60, 120, 300];

export interface LessonTabProps {
  readonly teaching: Teaching;
  /** Whether there is a code to show, or a way to get one. */
  readonly hasCode: boolean;
  /** Where entries come in by file or by a chain of codes. */
  readonly inbox?: ComponentChildren;
  readonly settings?: ComponentChildren;
}

/** What the teacher does with the lesson as a whole. Orders go over the network and say so where there is none. */
export function LessonTab({ teaching, hasCode, inbox, settings }: LessonTabProps) {
  const [isEnding, setEnding] = useState(false);
  const { state, delivery } = teaching.floor;
  const leftS = countdownLeftS(state.value, teaching.serverMs.value);
  const isClosed = state.value.closedAt !== undefined;
  return (
    <section class="tab" aria-label={say("TeacherTabLesson")}>
      <h1 class="tab-head">{teaching.floor.bundle.value.lessonTitle || teaching.floor.bundle.value.className}</h1>
      {!delivery.value.isOnline && <p class="offline-note">{say("TeacherOrdersOffline")}</p>}
      <StopKey teaching={teaching} isLarge />

      <section class="stack-s">
        <h2>{say("TeacherCountdown")}</h2>
        {leftS !== undefined && leftS > 0 ? (
          <div class="counting">
            <strong class="numbers">{clockText(leftS)}</strong>
            <Button onPress={() => teaching.order({ countdownS: 0 }, "TeacherCountdownFailed")}>{say("TeacherCountdownCancel")}</Button>
          </div>
        ) : (
          <div class="presets">
            {presetsS.map((s) => (
              <Button key={s} onPress={() => teaching.order({ countdownS: s }, "TeacherCountdownFailed")}>
                {s < 60 ? say("TeacherSeconds", s) : count(s / 60, "TeacherMinuteOne", "TeacherMinuteMany")}
              </Button>
            ))}
          </div>
        )}
      </section>

      <section class="stack-s">
        <h2>{say("TeacherJoin")}</h2>
        {hasCode ? (
          <Button onPress={() => teaching.open({ tab: "lesson", over: "code" })}>{say("TeacherShowCode")}</Button>
        ) : (
          <p class="muted">{say("TeacherNoCode")}</p>
        )}
      </section>

      {inbox && (
        <section class="stack-s">
          <h2>{say("TeacherInbox")}</h2>
          {inbox}
        </section>
      )}
      {settings}

      <section class="stack-s ending">
        <h2>{say("TeacherEnd")}</h2>
        {isClosed ? (
          <div class="row">
            <p>{say("TeacherEnded")}</p>
            <Button onPress={() => teaching.order({ isClosed: false }, "TeacherEndFailed")}>{say("TeacherReopen")}</Button>
          </div>
        ) : (
          <Button kind="grave" onPress={() => setEnding(true)}>{say("TeacherEndLesson")}</Button>
        )}
      </section>
      {isEnding && (
        <Dialog
          title={say("TeacherEndTitle")}
          onClose={() => setEnding(false)}
          foot={
            <>
              <Button onPress={() => setEnding(false)}>{say("TeacherEndNo")}</Button>
              <Button
                kind="graveMain"
                onPress={async () => {
                  await teaching.order({ isClosed: true }, "TeacherEndFailed");
                  setEnding(false);
                }}
              >
                {say("TeacherEndYes")}
              </Button>
            </>
          }
        >
          <StillUnsent teaching={teaching} />
        </Dialog>
      )}
    </section>
  );
}

/** What is not with the server yet, and where it is. */
function StillUnsent({ teaching }: { readonly teaching: Teaching }) {
  const own = teaching.floor.delivery.value.unsentCount;
  const holding = teaching.floor.devices.value.filter((d) => d.unsentCount > 0 && !teaching.isOwn(d));
  if (own === 0 && holding.length === 0) return <p>{say("TeacherEndAllSent")}</p>;
  return (
    <>
      <p>{say("TeacherEndUnsent")}</p>
      <ul class="unsent">
        {own > 0 && <li>{say("TeacherEndWhere", say("TeacherThisPhone"), own)}</li>}
        {holding.map((d) => <li key={d.deviceId}>{say("TeacherEndWhere", deviceText(d.name), d.unsentCount)}</li>)}
      </ul>
      <p>{say("TeacherEndKept")}</p>
    </>
  );
}
