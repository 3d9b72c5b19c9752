import { defineConfig } from "vite";

/** The web app as plain files in dist/web: hashed names, nothing inline, so that the strictest policy lets it run. */
export default defineConfig({
  root: "src/apps/web",
  base: "./",
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  worker: { format: "es" },
  build: {
    outDir: "../../../dist/web",
    emptyOutDir: true,
    target: "es2023",
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
  },
});
