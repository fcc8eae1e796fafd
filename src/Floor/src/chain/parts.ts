import { base45Of, bytesOfBase45 } from "./base45";
import { crc32 } from "./crc32";

const sign = "SLW1";

/** Bytes in one code, so that its squares are large enough for a phone at arm's length from a tablet. */
export const mostBytesInPart = 600;

/** Nobody shows more codes than this; a number above it is no part of ours. */
const mostParts = 999;

/**
 * Bytes as texts for a chain of codes, each with its place and a checksum: `SLW1:CHAIN:INDEX:TOTAL:CHECK:DATA`.
 * They may be read in any order, and twice.
 */
export function partsOf(bytes: Uint8Array, most = mostBytesInPart): string[] {
  const total = Math.max(1, Math.ceil(bytes.length / most));
  if (total > mostParts) throw new RangeError(`A chain has at most ${mostParts} codes.`);
  const chain = hex(crc32(bytes));
  return Array.from({ length: total }, (_, i) => {
    const data = bytes.subarray(i * most, (i + 1) * most);
    return [sign, chain, i + 1, total, hex(crc32(data)), base45Of(data)].join(":");
  });
}

/** How far a chain has been read. */
export interface ChainSoFar {
  readonly readCount: number;
  readonly totalCount: number;
  /** Everything, once the last part is there and the whole agrees with its checksum. */
  readonly bytes?: Uint8Array;
}

/** Puts chains together from codes as they come. */
export class ChainReader {
  private readonly chains = new Map<string, Map<number, Uint8Array>>();

  /** Takes what a code says. None for a code that is not a part of ours, or was read wrongly. */
  take(text: string): ChainSoFar | undefined {
    const match = /^SLW1:([0-9A-F]{8}):(\d{1,3}):(\d{1,3}):([0-9A-F]{8}):(.*)$/.exec(text);
    if (!match) return undefined;
    const [, chain, indexText, totalText, check, data] = match as unknown as [string, string, string, string, string, string];
    const [index, totalCount] = [Number(indexText), Number(totalText)];
    const bytes = bytesOfBase45(data);
    if (!bytes || index < 1 || index > totalCount || hex(crc32(bytes)) !== check) return undefined;
    const key = `${chain}/${totalCount}`;
    const parts = this.chains.get(key) ?? new Map<number, Uint8Array>();
    this.chains.set(key, parts.set(index, bytes));
    const soFar = { readCount: parts.size, totalCount };
    if (parts.size < totalCount) return soFar;
    const whole = joined(Array.from({ length: totalCount }, (_, i) => parts.get(i + 1)!));
    if (hex(crc32(whole)) === chain) return { ...soFar, bytes: whole };
    // Each part agrees with itself and the whole does not: two chains of one name got mixed. Start over rather than guess.
    this.chains.delete(key);
    return { readCount: 0, totalCount };
  }
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

function hex(n: number): string {
  return n.toString(16).toUpperCase().padStart(8, "0");
}
