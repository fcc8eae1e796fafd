/** Finds QR codes in a picture. */
export type Scanner = (source: CanvasImageSource, width: number, height: number) => Promise<readonly string[]>;

interface Detector {
  detect(source: CanvasImageSource): Promise<readonly { readonly rawValue: string }[]>;
}

declare const BarcodeDetector: { new (options: { formats: string[] }): Detector; getSupportedFormats(): Promise<string[]> } | undefined;

/** The browser's own reader where it has one; else one that is loaded now. */
export async function scanner(): Promise<Scanner> {
  if (typeof BarcodeDetector !== "undefined" && (await BarcodeDetector.getSupportedFormats().catch(() => [] as string[])).includes("qr_code")) {
    const detector = new BarcodeDetector({ formats: ["qr_code"] });
    return async (source) => (await detector.detect(source).catch(() => [])).map((code) => code.rawValue);
  }
  const { default: jsQR } = await import("jsqr");
  const canvas = document.createElement("canvas");
  const context = canvas.getContext("2d", { willReadFrequently: true })!;
  return async (source, width, height) => {
    // A photo of twelve megapixels takes a second and shows no more than one of two.
    const scale = Math.min(1, 1600 / Math.max(width, height));
    canvas.width = Math.round(width * scale);
    canvas.height = Math.round(height * scale);
    context.drawImage(source, 0, 0, canvas.width, canvas.height);
    const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
    const code = jsQR(data, canvas.width, canvas.height, { inversionAttempts: "dontInvert" });
    return code ? [code.data] : [];
  };
}
