import { defineConfig } from "vitest/config";

export default defineConfig({
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  test: {
    include: ["test/**/*.test.{ts,tsx}"],
    reporters: ["default", "./scripts/closingLine.mjs"],
    setupFiles: ["test/seed.ts"],
    testTimeout: 60_000,
  },
});
