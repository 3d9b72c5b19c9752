import type { HoleTurn } from "./port.ts";
import type { PortSection, RoundPiece } from "./section.ts";

/** The port with its plug out and a rubber bung in it, swollen to the bore: to the crests that are left, and to the wall where none are. */
export function withBung(found: PortSection, D1_mm: number): PortSection {
  const { d_mm, depth_mm, bands } = found;
  const torn_mm = bands[0]?.state === "gone" ? bands[0].to_mm : 0;
  const end_mm = Math.max(torn_mm, Math.min(lengthInDiameters * d_mm, depth_mm));
  const piece = (material: RoundPiece["material"], radius_mm: number, from_mm: number, to_mm: number): RoundPiece => ({
    material,
    radius_mm,
    from_mm,
    to_mm,
  });
  const plate_mm = 0.08 * d_mm;
  const bung = [
    piece("steel", 0.6 * d_mm, -plate_mm, 0),
    piece("rubber", d_mm / 2, 0, torn_mm),
    piece("rubber", D1_mm / 2, torn_mm, end_mm),
    piece("steel", 0.42 * d_mm, end_mm, end_mm + plate_mm),
    piece("steel", 0.2 * d_mm, -2.4 * plate_mm, -plate_mm),
    piece("steel", 0.09 * d_mm, -2.8 * plate_mm, end_mm + 2.4 * plate_mm),
  ].filter(({ from_mm, to_mm }) => to_mm - from_mm > 1e-9);
  return {
    ...found,
    seat_mm: 0,
    sealParts: [],
    bung,
    turns: found.turns.map((it) => ({ ...it, turn: unused(it.turn) })),
    bands: joined(bands.map(unused)),
    tip_mm: end_mm + 2.4 * plate_mm,
  };
}

/** Bungs are about as long as they are thick; plates and screw are for the eye only. */
const lengthInDiameters = 0.9;

const unused = (turn: HoleTurn): HoleTurn => (turn.state === "gone" ? turn : { ...turn, state: "beyond the plug" });

/** Bands of one state that follow each other as one. */
function joined(bands: readonly HoleTurn[]): readonly HoleTurn[] {
  const ends = bands.filter(({ state }, i) => bands[i + 1]?.state !== state);
  return ends.map((band, i) => ({ ...band, from_mm: ends[i - 1]?.to_mm ?? 0 }));
}
