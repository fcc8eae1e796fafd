import { describe, expect, it } from "vitest";
import { EventCutter, readEvents, type StreamEvent } from "../src/sync/events";
import { seeded } from "./seeded";

const text = ': hello\n\nevent: state\ndata: {"a":1}\n\ndata: one\r\ndata:two\r\n\r\nevent: news\rdata\rid: 7\rdata: x: y\r\r: beat\nevent: lost\n\nevent: state\ndata: open';
const events: StreamEvent[] = [
  { name: "state", data: '{"a":1}' },
  { name: "message", data: "one\ntwo" },
  { name: "news", data: "\nx: y" },
];

describe("EventCutter", () => {
  it("cuts the same events out of whatever pieces a stream comes in", () => {
    expect(new EventCutter().take(text)).toEqual(events);
    for (let seed = 1; seed <= 300; seed++) {
      const chance = seeded(seed);
      const cutter = new EventCutter();
      const got: StreamEvent[] = [];
      for (let at = 0; at < text.length; ) {
        const length = 1 + Math.floor(chance() * 6);
        got.push(...cutter.take(text.slice(at, at + length)));
        at += length;
      }
      expect(got, `seed ${seed}`).toEqual(events);
    }
  });
});

describe("readEvents", () => {
  it("puts letters together that a network cut in two, and ends with the stream", async () => {
    const bytes = new TextEncoder().encode("event: news\ndata: Begoña\n\n");
    const stream = new ReadableStream<Uint8Array>({
      start(controller) {
        for (const byte of bytes) controller.enqueue(Uint8Array.of(byte));
        controller.close();
      },
    });
    const got: StreamEvent[] = [];
    await readEvents(stream, (event) => got.push(event));
    expect(got).toEqual([{ name: "news", data: "Begoña" }]);
  });

  it("gives a silent stream up", async () => {
    let isCancelled = false;
    const stream = new ReadableStream<Uint8Array>({ cancel: () => void (isCancelled = true) });
    await readEvents(stream, () => undefined, 20);
    expect(isCancelled).toBe(true);
  });
});
