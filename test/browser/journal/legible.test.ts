import type { Page } from "playwright-core";
import { afterAll, expect, test } from "vitest";
import { expectLegible, expectLegibleEverywhere } from "../legible.ts";
import { browser, openedPage, phone } from "../openedPage.ts";
import { at, form, paired, startedWorkshop } from "./servedWorkshop.ts";

/** Every page of the journal with the invented workshop in it, forms and refusals open. */
const places: readonly (readonly [name: string, route: string, ready: (page: Page) => Promise<unknown>])[] = [
  ["what stands", "/standing", (page) => page.locator(".wall-card").first().waitFor()],
  ["what falls due", "/due", (page) => page.locator(".due li").first().waitFor()],
  ["what held", "/held", (page) => page.locator(".picture svg").first().waitFor()],
  ["a port's history", "/port/family-sump", (page) => page.locator(".picture svg").first().waitFor()],
  [
    "a job with a form that wants more",
    "/job/0413",
    async (page) => {
      await at(page, "Sump drain").getByRole("button", { name: "Torqued" }).click();
      await form(page).getByRole("button", { name: "Jory Anselm" }).last().click();
      await form(page).getByRole("textbox", { name: "Set on the wrench" }).fill("1,234.5");
      await form(page).getByRole("button", { name: "Write it down" }).click();
      await page.locator(".mistake", { hasText: "1,234.5" }).waitFor();
    },
  ],
  [
    "a job whose gate is shut, and its log",
    "/job/0412",
    async (page) => {
      await page.getByRole("button", { name: "Put an entry right" }).click();
      await at(page, "Wood chipper").getByRole("button", { name: "Released" }).click();
      await form(page).getByRole("button", { name: "Jory Anselm" }).click();
      await form(page).getByRole("button", { name: "Write it down" }).click();
      await form(page).getByRole("alert").waitFor();
    },
  ],
];

const workshop = await startedWorkshop();
const context = await browser.newContext({ viewport: phone });
const { page } = await paired(workshop, context);
afterAll(async () => {
  await context.close();
  await workshop.close();
});

async function opened(route: string): Promise<void> {
  await page.goto("about:blank");
  await page.goto(`${workshop.address}#${route}`);
}

test.each(places)(
  "%s: in every size and light axe finds nothing, nothing scrolls sideways, targets are 14 mm, and letters of twice the size stay",
  async (_, route, ready) => {
    await page.setViewportSize(phone);
    await opened(route);
    await ready(page);
    await expectLegibleEverywhere(page);
  },
);

test.each([
  [360, "light"],
  [360, "dark"],
  [1280, "light"],
] as const)("the page that pairs is legible, %d wide, %s", async (width, colorScheme) => {
  const { page } = await openedPage("/standing", { viewport: { width, height: 740 }, colorScheme });
  await page.locator(".pad").waitFor();
  await expectLegible(page);
  await page.evaluate(() => {
    document.documentElement.style.fontSize = "200%";
  });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
});
