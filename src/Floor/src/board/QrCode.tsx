import { useEffect, useState } from "preact/hooks";

/** A code needs four modules of quiet around it. Source: ISO/IEC 18004, from memory. */
const quiet = 4;

/** A QR code, dark on white whatever the page looks like, since that is what cameras read best. The encoder is loaded when one is shown. */
export function QrCode({ text, label }: { readonly text: string; readonly label: string }) {
  const [drawn, setDrawn] = useState<{ readonly path: string; readonly size: number } | undefined>();
  useEffect(() => {
    let isGone = false;
    void import("lean-qr").then(({ generate }) => {
      if (isGone) return;
      const code = generate(text);
      let path = "";
      for (let y = 0; y < code.size; y++) for (let x = 0; x < code.size; x++) if (code.get(x, y)) path += `M${x + quiet} ${y + quiet}h1v1h-1z`;
      setDrawn({ path, size: code.size + 2 * quiet });
    });
    return () => void (isGone = true);
  }, [text]);
  return (
    <svg class="qr" viewBox={`0 0 ${drawn?.size ?? 1} ${drawn?.size ?? 1}`} role="img" aria-label={label} shape-rendering="crispEdges">
      <rect width="100%" height="100%" fill="#fff" />
      {drawn && <path d={drawn.path} fill="#000" />}
    </svg>
  );
}
