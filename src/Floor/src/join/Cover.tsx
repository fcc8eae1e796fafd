import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";

export interface CoverProps {
  readonly kind: "stop" | "rest" | "end";
  readonly title: string;
  readonly text: string;
  readonly children?: ComponentChildren;
}

const signs: Readonly<Record<CoverProps["kind"], string>> = {
  stop: "M8 2.5h8L21.5 8v8L16 21.5H8L2.5 16V8z",
  rest: "M9 6v12M15 6v12",
  end: "M4 12.5 10 18 20 6",
};

/** Lies over the whole page. Keys and taps meant for what is below do not reach it. */
export function Cover({ kind, title, text, children }: CoverProps) {
  const box = useRef<HTMLElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    box.current?.focus({ preventScroll: true });
    const shield = (event: Event) => {
      const { target } = event;
      // A dialog opened from a button on the cover lies on top of it.
      if (target instanceof Element && (box.current?.contains(target) || target.closest("dialog"))) return;
      event.stopPropagation();
      if (event.cancelable) event.preventDefault();
    };
    const kinds = ["keydown", "keyup", "click", "pointerdown", "touchstart"];
    for (const name of kinds) addEventListener(name, shield, { capture: true, passive: false });
    return () => {
      for (const name of kinds) removeEventListener(name, shield, { capture: true });
      if (before instanceof HTMLElement && before.isConnected) before.focus({ preventScroll: true });
    };
  }, []);
  return (
    <section ref={box} class={`cover ${kind}`} tabIndex={-1} aria-label={title}>
      <svg class="cover-sign" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
        <path d={signs[kind]} />
      </svg>
      <h1>{title}</h1>
      <p>{text}</p>
      {children && <div class="row">{children}</div>}
    </section>
  );
}
