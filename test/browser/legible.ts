import type { Page } from "playwright-core";
import { expect } from "vitest";
import { axeFindings } from "./axe.ts";

/** Unfolds the page and looks: axe finds nothing, targets are 14 mm, nothing scrolls sideways. */
export async function expectLegible(page: Page): Promise<void> {
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
  expect(await axeFindings(page)).toEqual([]);
  const small = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("button, summary, input, a[href]")]
      .filter((it) => it.checkVisibility())
      .map((it) => [it.outerHTML.slice(0, 90), it.getBoundingClientRect()] as const)
      .filter(([html, { width, height }]) => width < 52 || (height < 52 && !html.startsWith("<input")))
      .map(([html]) => html),
  );
  expect(small).toEqual([]);
  const beyond = await page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return scrollWidth - clientWidth;
  });
  expect(beyond).toBeLessThanOrEqual(0);
}
