import { describe, expect, test } from "vitest";
import { oddsAt } from "../../../src/mechanics/joint/window.ts";
import { completed } from "../../../src/mechanics/remedies/givenCase.ts";
import { lowerTorque } from "../../../src/mechanics/remedies/lowerTorque.ts";
import type { PortCase } from "../../../src/mechanics/remedies/portCase.ts";
import type { Remedy } from "../../../src/mechanics/remedies/remedy.ts";
import { sealantNoWasher } from "../../../src/mechanics/remedies/sealantNoWasher.ts";
import { type Changes, given } from "./changedCase.ts";

type Stepper = readonly [name: string, from: number, to: number, changed: (value: number) => Changes];

const levels = { leastTurns: 0.01 };
const ends = { goodFrom: "4 mm", goodTo: "16 mm", turns: undefined };

const bare = { material: undefined, outside: undefined, inside: undefined, thickness: undefined };

/** What a hand moves on the screen, from end to end of its range. */
const steppers: readonly Stepper[] = [
  ["turns", 1.5, 10, (n) => ({ left: { turns: String(n) } })],
  [
    "turns in iron, good, on the ring",
    1,
    12,
    (n) => ({
      case: { material: "EN-GJL-200" },
      left: { turns: String(n), condition: "good", withWasher: true },
    }),
  ],
  ["turns felt", 1.5, 6, (n) => ({ left: { turns: String(n), counted: "felt" } })],
  ["outside of the ring", 22, 36, (d) => ({ seal: { outside: `${d} mm` } })],
  ["inside of the ring", 20, 25.5, (d) => ({ seal: { inside: `${d} mm` } })],
  ["thickness of the ring", 0, 3, (t) => ({ seal: { thickness: `${t} mm` } })],
  [
    "thickness of a ring on a plug that may pass right through",
    0,
    4,
    (t) => ({
      seal: { thickness: `${t} mm` },
      plug: { underHead: "19 mm" },
      left: { turns: "6" },
    }),
  ],
  [
    "depth of the chamfer of an O-ring",
    1,
    9,
    (z) => ({
      left: { turns: "5" },
      seal: { ...bare, kind: "O-ring", chamfer: `${z} mm` },
    }),
  ],
  ["length of the plug, turns reckoned", 8, 26, (l) => ({ plug: { underHead: `${l} mm` }, left: ends })],
  ["end of the good thread, turns reckoned", 6, 20, (z) => ({ left: { ...ends, goodTo: `${z} mm` } })],
  ["depth of the hole", 6, 20, (z) => ({ case: { threadDepth: `${z} mm` }, left: { turns: "5" } })],
  ["measured height of the thread", 0.25, 1, (h) => ({ left: { height: { value: String(h), how: "caliper" } } })],
  ["most friction", 0.1, 0.3, (mu) => ({ ranges: { "friction oiled": { low: 0.09, high: mu } } })],
  ["least friction", 0.02, 0.16, (mu) => ({ ranges: { "friction oiled": { low: mu, high: 0.17 } } })],
  ["mean strength", 100, 300, (R) => ({ ranges: { "strength cast aluminium": { mean: R, cv: 0.15 } } })],
];

/** The same on what is gained by leaving the ring out, up to the end of the thread. */
const withoutRing: readonly Stepper[] = [
  [
    "end of the thread ahead of the plug",
    8,
    15,
    (z) => ({
      left: { withWasher: true },
      case: { threadDepth: { value: `${z} mm`, how: "depth rod" } },
    }),
  ],
  [
    "thickness of the ring that is left out",
    0,
    4,
    (t) => ({
      left: { withWasher: true },
      seal: { thickness: `${t} mm` },
      case: { threadDepth: "11.5 mm" },
    }),
  ],
];

const steps = 100;
const figures = ["need", "limit", "half strip at", "strips at 10", "strips at 20", "closes at 10"] as const;

describe("a stepper moved by a hundredth of its range changes nothing by more than three times what its neighbours do", () => {
  test.each(steppers)("%s", (_, from, to, changed) => isSmooth(from, to, changed, lowerTorque));
  test.each(withoutRing)("%s", (_, from, to, changed) => isSmooth(from, to, changed, sealantNoWasher));

  function isSmooth(from: number, to: number, changed: Stepper[3], remedy: (portCase: PortCase) => Remedy): void {
    const rows = Array.from({ length: steps + 1 }, (_, i) => {
      const { portCase } = completed(given({ ...changed(from + ((to - from) * i) / steps), levels, wrenches: [] }));
      return figuresOf(remedy(portCase));
    });
    figures.forEach((name, column) => {
      const values = rows.map((row) => row[column] ?? Number.NaN);
      const changes = values.slice(1).map((value, i) => Math.abs(value - (values[i] ?? Number.NaN)));
      const span = Math.max(...values) - Math.min(...values);
      const rough = changes.flatMap((change, i) => {
        const beside = Math.max(changes[i - 1] ?? 0, changes[i + 1] ?? 0);
        return change > 3 * beside + 1e-6 * span ? [`${name}: step ${i} changes ${change}, beside it ${beside}`] : [];
      });
      expect(rough).toEqual([]);
    });
  }
});

function figuresOf({ window }: Remedy): readonly number[] {
  if (!window) throw new Error("refused");
  const { need_Nm, limit_Nm, medianStrip_Nm, strips, closes } = window;
  return [need_Nm, limit_Nm, medianStrip_Nm, oddsAt(strips, 10), oddsAt(strips, 20), oddsAt(closes, 10)];
}
