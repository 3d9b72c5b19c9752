import type { Random } from "../../src/mechanics/quantity/random.ts";
import { hexagon, type Patch, revolved, threadMesh } from "./mesh.ts";
import type { Thread } from "./shownThread.ts";

/** A plug or bolt about z, its thread from 0 to the length, its head below 0; and how far it reaches. */
export type Part = { readonly patches: readonly Patch[]; readonly headFrom_mm: number; readonly widest_mm: number };

/** A hexagon bolt with a shank, a flange bolt, or a plug with a collar. */
export function drawnPart(thread: Thread, random: Random): Part {
  const { outside_mm: d, pitch_mm: P } = thread;
  const kind = Math.floor(3 * random());
  const shank = kind === 0 ? d * (0.4 + 1.1 * random()) : P * (0.3 + 0.8 * random());
  // A shank as thick as the thread, or as its pitch diameter; the runout of a plug is turned down to the root.
  const shankRadius = kind === 0 ? (random() < 0.5 ? d / 2 : d / 2 - 0.32 * P) : d / 2 - 0.62 * P;
  const flats = 1.5 * d + 1;
  const height = 0.65 * d;
  const neck: readonly (readonly [number, number])[] = [
    [-shank, shankRadius],
    [0, shankRadius],
  ];
  const turn = random() * Math.PI;
  const body = threadMesh(thread, 0);
  if (kind === 2) {
    const collar = 0.68 * d;
    const rim = 0.22 * d;
    const outline = [
      [-shank - rim, 0],
      [-shank - rim, collar - 0.3],
      [-shank - rim + 0.3, collar],
      [-shank - 0.1, collar],
      [-shank, 0],
    ] as const;
    return {
      patches: [...body, ...revolved(neck, 0), ...revolved(outline, 0)],
      headFrom_mm: -shank - rim,
      widest_mm: collar,
    };
  }
  const flange = kind === 1 ? 0.12 * d : 0;
  const washer = flange > 0 ? 1.1 * d : 0.72 * d;
  const plate = [
    [-shank - Math.max(flange, 0.4), 0],
    [-shank - Math.max(flange, 0.4), washer],
    [-shank, washer],
    [-shank, 0],
  ] as const;
  const head = hexagon(flats, -shank - flange - height, -shank - flange, turn, 0);
  return {
    patches: [...body, ...revolved(neck, 0), ...revolved(plate, 0), ...head],
    headFrom_mm: -shank - flange - height,
    widest_mm: Math.max(washer, flats / Math.sqrt(3)),
  };
}
