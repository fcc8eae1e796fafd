import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";
import { Mark } from "./Mark";
import "./parts.css";

export interface ChoiceOption<T> {
  readonly value: T;
  readonly face: ComponentChildren;
  /** In place of the face for a screen reader. */
  readonly label?: string;
}

export interface ChoiceProps<T> {
  /** What is asked; read with every option. */
  readonly label: string;
  readonly options: readonly ChoiceOption<T>[];
  /** None at first: nothing is chosen for anybody. */
  readonly chosen: T | undefined;
  readonly onChoose: (value: T) => void;
  /** How wide a card is at least, a CSS length. */
  readonly cardWidth?: string;
  readonly isLarge?: boolean;
}

/** Cards of which one is chosen: arrows and space work as in any radio group, and a tick marks the chosen one. */
export function Choice<T extends string | number>({ label, options, chosen, onChoose, cardWidth, isLarge }: ChoiceProps<T>) {
  const name = useId();
  return (
    <ul class="choice" role="radiogroup" aria-label={label} style={cardWidth && `--card:${cardWidth}`}>
      {options.map(({ value, face, label: words }) => (
        <li key={value} role="none">
          <label class={`card${isLarge ? " large" : ""}`} data-chosen={chosen === value ? "" : undefined}>
            <input type="radio" name={name} checked={chosen === value} aria-label={words} onChange={() => onChoose(value)} />
            {face}
            <span class="chosen">
              <Mark name="check" />
            </span>
          </label>
        </li>
      ))}
    </ul>
  );
}
