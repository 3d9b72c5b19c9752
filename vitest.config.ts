import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

export default defineConfig({
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  test: {
    reporters: ["default", "./scripts/closingLine.mjs"],
    setupFiles: ["test/seed.ts"],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // A machine that does other things besides is slow, not wrong.
    expect: { poll: { timeout: 20_000 } },
    // One of two cores would stand idle otherwise, and a browser test mostly waits.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    projects: [
      { extends: true, test: { name: "node", include: ["test/**/*.test.{ts,tsx}"], exclude: ["test/browser/**"] } },
      {
        extends: true,
        test: {
          name: "browser",
          include: ["test/browser/**/*.test.ts"],
          globalSetup: ["test/browser/setup.ts"],
          // Each wait of a flow ends by itself after half a minute at most; a flow of fifty taps takes what the machine needs.
          testTimeout: 180_000,
        },
      },
    ],
  },
});
