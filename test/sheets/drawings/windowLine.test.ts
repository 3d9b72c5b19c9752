import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { portSection } from "../../../src/mechanics/joint/section.ts";
import { portLines, windowLines } from "../../../src/sheets/drawings/window/WindowLine.ts";
import { anySection, anyWindow } from "./arbitraries.ts";
import { expectCommitted } from "./committedDrawing.ts";
import { healthy, hurt, longerPlug, mostlyUnknown, withSealant } from "./exampleSections.ts";
import { emptyWindow, healthyWindow, narrowWindow, openWindow } from "./exampleWindows.ts";

const text = (pictures: readonly (readonly string[])[]): string =>
  `${pictures.map((lines) => lines.join("\n")).join("\n\n")}\n`;

describe("pinned: pictures that were looked at", () => {
  test("window-lines.txt", () => {
    const windows = [openWindow, emptyWindow, narrowWindow, healthyWindow];
    expectCommitted("window-lines.txt", text(windows.map((props) => windowLines(props, 72))));
  });

  test("port-lines.txt", () => {
    const ports = [healthy, hurt, withSealant, longerPlug, mostlyUnknown];
    expectCommitted("port-lines.txt", text(ports.map((input) => portLines(portSection(input), 72))));
  });
});

describe("laws", () => {
  test("no line is wider than asked", () => {
    fc.assert(
      fc.property(anyWindow, anySection, fc.integer({ min: 40, max: 120 }), (props, input, width) => {
        for (const line of [...windowLines(props, width), ...portLines(portSection(input), width)])
          expect([...line].length).toBeLessThanOrEqual(width);
      }),
    );
  });

  test("an open window's brackets face each other; an empty one's stand back to back and it says empty", () => {
    fc.assert(
      fc.property(anyWindow, (props) => {
        const lines = windowLines(props, 72);
        const bar = lines.find((line) => /[┣┫╋]/.test(line) && /[·╱╳ ]/.test(line)) ?? "";
        const empty = Math.max(props.need_Nm, props.floor_Nm ?? 0) > props.limit_Nm;
        expect(lines.some((line) => line.startsWith("empty: "))).toBe(empty);
        expect(lines.some((line) => line.includes("┏━━"))).toBe(!empty && props.advice_Nm !== null);
        const [low, limit] = [bar.indexOf("┣"), bar.indexOf("┫")];
        if (low >= 0 && limit >= 0) expect(low > limit).toBe(empty);
      }),
    );
  });

  test("turns that carry take two columns each", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 }), (turnsCarrying) => {
        const sound = portLines(portSection({ ...healthy, turnsCarrying, underHead_mm: 12 }), 72);
        expect(sound.find((line) => line.startsWith("turns "))?.match(/█/g)).toHaveLength(2 * turnsCarrying);
      }),
    );
  });
});
