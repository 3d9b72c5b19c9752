import { isDeepStrictEqual } from "node:util";
import type { Locator, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { answered, answerOn, exampleOnBench, exampleSentences, mistakeOn, turnsOn } from "./benchPage.ts";
import { openedPage } from "./openedPage.ts";

/** The torque at the flag over the window. */
const flagOver = (page: Page): Locator => page.locator(".pictures text").filter({ has: page.locator("tspan") });

/** What every drawing of the answer shows. */
const drawings = (page: Page): Promise<string[]> =>
  page
    .locator(".main-figure .strip, .pictures .sheet, .odds .sheet")
    .evaluateAll((all) => all.map((it) => it.innerHTML));

describe("the answer on the page is the engine's", () => {
  test("for the worked example, and for other counts of its turns", async () => {
    const { page, complaints } = await exampleOnBench();
    const said = new Set([exampleSentences().join()]);
    for (const turns of ["3", "2.5", "1,5", "0.5", "6"]) {
      await turnsOn(page).fill(turns);
      const sentences = exampleSentences({ turns });
      await answered(page, sentences);
      said.add(sentences.join());
    }
    expect(said.size).toBeGreaterThan(4);
    expect(complaints).toEqual([]);
  });

  test("the great figure is the torque of the sentence", async () => {
    const { page } = await exampleOnBench();
    const pull = /^Pull to (\d+) N·m \(([\d.]+) lbf·ft\)/.exec(exampleSentences()[0] ?? "");
    await expect.poll(() => page.locator(".figure b").textContent()).toBe(pull?.[1]);
    expect(await page.locator(".figure .also").textContent()).toBe(`${pull?.[2]} lbf·ft`);
  });

  // The flag kept the figure before, for its text stands beside the element of its unit.
  test("the flag over the window bears the great figure, where both stay in view while readings change", async () => {
    const viewport = { width: 1280, height: 2400 };
    const { page } = await exampleOnBench({ viewport });
    await turnsOn(page).fill("5");
    await page.locator("summary").filter({ hasText: "Seal" }).first().click();
    const figures = new Set<string | null>();
    for (const outside of ["26.5", "27", "27.5", "28", "26"]) {
      await page.getByRole("textbox", { name: "Ring, outside" }).fill(outside);
      await answered(page, exampleSentences({ turns: "5" }, { outside: `${outside} mm` }));
      const great = await page.locator(".figure b").textContent();
      await expect.poll(() => flagOver(page).textContent()).toBe(`${great}N·m`);
      figures.add(great);
    }
    expect(figures.size).toBe(5);
    await turnsOn(page).fill("3.5");
    await answered(page, exampleSentences());
    // Both pages are read until they agree: neither says when it has drawn its last picture.
    const { page: anew } = await exampleOnBench({ viewport });
    await expect.poll(async () => (await drawings(anew)).length).toBe(4);
    await expect.poll(async () => isDeepStrictEqual(await drawings(page), await drawings(anew))).toBe(true);
  });

  test("a tap on a stepper is an eighth, a quarter or a half turn, never something in between", async () => {
    const { page } = await exampleOnBench();
    await page.getByRole("button", { name: /^Turns, catch to seat: .* less$/ }).click();
    const turns = await turnsOn(page).inputValue();
    expect(["3", "3.25", "3.375"]).toContain(turns);
    await answered(page, exampleSentences({ turns }));
  });
});

describe("what is typed", () => {
  test.each(["three", "3.5.1", "7/", "-2", "1e1", "3 mm"])(
    "%s is refused, kept as it is, and no answer stands beside it",
    async (typed) => {
      const { page } = await exampleOnBench();
      await turnsOn(page).fill(typed);
      await expect.poll(() => mistakeOn(page).textContent()).not.toBe("");
      expect(await turnsOn(page).inputValue()).toBe(typed);
      expect(await turnsOn(page).getAttribute("aria-invalid")).toBe("true");
      expect(await answerOn(page).textContent()).not.toMatch(/\d+ N·m/);
      expect(await page.locator(".figure").count()).toBe(0);
      await turnsOn(page).fill("3.5");
      await answered(page, exampleSentences());
    },
  );

  test("a decimal comma is a decimal mark: 80,5 N·m never becomes 805", async () => {
    const { page } = await exampleOnBench();
    await turnsOn(page).fill("2,5");
    await answered(page, exampleSentences({ turns: "2.5" }));
    expect(await turnsOn(page).inputValue()).toBe("2,5");
  });
});

test("paper has the picture of the answer that stands, also where it is out of view", async () => {
  const { page } = await exampleOnBench({ viewport: { width: 1280, height: 500 } });
  const [section, odds] = [page.locator(".pictures .sheet").first(), page.locator(".odds .sheet")];
  // No tap leads there: it would follow what is drawn on the way.
  await page.locator(".answer .drawn").evaluate((it) => it.scrollIntoView());
  await odds.scrollIntoViewIfNeeded();
  await odds.locator("svg").waitFor();
  // The section stays in view, the odds below it do not.
  await section.evaluate((it) => scrollBy(0, it.getBoundingClientRect().top - 400));
  await outOfView(odds);
  const [drawn, before] = [await section.innerHTML(), await odds.innerHTML()];
  const more = page.getByRole("button", { name: "Turns, catch to seat: 0.25 more" });
  for (let step = 0; step < 4; step++) await more.dispatchEvent("click");
  await answered(page, exampleSentences({ turns: "4.5" }));
  await expect.poll(() => section.innerHTML()).not.toBe(drawn);
  expect(await odds.innerHTML()).toBe(before);
  await page.pdf();
  expect(await odds.innerHTML()).not.toBe(before);
});

/** Waits until the page knows that a picture is out of view: what watches it there began before this, and is told before it. */
const outOfView = (picture: Locator): Promise<void> =>
  picture.evaluate(
    (frame) =>
      new Promise<void>((heard) => {
        const watcher = new IntersectionObserver((entries) => !entries.at(-1)?.isIntersecting && heard(), {
          rootMargin: "25%",
        });
        watcher.observe(frame);
      }),
  );

test("an empty bench gives no figure and says what it waits for", async () => {
  const { page } = await openedPage("/");
  const text = await answerOn(page).textContent();
  expect(text).not.toMatch(/N·m/);
  expect(text).toMatch(/thread/i);
});

test("what is on the bench is there again after the page was closed", async () => {
  const { page, context } = await openedPage("/");
  await turnsOn(page).fill("2 1/2");
  const at = page.url();
  // It hears that it is left as it would by being closed, but a browser gives half a second to one that is closed.
  await page.goto("about:blank");
  await page.close();
  const again = await context.newPage();
  await again.goto(at);
  await expect.poll(() => turnsOn(again).inputValue()).toBe("2 1/2");
});
