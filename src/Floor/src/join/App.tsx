import { problemText } from "../sync/problem";
import { Banner } from "../ui/Banner";
import { Page } from "../ui/Page";
import { say } from "../words/say";
import { Frame } from "./Frame";
import { KindScreen } from "./KindScreen";
import { PickScreen } from "./PickScreen";
import type { Session } from "./session";
import { SettingsButton } from "./SettingsButton";
import { StartScreen } from "./StartScreen";
import { later } from "./later";
import "./join.css";

const Inbox = later(async () => (await import("../chain/Inbox")).Inbox);

/** Everything a browser shows under /floor/. */
export function App({ session }: { readonly session: Session }) {
  const floor = session.floor.value;
  const Face = session.shown.value;
  switch (session.stage.value) {
    case "opening":
      return null;
    case "unable":
      return (
        <Page step="unable" title={say("AppName")}>
          <Banner kind="problem" isNews>{problemText(session.problem.value)}</Banner>
        </Page>
      );
    case "start":
      return <StartScreen session={session} />;
    case "kind":
      return <KindScreen session={session} />;
    case "pick":
      return <PickScreen session={session} />;
    default:
      if (!floor || !Face) return null;
      return (
        <Frame session={session} floor={floor}>
          {session.face === "teacher" ? (
            <Face floor={floor} inbox={<Inbox floor={floor} />} settings={<SettingsButton session={session} isPlain />} join={session.code} onRenewCode={() => session.renewCode()} />
          ) : (
            <Face floor={floor} join={session.code} />
          )}
        </Frame>
      );
  }
}
