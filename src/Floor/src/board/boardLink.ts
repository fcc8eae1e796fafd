/** What a class joins with, as the board's link says it. */
export interface JoinShown {
  readonly code: string;
  /** What the QR code leads to. */
  readonly url: string;
  /** Milliseconds since 1970 by the server's clock. */
  readonly untilMs: number;
}

/**
 * The code in the fragment of the board's link, `#ticket=…&code=…&until=…`.
 * @param hash The fragment, with or without its mark.
 * @param origin Where the pages come from.
 * @returns None without a code, or without a moment until which it holds: a code that may be dead is not shown.
 */
export function joinInLink(hash: string, origin: string): JoinShown | undefined {
  const parts = new URLSearchParams(hash.replace(/^#/, ""));
  const [code, until] = [parts.get("code"), Date.parse(parts.get("until") ?? "")];
  return code && Number.isFinite(until) ? { code, url: `${origin}/floor/#join=${encodeURIComponent(code)}`, untilMs: until } : undefined;
}
