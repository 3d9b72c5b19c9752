import { mkdirSync } from "node:fs";
import type { BrowserContextOptions } from "playwright-core";
import { describe, expect, test } from "vitest";
import { exampleOnBench, unfolded } from "./benchPage.ts";
import { openedPage, phone, tablet } from "./openedPage.ts";

/** Pictures of the page, to be looked at. */
const folder = "dist/pictures";
mkdirSync(folder, { recursive: true });

const looks: readonly (readonly [name: string, options: BrowserContextOptions])[] = [
  ["phone-light", { viewport: phone, colorScheme: "light" }],
  ["phone-dark", { viewport: phone, colorScheme: "dark" }],
  ["tablet-light", { viewport: tablet, colorScheme: "light" }],
  ["tablet-dark", { viewport: tablet, colorScheme: "dark" }],
  ["phone-forced-colours", { viewport: phone, forcedColors: "active" }],
  ["phone-still", { viewport: phone, reducedMotion: "reduce" }],
];

test.each(looks)("%s is pictured, empty and with the worked example", async (name, options) => {
  const empty = await openedPage("/", options);
  await empty.page.screenshot({ path: `${folder}/${name}-empty.png` });
  const { page, complaints } = await exampleOnBench(options);
  await page.waitForTimeout(500);
  const picture = await page.screenshot({ path: `${folder}/${name}.png`, fullPage: true });
  expect(picture.length).toBeGreaterThan(20_000);
  expect(complaints).toEqual([]);
});

describe("with the system's own colours", () => {
  test("the letters of drawings stand out from the page, and what is chosen is not told by colour alone", async () => {
    const { page } = await exampleOnBench({ forcedColors: "active" });
    await unfolded(page);
    const { paper, letters, chosen } = await page.evaluate(() => ({
      paper: getComputedStyle(document.body).backgroundColor,
      letters: [...document.querySelectorAll("svg text")].map((it) => getComputedStyle(it).fill),
      chosen: [...document.querySelectorAll<HTMLElement>("[aria-pressed='true']")].map((it) => it.textContent),
    }));
    expect(letters.length).toBeGreaterThan(5);
    expect(letters).not.toContain(paper);
    expect(chosen.length).toBeGreaterThan(3);
    expect(chosen.filter((it) => !it.startsWith("✓"))).toEqual([]);
  });
});

test("nothing moves where less motion is asked for: a jump lands at once", async () => {
  const { page } = await exampleOnBench({ reducedMotion: "reduce" });
  const offset = () => page.locator("#papers").evaluate((it) => it.getBoundingClientRect().top);
  const before = await offset();
  await page.getByRole("button", { name: "Papers", exact: true }).click();
  expect(await offset()).toBeLessThan(before / 2);
  expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
});
