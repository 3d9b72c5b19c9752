import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { defineConfig, type Plugin } from "vite";

/** The web app as plain files in dist/web: hashed names, nothing inline, so that the strictest policy lets it run. */
export default defineConfig({
  root: "src/apps/web",
  base: "./",
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  worker: { format: "es" },
  // What is weighed in a page is kept with the version of what weighed it.
  define: { ENGINE_VERSION: JSON.stringify(JSON.parse(readFileSync("package.json", "utf8")).version) },
  plugins: [precached()],
  build: {
    outDir: "../../../dist/web",
    emptyOutDir: true,
    target: "es2023",
    assetsInlineLimit: 0,
    // Its script would be a part of the first load; a bench that is opened later fetches its few parts one after another.
    modulePreload: false,
    reportCompressedSize: false,
    rolldownOptions: {
      input: { index: "src/apps/web/index.html", sw: "src/apps/web/offline/sw.ts" },
      // The worker that serves without a network keeps its name: the browser looks there for a newer one.
      output: {
        entryFileNames: ({ name }) => (name === "sw" ? "sw.js" : "assets/[name]-[hash].js"),
        // What the page needs before it stands packs better as one file than as two.
        codeSplitting: { groups: [{ name: "page", tags: ["$initial"], test: /^(?!.*\/offline\/)/ }] },
      },
    },
  },
});

/** Writes the list of built files, and a version made of their contents, into the worker that serves them without a network. */
function precached(): Plugin {
  return {
    name: "precached",
    enforce: "post",
    generateBundle: {
      order: "post",
      handler(_, bundle) {
        const worker = bundle["sw.js"];
        if (worker?.type !== "chunk") throw new Error("sw.js was not built");
        const files = Object.keys(bundle).filter((name) => name !== "sw.js" && name !== "index.html");
        const hash = createHash("sha256");
        for (const name of Object.keys(bundle).sort()) {
          const it = bundle[name];
          hash.update(`${name}\0`).update(it?.type === "chunk" ? it.code : (it?.source ?? ""));
        }
        const built = { version: hash.digest("hex").slice(0, 16), files: files.sort() };
        const placed = worker.code.replace(/["'`]__BUILT__["'`]/, JSON.stringify(JSON.stringify(built)));
        if (placed === worker.code) throw new Error("sw.js has no place for the list of files");
        worker.code = placed;
      },
    },
  };
}
