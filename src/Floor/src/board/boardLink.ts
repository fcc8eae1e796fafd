import { serverTimeMs } from "../sync/clock";

/** What a class joins with, as the board's link says it. */
export interface JoinShown {
  readonly code: string;
  /** What the QR code leads to. */
  readonly url: string;
  /** Milliseconds since 1970 by the server's clock. */
  readonly untilMs: number;
}

/** A link that does not say how long its code holds is believed for so long, well within what the server gives a code. */
const unsaidMin = 30;

/** A code as it is shown. */
export function joinShown(code: string, origin: string, untilMs: number): JoinShown {
  return { code, url: `${origin}/floor/#join=${encodeURIComponent(code)}`, untilMs };
}

/**
 * The code in the fragment of the page's link, `#code=…&until=…`.
 * @param hash The fragment, with or without its mark.
 * @param origin Where the pages come from.
 * @param openedMs When the link was opened, by the server's clock.
 * @returns None without a code: a code that may be dead is not shown.
 */
export function joinInLink(hash: string, origin: string, openedMs = serverTimeMs()): JoinShown | undefined {
  const parts = new URLSearchParams(hash.replace(/^#/, ""));
  const [code, until] = [parts.get("code"), Date.parse(parts.get("until") ?? "")];
  return code ? joinShown(code, origin, Number.isFinite(until) ? until : openedMs + unsaidMin * 60_000) : undefined;
}
