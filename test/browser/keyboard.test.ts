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

test.each([
  ["Ask", "asked"],
  ["Read", "left"],
  ["Answer", "answer"],
  ["Do", "ways"],
  ["Papers", "papers"],
])("%s leads to its part, although parts on the way are drawn only now", async (word, id) => {
  const { page } = await exampleOnBench();
  await page.getByRole("button", { name: word, exact: true }).click();
  const place = () =>
    page.evaluate(() => {
      const { scrollHeight } = document.documentElement;
      const end = Math.abs(scrollY + innerHeight - scrollHeight) < 2;
      const { id, top } = { id: document.activeElement?.id, top: document.activeElement?.getBoundingClientRect().top };
      const inReach = top !== undefined && top >= 0 && top < innerHeight * (end ? 1 : 0.4);
      return { id, inReach, top, scrollHeight };
    });
  const atRest = async () => {
    const before = await place();
    await page.waitForTimeout(1000);
    const { id, inReach, top, scrollHeight } = await place();
    return { id, inReach, moves: [top !== before.top, scrollHeight !== before.scrollHeight] };
  };
  await expect.poll(atRest).toEqual({ id, inReach: true, moves: [false, false] });
});

test("a part whose script is still on its way is led to when it comes", async () => {
  const { page, context } = await openedPage("/", { serviceWorkers: "block" });
  let come = (): void => {};
  const coming = new Promise<void>((resolve) => {
    come = resolve;
  });
  await context.route(/WaysAndPapers-[^/]*\.js/, (route) => coming.then(() => route.continue()));
  await page.getByRole("button", { name: "Show the worked example" }).click();
  await answered(page, exampleSentences());
  await page.getByRole("button", { name: "Do", exact: true }).click();
  expect(await page.locator("#ways").count()).toBe(0);
  come();
  await expect.poll(async () => (await focused(page)).id).toBe("ways");
});
