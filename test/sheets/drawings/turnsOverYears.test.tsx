import fc from "fast-check";
import { expect, test } from "vitest";
import { standaloneSvg } from "../../../src/sheets/drawings/standalone.ts";
import { TurnsOverYears } from "../../../src/sheets/drawings/TurnsOverYears.tsx";
import { expectCommitted } from "./committedDrawing.ts";
import { expectInside } from "./drawnPoints.ts";

const counted = (...turns: readonly number[]) => turns.map((it, i) => ({ on: `${2020 + i}-05-0${i + 1}`, turns: it }));

test.each([
  ["turns-falling.svg", <TurnsOverYears counts={counted(8, 7.5, 6.5, 6)} falling />],
  ["turns-holding.svg", <TurnsOverYears counts={counted(7, 7)} falling={false} />],
  ["turns-once.svg", <TurnsOverYears counts={counted(3.5)} falling={false} />],
])("%s", (name, drawing) => expectCommitted(name, standaloneSvg(drawing)));

test("a fall is said in words, and drawn heavier: never by colour alone", () => {
  const falling = standaloneSvg(<TurnsOverYears counts={counted(8, 6)} falling />);
  expect(falling).toContain("FALLING");
  expect(falling).toContain("heavy");
});

test("counts never leave their sheet, however many and however close in time", () => {
  const count = fc.record({
    on: fc
      .date({ min: new Date("1990-01-01"), max: new Date("2060-01-01"), noInvalidDate: true })
      .map((it) => it.toISOString().slice(0, 10)),
    turns: fc.double({ min: 0, max: 40, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(count, { minLength: 1, maxLength: 12 }), fc.boolean(), (counts, falling) => {
      const inOrder = counts.toSorted((a, b) => (a.on < b.on ? -1 : 1));
      expectInside(standaloneSvg(<TurnsOverYears counts={inOrder} falling={falling} />));
    }),
  );
});
