/** One event of a stream. */
export interface StreamEvent {
  readonly name: string;
  readonly data: string;
}

/** Cuts a stream of text into events, whatever pieces it comes in. Source: HTML Living Standard, 9.2.6 "Interpreting an event stream". */
export class EventCutter {
  private rest = "";
  private name = "";
  private data: string[] = [];

  /** Takes the next piece. */
  take(piece: string): StreamEvent[] {
    const events: StreamEvent[] = [];
    // A carriage return at the end of a piece may be half of a line end: it waits for the next piece.
    const lines = (this.rest + piece).split(/\r\n|\n|\r(?!$)/);
    this.rest = lines.pop()!;
    for (const line of lines) {
      if (line === "") {
        if (this.data.length > 0) events.push({ name: this.name || "message", data: this.data.join("\n") });
        this.name = "";
        this.data = [];
        continue;
      }
      const colon = line.indexOf(":");
      if (colon === 0) continue;
      const field = colon < 0 ? line : line.slice(0, colon);
      const value = colon < 0 ? "" : line.slice(colon + 1).replace(/^ /, "");
      if (field === "event") this.name = value;
      else if (field === "data") this.data.push(value);
    }
    return events;
  }
}

/** Reads a stream until it ends, breaks, or has been silent for too long; comment lines count as sound. */
export async function readEvents(stream: ReadableStream<Uint8Array>, onEvent: (event: StreamEvent) => void, silenceMs = 40_000): Promise<void> {
  const reader = stream.getReader();
  const decoder = new TextDecoder();
  const cutter = new EventCutter();
  for (;;) {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const silence = new Promise<"silence">((done) => (timer = setTimeout(() => done("silence"), silenceMs)));
    const piece = await Promise.race([reader.read(), silence]).finally(() => clearTimeout(timer));
    if (piece === "silence" || piece.done) {
      void reader.cancel().catch(() => undefined);
      return;
    }
    for (const event of cutter.take(decoder.decode(piece.value, { stream: true }))) onEvent(event);
  }
}
