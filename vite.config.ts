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
    // Its script would be a part of the first load; a bench that is opened later fetches its few parts one after another.
    modulePreload: false,
    reportCompressedSize: false,
  },
});
