import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { exampleOnBench, unfolded } from "./benchPage.ts";
import { openedPage, phone, tablet } from "./openedPage.ts";

/** 14 mm and 3 mm in pixels of CSS (96 to the inch), and half a pixel for rounding. */
const [target, between, rounding] = [(14 / 25.4) * 96, (3 / 25.4) * 96, 0.5];

type Box = {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly right: number;
  readonly bottom: number;
};

describe.each([
  ["on a phone", phone],
  ["on a larger phone", { width: 412, height: 915 }],
  ["on a tablet held upright", { width: 800, height: 1280 }],
  ["on a tablet", tablet],
] as const)("%s", (_, viewport) => {
  test("the page never scrolls sideways and nothing lies outside of it, nor with letters twice as large", async () => {
    const { page, context } = await exampleOnBench({ viewport });
    await unfolded(page);
    expect(await sideways(page)).toEqual([]);
    const before = await letterHeight(page);
    const session = await context.newCDPSession(page);
    await session.send("Page.setFontSizes", { fontSizes: { standard: 32, fixed: 26 } });
    await expect.poll(() => letterHeight(page)).toBeCloseTo(2 * before, 0);
    expect(await sideways(page)).toEqual([]);
  });

  test("whatever is tapped is 14 mm both ways, with 3 mm to the next", async () => {
    const { page } = await exampleOnBench({ viewport });
    await unfolded(page);
    const boxes = await tapped(page);
    expect(boxes.length).toBeGreaterThan(50);
    const small = boxes.filter((it) => Math.min(it.right - it.x, it.bottom - it.y) < target - rounding);
    expect(small.map(inWords)).toEqual([]);
    const close = boxes.flatMap((one, i) =>
      boxes.slice(i + 1).flatMap((other) => {
        const apart = distance(one, other);
        return apart < between - rounding ? [`${inWords(one)} | ${inWords(other)}: ${apart.toFixed(1)}`] : [];
      }),
    );
    expect(close).toEqual([]);
  });
});

test("the answer's figure is 12 mm tall on a phone", async () => {
  const { page } = await exampleOnBench();
  const size = await page.locator(".figure b").evaluate((it) => Number.parseFloat(getComputedStyle(it).fontSize));
  // Figures of this face stand 0.727 of its size (Inter, cap height in its own table).
  expect(size * 0.727).toBeGreaterThanOrEqual((12 / 25.4) * 96 - rounding);
});

test("a narrow page stays whole: 320 pixels, as WCAG 2.2 asks in 1.4.10", async () => {
  const { page } = await openedPage("/", { viewport: { width: 320, height: 640 } });
  expect(await sideways(page)).toEqual([]);
});

const letterHeight = (page: Page): Promise<number> =>
  page
    .locator("main p")
    .first()
    .evaluate((it) => Number.parseFloat(getComputedStyle(it).fontSize));

/** What is wider than the window: the page itself, and what is tapped or read outside of it. */
async function sideways(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    const outside = [...document.querySelectorAll("button, a, input, select, summary, p, h1, h2, h3, svg")].filter(
      (it) => {
        const { left, right, width } = it.getBoundingClientRect();
        // What scrolls within a frame of its own is not outside of the page.
        const framed = it.closest("[data-scrolls], .cards") !== null;
        return width > 0 && !framed && (left < -1 || right > clientWidth + 1);
      },
    );
    const wide = scrollWidth > clientWidth ? [`the page: ${scrollWidth} in ${clientWidth}`] : [];
    return [...wide, ...outside.map((it) => `${it.tagName} ${it.textContent?.slice(0, 40)}`)];
  });
}

/** Where everything lies that is tapped, in the page. */
function tapped(page: Page): Promise<readonly Box[]> {
  return page.evaluate(() =>
    [
      ...document.querySelectorAll<HTMLElement>(
        "main button, main a, main input, main select, main summary, header button, nav button, nav a",
      ),
    ].flatMap((it) => {
      const { left, top, right, bottom, width } = it.getBoundingClientRect();
      const fixed = it.closest("nav, header, .figure-strip") !== null;
      if (width === 0 || !it.checkVisibility()) return [];
      const name = it.getAttribute("aria-label") ?? it.textContent.slice(0, 40);
      // What stays while the page scrolls is held apart from what scrolls under it.
      const down = fixed ? -100_000 : scrollY;
      return [{ name: `${it.tagName} ${name || it.id}`, x: left, y: top + down, right, bottom: bottom + down }];
    }),
  );
}

function distance(one: Box, other: Box): number {
  const across = Math.max(one.x - other.right, other.x - one.right, 0);
  const down = Math.max(one.y - other.bottom, other.y - one.bottom, 0);
  return Math.hypot(across, down);
}

const inWords = ({ name, x, y, right, bottom }: Box): string =>
  `${name} (${(right - x).toFixed(1)} x ${(bottom - y).toFixed(1)})`;
