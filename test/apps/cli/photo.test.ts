import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, expect, test } from "vitest";
import { documentOf, turnsleft } from "./turnsleft.ts";

const plug = "examples/plug.jpg";
const root = new URL("../../..", import.meta.url).pathname;
const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
afterAll(() => rmSync(scratch, { recursive: true }));

const photo = (...options: readonly string[]) => documentOf(["photo", ...options]);

// The example is a rendered M20x1.5 of 19.91 mm.
test("a photo and a caliper name the thread, with its pitch, its hand and its crests, plainly and as a picture", () => {
  const file = join(scratch, "plug.svg");
  const it = photo(plug, "--outside", "19.9 mm", "--svg", file);
  expect(it.verdict).toBe("certain");
  expect(it.candidates[0].designation).toBe("M20x1.5");
  expect(Math.abs(it.pitch_mm - 1.5)).toBeLessThan(2.5 * it.standardUncertainty_mm);
  expect(it.hand).not.toBe("left");
  expect(it.drawn.lines_px).toHaveLength(2);
  // Seven turns: as many crests on either side, or one less.
  expect(it.drawn.crests_px.length).toBeGreaterThanOrEqual(10);
  expect(it.drawn.crests_px.length).toBeLessThanOrEqual(16);
  const svg = readFileSync(file, "utf8");
  expect(svg).toContain('xmlns="http://www.w3.org/2000/svg"');
  expect(svg).toContain("data:image/jpeg;base64,");
  const said = turnsleft(["photo", plug, "--outside", "19.9 mm"]).stdout;
  expect(said).toMatch(/^Certain, as far as a photo goes: M20x1\.5/);
  expect(said).toContain("Tested on rendered photos");
});

test("a line along the thread finds the same pitch", () => {
  const it = photo(plug, "--outside", "19.9 mm", "--line", "557,571,520,485");
  expect(it.candidates[0].designation).toBe("M20x1.5");
});

test("a photo is turned as its camera says before a line on it is meant", async () => {
  const file = join(scratch, "turned.jpg");
  const lying = await sharp(join(root, plug)).rotate(90).toBuffer();
  // 8: the camera was held a quarter turn to the right, so what lies in the file is turned back to the left.
  await sharp(lying).withMetadata({ orientation: 8 }).toFile(file);
  const it = photo(file, "--outside", "19.9 mm", "--line", "557,571,520,485");
  expect(it.candidates[0].designation).toBe("M20x1.5");
});

test("a diameter that does not go with the pitch gets another try, no pitch, and what would help", () => {
  const it = photo(plug, "--outside", "17 mm");
  expect([it.verdict, it.pitch_mm, it.standardUncertainty_mm, it.candidates]).toEqual(["again", null, null, []]);
  expect(it.reasons).toContain("fits no thread");
  expect(it.remedies.join(" ")).toContain("caliper");
});

test("a picture without a thread gets another try", async () => {
  const file = join(scratch, "page.png");
  await sharp({ create: { width: 400, height: 300, channels: 3, background: "#eee" } }).toFile(file);
  const it = photo(file, "--outside", "17 mm");
  expect([it.verdict, it.reasons, it.drawn]).toEqual(["again", ["no thread seen"], null]);
});

test("what is no picture, too large, not there or not said gets a sentence that names it", async () => {
  const text = join(scratch, "words.jpg");
  writeFileSync(text, "no picture");
  const large = join(scratch, "large.png");
  await sharp({ create: { width: 8000, height: 8000, channels: 3, background: "#eee" } }).toFile(large);
  const half = join(scratch, "half.jpg");
  writeFileSync(half, readFileSync(join(root, plug)).subarray(0, 9000));
  const ask = (...options: readonly string[]) => {
    const { status, stderr, stdout } = turnsleft(["photo", ...options]);
    expect([status, stdout, stderr.trim().split("\n").length]).toEqual([2, "", 1]);
    return stderr;
  };
  expect(ask(text, "--outside", "17 mm")).toMatch(/photo: .*words\.jpg.*accepted: a whole picture/);
  expect(ask(half, "--outside", "17 mm")).toMatch(/photo: .*accepted: a whole picture/);
  expect(ask(large, "--outside", "17 mm")).toMatch(/photo: .*60 megapixels/);
  expect(ask(join(scratch, "none.jpg"), "--outside", "17 mm")).toMatch(/photo: .*can be read/);
  expect(ask(scratch, "--outside", "17 mm")).toMatch(/photo: .*accepted: a file/);
  expect(ask(plug)).toMatch(/--outside: given nothing/);
  expect(ask(plug, "--outside", "19.9")).toMatch(/--outside: .*19\.9 mm/);
  expect(ask(plug, "--outside", "19.9 mm", "--line", "1,2,3")).toMatch(/--line: .*two points/);
  expect(ask(plug, "--outside", "19.9 mm", "--line", "1,2,3000,4000")).toMatch(/--line: .*1600 x 1200/);
});
