import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { Problem, problemText } from "../sync/problem";
import { Banner } from "../ui/Banner";

/** A part of a page that is loaded when it is first shown. Where it cannot be (no network, and not kept on the device), a sentence stands in its place. */
export function later<P extends object>(load: () => Promise<ComponentType<P>>): ComponentType<P> {
  return function Later(props: P) {
    const [part, setPart] = useState<{ readonly Shown?: ComponentType<P>; readonly problem?: Problem }>({});
    useEffect(() => {
      load().then(
        (Shown) => setPart({ Shown }),
        () => setPart({ problem: new Problem("offline") }),
      );
    }, []);
    if (part.problem !== undefined) return <Banner kind="problem" isNews>{problemText(part.problem)}</Banner>;
    return part.Shown ? <part.Shown {...props} /> : null;
  };
}
