import type { ComponentChildren } from "preact";
import { useEffect, useId, useRef } from "preact/hooks";
import "./parts.css";

export interface DialogProps {
  readonly title: string;
  /** Called by Escape, and by nothing else: the buttons are in `foot`. */
  readonly onClose: () => void;
  readonly foot: ComponentChildren;
  readonly children?: ComponentChildren;
}

/** A question that comes before everything else. It is on the screen as long as it is rendered; the focus goes back where it was. */
export function Dialog({ title, onClose, foot, children }: DialogProps) {
  const box = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const dialog = box.current!;
    const before = document.activeElement;
    // Browsers before 2022 have no modal dialogs: there it is an open box, and the page behind it stays in reach.
    if (dialog.showModal) dialog.showModal();
    else dialog.setAttribute("open", "");
    // Where the body scrolls, browsers take the body for the first thing to reach; what can be answered is more use.
    if (document.activeElement?.matches(".dialog > .body")) dialog.querySelector<HTMLElement>(".body :is(input, button), .foot button")?.focus();
    return () => {
      dialog.close?.();
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <dialog
      ref={box}
      class="dialog"
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <h2 id={id}>{title}</h2>
      {children && <div class="body">{children}</div>}
      <div class="foot">{foot}</div>
    </dialog>
  );
}
