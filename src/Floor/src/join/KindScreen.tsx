import type { FloorDeviceKind } from "../contracts";
import { problemText } from "../sync/problem";
import { Banner } from "../ui/Banner";
import { Button } from "../ui/Button";
import { Mark, type MarkName } from "../ui/Mark";
import { Page } from "../ui/Page";
import { say, type WordKey } from "../words/say";
import type { Session } from "./session";
import { SettingsButton } from "./SettingsButton";

const kinds: readonly (readonly [FloorDeviceKind, WordKey, WordKey, MarkName])[] = [
  ["pupil", "JoinKindMine", "JoinKindMineNote", "page"],
  ["pair", "JoinKindTwo", "JoinKindTwoNote", "people"],
  ["station", "JoinKindStation", "JoinKindStationNote", "circle"],
];

/** What the device is there for; a tap says it and joins. */
export function KindScreen({ session }: { readonly session: Session }) {
  const { isBusy, problem } = session;
  return (
    <Page
      step="kind"
      title={say("JoinKindHeading")}
      top={
        <>
          <Button kind="quiet" mark="back" onPress={() => session.back()}>{say("JoinBack")}</Button>
          <span class="who" />
          <SettingsButton session={session} />
        </>
      }
    >
      {problem.value !== undefined && <Banner kind="problem" isNews>{problemText(problem.value)}</Banner>}
      <ul class="kinds">
        {kinds.map(([kind, name, note, mark]) => (
          <li key={kind}>
            <button type="button" class="card kind" disabled={isBusy.value} onClick={() => void session.join(kind)}>
              <Mark name={mark} />
              <strong>{say(name)}</strong>
              <span class="muted">{say(note)}</span>
            </button>
          </li>
        ))}
      </ul>
      <p role="status" class="muted">{isBusy.value ? say("JoinChecking") : ""}</p>
    </Page>
  );
}
