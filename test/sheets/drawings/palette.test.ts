import { describe, expect, test } from "vitest";
import { drawingStyles, paletteCss } from "../../../src/sheets/drawings/drawingStyles.ts";
import { day, inks, night, type Palette } from "../../../src/sheets/drawings/palette.ts";
import { expectCommitted } from "./committedDrawing.ts";

describe("published", () => {
  // WCAG 2.2, definitions: relative luminance and contrast ratio; the pairs are its own limits, 21:1 and 1:1.
  test("black on white has a contrast of 21, a colour on itself 1", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 9);
    expect(contrast("#9b0a1c", "#9b0a1c")).toBe(1);
  });

  // WCAG 2.2, 1.4.6: 7:1 for lettering.
  test.each<[string, Palette]>([
    ["day", day],
    ["night", night],
  ])("lettering of the %s palette has a contrast of 7 on every ground it stands on", (_, palette) => {
    for (const ground of [palette.paper, palette.steel, palette.casting])
      expect(contrast(palette.ink, ground)).toBeGreaterThanOrEqual(7);
    expect(contrast(palette.pencil, palette.paper)).toBeGreaterThanOrEqual(7);
    expect(contrast(palette.stop, palette.paper)).toBeGreaterThanOrEqual(7);
  });

  // WCAG 2.2, 1.4.11: 3:1 for lines that carry meaning.
  test.each<[string, Palette]>([
    ["day", day],
    ["night", night],
  ])("lines of the %s palette have a contrast of 3 on every ground", (_, palette) => {
    for (const ground of [palette.paper, palette.steel, palette.casting, palette.amber, palette.sealant])
      expect(contrast(palette.ink, ground)).toBeGreaterThanOrEqual(3);
  });
});

describe("laws", () => {
  test("palette.css is what the styles say", () => {
    expectCommitted("../../../src/sheets/drawings/palette.css", paletteCss);
  });

  test("a page's palette has every ink by day, by night, on paper and in colours of the reader's own", () => {
    for (const name of inks) expect(paletteCss.match(new RegExp(`--${name}: `, "g"))).toHaveLength(6);
  });

  test("a drawing that stands alone uses no custom property", () => {
    expect(drawingStyles).not.toContain("var(");
    expect(drawingStyles).toContain("prefers-color-scheme: dark");
    expect(drawingStyles).toContain("forced-colors: active");
  });
});

/** Contrast ratio by WCAG 2.2 of two colours given as #rrggbb. */
function contrast(a: string, b: string): number {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].toSorted((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}

function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
