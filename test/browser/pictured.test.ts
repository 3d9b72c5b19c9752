import { mkdirSync } from "node:fs";
import type { BrowserContextOptions, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { drawn, exampleOnBench, unfolded } from "./benchPage.ts";
import { openedPage, phone, tablet } from "./openedPage.ts";

/** Pictures of the page, to be looked at. */
const folder = "dist/pictures";
mkdirSync(folder, { recursive: true });

const looks: readonly (readonly [name: string, options: BrowserContextOptions])[] = [
  ["phone-light", { viewport: phone, colorScheme: "light" }],
  ["phone-dark", { viewport: phone, colorScheme: "dark" }],
  ["tablet-light", { viewport: tablet, colorScheme: "light" }],
  ["tablet-dark", { viewport: tablet, colorScheme: "dark" }],
  ["phone-forced-colours", { viewport: phone, forcedColors: "active" }],
  ["phone-still", { viewport: phone, reducedMotion: "reduce" }],
];

test.each(looks)("%s is pictured, empty and with the worked example", async (name, options) => {
  const empty = await openedPage("/", options);
  await empty.page.screenshot({ path: `${folder}/${name}-empty.png` });
  const { page, complaints } = await exampleOnBench(options);
  await drawn(page);
  const picture = await page.screenshot({ path: `${folder}/${name}.png`, fullPage: true });
  expect(picture.length).toBeGreaterThan(20_000);
  expect(complaints).toEqual([]);
});

describe("with the system's own colours", () => {
  test("the letters of drawings stand out from the page", async () => {
    const { page } = await exampleOnBench({ forcedColors: "active" });
    await unfolded(page);
    const { paper, letters } = await page.evaluate(() => ({
      paper: getComputedStyle(document.body).backgroundColor,
      letters: [...document.querySelectorAll("svg text")].map((it) => getComputedStyle(it).fill),
    }));
    expect(letters.length).toBeGreaterThan(5);
    expect(letters).not.toContain(paper);
  });

  test("what is chosen is ticked and can be read", async () => {
    const { page, context } = await exampleOnBench({ forcedColors: "active" });
    const chosen = await page.locator("[aria-pressed='true']").filter({ visible: true }).all();
    expect(chosen.length).toBeGreaterThan(3);
    const board = await context.newPage();
    for (const it of chosen) {
      const word = (await it.textContent()) ?? "";
      expect(word).toMatch(/^✓/);
      expect(await inkedShare(board, await it.screenshot()), word).toBeGreaterThan(0.02);
    }
  });
});

/** In the middle of a picture the share of the rarer of light and dark: nothing where letters have the colour of their ground. */
function inkedShare(board: Page, png: Buffer): Promise<number> {
  return board.evaluate(
    async (address) => {
      const picture = await createImageBitmap(await (await fetch(address)).blob());
      const { width, height } = picture;
      const context = new OffscreenCanvas(width, height).getContext("2d");
      context?.drawImage(picture, 0, 0);
      // The word without the frame and its corners.
      const middle = context?.getImageData(width * 0.3, height * 0.35, width * 0.4, height * 0.3).data ?? [];
      const greens = [...middle].filter((_, i) => i % 4 === 1);
      const dark = greens.filter((it) => it < 128).length / greens.length;
      return Math.min(dark, 1 - dark);
    },
    `data:image/png;base64,${png.toString("base64")}`,
  );
}

test("nothing moves where less motion is asked for: a jump lands at once", async () => {
  const { page } = await exampleOnBench({ reducedMotion: "reduce" });
  await page.locator("#papers").waitFor();
  // Asked in one breath: what is drawn on the way pushes them out of view again, and they are followed a frame later.
  const [before = 0, after = 0] = await page
    .getByRole("button", { name: "Papers", exact: true })
    .evaluate((tap: HTMLElement) => {
      const offset = () => document.getElementById("papers")?.getBoundingClientRect().top;
      return [offset(), tap.click(), offset()].filter((it) => it !== undefined);
    });
  expect(before).toBeGreaterThan(740);
  expect(after).toBeLessThan(before / 2);
  expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
});
