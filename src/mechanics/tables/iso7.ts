import { type PipeSize, pipeSizes } from "./iso228.ts";
import { fromMemory, type Source } from "./source.ts";

/** A size of the pipe threads R (taper plug), Rc (taper hole) and Rp (parallel hole): sizes as of ISO 228-1, with the place of the gauge plane. */
export type TaperPipeSize = Pick<PipeSize, "size" | "n" | "d_mm" | "source"> & {
  /** From the small end of the plug to the plane where its major diameter is d, and how far that may be off, mm. */
  readonly gaugeLength_mm: number;
  readonly tolerance_mm: number;
};

export const iso7GaugeLengths: Source = fromMemory("ISO 7-1:1994, table 1");

/** Gauge length and its tolerance, one turn printed to 0.1 mm, by size. */
const gaugeLengths: Readonly<Record<string, readonly [number, number]>> = {
  "1/16": [4, 0.9],
  "1/8": [4, 0.9],
  "1/4": [6, 1.3],
  "3/8": [6.4, 1.3],
  "1/2": [8.2, 1.8],
  "3/4": [9.5, 1.8],
  "1": [10.4, 2.3],
  "1 1/4": [12.7, 2.3],
  "1 1/2": [12.7, 2.3],
  "2": [15.9, 2.3],
};

/** Sizes 1/16 to 2; 5/8, 7/8, 1 1/8 and 1 3/4 are parallel only. */
export const taperPipeSizes: readonly TaperPipeSize[] = pipeSizes.flatMap(({ size, n, d_mm, source }) => {
  const [gaugeLength_mm, tolerance_mm] = gaugeLengths[size] ?? [];
  return gaugeLength_mm === undefined || tolerance_mm === undefined
    ? []
    : [{ size, n, d_mm, source, gaugeLength_mm, tolerance_mm }];
});
