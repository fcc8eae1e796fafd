import { Problem } from "../sync/problem";

const plain = 0x50;
const packed = 0x44;

/** A text as few bytes as this browser can make of it; the first byte says whether it is packed. */
export async function packedText(text: string): Promise<Uint8Array> {
  const bytes = new TextEncoder().encode(text);
  if (typeof CompressionStream === "undefined") return withMark(plain, bytes);
  return withMark(packed, await through(bytes, new CompressionStream("deflate")));
}

/** The text of such bytes. Throws a `Problem` where they are something else, or this browser cannot unpack. */
export async function textOfPacked(bytes: Uint8Array): Promise<string> {
  const body = bytes.subarray(1);
  if (bytes[0] === plain) return new TextDecoder().decode(body);
  if (bytes[0] !== packed) throw new Problem("notOurs");
  if (typeof DecompressionStream === "undefined") throw new Problem("cannotUnpack");
  try {
    return new TextDecoder().decode(await through(body, new DecompressionStream("deflate")));
  } catch {
    throw new Problem("notOurs");
  }
}

async function through(bytes: Uint8Array, stream: GenericTransformStream): Promise<Uint8Array> {
  const writer = (stream.writable as WritableStream<Uint8Array>).getWriter();
  // A broken stream is reported by the reading side.
  void writer.write(bytes).catch(() => undefined);
  void writer.close().catch(() => undefined);
  return new Uint8Array(await new Response(stream.readable as ReadableStream<Uint8Array>).arrayBuffer());
}

function withMark(mark: number, bytes: Uint8Array): Uint8Array {
  const marked = new Uint8Array(bytes.length + 1);
  marked[0] = mark;
  marked.set(bytes, 1);
  return marked;
}
