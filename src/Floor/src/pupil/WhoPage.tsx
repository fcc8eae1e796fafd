import type { LessonBundle } from "../contracts";
import { Button } from "../ui/Button";
import { Page } from "../ui/Page";
import { say } from "../words/say";
import type { Session } from "./session";

export interface WhoPageProps {
  readonly session: Session;
  readonly bundle: LessonBundle;
  readonly onLeave?: () => void;
}

/** Whose turn it is: two names for a pair, the class for a station. */
export function WhoPage({ session, bundle, onLeave }: WhoPageProps) {
  const before = bundle.pupils.find((p) => p.pupilId === session.before.value);
  const isPair = bundle.pupils.length <= 2;
  const undo = async () => {
    session.handOver(before?.pupilId);
    await session.undo();
  };
  return (
    <Page
      title={say(isPair ? "PupilWhoPair" : "PupilWhoStation")}
      above={bundle.className}
      step="who"
      foot={
        (onLeave || before) && <>
          {onLeave && (
            <Button kind="quiet" onPress={onLeave}>
              {say("PupilLeave")}
            </Button>
          )}
          {before && (
            <Button mark="undo" onPress={undo}>
              {say("PupilUndoOf", before.label)}
            </Button>
          )}
        </>
      }
    >
      <ul class={`choice${isPair ? " wide" : ""}`} style={isPair ? "--card:16rem" : "--card:7.5rem"}>
        {bundle.pupils.map((pupil) => (
          <li key={pupil.pupilId}>
            <button type="button" class={`card centred${isPair ? " large" : ""}`} onClick={() => session.handOver(pupil.pupilId)}>
              {pupil.label}
            </button>
          </li>
        ))}
      </ul>
    </Page>
  );
}
