// Makes src/contracts.ts from contracts.schema.json, which a test of the C# side holds to the C# types.
import { readFile, writeFile } from "node:fs/promises";
import { compile } from "json-schema-to-typescript";

const schema = JSON.parse(await readFile(new URL("../contracts.schema.json", import.meta.url), "utf8"));
const text = await compile(schema, "Contracts", {
  bannerComment: "// Made from contracts.schema.json by scripts/contracts.mjs; not to be edited.",
  unreachableDefinitions: true,
  additionalProperties: false,
  format: false,
});
const lean = text.replace(/\/\*\*[\s\S]*?\*\/\n/g, "").replace(/export interface Contracts \{\s*\}\n/, "");
await writeFile(new URL("../src/contracts.ts", import.meta.url), lean);
