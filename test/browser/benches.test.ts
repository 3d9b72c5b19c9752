import axe from "axe-core";
import type { BrowserContextOptions, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { openedPage } from "./openedPage.ts";

const figure = (page: Page) => page.locator(".main-figure b");
const sign = (page: Page) => page.locator(".main-figure .sign");
const sentences = (page: Page) => page.locator(".answer .sentences");
const field = (page: Page, label: string) => page.getByRole("textbox", { name: label, exact: true });
const tap = (page: Page, question: string, word: string) =>
  page.getByRole("group", { name: question, exact: true }).getByRole("button", { name: word, exact: true });

/** The check readings of each bench: what is typed and tapped, and the figure that stands then. */
const readings = {
  thread: { typed: { "Outside diameter": "21.85", "Gaps on a rule": "8", "They reach to": "12.1" }, taps: {} },
  level: { typed: { "Drawn out": "60", "The level fell by": "2.7" }, taps: {} },
  drip: {
    typed: { "Drops counted": "7", "Counted over": "10" },
    taps: { "Is any of this seen?": "none", "Is the breather free?": "free" },
  },
  cure: {
    typed: { "Width of the bead": "3", "Bay and case": "12", "Humidity of the air": "65" },
    taps: { "Edges open to air": "one edge" },
  },
  convert: { typed: { Quantity: "46 N·m" }, taps: {} },
} as const;
type Name = keyof typeof readings;
const names = Object.keys(readings) as Name[];

async function laid(name: Name, options: BrowserContextOptions = {}) {
  const opened = await openedPage(`/${name}`, options);
  const { typed, taps } = readings[name];
  for (const [label, text] of Object.entries(typed)) await field(opened.page, label).fill(text);
  for (const [question, word] of Object.entries(taps)) await tap(opened.page, question, word).click();
  return opened;
}

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
    expect(await sign(page).textContent()).toBe(over);
    expect(complaints).toEqual([]);
  });

  test("seven pitches for eight gaps: were crests counted? Saying so settles it", async () => {
    const { page } = await laid("thread");
    await field(page, "They reach to").fill("10.5");
    await expect.poll(() => sign(page).textContent()).toBe("Crests counted?");
    expect(await sentences(page).textContent()).toContain("Did you count crests instead of gaps?");
    await tap(page, "What was counted?", "crests").click();
    await expect.poll(() => sign(page).textContent()).toBe("Most likely");
    expect(await figure(page).textContent()).toBe("M22x1.5");
  });

  test("a step of a stepper steps the answer", async () => {
    const { page } = await laid("drip");
    await expect.poll(() => figure(page).textContent()).toBe("20 to 50");
    await page.getByRole("button", { name: "Drops counted: 1 more" }).click({ clickCount: 7, delay: 20 });
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

  test("each bench keeps its own, and is cleared only when that is confirmed", async () => {
    const { page } = await laid("cure");
    await page.goto(page.url().replace(/#.*/, "#/drip"));
    await field(page, "Drops counted").fill("3");
    await page.goto(page.url().replace(/#.*/, "#/cure"));
    expect(await field(page, "Width of the bead").inputValue()).toBe("3");
    page.once("dialog", (dialog) => dialog.dismiss());
    await page.getByRole("button", { name: "Clear this bench" }).click();
    expect(await field(page, "Width of the bead").inputValue()).toBe("3");
    page.once("dialog", (dialog) => dialog.accept());
    await page.getByRole("button", { name: "Clear this bench" }).click();
    await expect.poll(() => field(page, "Width of the bead").inputValue()).toBe("");
    await page.goto(page.url().replace(/#.*/, "#/drip"));
    expect(await field(page, "Drops counted").inputValue()).toBe("3");
  });

  test("an empty bench says which reading it wants, and a tap goes there", async () => {
    const { page } = await openedPage("/level");
    await expect.poll(() => sentences(page).textContent()).toContain("Still wanted: drawn out, the level fell by.");
    await page.getByRole("button", { name: "Go there" }).click();
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("field-drawn");
  });
});

test("a thread that was named is carried to the bench of a torn thread in one tap", async () => {
  const { page } = await laid("thread");
  await page.getByRole("button", { name: "Weigh it as M22x1.5" }).click();
  await expect.poll(() => page.locator("h1").textContent()).toBe("Torn thread");
  expect(await page.getByRole("textbox", { name: "Thread", exact: true }).inputValue()).toBe("M22x1.5");
});

describe("the message for the caller", () => {
  test("is copied in one tap", async () => {
    const { page, context } = await laid("drip");
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    await page.getByRole("button", { name: "Copy the message" }).click();
    await expect.poll(() => page.getByRole("status").textContent()).toBe("Copied.");
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(
      await page.locator("blockquote").textContent(),
    );
  });

  test("is marked for the hand where the browser does not let it be copied", async () => {
    const { page } = await laid("drip");
    await page.evaluate(() => Object.defineProperty(navigator, "clipboard", { value: undefined }));
    await page.getByRole("button", { name: "Copy the message" }).click();
    await expect.poll(() => page.getByRole("status").textContent()).toContain("It is marked");
    expect(await page.evaluate(() => String(getSelection()).trim())).toBe(
      await page.locator("blockquote").textContent(),
    );
  });
});

test("by keyboard alone: a joint is closed just now, and its working opens", async () => {
  const { page } = await laid("cure");
  await page.getByRole("button", { name: "Closed just now" }).focus();
  await page.keyboard.press("Enter");
  expect(await field(page, "Closed at").inputValue()).toMatch(/^\d{4}-\d\d-\d\d \d\d:\d\d$/);
  await expect.poll(() => sentences(page).textContent()).toContain("at the earliest");
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

describe("reachable and legible", () => {
  const sizes = [
    [360, 740, "light"],
    [360, 740, "dark"],
    [412, 915, "dark"],
    [800, 1280, "light"],
    [1280, 800, "light"],
    [1280, 800, "dark"],
  ] as const;

  test.each(names.flatMap((name) => sizes.map((size) => [name, ...size] as const)))(
    "%s, %d x %d, %s: axe finds nothing, nothing scrolls sideways, targets are 14 mm",
    async (name, width, height, colorScheme) => {
      const { page } = await laid(name, { viewport: { width, height }, colorScheme });
      await expect.poll(() => figure(page).count()).toBe(1);
      await expectLegible(page);
    },
  );

  test.each(names)("%s: letters of twice the size stay on a small screen", async (name) => {
    const { page } = await laid(name);
    await page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
    await expect.poll(() => figure(page).count()).toBe(1);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  });

  test("forced colours keep every edge", async () => {
    const { page } = await laid("thread", { forcedColors: "active" });
    await expect.poll(() => figure(page).count()).toBe(1);
    await expectLegible(page);
  });
});

async function expectLegible(page: Page): Promise<void> {
  await page.locator("summary").evaluateAll((all) =>
    all.forEach((it) => {
      (it.parentElement as HTMLDetailsElement).open = true;
    }),
  );
  await page.evaluate(() => {
    const all = new CSSStyleSheet();
    all.replaceSync("* { content-visibility: visible !important; }");
    document.adoptedStyleSheets = [all];
  });
  await page.evaluate(axe.source);
  const found = await page.evaluate(async () => {
    type Run = { violations: { id: string; nodes: { html: string }[] }[] };
    const { axe } = globalThis as unknown as { axe: { run(of: Document, how: object): Promise<Run> } };
    const { violations } = await axe.run(document, { rules: { "color-contrast-enhanced": { enabled: true } } });
    return violations.map(({ id, nodes }) => [id, nodes.slice(0, 3).map(({ html }) => html.slice(0, 160))]);
  });
  expect(found).toEqual([]);
  const small = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("button, summary, input, a[href]")]
      .filter((it) => it.checkVisibility())
      .map((it) => [it.outerHTML.slice(0, 90), it.getBoundingClientRect()] as const)
      .filter(([html, { width, height }]) => width < 52 || (height < 52 && !html.startsWith("<input")))
      .map(([html]) => html),
  );
  expect(small).toEqual([]);
  const beyond = await page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return scrollWidth - clientWidth;
  });
  expect(beyond).toBeLessThanOrEqual(0);
}
