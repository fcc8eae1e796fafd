import { useSignal } from "@preact/signals";
import { Problem, problemText } from "../sync/problem";
import { Banner } from "../ui/Banner";
import { Button } from "../ui/Button";
import { Mark } from "../ui/Mark";
import { Page } from "../ui/Page";
import { say } from "../words/say";
import { namesThatBegin } from "./names";
import type { Session } from "./session";
import { SettingsButton } from "./SettingsButton";

/** Below this many names a list is seen at a glance, and a search would be one thing more. */
const shortListCount = 8;

/** Who uses the device: one name, or two for a shared one. Any name may be picked, also one that another device shows. */
export function PickScreen({ session }: { readonly session: Session }) {
  const begins = useSignal("");
  const picked = useSignal<readonly string[]>([]);
  const lesson = session.lesson.value!;
  const most = lesson.kind === "pair" ? 2 : 1;
  const { pupils } = lesson;
  const shown = namesThatBegin(pupils, begins.value);
  const problem = session.problem.value;

  const pick = (pupilId: string) => {
    const others = picked.value.filter((id) => id !== pupilId);
    // One more than may be takes the place of the one picked first: nobody has to take a name away to correct a slip.
    picked.value = picked.value.includes(pupilId) ? others : [...others, pupilId].slice(-most);
  };
  return (
    <Page
      step="pick"
      above={[lesson.className, lesson.title].filter(Boolean).join(" · ")}
      title={say(most === 2 ? "JoinPickHeadingTwo" : "JoinPickHeading")}
      top={
        <>
          <span class="who">{lesson.state.deviceName}</span>
          <SettingsButton session={session} />
        </>
      }
      foot={
        <>
          <p role="status" class="picked">
            {picked.value.length > 0 && say("JoinNamePicked", picked.value.map((id) => pupils.find((p) => p.pupilId === id)?.label ?? "").join(" + "))}
          </p>
          <Button kind="main" isLarge isDisabled={picked.value.length === 0} onPress={() => session.claim(picked.value)} mark="next">
            {say(session.isBusy.value ? "JoinChecking" : "JoinGo")}
          </Button>
        </>
      }
    >
      {problem !== undefined && (
        <Banner kind="problem" isNews>
          <p>{problemText(problem)}</p>
          {problem instanceof Problem && !problem.isPassing && <Button onPress={() => session.rejoin()}>{say("JoinRepeatCode")}</Button>}
        </Banner>
      )}
      {pupils.length > shortListCount && (
        <label class="filter">
          <span>{say("JoinFilterNames")}</span>
          <input type="text" autocomplete="off" spellcheck={false} value={begins.value} onInput={(event) => (begins.value = event.currentTarget.value)} />
        </label>
      )}
      {shown.length === 0 && <p class="muted" role="status">{say("JoinNameNone")}</p>}
      <ul class="names">
        {shown.map(({ pupilId, label, isServed }) => (
          <li key={pupilId}>
            <button type="button" class="card name" aria-pressed={picked.value.includes(pupilId)} data-chosen={picked.value.includes(pupilId) ? "" : undefined} onClick={() => pick(pupilId)}>
              <strong>{label}</strong>
              {isServed && <span class="small muted">{say("JoinNameServed")}</span>}
              <span class="chosen">
                <Mark name="check" />
              </span>
            </button>
          </li>
        ))}
      </ul>
    </Page>
  );
}
