// Bytes in the characters that a QR code packs at 5.5 bits each; a code of bytes proper does not survive readers that answer with text.
// Source: RFC 9285, section 4.
const alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

/** Bytes as text of the 45 characters. */
export function base45Of(bytes: Uint8Array): string {
  let text = "";
  for (let i = 0; i < bytes.length; i += 2) {
    const isPair = i + 1 < bytes.length;
    let n = isPair ? bytes[i]! * 256 + bytes[i + 1]! : bytes[i]!;
    for (let k = isPair ? 3 : 2; k > 0; k--) {
      text += alphabet[n % 45];
      n = Math.floor(n / 45);
    }
  }
  return text;
}

/** The bytes of such a text; none where it is not one. */
export function bytesOfBase45(text: string): Uint8Array | undefined {
  if (text.length % 3 === 1) return undefined;
  const bytes: number[] = [];
  for (let i = 0; i < text.length; i += 3) {
    const digits = [...text.slice(i, i + 3)].map((c) => alphabet.indexOf(c));
    if (digits.includes(-1)) return undefined;
    const n = digits.reduceRight((sum, digit) => sum * 45 + digit, 0);
    if (digits.length === 3) {
      if (n > 0xffff) return undefined;
      bytes.push(n >> 8, n & 0xff);
    } else {
      if (n > 0xff) return undefined;
      bytes.push(n);
    }
  }
  return Uint8Array.from(bytes);
}
