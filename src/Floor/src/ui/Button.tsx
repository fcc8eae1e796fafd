import type { ComponentChildren } from "preact";
import { Mark, type MarkName } from "./Mark";
import "./parts.css";
import { useOnce } from "./useOnce";

export interface ButtonProps {
  /** What happens; while it is under way further presses do nothing. */
  readonly onPress: () => void | Promise<void>;
  /** `main` one to a page, `plain`, `quiet` without an edge, `grave` for what cannot be undone, `graveMain` both. */
  readonly kind?: "main" | "plain" | "quiet" | "grave" | "graveMain";
  readonly isLarge?: boolean;
  readonly isDisabled?: boolean;
  /** Pressed or not, for a button that switches something. */
  readonly isOn?: boolean;
  readonly mark?: MarkName;
  /** On a narrow screen the mark alone is seen; the words stay for a screen reader. */
  readonly isSide?: boolean;
  /** In place of the words, where the words alone would not say what it does. */
  readonly label?: string;
  readonly children?: ComponentChildren;
}

/** A button of at least 48 px. It looks pressed at once, and two quick taps do what it does once. */
export function Button({ onPress, kind = "plain", isLarge, isDisabled, isOn, mark, isSide, label, children }: ButtonProps) {
  const [isBusy, press] = useOnce(onPress);
  const looks = kind === "graveMain" ? "grave main" : kind;
  return (
    <button
      type="button"
      class={`button ${looks}${isLarge ? " large" : ""}${isSide ? " side" : ""}`}
      disabled={isDisabled}
      data-busy={isBusy ? "" : undefined}
      aria-pressed={isOn}
      aria-label={label}
      title={label}
      onClick={press}
    >
      {mark && <Mark name={mark} />}
      {children !== undefined && <span>{children}</span>}
    </button>
  );
}
