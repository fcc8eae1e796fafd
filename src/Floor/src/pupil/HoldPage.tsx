import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import type { BundleLevel } from "../contracts";
import { Button } from "../ui/Button";
import { Choice } from "../ui/Choice";
import { numberWords } from "../ui/doseWords";
import { Mark } from "../ui/Mark";
import { say } from "../words/say";
import { HoldFace } from "./HoldFace";
import { SheetPage } from "./SheetPage";
import { tell } from "./tell";
import { useHoldTimer } from "./useHoldTimer";
import type { PupilView } from "./view";

export interface HoldPageProps {
  readonly view: PupilView;
  readonly level: BundleLevel;
  readonly title: string;
  readonly above: string;
  readonly step: string;
  readonly tries: ComponentChildren;
  readonly enough: ComponentChildren;
  readonly onSave: (isSuccess: boolean, heldS: number) => Promise<boolean>;
  readonly onUntimed: () => void;
}

/** A hold: start and stop with anything, then say what it was before it is kept. */
export function HoldPage({ view, level, title, above, step, tries, enough, onSave, onUntimed }: HoldPageProps) {
  const { session, isPartner, name } = view;
  const { state } = session.floor;
  const isHalted = state.value.stoppedAt !== undefined || state.value.isLocked;
  const { root, timer, reset } = useHoldTimer(session, isHalted, level.doseAmount);
  const [said, setSaid] = useState<boolean>();

  if (timer.kind === "stopped") {
    const isSuccess = said ?? timer.heldS >= level.doseAmount;
    const again = () => {
      setSaid(undefined);
      reset();
    };
    const keep = async () => {
      if (await onSave(isSuccess, timer.heldS)) again();
    };
    return (
      <SheetPage
        view={view}
        title={
          <>
            <span class="unseen">{tell(isPartner, "PupilHeldFor", name, numberWords(timer.heldS))}. </span>
            {say("PupilHeldAsk")}
          </>
        }
        above={above}
        step={`${step}-held`}
        onUndo={() => void (session.isBouncing || again())}
        foot={
          <>
            <Button kind="quiet" onPress={() => void (session.isBouncing || again())}>
              {say("PupilDrop")}
            </Button>
            <Button kind="main" isLarge onPress={keep}>
              {say("PupilKeep")}
            </Button>
          </>
        }
      >
        <p class="held-for numbers" aria-hidden="true">
          {numberWords(timer.heldS)} <small>s</small>
        </p>
        <Choice
          label={say("PupilHeldAsk")}
          chosen={isSuccess ? "held" : "not"}
          onChoose={(value) => setSaid(value === "held")}
          cardWidth="8rem"
          options={[
            { value: "held", face: <Answer mark="check" words={say("PupilHeld")} /> },
            { value: "not", face: <Answer mark="circle" words={say("PupilNotYet")} /> },
          ]}
        />
      </SheetPage>
    );
  }

  return (
    <div ref={root} class="hold">
      {timer.kind === "ready" ? (
        <SheetPage
          view={view}
          title={title}
          above={above}
          step={step}
          foot={
            <>
              <Button kind="quiet" isOn={session.hasCountIn.value} onPress={() => void (session.hasCountIn.value = !session.hasCountIn.value)}>
                {say("PupilCountIn")}
              </Button>
              <Button kind="quiet" onPress={onUntimed}>
                {say("PupilNoTimer")}
              </Button>
              {enough}
            </>
          }
        >
          {tries}
          <div class="start">
            <p class="digits numbers" aria-hidden="true">
              {numberWords(level.doseAmount)} s
            </p>
            <p class="hint">{say("PupilTapStart")}</p>
          </div>
        </SheetPage>
      ) : (
        <HoldFace timer={timer} doseS={level.doseAmount} />
      )}
    </div>
  );
}

function Answer({ mark, words }: { readonly mark: "check" | "circle"; readonly words: string }) {
  return (
    <span class="answer">
      <Mark name={mark} />
      <strong>{words}</strong>
    </span>
  );
}
