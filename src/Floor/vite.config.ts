import { defineConfig } from "vite";

// The pages lie under /floor/ of the one program; the oldest tablets meant are of about 2019.
export default defineConfig({
  base: "/floor/",
  build: { outDir: "dist", target: ["chrome87", "safari14", "firefox85"], assetsInlineLimit: 0, reportCompressedSize: true },
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
});
