import { readFile } from "node:fs/promises";
import type { Plugin } from "vite";
import { defineConfig } from "vitest/config";

/** `en.json?part=shared` and `?part=class`: a pupil's tablet does not load what only teacher and board say. */
function wordParts(): Plugin {
  const parted = /words[\\/]\w\w\.json\?part=(shared|class)$/;
  return {
    name: "word-parts",
    enforce: "pre",
    async load(id) {
      const part = parted.exec(id)?.[1];
      if (!part) return null;
      const words = JSON.parse(await readFile(id.replace(/\?.*$/, ""), "utf8")) as Record<string, string>;
      const mine = Object.entries(words).filter(([key]) => /^(Teacher|Board)/.test(key) === (part === "class"));
      // As a string: shorter than an object of quoted keys, and parsed faster.
      return { code: `export default JSON.parse(${JSON.stringify(JSON.stringify(Object.fromEntries(mine)))})`, moduleType: "js" };
    },
  };
}

// The pages lie under /floor/ of the one program; the oldest tablets meant are of about 2019.
export default defineConfig({
  base: "/floor/",
  plugins: [wordParts()],
  define: { __FLOOR_VERSION__: JSON.stringify(process.env["SLANTWISE_FLOOR_VERSION"] ?? "0") },
  build: {
    outDir: "dist",
    target: ["chrome87", "safari14", "firefox85"],
    assetsInlineLimit: 0,
    reportCompressedSize: false,
    // The first page asks for its parts in one round; later parts ask for their own.
    modulePreload: { polyfill: false, resolveDependencies: (_, parts, { hostType }) => (hostType === "html" ? parts : []) },
  },
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  // A law over thousands of rounds takes as long as the machine needs.
  test: { setupFiles: ["tests/words.ts"], testTimeout: 180_000 },
  server: { proxy: { "/sync": "http://127.0.0.1:5080" } },
});
