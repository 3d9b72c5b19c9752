import type { Page } from "playwright-core";
import { expect } from "vitest";
import { axeFindings } from "./axe.ts";

/** Sizes and lights in which a page is looked at: colours know nothing of sizes, so every size once and both lights twice. */
const looks = [
  [360, 740, "light"],
  [412, 915, "dark"],
  [800, 1280, "light"],
  [1280, 800, "dark"],
] as const;

/** The same of the page in every size and both lights, and then with letters of twice the size on the smallest. */
export async function expectLegibleEverywhere(page: Page): Promise<void> {
  for (const [width, height, colorScheme] of looks) {
    await page.setViewportSize({ width, height });
    await page.emulateMedia({ colorScheme });
    await expectLegible(page, `${width} x ${height}, ${colorScheme}`);
  }
  const [[width, height]] = looks;
  await page.setViewportSize({ width, height });
  await page.evaluate(() => {
    document.documentElement.style.fontSize = "200%";
  });
  const reaches = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(reaches, `letters of twice the size, ${width} wide`).toBeLessThanOrEqual(width);
}

/** Unfolds the page and looks: axe finds nothing, targets are 14 mm, nothing scrolls sideways. `how` is said where something is found. */
export async function expectLegible(page: Page, how?: string): Promise<void> {
  await page.locator("summary").evaluateAll((all) =>
    all.forEach((it) => {
      (it.parentElement as HTMLDetailsElement).open = true;
    }),
  );
  await page.evaluate(() => {
    const all = new CSSStyleSheet();
    all.replaceSync("* { content-visibility: visible !important; }");
    document.adoptedStyleSheets = [all];
  });
  expect(await axeFindings(page), how).toEqual([]);
  const small = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("button, summary, input, a[href]")]
      .filter((it) => it.checkVisibility())
      .map((it) => [it.outerHTML.slice(0, 90), it.getBoundingClientRect()] as const)
      .filter(([html, { width, height }]) => width < 52 || (height < 52 && !html.startsWith("<input")))
      .map(([html]) => html),
  );
  expect(small, how).toEqual([]);
  const beyond = await page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return scrollWidth - clientWidth;
  });
  expect(beyond, how).toBeLessThanOrEqual(0);
}
