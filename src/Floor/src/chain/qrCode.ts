/** Four squares of quiet belong around a code. Source: ISO/IEC 18004, section 6.3.8, from memory. */
const quiet = 4;

/** A text as a code: a path of unit squares, and how many there are across. The encoder is loaded when the first one is shown. */
export async function qrCodeOf(text: string): Promise<{ readonly path: string; readonly size: number }> {
  const { generate } = await import("lean-qr");
  const code = generate(text);
  let path = "";
  for (let y = 0; y < code.size; y++) {
    for (let x = 0; x < code.size; x++) {
      if (!code.get(x, y)) continue;
      let end = x;
      while (code.get(end + 1, y)) end++;
      path += `M${x + quiet} ${y + quiet}h${end - x + 1}v1H${x + quiet}z`;
      x = end;
    }
  }
  return { path, size: code.size + 2 * quiet };
}
