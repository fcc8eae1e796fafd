import { generate } from "lean-qr";
import jsQR from "jsqr";
import { afterEach, describe, expect, it, vi } from "vitest";
import { base45Of, bytesOfBase45 } from "../src/chain/base45";
import { ChainInbox } from "../src/chain/chainInbox";
import { crc32 } from "../src/chain/crc32";
import { entriesOfLines, linesOf } from "../src/chain/entryLines";
import { packedText, textOfPacked } from "../src/chain/packing";
import { ChainReader, partsOf } from "../src/chain/parts";
import type { Entry } from "../src/contracts";
import { made } from "../src/lesson/making";
import { about, bundle } from "./keptWorld";
import { seeded } from "./seeded";

afterEach(() => vi.unstubAllGlobals());

const bytesOf = (text: string) => new TextEncoder().encode(text);

function entries(count: number): Entry[] {
  const facts = Array.from({ length: count }, (_, n) => [{ ...about(n), setNumber: 1 + Math.floor(n / 5) }, { kind: "trial", isSuccess: n % 3 > 0, ...(n % 4 === 0 && { heldS: 1 + n / 7 }) }] as const);
  return made([], facts, { schoolId: bundle.schoolId, lessonId: bundle.lessonId, deviceId: "far", lastSequence: 0, now: new Date("2026-03-02T09:00:00Z") });
}

function shuffled<T>(items: readonly T[], chance: () => number): T[] {
  return items.map((item) => [chance(), item] as const).sort((a, b) => a[0] - b[0]).map(([, item]) => item);
}

/** A code as a camera sees it: four pixels a square, four squares of quiet. */
function seen(text: string) {
  const code = generate(text);
  const [scale, quiet] = [4, 4];
  const size = (code.size + 2 * quiet) * scale;
  const data = new Uint8ClampedArray(size * size * 4).fill(255);
  for (let y = 0; y < size; y++)
    for (let x = 0; x < size; x++)
      if (code.get(Math.floor(x / scale) - quiet, Math.floor(y / scale) - quiet)) data.fill(0, (y * size + x) * 4, (y * size + x) * 4 + 3);
  return { data, size, squares: code.size };
}

describe("base45", () => {
  it("is that of RFC 9285, section 4.3 and 4.4", () => {
    expect(base45Of(bytesOf("AB"))).toBe("BB8");
    expect(base45Of(bytesOf("Hello!!"))).toBe("%69 VD92EX0");
    expect(base45Of(bytesOf("base-45"))).toBe("UJCLQE7W581");
    expect(new TextDecoder().decode(bytesOfBase45("QED8WEX0"))).toBe("ietf!");
  });

  it("refuses what no bytes make", () => {
    for (const text of ["A", "GGW", "ab8", "BB8A", "ZZ"]) expect(bytesOfBase45(text)).toBeUndefined();
  });

  it("brings back any bytes", () => {
    const chance = seeded(1);
    for (let n = 0; n < 200; n++) {
      const bytes = Uint8Array.from({ length: n }, () => chance() * 256);
      expect(bytesOfBase45(base45Of(bytes))).toEqual(bytes);
    }
  });
});

describe("crc32", () => {
  it("is that of zip and PNG", () => {
    // The check value that tables of checksums give for "123456789" (CRC-32/ISO-HDLC), from memory.
    expect(crc32(bytesOf("123456789"))).toBe(0xcbf43926);
  });
});

describe("ChainReader", () => {
  it("puts a few hundred entries together in any order, with repeats, strangers and another chain between", async () => {
    for (let seed = 1; seed <= 20; seed++) {
      const chance = seeded(seed);
      const sent = entries(100 + seed * 20);
      const parts = partsOf(await packedText(linesOf(sent)));
      const other = partsOf(bytesOf(`another device's ${seed}`.repeat(200)));
      const missing = parts[Math.floor(chance() * parts.length)]!;
      const stream = shuffled([...parts.filter((p) => p !== missing), ...parts.filter((p) => p !== missing && chance() < 0.5), ...other, "https://example.org", "SLW1:x"], chance);
      const reader = new ChainReader();
      const wholes = stream.map((text) => reader.take(text)?.bytes).filter((b) => b !== undefined);
      expect(wholes.filter((b) => b.length !== wholes[0]!.length), "only the other chain is whole").toEqual([]);
      const last = reader.take(missing);
      expect(last?.readCount).toBe(parts.length);
      expect(entriesOfLines(await textOfPacked(last!.bytes!))).toEqual(sent);
    }
  });

  it("takes nothing that was read wrongly", () => {
    const parts = partsOf(bytesOf("what a pupil did ".repeat(100)), 300);
    const chance = seeded(7);
    for (let n = 0; n < 500; n++) {
      const part = parts[n % parts.length]!;
      const at = Math.floor(chance() * part.length);
      const wrong = part.slice(0, at) + "0123456789ABCDEF"[Math.floor(chance() * 16)] + part.slice(at + 1);
      if (wrong === part) continue;
      const reader = new ChainReader();
      const soFar = [wrong, ...parts.filter((p) => p !== part)].map((p) => reader.take(p));
      expect(soFar.filter((s) => s?.bytes), wrong).toEqual([]);
    }
  });

  it("says how far it is", () => {
    const parts = partsOf(new Uint8Array(1500), 600);
    const reader = new ChainReader();
    expect(reader.take(parts[2]!)).toEqual({ readCount: 1, totalCount: 3 });
    expect(reader.take(parts[2]!)).toEqual({ readCount: 1, totalCount: 3 });
    expect(reader.take("SLW1:00000000:1:1:00000000:")).toEqual({ readCount: 1, totalCount: 1, bytes: new Uint8Array() });
  });
});

describe("A chain on a screen", () => {
  it("is read by the reader of browsers that have none of their own", async () => {
    const parts = partsOf(await packedText(linesOf(entries(60))));
    expect(parts.length).toBeGreaterThan(2);
    const inbox = new ChainInbox(async (e) => e.length);
    for (const part of parts) {
      const { data, size, squares } = seen(part);
      // Small enough for a phone at arm's length: a tablet of 12 cm shows a square of more than a millimetre.
      expect(squares).toBeLessThan(110);
      const read = jsQR(data, size, size);
      expect(read?.data).toBe(part);
      await inbox.take(read!.data);
    }
    expect(inbox.progress.value).toMatchObject({ totalCount: parts.length, last: { entryCount: 60, newCount: 60 } });
  });
});

describe("ChainInbox", () => {
  it("brings a chain in once, however often it comes round, and again after a failure to keep it", async () => {
    let calls = 0;
    const inbox = new ChainInbox(async (e) => {
      if (++calls === 1) throw new Error("disk full");
      return e.length;
    });
    const parts = partsOf(await packedText(linesOf(entries(30))));
    for (const part of parts.slice(0, -1)) await inbox.take(part);
    await expect(inbox.take(parts[parts.length - 1]!)).rejects.toThrow("disk full");
    for (const part of [...parts, ...parts]) await inbox.take(part);
    expect(calls).toBe(2);
    expect(inbox.progress.value.last).toEqual({ entryCount: 30, newCount: 30 });
  });

  it("reads a file of lines, and nothing of a file that is half one", async () => {
    const kept: Entry[] = [];
    const inbox = new ChainInbox(async (e) => kept.push(...e));
    const sent = entries(3);
    await inbox.takeText(`\uFEFF${linesOf(sent)}\n`);
    expect(kept).toEqual(sent);
    for (const text of ["", "{}", `${linesOf(sent)}{"id":1}`, "not json"]) await expect(inbox.takeText(text)).rejects.toMatchObject({ code: "notOurs" });
    expect(kept).toHaveLength(3);
  });

  it("leaves out when the server received an entry: that is the server's own to say", () => {
    const [entry] = entries(1);
    expect(entriesOfLines(linesOf([{ ...entry!, receivedAt: "2026-03-02T09:00:00Z" }]))).toEqual([entry]);
  });
});

describe("packedText", () => {
  it("makes a third or less of entries, and works without the browser's packer too", async () => {
    const text = linesOf(entries(200));
    const packed = await packedText(text);
    expect(packed.length).toBeLessThan(text.length / 3);
    vi.stubGlobal("CompressionStream", undefined);
    const plain = await packedText(text);
    expect(plain.length).toBe(bytesOf(text).length + 1);
    expect(await textOfPacked(plain)).toBe(text);
    expect(await textOfPacked(packed)).toBe(text);
    vi.stubGlobal("DecompressionStream", undefined);
    await expect(textOfPacked(packed)).rejects.toMatchObject({ code: "cannotUnpack" });
  });

  it("says of other bytes that they are not ours", async () => {
    await expect(textOfPacked(Uint8Array.of(0x44, 1, 2, 3))).rejects.toMatchObject({ code: "notOurs" });
    await expect(textOfPacked(Uint8Array.of(1, 2))).rejects.toMatchObject({ code: "notOurs" });
  });
});
