import type { JoinShown } from "../board/boardLink";
import { QrCode } from "../board/QrCode";
import { Button } from "../ui/Button";
import { say } from "../words/say";
import { SheetTop } from "./SheetTop";
import type { Teaching } from "./teaching";

export interface CodeSheetProps {
  readonly teaching: Teaching;
  readonly join: JoinShown | undefined;
  /** Asks for a new code; none where this device cannot. */
  readonly onRenew: (() => Promise<void>) | undefined;
}

/** The code to join with, as large as the phone: to be held up. */
export function CodeSheet({ teaching, join, onRenew }: CodeSheetProps) {
  const nowMs = teaching.serverMs.value;
  const isDead = join !== undefined && join.untilMs <= nowMs;
  return (
    <div class="sheet">
      <SheetTop title={say("TeacherJoin")} step="code" />
      <div class="sheet-body code-body">
        {!join ? (
          <p>{say("TeacherCodeUnknown")}</p>
        ) : isDead ? (
          <p class="lead">{say("TeacherCodeOver")}</p>
        ) : (
          <>
            <QrCode text={join.url} label={say("BoardJoinQr")} />
            <p class="code-text">{join.code}</p>
            <p class="muted">{say("TeacherCodeUntil", Math.max(1, Math.floor((join.untilMs - nowMs) / 60_000)))}</p>
          </>
        )}
        {onRenew && (
          <>
            <Button onPress={async () => void (await teaching.attempt(onRenew, "TeacherCodeFailed"))}>{say("TeacherCodeRenew")}</Button>
            <p class="small muted">{say("TeacherCodeRenewMeans")}</p>
          </>
        )}
      </div>
    </div>
  );
}
