import { describe, expect, test } from "vitest";
import { figure, laid, names } from "./furtherBench.ts";
import { expectLegible } from "./legible.ts";

describe("reachable and legible", () => {
  // Colours know nothing of sizes: every bench at every size, and in both lights.
  const sizes = [
    [360, 740, "light"],
    [412, 915, "dark"],
    [800, 1280, "light"],
    [1280, 800, "dark"],
  ] as const;

  test.each(names.flatMap((name) => sizes.map((size) => [name, ...size] as const)))(
    "%s, %d x %d, %s: axe finds nothing, nothing scrolls sideways, targets are 14 mm",
    async (name, width, height, colorScheme) => {
      const { page } = await laid(name, { viewport: { width, height }, colorScheme });
      await expect.poll(() => figure(page).count()).toBe(1);
      await expectLegible(page);
    },
  );

  test.each(names)("%s: letters of twice the size stay on a small screen", async (name) => {
    const { page } = await laid(name);
    await page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
    await expect.poll(() => figure(page).count()).toBe(1);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  });

  test("forced colours keep every edge", async () => {
    const { page } = await laid("thread", { forcedColors: "active" });
    await expect.poll(() => figure(page).count()).toBe(1);
    await expectLegible(page);
  });
});
