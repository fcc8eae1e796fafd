import type { ComponentChildren } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import { Button } from "../ui/Button";
import { say } from "../words/say";

/** The top of what lies over the tiles: back, whose it is, and what switches. The heading takes the focus. */
export function SheetTop({ title, step, children }: { readonly title: string; readonly step: string; readonly children?: ComponentChildren }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, [step]);
  return (
    <div class="sheet-top">
      <Button kind="quiet" mark="back" label={say("TeacherBack")} onPress={() => history.back()} />
      <h1 ref={heading} tabIndex={-1}>{title}</h1>
      {children}
    </div>
  );
}
