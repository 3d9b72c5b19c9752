import type { Page } from "playwright-core";

/** What has the keyboard: its name, and whether it can be seen to have it. */
export const focused = (page: Page) =>
  page.evaluate(() => {
    const it = document.activeElement as HTMLElement;
    const ringed = [it, it.parentElement].some((at) => {
      const { outlineStyle, outlineWidth } = at ? getComputedStyle(at) : { outlineStyle: "none", outlineWidth: "0" };
      return outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2;
    });
    const name = it.getAttribute("aria-label") ?? (it as HTMLInputElement).labels?.[0]?.textContent ?? it.textContent;
    return { name: name ?? "", tag: it.tagName, id: it.id, ringed };
  });

/** Presses Tab until what has the keyboard is named so. @throws if it never is. */
export async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let i = 0; i < 200; i++) {
    await page.keyboard.press("Tab");
    if (name.test((await focused(page)).name)) return;
  }
  throw new Error(`no Tab leads to ${name}`);
}
