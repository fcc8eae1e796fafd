import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { say } from "../words/say";

const holdMs = 500;
/** How long a first tap waits for its second. */
const waitMs = 4000;

export interface HoldKeyProps {
  readonly onDone: () => void;
  readonly looks: string;
  readonly label: string;
  readonly children: ComponentChildren;
}

/** A button for what must not happen by a brush of the sleeve: held for half a second, or tapped twice. A keyboard presses it twice. */
export function HoldKey({ onDone, looks, label, children }: HoldKeyProps) {
  const [stage, setStage] = useState<"rest" | "held" | "asked">("rest");
  const hold = useRef<number | undefined>(undefined);
  const wait = useRef<number | undefined>(undefined);
  // The click that ends a hold which has already done its work.
  const isSpent = useRef(false);
  const clear = () => {
    clearTimeout(hold.current);
    clearTimeout(wait.current);
  };
  useEffect(() => clear, []);

  const finish = () => {
    clear();
    setStage("rest");
    onDone();
  };
  const down = (event: PointerEvent) => {
    if (event.button !== 0) return;
    isSpent.current = false;
    if (stage === "rest") setStage("held");
    hold.current = window.setTimeout(() => {
      isSpent.current = true;
      finish();
    }, holdMs);
  };
  const up = () => {
    clearTimeout(hold.current);
    setStage((s) => (s === "held" ? "rest" : s));
    // The finger may have left the button, and then no click follows.
    setTimeout(() => (isSpent.current = false), 50);
  };
  const click = () => {
    if (isSpent.current) {
      isSpent.current = false;
      return;
    }
    if (stage === "asked") return finish();
    clear();
    setStage("asked");
    wait.current = window.setTimeout(() => setStage("rest"), waitMs);
  };
  return (
    <button
      type="button"
      class={`hold ${looks}`}
      data-stage={stage}
      aria-label={stage === "asked" ? say("TeacherAgain", label) : label}
      onPointerDown={down}
      onPointerUp={up}
      onPointerLeave={up}
      onPointerCancel={up}
      onContextMenu={(e) => e.preventDefault()}
      onClick={click}
    >
      {stage === "asked" ? <span class="hold-again">{say("TeacherTapAgain")}</span> : children}
    </button>
  );
}
