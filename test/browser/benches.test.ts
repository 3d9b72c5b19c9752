import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { dripSum } from "../../src/sheets/sums/dripSum.tsx";
import { field, figure, laid, sign, tap } from "./furtherBench.ts";
import { cutOff, openedPage } from "./openedPage.ts";

describe("each bench answers its check readings", () => {
  test.each([
    ["thread", "M22x1.5", "Most likely"],
    ["level", "22", "A millimetre holds"],
    ["drip", "20 to 50", "Loses, parked"],
    ["cure", "54", "Cured through"],
    ["convert", "33.93", "That is"],
  ] as const)("%s: %s", async (name, expected, over) => {
    const { page, complaints } = await laid(name);
    await expect.poll(() => figure(page).textContent()).toBe(expected);
    await expect.poll(() => sign(page).textContent()).toBe(over);
    expect(complaints).toEqual([]);
  });

  test("seven pitches for eight gaps: were crests counted? Saying so settles it", async () => {
    const { page } = await laid("thread");
    await field(page, "They reach to").fill("10.5");
    await expect.poll(() => sign(page).textContent()).toBe("Crests counted?");
    expect(await page.locator(".answer .sentences").textContent()).toContain("Did you count crests instead of gaps?");
    await tap(page, "What was counted?", "crests").click();
    await expect.poll(() => sign(page).textContent()).toBe("Most likely");
    expect(await figure(page).textContent()).toBe("M22x1.5");
  });

  test("a step of a stepper steps the answer", async () => {
    const { page } = await laid("drip");
    await expect.poll(() => figure(page).textContent()).toBe("20 to 50");
    await page.getByRole("button", { name: "Drops counted: 1 more" }).click({ clickCount: 7 });
    expect(await field(page, "Drops counted").inputValue()).toBe("14");
    await expect.poll(() => figure(page).textContent()).toBe("40 to 100");
  });

  test("a stop sign ends the talk at once, and lifting it goes on", async () => {
    const { page } = await laid("drip");
    await tap(page, "Is any of this seen?", "oil on a brake").click();
    await expect.poll(() => sign(page).textContent()).toBe("Do not drive");
    expect(await page.locator("blockquote").textContent()).toContain("Please do not drive it");
    await tap(page, "Is any of this seen?", "none").click();
    await expect.poll(() => sign(page).textContent()).toBe("Loses, parked");
  });
});

describe("nothing is lost", () => {
  test.each([
    ["thread", "Outside diameter", "21,0x"],
    ["level", "The level fell by", "1,234.5"],
    ["drip", "Drops counted", "some"],
    ["cure", "Humidity of the air", "165"],
    ["convert", "Quantity", "2 pints"],
  ] as const)(
    "%s: what was mistyped stays as typed beside its error, and no figure stands",
    async (name, label, text) => {
      const { page } = await laid(name);
      await expect.poll(() => figure(page).count()).toBe(1);
      await field(page, label).fill(text);
      const id = await field(page, label).getAttribute("id");
      await expect.poll(() => page.locator(`#${id}-problem`).textContent()).toContain(`Given "${text}"; accepted: `);
      expect(await field(page, label).getAttribute("aria-invalid")).toBe("true");
      expect(await field(page, label).inputValue()).toBe(text);
      expect(await figure(page).count()).toBe(0);
      await page.reload({ waitUntil: "networkidle" });
      expect(await field(page, label).inputValue()).toBe(text);
      await expect.poll(() => page.locator(`#${id}-problem`).textContent()).toContain(text);
    },
  );

  test("each bench keeps its own, and what was cleared can be taken back", async () => {
    const { page } = await laid("cure");
    await page.goto(page.url().replace(/#.*/, "#/drip"));
    await field(page, "Drops counted").fill("3");
    await page.goto(page.url().replace(/#.*/, "#/cure"));
    expect(await field(page, "Width of the bead").inputValue()).toBe("3");
    await page.getByRole("button", { name: "Clear this bench" }).click();
    await expect.poll(() => field(page, "Width of the bead").inputValue()).toBe("");
    await page.getByRole("button", { name: "Take back what was cleared" }).click();
    await expect.poll(() => field(page, "Width of the bead").inputValue()).toBe("3");
    await page.getByRole("button", { name: "Clear this bench" }).click();
    await page.goto(page.url().replace(/#.*/, "#/drip"));
    expect(await field(page, "Drops counted").inputValue()).toBe("3");
  });

  test("an empty bench says which reading it wants, and a tap goes there", async () => {
    const { page } = await openedPage("/level");
    await expect
      .poll(() => page.locator(".answer .sentences").textContent())
      .toContain("Still wanted: drawn out, the level fell by.");
    await page.getByRole("button", { name: "Go there" }).click();
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("field-drawn");
  });
});

test("a thread that was named is carried to the bench of a torn thread in one tap", async () => {
  const { page } = await laid("thread");
  // The whole of what was typed is answered: what comes of it moves the tap no more.
  await expect.poll(() => page.locator(".answer .because").textContent()).toContain("8 gaps reach 12.0 mm");
  await page.getByRole("button", { name: "Weigh it as M22x1.5" }).click();
  await expect.poll(() => page.locator("h1").textContent()).toBe("Torn thread");
  expect(await page.getByRole("textbox", { name: "Thread", exact: true }).inputValue()).toBe("M22x1.5");
});

describe("the message for the caller", () => {
  /** The engine's message to the check readings, once it stands on the page: what is still reckoned changes it no more. */
  async function messageOn(page: Page): Promise<string> {
    const read = dripSum({ drops: "7", minutes: "10", signs: "none", breather: "free" });
    const message = read.ok ? read.answer.message : null;
    if (message === null) throw new Error("the check readings give no message");
    await expect.poll(() => page.locator("blockquote").allTextContents()).toEqual([message]);
    return message;
  }

  test("is copied in one tap", async () => {
    const { page, context } = await laid("drip");
    const message = await messageOn(page);
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    await page.getByRole("button", { name: "Copy the message" }).click();
    await expect.poll(() => page.getByRole("status").textContent()).toBe("Copied.");
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(message);
  });

  test("is marked for the hand where the browser does not let it be copied", async () => {
    const { page } = await laid("drip");
    const message = await messageOn(page);
    await page.evaluate(() => Object.defineProperty(navigator, "clipboard", { value: undefined }));
    await page.getByRole("button", { name: "Copy the message" }).click();
    await expect.poll(() => page.getByRole("status").textContent()).toContain("It is marked");
    expect(await page.evaluate(() => String(getSelection()).trim())).toBe(message);
  });
});

test("by keyboard alone: a joint is closed just now, and its working opens", async () => {
  const { page } = await laid("cure");
  await page.getByRole("button", { name: "Closed just now" }).focus();
  await page.keyboard.press("Enter");
  expect(await field(page, "Closed at").inputValue()).toMatch(/^\d{4}-\d\d-\d\d \d\d:\d\d$/);
  await expect.poll(() => page.locator(".answer .sentences").textContent()).toContain("at the earliest");
  await page.getByRole("button", { name: "Working", exact: true }).focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("behind");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await expect.poll(() => page.locator(".working li").count()).toBeGreaterThan(2);
});

test("the first page fetches none of the benches' scripts", async () => {
  const { page, asked } = await openedPage("/");
  const before = asked.length;
  expect(asked.filter((it) => /Page-|Sum-/.test(it))).toEqual([]);
  await page.goto(page.url().replace(/#.*/, "#/level"));
  await field(page, "Drawn out").waitFor();
  expect(asked.slice(before).some((it) => /levelPage-/.test(it))).toBe(true);
});

test("once one of them was opened the others answer without a network", async () => {
  const opened = await laid("level", { serviceWorkers: "block" });
  const { page, complaints } = opened;
  await expect.poll(() => figure(page).textContent()).toBe("22");
  await cutOff(opened, { page: ["convertPage"], workers: ["convertSum"] });
  await page.evaluate(() => {
    location.hash = "#/convert";
  });
  await field(page, "Quantity").fill("34 lbf·ft");
  await expect.poll(() => figure(page).textContent()).toBe("46.1");
  expect(complaints).toEqual([]);
});
