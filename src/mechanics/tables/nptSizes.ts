import { fromMemory, published, type Source } from "./source.ts";

/** A size of the American taper pipe thread. */
export type NptSize = {
  /** "1/2", "1 1/4". */
  readonly size: string;
  /** Threads per inch. */
  readonly n: number;
  /** Outside diameter D of the pipe, inch. */
  readonly D_in: number;
  /** Length L_1 of hand-tight engagement, from the small end to the gauge plane, inch. */
  readonly L_1_in: number;
  readonly source: Source;
};

const SEEN = published("ASME B1.20.1-2013, table 2");
const MEMORY = fromMemory("ASME B1.20.1-2013, table 2");

/**
 * Sizes 1/16 to 2. L_1 of 1/8 and 1/4 is often printed .162 and .228; with all digits it gives the printed E_1 and the
 * printed turns.
 */
export const nptSizes: readonly NptSize[] = [
  { size: "1/16", n: 27, D_in: 0.3125, L_1_in: 0.16, source: MEMORY },
  { size: "1/8", n: 27, D_in: 0.405, L_1_in: 0.1615, source: SEEN },
  { size: "1/4", n: 18, D_in: 0.54, L_1_in: 0.2278, source: SEEN },
  { size: "3/8", n: 18, D_in: 0.675, L_1_in: 0.24, source: SEEN },
  { size: "1/2", n: 14, D_in: 0.84, L_1_in: 0.32, source: SEEN },
  { size: "3/4", n: 14, D_in: 1.05, L_1_in: 0.339, source: SEEN },
  { size: "1", n: 11.5, D_in: 1.315, L_1_in: 0.4, source: SEEN },
  { size: "1 1/4", n: 11.5, D_in: 1.66, L_1_in: 0.42, source: MEMORY },
  { size: "1 1/2", n: 11.5, D_in: 1.9, L_1_in: 0.42, source: MEMORY },
  { size: "2", n: 11.5, D_in: 2.375, L_1_in: 0.436, source: MEMORY },
];
