import { expect, test } from "vitest";
import { answered, exampleOnBench, exampleSentences, turnsOn } from "./benchPage.ts";
import { openedPage } from "./openedPage.ts";
import { focused, tabTo } from "./tabbing.ts";

test("keys alone lead to the example, to a reading, to its answer", async () => {
  const { page } = await openedPage("/");
  await tabTo(page, /^Show the worked example$/);
  await page.keyboard.press("Enter");
  await answered(page, exampleSentences());
  await tabTo(page, /^Turns, catch to seat: .* less$/);
  await page.keyboard.press("Space");
  await answered(page, exampleSentences({ turns: await turnsOn(page).inputValue() }));
  expect(await turnsOn(page).inputValue()).not.toBe("3.5");
  await tabTo(page, /^Turns, catch to seat$/);
  await page.keyboard.press("ControlOrMeta+A");
  await page.keyboard.type("2");
  await answered(page, exampleSentences({ turns: "2" }));
  await tabTo(page, /^Answer$/);
  await page.keyboard.press("Enter");
  expect((await focused(page)).id).toBe("answer");
});

test("Tab goes through the whole page and out of it, and what has the keyboard is always ringed", async () => {
  const { page } = await exampleOnBench();
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  const seen: string[] = [];
  for (let i = 0; i < 400; i++) {
    await page.keyboard.press("Tab");
    const { name, tag, ringed } = await focused(page);
    if (tag === "BODY") break;
    expect(ringed, `${tag} ${name}`).toBe(true);
    seen.push(`${tag} ${name}`);
  }
  expect(seen.length).toBeGreaterThan(30);
  expect(seen.length).toBeLessThan(400);
});

test.each(["Ask", "Read", "Answer", "Do", "Papers"])(
  "%s leads to its part, although parts on the way are drawn only now",
  async (word) => {
    const { page } = await exampleOnBench();
    await page.getByRole("button", { name: word, exact: true }).click();
    await page.waitForTimeout(1500);
    const [top, tall, end] = await page.evaluate(() => [
      document.activeElement?.getBoundingClientRect().top ?? -1,
      innerHeight,
      Math.abs(scrollY + innerHeight - document.documentElement.scrollHeight) < 2,
    ]);
    expect(top).toBeGreaterThanOrEqual(0);
    expect(top).toBeLessThan(Number(tall) * (end ? 1 : 0.4));
  },
);
