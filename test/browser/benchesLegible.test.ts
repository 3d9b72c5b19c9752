import { describe, expect, test } from "vitest";
import { figure, laid, names } from "./furtherBench.ts";
import { expectLegible, expectLegibleEverywhere } from "./legible.ts";

describe("reachable and legible", () => {
  test.each(names)(
    "%s: in every size and light axe finds nothing, nothing scrolls sideways, targets are 14 mm, and letters of twice the size stay",
    async (name) => {
      const { page } = await laid(name);
      await expect.poll(() => figure(page).count()).toBe(1);
      await expectLegibleEverywhere(page);
    },
  );

  test("forced colours keep every edge", async () => {
    const { page } = await laid("thread", { forcedColors: "active" });
    await expect.poll(() => figure(page).count()).toBe(1);
    await expectLegible(page);
  });
});
