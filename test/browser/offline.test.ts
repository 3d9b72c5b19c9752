import { expect, test } from "vitest";
import { answered, exampleOnBench, exampleSentences, turnsOn, unfolded } from "./benchPage.ts";

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
