import { expect, test } from "vitest";
import { answered, answerOn, exampleOnBench, exampleSentences, turnsOn, unfolded } from "./benchPage.ts";
import { openedPage } from "./openedPage.ts";

test("once it is loaded the bench reckons without a network, to its last part", async () => {
  const { page, context, asked, complaints } = await exampleOnBench();
  // What is not needed for the first answer is fetched behind it.
  await page.waitForTimeout(1000);
  await context.setOffline(true);
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
