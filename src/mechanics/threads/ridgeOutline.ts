import { formula } from "../quantity/formula.ts";
import { deg, one } from "../quantity/unit.ts";
import type { CandidateThread } from "./namingCandidates.ts";

/** A point of an outline in pitches: along the thread from a crest, and down from the crests toward the axis. */
export type OutlinePoint = { readonly along: number; readonly down: number };

/** One turn of a sound plug's basic outline in axial section, from the middle of a crest to the middle of the next. */
export function ridgeOutline(family: CandidateThread["family"]): readonly OutlinePoint[] {
  const toRoot = halfRidge(family);
  const back = toRoot.toReversed().map(({ along, down }) => ({ along: 1 - along, down }));
  return [...toRoot, ...back.slice(1)];
}

/** From the middle of a crest to the middle of the root, half a pitch on. */
function halfRidge(family: CandidateThread["family"]): readonly OutlinePoint[] {
  switch (family) {
    case "metric":
    case "unified":
      return flatRidge(value(isoHeight.over({ H: SHARP_HEIGHT })), ISO_HALF_CREST);
    case "NPT":
      return flatRidge(NPT_HEIGHT, value(nptHalfCrest.over({ H: SHARP_HEIGHT, h: NPT_HEIGHT, alpha: FLANK_60 })));
    case "G":
    case "R":
    case "Rp":
      return roundRidge();
    default:
      return family satisfies never;
  }
}

// Everything in pitches, so P = 1. Angles in radians, from the radius to the flank.
const FLANK_60 = Math.PI / 6;
const FLANK_55 = (27.5 * Math.PI) / 180;
/** The triangle of 60° flanks. ISO 68-1:1998, 3. */
const SHARP_HEIGHT = Math.sqrt(3) / 2;
/** Half of the crest's flat P/8. ISO 68-1:1998, 3. */
const ISO_HALF_CREST = 1 / 16;
/** ASME B1.20.1-2013, 4 (from memory). */
const NPT_HEIGHT = 0.8;
/** ISO 228-1:2000, 3; ISO 7-1:1994, 4; the radius from memory. */
const ROUND_HEIGHT = 0.640327;
const ROUND_RADIUS = 0.137329;
const ARC_STEPS = 6;

const isoHeight = formula("h = 5/8 * H", { H: one, h: one }, "ISO 68-1:1998, 3: basic profile");
const nptHalfCrest = formula(
  "c = (H - h) / 2 * tan(alpha)",
  { H: one, h: one, alpha: deg, c: one },
  "triangle cut off equally at crest and root (derived)",
);
const flankRun = formula(
  "x = h * tan(alpha)",
  { h: one, alpha: deg, x: one },
  "flank at an angle to the radius (derived)",
);
const arcDrop = formula("y = r * (1 - cos(beta))", { r: one, beta: deg, y: one }, "arc from a crest (derived)");
const arcRun = formula("x = r * sin(beta)", { r: one, beta: deg, x: one }, "arc from a crest (derived)");

const value = (column: Float64Array): number => column[0] as number;

function flatRidge(h: number, crest: number): readonly OutlinePoint[] {
  const root = crest + value(flankRun.over({ h, alpha: FLANK_60 }));
  return [
    { along: 0, down: 0 },
    { along: crest, down: 0 },
    { along: root, down: h },
    { along: 0.5, down: h },
  ];
}

/** Crest and root are arcs that touch the flanks, so they turn through what a flank stands off the axis. */
function roundRidge(): readonly OutlinePoint[] {
  const [h, r] = [ROUND_HEIGHT, ROUND_RADIUS];
  const crest = Array.from({ length: ARC_STEPS + 1 }, (_, i): OutlinePoint => {
    const beta = ((Math.PI / 2 - FLANK_55) * i) / ARC_STEPS;
    return { along: value(arcRun.over({ r, beta })), down: value(arcDrop.over({ r, beta })) };
  });
  const root = crest.toReversed().map(({ along, down }) => ({ along: 0.5 - along, down: h - down }));
  return [...crest, ...root];
}
