/** The version of these pages, twelve digits of what their sources say; "0" while they are being written. */
declare const __FLOOR_VERSION__: string;

declare module "*.json?part=shared" {
  const words: Readonly<Record<string, string>>;
  export default words;
}

declare module "*.json?part=class" {
  const words: Readonly<Record<string, string>>;
  export default words;
}
