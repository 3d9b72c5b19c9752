import { expect, test } from "vitest";
import { browser } from "../openedPage.ts";
import { focused, tabTo } from "../tabbing.ts";
import { form, kept, log, servedWorkshop } from "./servedWorkshop.ts";

test("keys alone pair a device with a workshop that holds nothing yet, name its first hand, open a job and write in it", async () => {
  const workshop = await servedWorkshop("nothing yet");
  const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.goto(`${workshop.address}#/standing`);
  const press = async (name: RegExp) => {
    await tabTo(page, name);
    await page.keyboard.press("Enter");
  };
  const type = async (name: RegExp, text: string) => {
    await tabTo(page, name);
    await page.keyboard.type(text);
  };

  /** The keyboard is handed to the heading of a form a little after the form: what is typed before would go elsewhere. */
  const formStands = (title: string) =>
    expect.poll(async () => [(await focused(page)).tag, (await focused(page)).name]).toEqual(["H3", title]);

  await page.locator(".pad").waitFor();
  await press(/^phone$/);
  await tabTo(page, /^1$/);
  await page.keyboard.type(workshop.code());
  await press(/^Pair this device$/);
  await kept(page, /^✓At the workshop\./);

  await press(/^Add a name$/);
  await formStands("Add a name");
  await type(/^Name$/, "Wim Harrow");
  await press(/^Write it down$/);
  await form(page).waitFor({ state: "detached" });

  await press(/^Open a job$/);
  await formStands("Open a job");
  await form(page).getByRole("button", { name: "Wim Harrow" }).waitFor();
  await type(/^What is it called\?$/, "Stone saw");
  await press(/^gear case: fill and level plug, drain plug$/);
  await type(/^Came for$/, "oil change");
  await press(/^Wim Harrow$/);
  await press(/^Write it down$/);
  await page.waitForURL(/#\/job\//);
  await page.locator(".job-head .next").waitFor();
  expect(await page.locator(".job-head .next").textContent()).toContain("Break Fill and level loose first");

  await press(/^Write it$/);
  await formStands("Broken loose");
  await press(/^very tight$/);
  await press(/^Write it down$/);
  await expect.poll(() => log(page).first().textContent()).toContain("Fill and level: broken loose, very tight");
  // The hand stays where it wrote.
  await expect.poll(async () => (await focused(page)).name).toContain("Fill and level");
  await kept(page, /^✓At the workshop\./);

  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  let seen = 0;
  for (; seen < 200; seen++) {
    await page.keyboard.press("Tab");
    const { name, tag, ringed } = await focused(page);
    if (tag === "BODY") break;
    expect(ringed, `${tag} ${name}`).toBe(true);
  }
  expect(seen).toBeGreaterThan(10);
  expect(seen).toBeLessThan(200);
  await context.close();
});
