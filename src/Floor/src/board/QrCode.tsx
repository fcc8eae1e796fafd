import { useEffect, useState } from "preact/hooks";
import { qrCodeOf } from "../chain/qrCode";

/** A QR code, dark on white whatever the page looks like, since that is what cameras read best. The encoder is loaded when one is shown. */
export function QrCode({ text, label }: { readonly text: string; readonly label: string }) {
  const [drawn, setDrawn] = useState<{ readonly path: string; readonly size: number } | undefined>();
  useEffect(() => {
    let isGone = false;
    // Where the encoder cannot be loaded the code in letters stands below all the same.
    qrCodeOf(text).then((code) => isGone || setDrawn(code), () => undefined);
    return () => void (isGone = true);
  }, [text]);
  return (
    <svg class="qr" viewBox={`0 0 ${drawn?.size ?? 1} ${drawn?.size ?? 1}`} role="img" aria-label={label} shape-rendering="crispEdges">
      <rect width="100%" height="100%" fill="#fff" />
      {drawn && <path d={drawn.path} fill="#000" />}
    </svg>
  );
}
