import type { ComponentChildren } from "preact";
import { useEffect } from "preact/hooks";
import { Banner } from "../ui/Banner";
import { Button } from "../ui/Button";
import { Page } from "../ui/Page";
import { say } from "../words/say";
import "./pupil.css";
import { hush } from "./speak";
import type { PupilView } from "./view";

export interface SheetPageProps {
  readonly view: PupilView;
  readonly title: ComponentChildren;
  /** Where in the sheet: the task and the set. */
  readonly above?: ComponentChildren;
  readonly foot?: ComponentChildren;
  readonly step: string;
  /** What undo goes back to, where the last tap is not stored yet; else the last step that is. */
  readonly onUndo?: () => void;
  readonly children?: ComponentChildren;
}

/** A page of a pupil's sheet: whose it is and undo on top, and a sentence where something could not be saved. */
export function SheetPage({ view, title, above, foot, step, onUndo, children }: SheetPageProps) {
  const { session } = view;
  useEffect(() => hush, [step]);
  return (
    <Page title={title} above={above} foot={foot} step={step} top={<Top view={view} onUndo={onUndo} />}>
      {session.hasProblem.value && (
        <Banner kind="problem" isNews>
          {say("UiNotSaved")}
        </Banner>
      )}
      {children}
    </Page>
  );
}

function Top({ view, onUndo }: { readonly view: PupilView; readonly onUndo: (() => void) | undefined }) {
  const { session, name, isPartner, isOver, bundle } = view;
  const isShared = bundle.kind === "pair" || bundle.kind === "station";
  return (
    <>
      <span class="who">
        {isShared ? (
          <Button kind="quiet" mark="people" label={say("PupilNextPupil")} onPress={() => session.handOver(undefined)}>
            {name}
          </Button>
        ) : (
          name
        )}
      </span>
      {!isOver && (
        <>
          <Button kind="quiet" mark="pen" isSide isOn={isPartner} onPress={() => void (session.isPartner.value = !isPartner)}>
            {say("PupilPartner")}
          </Button>
          <Button kind="quiet" mark="page" isSide isOn={session.isMine.value} onPress={() => void (session.isMine.value = !session.isMine.value)}>
            {say("PupilMine")}
          </Button>
          <Button kind="quiet" mark="undo" isDisabled={!onUndo && !session.canUndo()} onPress={onUndo ?? (async () => void (await session.undo()))}>
            {say("UiUndo")}
          </Button>
        </>
      )}
    </>
  );
}
