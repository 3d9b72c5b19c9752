import { expect, test } from "vitest";
import { withBung } from "../../../src/mechanics/joint/bungSection.ts";
import { portSection } from "../../../src/mechanics/joint/section.ts";
import { healthy, hurt } from "../../sheets/drawings/exampleSections.ts";

// M20x1.5 by ISO 724: 18.376 over the crests of the hole. Plug and ring leave 2.17 turns at 10 mm, so 6.75 mm are torn.
const D1_mm = 18.376;
const bunged = withBung(portSection(hurt), D1_mm);
const rubber = (bunged.bung ?? []).filter(({ material }) => material === "rubber");

test("a bung swells to the wall where the thread is torn and to the crests where it is left", () => {
  expect(rubber.map(({ radius_mm, from_mm, to_mm }) => [radius_mm, from_mm, to_mm])).toEqual([
    [10, 0, expect.closeTo(6.75, 9)],
    [18.376 / 2, expect.closeTo(6.75, 9), 16],
  ]);
});

test("nothing of it stands in metal that is left", () => {
  for (const { turn, metal } of bunged.turns)
    for (const { radius_mm, from_mm, to_mm } of rubber)
      if (turn.from_mm >= from_mm - 1e-9 && turn.to_mm <= to_mm + 1e-9)
        for (const { x_mm } of metal) expect(Math.abs(x_mm)).toBeGreaterThanOrEqual(radius_mm - 1e-9);
});

test("no turn carries, and in a sound hole it reaches the crests alone", () => {
  expect(bunged.bands.map(({ state }) => state)).toEqual(["gone", "beyond the plug"]);
  expect(bunged.bands.at(-1)?.to_mm).toBe(16);
  const inSound = withBung(portSection(healthy), D1_mm);
  expect(inSound.bands.map(({ state }) => state)).toEqual(["beyond the plug"]);
  expect(inSound.bung?.filter(({ material }) => material === "rubber").length).toBe(1);
});
