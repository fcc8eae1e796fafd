import type { ComponentChildren } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import "./parts.css";

// Safari shows what is pressed only where somebody listens for touches.
if (typeof document !== "undefined") document.addEventListener("touchstart", () => undefined, { passive: true });

export interface PageProps {
  readonly title: ComponentChildren;
  /** A short line above the heading; where the reader is. */
  readonly above?: ComponentChildren;
  /** The bar on top: who, and what is always in reach. */
  readonly top?: ComponentChildren;
  /** The main buttons. The last one is the main one. */
  readonly foot?: ComponentChildren;
  /** When this changes, it is another page: the heading takes the focus and the page begins at its top. */
  readonly step: string;
  readonly children?: ComponentChildren;
}

/** One thing at a time: a heading that takes the focus when the step changes, what there is to do, and the buttons at the foot. */
export function Page({ title, above, top, foot, step, children }: PageProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, [step]);
  return (
    <div class="page" data-step={step}>
      {top && <header class="page-top">{top}</header>}
      <main class="page-main">
        <div>
          {above && <p class="page-above">{above}</p>}
          <h1 ref={heading} tabIndex={-1}>
            {title}
          </h1>
        </div>
        {children}
      </main>
      {foot && (
        <footer class="page-foot">
          <div class="inner">{foot}</div>
        </footer>
      )}
    </div>
  );
}
