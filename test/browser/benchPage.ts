import type { BrowserContextOptions, Locator, Page } from "playwright-core";
import { expect } from "vitest";
import { weigh } from "../../src/mechanics/remedies/weigh.ts";
import { answerFirst } from "../../src/sheets/answer/answerFirst.ts";
import { readCase } from "../../src/sheets/caseForm/caseDocument.ts";
import { exampleCase } from "../../src/sheets/caseForm/exampleCase.ts";
import { type OpenedPage, openedPage } from "./openedPage.ts";

/** The bench with the worked example on it, answered. The example is weighed on its own day, whenever it is asked. */
export async function exampleOnBench(options: BrowserContextOptions = {}): Promise<OpenedPage> {
  const opened = await openedPage("/", options);
  await opened.page.getByRole("button", { name: "Show the worked example" }).click();
  await answered(opened.page, exampleSentences());
  return opened;
}

/** Every part unfolded, every way shown and one of them opened. */
export async function unfolded(page: Page): Promise<void> {
  // What nobody looks at is not drawn.
  await page.getByRole("button", { name: "Do", exact: true }).click();
  await page.getByRole("button", { name: /^All \d+/ }).click();
  await page.locator("button.card").nth(1).click();
  await page.locator("#way-details").waitFor();
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll("details")) fold.open = true;
  });
  await drawn(page);
}

/** Draws what is out of view as well, for pictures and measures. */
export async function drawn(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Answer", exact: true }).click();
  await page.locator(".pictures svg").first().waitFor();
  await page.getByRole("button", { name: "Do", exact: true }).click();
  await page.locator(".card").first().waitFor();
  await page.getByRole("button", { name: "Ask", exact: true }).click();
  await page.evaluate(() => {
    const drawn = new CSSStyleSheet();
    drawn.replaceSync("* { content-visibility: visible !important; }");
    document.adoptedStyleSheets = [drawn];
  });
  await page.waitForLoadState("networkidle");
}

type Readings = Readonly<Record<string, string>>;

/** What the engine says first of the worked example, with these readings of what is left and of its ring. */
export function exampleSentences(left: Readings = {}, ring: Readings = {}): readonly string[] {
  const seal = { ...exampleCase.seal, ...ring };
  const read = readCase({ ...exampleCase, seal, left: { ...exampleCase.left, ...left } }, null);
  if (!read.ok) throw new Error(read.problems.map(({ field }) => field).join());
  return answerFirst(weigh(read.given));
}

/** Waits until the answer on the page is these very sentences. */
export async function answered(page: Page, sentences: readonly string[]): Promise<void> {
  await expect.poll(() => answerOn(page).locator(".sentences p").allTextContents()).toEqual(sentences);
}

/** The part of the page where the answer stands. */
export const answerOn = (page: Page): Locator => page.getByRole("region", { name: "Answer" });

/** The turns that are left, as text. */
export const turnsOn = (page: Page): Locator => page.getByRole("textbox", { name: "Turns, catch to seat" });

/** What is said of a count of turns that cannot be read; empty where it can. */
export const mistakeOn = (page: Page): Locator => page.locator("#field-left-turns-problem");
