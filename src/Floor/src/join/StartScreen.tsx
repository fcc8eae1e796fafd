import { useSignal } from "@preact/signals";
import { Banner } from "../ui/Banner";
import { Button } from "../ui/Button";
import { Page } from "../ui/Page";
import { problemText } from "../sync/problem";
import { say } from "../words/say";
import { HeldList } from "./HeldList";
import { cleanCode, isWholeCode } from "./link";
import type { Session } from "./session";
import { SettingsButton } from "./SettingsButton";
import { isNewerThere, startsWithoutNetwork, takeNewer } from "./update";

/** The first page: the code from the wall. Teacher and board come by a link of their own. */
export function StartScreen({ session }: { readonly session: Session }) {
  const code = useSignal("");
  const problem = session.problem.value;
  return (
    <Page
      step="start"
      title={say("JoinHeading")}
      top={
        <>
          {session.lesson.value && <Button kind="quiet" mark="back" onPress={() => session.back()}>{say("JoinBack")}</Button>}
          <span class="who">{say("AppName")}</span>
          <SettingsButton session={session} />
        </>
      }
    >
      {problem !== undefined && <Banner kind="problem" isNews>{problemText(problem)}</Banner>}
      {session.face === "pupil" ? (
        <form
          class="join-code"
          onSubmit={(event) => {
            event.preventDefault();
            session.typed(code.value);
          }}
        >
          <label for="code">{say("JoinCode")}</label>
          <p id="code-hint" class="muted">{say("JoinCodeHint")}</p>
          <input
            id="code"
            class="code-field"
            aria-describedby="code-hint"
            autocomplete="off"
            autocapitalize="characters"
            autocorrect="off"
            spellcheck={false}
            enterkeyhint="go"
            maxLength={9}
            value={code.value}
            onInput={(event) => (event.currentTarget.value = code.value = cleanCode(event.currentTarget.value))}
          />
          <Button kind="main" isLarge isDisabled={!isWholeCode(code.value)} onPress={() => session.typed(code.value)} mark="next">
            {say("JoinNext")}
          </Button>
        </form>
      ) : (
        <p class="lead">{say(session.face === "teacher" ? "JoinTeacherHow" : "JoinBoardHow")}</p>
      )}
      {isNewerThere.value && (
        <div class="row">
          <Button onPress={takeNewer}>{say("SyncNewVersionNow")}</Button>
        </div>
      )}
      <HeldList session={session} />
      {!startsWithoutNetwork() && <p class="small muted">{say("SyncPlainHttp")}</p>}
      <FileField session={session} />
    </Page>
  );
}

function FileField({ session }: { readonly session: Session }) {
  return (
    <label class="button quiet file-field">
      {say("JoinFileOpen")}
      <input
        type="file"
        class="unseen"
        accept=".json,application/json"
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          if (file) void session.openFile(file);
          event.currentTarget.value = "";
        }}
      />
    </label>
  );
}
