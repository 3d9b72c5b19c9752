import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { portSection } from "../../../src/mechanics/joint/section.ts";
import { labelBox } from "../../../src/sheets/drawings/lettering.ts";
import { OddsPicture } from "../../../src/sheets/drawings/OddsPicture.tsx";
import { commonView, SmallSection } from "../../../src/sheets/drawings/section/SmallSection.tsx";
import { standaloneSvg } from "../../../src/sheets/drawings/standalone.ts";
import { commonTorque, WindowStrip } from "../../../src/sheets/drawings/window/WindowStrip.tsx";
import { anyWindow } from "./arbitraries.ts";
import { expectCommitted } from "./committedDrawing.ts";
import { expectInside } from "./drawnPoints.ts";
import { healthy, hurt, withSealant } from "./exampleSections.ts";
import { emptyWindow, narrowWindow, openWindow } from "./exampleWindows.ts";

const odds = (strips: number, closes: number) => <OddsPicture torqueText="46 N·m" strips={strips} closes={closes} />;
const sections = [healthy, hurt, withSealant].map(portSection);
const view = commonView(sections);
const strips = [openWindow, emptyWindow, narrowWindow];

describe("pinned: drawings that were looked at", () => {
  test.each([
    ["odds-few.svg", 0.034, 1],
    ["odds-most.svg", 0.92, 0.41],
    ["odds-rare.svg", 0.0002, 0.97],
  ])("%s", (name, p, closes) => expectCommitted(name, standaloneSvg(odds(p, closes))));

  test.each(["small-healthy.svg", "small-hurt.svg", "small-sealant.svg"].map((name, i) => [name, i] as const))(
    "%s",
    (name, i) =>
      expectCommitted(name, standaloneSvg(<SmallSection section={sections[i]!} view={view} caption="As found" />)),
  );

  test.each(["strip-open.svg", "strip-empty.svg", "strip-narrow.svg"].map((name, i) => [name, i] as const))(
    "%s",
    (name, i) => expectCommitted(name, standaloneSvg(<WindowStrip window={strips[i]!} to_Nm={commonTorque(strips)} />)),
  );
});

describe("laws", () => {
  const crossed = (svg: string): number =>
    (/class="heavy line stop-edge" d="([^"]*)"/.exec(svg)?.[1] ?? "").split("M").length - 1;

  test("as many plugs are crossed as strip of a hundred, and the words say the same", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99 }), (n) => {
        const svg = standaloneSvg(odds(n / 100, 1));
        expect(crossed(svg)).toBe(2 * n);
        expect(svg).toContain(`${n} of 100 strip`);
      }),
    );
  });

  test("what can happen is never drawn as never, nor what can fail as always", () => {
    expect(crossed(standaloneSvg(odds(0.002, 1)))).toBe(2);
    expect(crossed(standaloneSvg(odds(0.998, 1)))).toBe(2 * 99);
    expect(crossed(standaloneSvg(odds(0, 1)))).toBe(0);
    expect(crossed(standaloneSvg(odds(1, 1)))).toBe(200);
  });

  // The limit of the widest window of a row lies at the end of the axis, and its figure was cut off there (found in November 2026).
  test("both figures of a strip stand whole on its sheet, the lesser first", () => {
    fc.assert(
      fc.property(anyWindow, anyWindow, (a, b) => {
        for (const window of [a, b]) {
          const svg = standaloneSvg(<WindowStrip window={window} to_Nm={commonTorque([a, b])} />);
          const labels = [...svg.matchAll(/<text class="bold" x="([-\d.]+)"[^>]*?(text-anchor="end")?>(\d+)</g)];
          const boxes = labels.map(([, x, end, text = ""]) => {
            const label = { text, x: Number(x), y: 0, size: 6.5, anchor: end ? "end" : "start", bold: true } as const;
            return labelBox(label);
          });
          expect(boxes).toHaveLength(2);
          for (const box of boxes) {
            expect(box.x).toBeGreaterThanOrEqual(0);
            expect(box.x + box.width).toBeLessThanOrEqual(100);
          }
          expect(boxes[0]!.x + boxes[0]!.width).toBeLessThanOrEqual(boxes[1]!.x + 0.01);
        }
      }),
      { numRuns: 200 },
    );
  });

  test("nothing lies outside the sheet", () => {
    fc.assert(
      fc.property(anyWindow, anyWindow, (a, b) => {
        for (const window of [a, b])
          expectInside(standaloneSvg(<WindowStrip window={window} to_Nm={commonTorque([a, b])} />));
      }),
      { numRuns: 200 },
    );
    for (const section of sections)
      expectInside(standaloneSvg(<SmallSection section={section} view={view} caption="As found" />));
    expectInside(standaloneSvg(odds(0.5, 0.5)));
  });
});
