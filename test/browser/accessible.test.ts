import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axeFindings } from "./axe.ts";
import { exampleOnBench, mistakeOn, turnsOn, unfolded } from "./benchPage.ts";
import { address, openedPage, phone, routesOf, tablet } from "./openedPage.ts";

describe("axe finds nothing", () => {
  test.each([
    ["dark, on a phone", "dark", phone],
    ["light, on a tablet", "light", tablet],
  ] as const)(
    "%s: every route empty, and the worked example with everything unfolded",
    async (_, colorScheme, viewport) => {
      const { page } = await openedPage("/", { colorScheme, viewport });
      for (const route of await routesOf(page)) {
        await page.goto(`${address}#${route}`);
        await expect.poll(() => page.locator("#main").textContent(), { message: route }).not.toMatch(/One moment/);
        expect(await axeFindings(page), route).toEqual([]);
      }
      const example = await exampleOnBench({ colorScheme, viewport });
      await unfolded(example.page);
      expect(await axeFindings(example.page)).toEqual([]);
    },
  );

  test("where something typed is refused", async () => {
    const { page } = await exampleOnBench();
    await turnsOn(page).fill("three");
    await expect.poll(() => mistakeOn(page).textContent()).not.toBe("");
    expect(await axeFindings(page)).toEqual([]);
  });

  test("and would find a picture without a name and grey letters on white", async () => {
    const { page } = await openedPage("/");
    await planted(page);
    const found = (await axeFindings(page)).join("\n");
    expect(found).toMatch(/image-alt/);
    expect(found).toMatch(/color-contrast-enhanced/);
  });
});

const planted = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const picture = document.createElement("img");
    picture.src = "data:image/gif;base64,R0lGODlhAQABAAAAACw=";
    const letters = document.createElement("p");
    letters.textContent = "grey";
    letters.style.cssText = "color: #666; background: #fff";
    document.querySelector("main")?.append(picture, letters);
  });
