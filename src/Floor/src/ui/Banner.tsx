import type { ComponentChildren } from "preact";
import { Mark } from "./Mark";
import "./parts.css";

export interface BannerProps {
  /** `note` to know, `caution` to mind, `problem` that something did not work. */
  readonly kind?: "note" | "caution" | "problem";
  /** Whether it appears while the page is read, and a screen reader should say it. */
  readonly isNews?: boolean;
  readonly children: ComponentChildren;
}

/** A sentence that must not be missed: a sign, a thick edge and words. */
export function Banner({ kind = "note", isNews, children }: BannerProps) {
  return (
    <div class={`banner ${kind}`} role={isNews ? (kind === "problem" ? "alert" : "status") : undefined}>
      {kind !== "note" && <Mark name="caution" />}
      <div class="text">{children}</div>
    </div>
  );
}
