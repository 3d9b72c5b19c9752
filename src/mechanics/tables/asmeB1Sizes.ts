import { fromMemory, published, type Source } from "./source.ts";

export const unifiedSeries = ["UNC", "UNF", "UNEF", "UN", "UNS"] as const;
export type UnifiedSeries = (typeof unifiedSeries)[number];

/** One standard combination of diameter and threads per inch. */
export type UnifiedSize = {
  /** "1/4-20 UNC", "#10-32 UNF", "1 1/2-6 UNC". */
  readonly designation: string;
  /** The size as it is written: "#10", "7/8", "1 1/2". */
  readonly size: string;
  /** Basic major diameter, inch. */
  readonly D_in: number;
  /** Threads per inch. */
  readonly n: number;
  readonly series: UnifiedSeries;
  readonly source: Source;
};

/** Sizes whose limits were seen in print, so that the size itself was. */
const SEEN = published("ASME B1.1-2003, table of limits of size");
const SERIES = fromMemory("ASME B1.1-2003, standard series table");

/** All combinations from #0 to 2 1/2 inch, by diameter, then UNC, UNF, UNEF and constant pitch. */
export const unifiedSizes: readonly UnifiedSize[] = rows().flatMap(sizes);

/** The sizes written `size`, in the order of `unifiedSizes`; empty if there is none. */
export const unifiedSizesWritten = (size: string): readonly UnifiedSize[] => bySize.get(size) ?? [];

/** Every size as it is written, with its diameter in inches, from small to large. */
export const unifiedDiameters: readonly { readonly size: string; readonly D_in: number }[] = rows().map(
  ({ size, D_in }) => ({ size, D_in }),
);

const bySize: ReadonlyMap<string, readonly UnifiedSize[]> = new Map(
  unifiedDiameters.map(({ size }) => [size, unifiedSizes.filter((it) => it.size === size)]),
);

type Row = {
  readonly size: string;
  readonly D_in: number;
  readonly UNC: number | null;
  readonly UNF: number | null;
  readonly UNEF: number | null;
  readonly UN: readonly number[];
  readonly UNS: readonly number[];
};

function sizes({ size, D_in, UNC, UNF, UNEF, UN, UNS }: Row): UnifiedSize[] {
  const one = (n: number, series: UnifiedSeries): UnifiedSize => {
    const designation = `${size}-${n} ${series}`;
    return { designation, size, D_in, n, series, source: seen().includes(designation) ? SEEN : SERIES };
  };
  return [
    ...(UNC === null ? [] : [one(UNC, "UNC")]),
    ...(UNF === null ? [] : [one(UNF, "UNF")]),
    ...(UNEF === null ? [] : [one(UNEF, "UNEF")]),
    ...UN.map((n) => one(n, "UN")),
    ...UNS.map((n) => one(n, "UNS")),
  ];
}

function seen(): readonly string[] {
  return [
    ...["#0-80 UNF", "#1-64 UNC", "#1-72 UNF", "#2-56 UNC", "#8-32 UNC", "#10-24 UNC", "#10-32 UNF"],
    ...["1/4-20 UNC", "5/16-18 UNC", "3/8-16 UNC", "7/16-14 UNC", "1/2-13 UNC", "9/16-12 UNC", "5/8-11 UNC"],
    ...["3/4-10 UNC", "7/8-9 UNC", "1-8 UNC", "1/4-28 UNF", "5/16-24 UNF", "3/8-24 UNF", "7/16-20 UNF"],
    ...["1/2-20 UNF", "9/16-18 UNF", "5/8-18 UNF", "3/4-16 UNF", "7/8-14 UNF"],
    ...["15/16-20 UNEF", "15/16-12 UN", "15/16-16 UN"],
  ];
}

/** Number sizes step by 0.013 inch from #0 at 0.060. 1-14 UNS is no longer a series but still much met. */
function rows(): readonly Row[] {
  type Pitch = number | null;
  const row = (
    size: string,
    D_in: number,
    UNC: Pitch,
    UNF: Pitch,
    UNEF: Pitch,
    UN: number[] = [],
    UNS: number[] = [],
  ) => ({
    size,
    D_in,
    UNC,
    UNF,
    UNEF,
    UN,
    UNS,
  });
  return [
    row("#0", 0.06, null, 80, null),
    row("#1", 0.073, 64, 72, null),
    row("#2", 0.086, 56, 64, null),
    row("#3", 0.099, 48, 56, null),
    row("#4", 0.112, 40, 48, null),
    row("#5", 0.125, 40, 44, null),
    row("#6", 0.138, 32, 40, null),
    row("#8", 0.164, 32, 36, null),
    row("#10", 0.19, 24, 32, null),
    row("#12", 0.216, 24, 28, 32),
    row("1/4", 0.25, 20, 28, 32),
    row("5/16", 0.3125, 18, 24, 32, [20, 28]),
    row("3/8", 0.375, 16, 24, 32, [20, 28]),
    row("7/16", 0.4375, 14, 20, 28, [16, 32]),
    row("1/2", 0.5, 13, 20, 28, [16, 32]),
    row("9/16", 0.5625, 12, 18, 24, [16, 20, 28, 32]),
    row("5/8", 0.625, 11, 18, 24, [12, 16, 20, 28, 32]),
    row("11/16", 0.6875, null, null, 24, [12, 16, 20, 28, 32]),
    row("3/4", 0.75, 10, 16, 20, [12, 28, 32]),
    row("13/16", 0.8125, null, null, 20, [12, 16, 28, 32]),
    row("7/8", 0.875, 9, 14, 20, [12, 16, 28, 32]),
    row("15/16", 0.9375, null, null, 20, [12, 16, 28, 32]),
    row("1", 1, 8, 12, 20, [16, 28, 32], [14]),
    row("1 1/16", 1.0625, null, null, 18, [8, 12, 16, 20, 28]),
    row("1 1/8", 1.125, 7, 12, 18, [8, 16, 20, 28]),
    row("1 3/16", 1.1875, null, null, 18, [8, 12, 16, 20, 28]),
    row("1 1/4", 1.25, 7, 12, 18, [8, 16, 20, 28]),
    row("1 5/16", 1.3125, null, null, 18, [8, 12, 16, 20, 28]),
    row("1 3/8", 1.375, 6, 12, 18, [8, 16, 20, 28]),
    row("1 7/16", 1.4375, null, null, 18, [6, 8, 12, 16, 20, 28]),
    row("1 1/2", 1.5, 6, 12, 18, [8, 16, 20, 28]),
    row("1 9/16", 1.5625, null, null, 18, [6, 8, 12, 16, 20]),
    row("1 5/8", 1.625, null, null, 18, [6, 8, 12, 16, 20]),
    row("1 11/16", 1.6875, null, null, 18, [6, 8, 12, 16, 20]),
    row("1 3/4", 1.75, 5, null, null, [6, 8, 12, 16, 20]),
    row("1 13/16", 1.8125, null, null, null, [6, 8, 12, 16, 20]),
    row("1 7/8", 1.875, null, null, null, [6, 8, 12, 16, 20]),
    row("1 15/16", 1.9375, null, null, null, [6, 8, 12, 16, 20]),
    row("2", 2, 4.5, null, null, [6, 8, 12, 16, 20]),
    row("2 1/8", 2.125, null, null, null, [6, 8, 12, 16, 20]),
    row("2 1/4", 2.25, 4.5, null, null, [6, 8, 12, 16, 20]),
    row("2 3/8", 2.375, null, null, null, [6, 8, 12, 16, 20]),
    row("2 1/2", 2.5, 4, null, null, [6, 8, 12, 16, 20]),
  ];
}
