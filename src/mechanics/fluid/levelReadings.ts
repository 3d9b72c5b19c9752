import { normal } from "../quantity/distribution.ts";
import { type Quantity, reading } from "../quantity/quantity.ts";
import { ml, mm, type Unit } from "../quantity/unit.ts";
import { judgement, type Source } from "../tables/source.ts";

/** How a level is known; standard uncertainties in mm. */
export const levelEvidence = {
  "wire hook": { u_mm: 1, source: judgement("bent wire with marks, read at the lip") },
  mirror: { u_mm: 2, source: judgement("read past a mirror") },
  finger: { u_mm: 3, source: judgement("a finger as a dipstick") },
  "finger, calibrated": { u_mm: 2, source: judgement("a finger whose joint was measured once") },
} as const satisfies Record<string, { u_mm: number; source: Source }>;
export type LevelEvidence = keyof typeof levelEvidence;

/** How a volume is known; standard uncertainties as a share of it, or in ml for each stroke. */
export const volumeEvidence = {
  jug: { share: 0.03, stroke_ml: null, source: judgement("marks of a workshop jug, 3 %") },
  "meter pump": { share: 0.04, stroke_ml: null, source: judgement("metering pump, 3 to 5 %") },
  "60 ml syringe": { share: 0, stroke_ml: 2, source: judgement("2 ml for each stroke of a 60 ml syringe") },
} as const satisfies Record<string, { share: number; stroke_ml: number | null; source: Source }>;
export type VolumeEvidence = keyof typeof volumeEvidence;

/** A level h against the lower lip of the hole, negative below it, as it was read. */
export function levelReading(value: number, unit: Unit, how: LevelEvidence, id: string): Quantity {
  return reading("h", normal(value, (levelEvidence[how].u_mm * mm.inSI) / unit.inSI), unit, id, how);
}

/** A volume V as it was measured; a syringe adds its error with every stroke. @throws RangeError if it is not above 0. */
export function volumeReading(value: number, unit: Unit, how: VolumeEvidence, id: string): Quantity {
  if (!(value > 0)) throw new RangeError(`volumeReading: ${value} ${unit.symbol} is not above 0`);
  const { share, stroke_ml } = volumeEvidence[how];
  const strokes = stroke_ml === null ? 0 : Math.ceil((value * unit.inSI) / (SYRINGE_ml * ml.inSI) - 1e-9);
  const ofStrokes = ((stroke_ml ?? 0) * Math.sqrt(strokes) * ml.inSI) / unit.inSI;
  return reading("V", normal(value, Math.hypot(share * value, ofStrokes)), unit, id, how);
}

const SYRINGE_ml = 60;
