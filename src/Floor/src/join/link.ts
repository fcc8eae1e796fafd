/** What an address brings along behind its `#`, which no server and no log ever sees. */
export type JoinLink = { readonly code: string } | { readonly ticket: string };

/** What a link asks for; none for a plain address. */
export function linkOf(fragment: string): JoinLink | undefined {
  const asked = new URLSearchParams(fragment.replace(/^#/, ""));
  const ticket = asked.get("ticket");
  if (ticket) return { ticket };
  const code = asked.get("join");
  return code ? { code: cleanCode(code) } : undefined;
}

/** The fragment without what joins: the board's link says too what the class types. */
export function restOf(fragment: string): string {
  const rest = new URLSearchParams(fragment.replace(/^#/, ""));
  rest.delete("ticket");
  rest.delete("join");
  const text = rest.toString();
  return text ? `#${text}` : "";
}

const codeLength = 6;

/** A typed code as the server means it: capitals, no spaces, what looks alike put right. The alphabet has no 0, O, 1, I or L. */
export function cleanCode(typed: string): string {
  return typed
    .toUpperCase()
    .replace(/[^0-9A-Z]/g, "")
    .slice(0, codeLength);
}

export function isWholeCode(code: string): boolean {
  return code.length === codeLength;
}
