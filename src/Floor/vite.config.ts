import { defineConfig } from "vite";

// The pages lie under /floor/ of the one program; the oldest tablets meant are of about 2019.
export default defineConfig({
  base: "/floor/",
  define: { __FLOOR_VERSION__: JSON.stringify(process.env["SLANTWISE_FLOOR_VERSION"] ?? "0") },
  build: {
    outDir: "dist",
    target: ["chrome87", "safari14", "firefox85"],
    assetsInlineLimit: 0,
    reportCompressedSize: false,
    // A tablet of 2019 on a slow network gains nothing from a second round of requests for a polyfill it has no need of.
    modulePreload: { polyfill: false },
  },
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  server: { proxy: { "/sync": "http://127.0.0.1:5080" } },
});
