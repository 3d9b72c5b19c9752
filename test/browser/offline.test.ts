import { expect, test } from "vitest";
import { waysComing, waysNotFetched } from "../../src/sheets/words/benchWords.ts";
import { answered, answerOn, exampleOnBench, exampleSentences, turnsOn, unfolded } from "./benchPage.ts";
import { cutOff, openedPage } from "./openedPage.ts";

test("once it is loaded the bench reckons without a network, to its last part", async () => {
  const opened = await exampleOnBench({ serviceWorkers: "block" });
  const { page, asked, complaints } = opened;
  await cutOff(opened, { page: ["Drawings", "WaysAndPapers"], workers: ["behindAnswer"] });
  const before = asked.length;
  await turnsOn(page).fill("2.5");
  await answered(page, exampleSentences({ turns: "2.5" }));
  await unfolded(page);
  expect(asked.slice(before)).toEqual([]);
  expect(complaints).toEqual([]);
});

test("where the script that reckons did not come, that is said, and the next tap tries again", async () => {
  const { page, context } = await openedPage("/", { serviceWorkers: "block" });
  await context.route(/worker-[^/]*\.js/, (route) => route.abort());
  await page.reload();
  await page.getByRole("button", { name: "Show the worked example" }).click();
  await expect.poll(() => answerOn(page).textContent()).toContain("The reckoning failed");
  await context.unroute(/worker-[^/]*\.js/);
  await turnsOn(page).fill("2.5");
  await answered(page, exampleSentences({ turns: "2.5" }));
});

test("the first answer stands before what can be done is fetched; where that did not come, it is said, and the next tap tries again", async () => {
  const { page, context } = await openedPage("/", { serviceWorkers: "block" });
  const rest = /wholeAnswer-[^/]*\.js/;
  let held = (): void => {};
  const holding = new Promise<void>((resolve) => {
    held = resolve;
  });
  await context.route(rest, async (route) => {
    await holding;
    await route.abort();
  });
  await page.getByRole("button", { name: "Show the worked example" }).click();
  const [first = "", ...others] = exampleSentences();
  await expect
    .poll(() => answerOn(page).locator(".sentences").textContent())
    .toContain(first.replace("As found: ", ""));
  expect(await page.locator(".main-figure b").textContent()).toBe(/Pull to (\S+) N·m/.exec(first)?.[1]);
  expect(await answerOn(page).textContent()).toContain(waysComing);
  for (const it of others) expect(await answerOn(page).textContent()).not.toContain(it);
  held();
  await page.getByRole("alert").filter({ hasText: waysNotFetched }).waitFor();
  await context.unroute(rest);
  await turnsOn(page).fill("2.5");
  await answered(page, exampleSentences({ turns: "2.5" }));
  expect(await answerOn(page).textContent()).not.toContain(waysNotFetched);
});
