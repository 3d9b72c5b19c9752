import { expect, test } from "vitest";
import { axeFindings } from "./axe.ts";
import { field, figure } from "./furtherBench.ts";
import { address, openedPage } from "./openedPage.ts";

const plug = new URL("../../examples/plug.jpg", import.meta.url).pathname;

/** The thread bench with its part for a photo open, and the diameter of the example on it. */
async function photoBench(outside: string) {
  const opened = await openedPage("/thread");
  const { page } = opened;
  if (outside !== "") await field(page, "Outside diameter").fill(outside);
  await page.locator("summary", { hasText: "From a photo" }).click();
  const choose = page.locator("input[type=file]");
  await choose.waitFor();
  const read = page.locator(".photo-read");
  return { ...opened, choose, read };
}

// The example is a rendered M20x1.5 of 19.91 mm.
test("a photo through the input gives a pitch, shown over the photo; once the crests are confirmed it stands on the bench", async () => {
  const { page, choose, read, complaints } = await photoBench("19.9");
  await choose.setInputFiles(plug);
  await read.waitFor();
  expect(await read.textContent()).toContain("M20x1.5");
  expect(await read.textContent()).toContain("Tested on rendered photos");
  expect(await read.textContent()).toContain("leaf 2 mm sits without light: M20x2");
  expect(await read.locator(".over svg path").count()).toBe(3);
  // What lies beneath is the photo, not an empty canvas.
  const painted = await read.locator("canvas").evaluate((canvas) => {
    const { width, height } = canvas as HTMLCanvasElement;
    return (canvas as HTMLCanvasElement).getContext("2d")?.getImageData(width >> 1, height >> 1, 1, 1).data[3];
  });
  expect(painted).toBe(255);
  expect(await axeFindings(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  await page.getByRole("button", { name: "Yes, on the crests" }).click();
  await expect.poll(() => figure(page).textContent()).toBe("M20x1.5");
  expect(Number(await field(page, "Pitch in the photo").inputValue())).toBeCloseTo(1.5, 1);
  expect(complaints).toEqual([]);
});

test("who sees that it is wrong draws a line along the thread, and the photo is read along it", async () => {
  const { page, choose, read } = await photoBench("19.9");
  await choose.setInputFiles(plug);
  await read.waitFor();
  await page.getByRole("button", { name: "No", exact: true }).click();
  const along = page.getByRole("button", { name: "Read along this line" });
  expect(await along.isDisabled()).toBe(true);
  await field(page, "Line along the thread").fill("557,571,520,485");
  // What is asked of the crests is asked of what was read along the line, not of the reading before.
  const asked = await along.evaluate(async (tap: HTMLElement) => {
    tap.click();
    await null;
    return document.body.textContent.includes("Yes, on the crests");
  });
  expect(asked).toBe(false);
  await page.getByRole("button", { name: "Yes, on the crests" }).waitFor();
  expect(await read.textContent()).toContain("M20x1.5");
});

test("two taps on the picture are the ends of the line", async () => {
  const { page, choose, read } = await photoBench("17");
  await choose.setInputFiles(plug);
  await read.waitFor();
  expect(await read.textContent()).toContain("No thread of that diameter has this pitch");
  await read.locator(".photo-view").click({ position: { x: 40, y: 40 } });
  await read.locator(".photo-view").click({ position: { x: 120, y: 90 } });
  expect(await field(page, "Line along the thread").inputValue()).toMatch(/^\d+,\d+,\d+,\d+$/);
});

test("without a diameter, and with a file that is no picture, it says what is wanted and goes on", async () => {
  const { page, choose, read } = await photoBench("");
  await choose.setInputFiles(plug);
  const alert = page.locator(".photo > [role=alert]");
  await expect.poll(() => alert.textContent()).toContain("outside diameter is wanted first");
  await field(page, "Outside diameter").fill("19.9");
  await choose.setInputFiles({ name: "words.jpg", mimeType: "image/jpeg", buffer: Buffer.from("no picture") });
  await expect.poll(() => alert.textContent()).toContain("no picture");
  await choose.setInputFiles(plug);
  await read.waitFor();
  expect(await alert.count()).toBe(0);
});

test("the white page is white at its own address, and leads back", async () => {
  const { page, complaints } = await openedPage("/thread");
  await page.goto(`${address}light.html`);
  expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe(
    "rgb(255, 255, 255)",
  );
  expect(await axeFindings(page)).toEqual([]);
  await page.getByRole("link", { name: "Back to the bench" }).click();
  await page.locator("#main *").first().waitFor();
  // What the bench was still fetching when it was left does not count.
  expect(complaints.filter((it) => !it.includes("ERR_ABORTED"))).toEqual([]);
});

test("nothing of the photo is fetched before its part is opened", async () => {
  const { page, asked } = await openedPage("/thread");
  await field(page, "Outside diameter").fill("19.9");
  await expect.poll(() => figure(page).count()).toBe(1);
  await page.waitForTimeout(800);
  expect(asked.filter((it) => /photo/i.test(it))).toEqual([]);
});
