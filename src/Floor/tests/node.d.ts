// All that the tests need of Node; its types are a package of their own.
declare module "node:fs" {
  export function readFileSync(path: URL, encoding: "utf8"): string;
}
