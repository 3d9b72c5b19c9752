import type { Random } from "../../src/mechanics/quantity/random.ts";

/** A thread as it is shown: of ISO 261, or of another standard where its form is another. */
export type Thread = {
  readonly designation: string;
  readonly outside_mm: number;
  readonly pitch_mm: number;
  readonly length_mm: number;
  readonly form: "60 degrees" | "55 degrees";
  /** Growth of the diameter along the thread, toward the head. */
  readonly taper: number;
  /** 1 of a right-hand thread, -1 of a left-hand one. */
  readonly hand: 1 | -1;
  /** How much of the first turn's depth the tip's chamfer takes. */
  readonly chamfer: number;
};

/**
 * Sizes of plugs and bolts on cars, tractors and engines: nominal diameter, pitch, and the limits of the outside diameter,
 * mm. ISO 965-2:1998 (6g), ASME B1.1-2003 (2A), ISO 228-1:2000; from memory.
 */
const sizes: readonly (readonly [string, number, number, number, Thread["form"]])[] = [
  ["M6x1", 1, 5.794, 5.974, "60 degrees"],
  ["M8x1.25", 1.25, 7.76, 7.972, "60 degrees"],
  ["M8x1", 1, 7.794, 7.974, "60 degrees"],
  ["M10x1", 1, 9.794, 9.974, "60 degrees"],
  ["M10x1.25", 1.25, 9.76, 9.972, "60 degrees"],
  ["M10x1.5", 1.5, 9.732, 9.968, "60 degrees"],
  ["M12x1.25", 1.25, 11.76, 11.972, "60 degrees"],
  ["M12x1.5", 1.5, 11.732, 11.968, "60 degrees"],
  ["M12x1.75", 1.75, 11.701, 11.966, "60 degrees"],
  ["M14x1.5", 1.5, 13.732, 13.968, "60 degrees"],
  ["M14x1.25", 1.25, 13.76, 13.972, "60 degrees"],
  ["M16x1.5", 1.5, 15.732, 15.968, "60 degrees"],
  ["M18x1.5", 1.5, 17.732, 17.968, "60 degrees"],
  ["M20x1.5", 1.5, 19.732, 19.968, "60 degrees"],
  ["M22x1.5", 1.5, 21.732, 21.968, "60 degrees"],
  ["M24x1.5", 1.5, 23.732, 23.968, "60 degrees"],
  ["M24x2", 2, 23.682, 23.962, "60 degrees"],
  ["1/4-20 UNC", 1.27, 6.117, 6.322, "60 degrees"],
  ["5/16-18 UNC", 1.4111, 7.687, 7.907, "60 degrees"],
  ["5/16-24 UNF", 1.0583, 7.727, 7.909, "60 degrees"],
  ["3/8-16 UNC", 1.5875, 9.254, 9.491, "60 degrees"],
  ["3/8-24 UNF", 1.0583, 9.315, 9.497, "60 degrees"],
  ["1/2-20 UNF", 1.27, 12.462, 12.667, "60 degrees"],
  ["5/8-18 UNF", 1.4111, 15.617, 15.839, "60 degrees"],
  ["3/4-16 UNF", 1.5875, 18.773, 19.012, "60 degrees"],
  ["G 1/8", 0.9071, 9.514, 9.728, "55 degrees"],
  ["G 1/4", 1.3368, 12.907, 13.157, "55 degrees"],
  ["G 3/8", 1.3368, 16.412, 16.662, "55 degrees"],
];

/** A thread of an ordinary plug, within its limits. */
export function drawnThread(random: Random): Thread {
  const [designation, pitch_mm, low, high, form] = sizes[Math.floor(random() * sizes.length)] as (typeof sizes)[number];
  return {
    designation,
    pitch_mm,
    outside_mm: low + (high - low) * random(),
    length_mm: pitch_mm * (5 + 6.5 * random()),
    form,
    taper: 0,
    hand: 1,
    chamfer: 0.6 + 0.6 * random(),
  };
}
