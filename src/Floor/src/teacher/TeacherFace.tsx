import type { ReadonlySignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useEffect, useMemo } from "preact/hooks";
import { joinInLink, type JoinShown } from "../board/boardLink";
import { clockText } from "../board/serverClock";
import type { Floor } from "../lesson/floor";
import { Mark } from "../ui/Mark";
import { say, type WordKey } from "../words/say";
import { ClassTiles } from "./ClassTiles";
import { ClockTab } from "./ClockTab";
import { CodeSheet } from "./CodeSheet";
import { DevicesTab } from "./DevicesTab";
import { DoneBar } from "./DoneBar";
import { LessonTab } from "./LessonTab";
import { PupilSheet } from "./PupilSheet";
import { SafetyNews } from "./SafetyNews";
import { SampleCheck } from "./SampleCheck";
import { ScanSheet } from "./ScanSheet";
import { Sign, type SignName } from "./Sign";
import { StopKey } from "./StopKey";
import { count, phaseWords } from "./teacherWords";
import { Teaching, type Tab } from "./teaching";
import "./teacher.css";

export interface TeacherFaceProps {
  readonly floor: Floor;
  /** What the class joins with; without it the code in the page's own link, as long as it was said to hold. */
  readonly join?: ReadonlySignal<JoinShown | undefined>;
  /** Asks the server for a new code, which takes the old one's place in `join`; none where this device cannot. */
  readonly onRenewCode?: () => Promise<void>;
  /** Where entries come in by file or by a chain of codes. */
  readonly inbox?: ComponentChildren;
  readonly settings?: ComponentChildren;
}

const tabs: readonly (readonly [Tab, WordKey, SignName | undefined])[] = [
  ["class", "TeacherTabClass", undefined],
  ["clock", "TeacherTabClock", "clock"],
  ["devices", "TeacherTabDevices", "device"],
  ["lesson", "TeacherTabLesson", "flag"],
];

/** The teacher's phone in a lesson: one hand, glances of two seconds. Everything but orders works without a network. */
export function TeacherFace({ floor, join, onRenewCode, inbox, settings }: TeacherFaceProps) {
  const teaching = useMemo(() => new Teaching(floor), [floor]);
  const linked = useMemo(() => joinInLink(location.hash, location.origin), []);
  useEffect(() => teaching.start(), [teaching]);
  const route = teaching.route.value;
  const shownJoin = join?.value ?? linked;

  return (
    <div class="teacher" data-tab={route.tab}>
      <Top teaching={teaching} />
      <SafetyNews teaching={teaching} />
      {teaching.problem.value !== undefined && (
        <div class="failed" role="alert">
          <p>{teaching.problem.value}</p>
          <button type="button" class="link" onClick={() => (teaching.problem.value = undefined)}>{say("TeacherProblemKnown")}</button>
        </div>
      )}
      <main class="teacher-main">
        {route.over === "check" && route.pupilId !== undefined ? (
          <SampleCheck key={route.pupilId} teaching={teaching} pupilId={route.pupilId} />
        ) : route.over === "scan" ? (
          <ScanSheet teaching={teaching} />
        ) : route.over === "code" ? (
          <CodeSheet teaching={teaching} join={shownJoin} onRenew={onRenewCode} />
        ) : route.pupilId !== undefined ? (
          <PupilSheet key={route.pupilId} teaching={teaching} pupilId={route.pupilId} />
        ) : route.tab === "clock" ? (
          <ClockTab teaching={teaching} />
        ) : route.tab === "devices" ? (
          <DevicesTab teaching={teaching} />
        ) : route.tab === "lesson" ? (
          <LessonTab teaching={teaching} hasCode={shownJoin !== undefined || onRenewCode !== undefined} inbox={inbox} settings={settings} />
        ) : (
          <ClassTiles teaching={teaching} />
        )}
      </main>
      <DoneBar teaching={teaching} />
      <nav class="tabs" aria-label={say("TeacherTabs")}>
        {tabs.slice(0, 2).map((tab) => <TabKey key={tab[0]} teaching={teaching} tab={tab} />)}
        <StopKey teaching={teaching} />
        {tabs.slice(2).map((tab) => <TabKey key={tab[0]} teaching={teaching} tab={tab} />)}
      </nav>
    </div>
  );
}

function TabKey({ teaching, tab: [tab, word, sign] }: { readonly teaching: Teaching; readonly tab: (typeof tabs)[number] }) {
  const isHere = teaching.route.value.tab === tab;
  return (
    <button type="button" class="tab-key" aria-current={isHere ? "page" : undefined} onClick={() => teaching.turn(tab)}>
      {sign ? <Sign name={sign} /> : <Mark name="people" />}
      <span>{say(word)}</span>
    </button>
  );
}

/** What is always in sight: the class, the phase that runs, whether the network is there, and what is not sent. */
function Top({ teaching }: { readonly teaching: Teaching }) {
  const { running, runningS } = teaching.clock.value;
  const unsent = teaching.unsentCount.value;
  const { isOnline, refused } = teaching.floor.delivery.value;
  const isStopped = teaching.floor.state.value.stoppedAt !== undefined;
  return (
    <header class="top" data-stopped={isStopped ? "" : undefined}>
      <strong class="top-class">{teaching.floor.bundle.value.className}</strong>
      <button type="button" class="top-phase" onClick={() => teaching.turn("clock")}>
        {isStopped ? say("TeacherIsStopped") : running ? `${say(phaseWords[running])} ${clockText(runningS)}` : say("TeacherClockOff")}
      </button>
      <button type="button" class="top-sent" data-unsent={unsent} data-offline={isOnline ? undefined : ""} onClick={() => teaching.turn("devices")}>
        {!isOnline && <span>{say("TeacherOffline")}</span>}
        <span>{unsent === 0 ? say("TeacherSentShort") : count(unsent, "TeacherUnsentShortOne", "TeacherUnsentShortMany")}</span>
        {refused.length > 0 && <Mark name="caution" />}
      </button>
    </header>
  );
}
