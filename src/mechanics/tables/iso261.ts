import { fromMemory, published, type Source } from "./source.ts";

/** One standard combination of diameter and pitch. */
export type MetricSize = {
  /** "M20x1.5", always with its pitch. */
  readonly designation: string;
  readonly d_mm: number;
  readonly P_mm: number;
  readonly series: "coarse" | "fine" | "outside ISO 261";
  /** First, second or third choice of diameter; null for a diameter that is not in ISO 261. */
  readonly choice: 1 | 2 | 3 | null;
  /** Whether ISO 262 selects it for screws, bolts and nuts. */
  readonly selected: boolean;
  readonly source: Source;
};

const SELECTION = published("ISO 262:1998, table 1");
const SELECTION_FROM_MEMORY = fromMemory("ISO 262:1998, table 1");
const SERIES = fromMemory("ISO 261:1998, table 2");
const OUTSIDE = published("printed tables of limits of ISO 965-2 type; outside ISO 261");

/** Diameters of the second choice that ISO 262 passes over. From memory. */
const NOT_SELECTED: readonly number[] = [2.2, 4.5];

/**
 * All combinations of diameter and pitch from M1.6 to M64: ISO 261:1998, and those outside it for which tables of
 * limits are printed. By diameter, coarse pitch first, then fine pitches from large to small.
 */
export const metricSizes: readonly MetricSize[] = rows().flatMap(sizes);

/** The sizes with the diameter `d_mm`, coarse pitch first; empty if no metric thread has it. */
export const sizesOfDiameter = (d_mm: number): readonly MetricSize[] => byDiameter.get(d_mm) ?? [];

/** Every diameter of `metricSizes`, in millimetres, from small to large. */
export const metricDiameters_mm: readonly number[] = [...new Set(metricSizes.map(({ d_mm }) => d_mm))];

const byDiameter: ReadonlyMap<number, readonly MetricSize[]> = new Map(
  metricDiameters_mm.map((d_mm) => [d_mm, metricSizes.filter((size) => size.d_mm === d_mm)]),
);

type Row = {
  readonly d: number;
  readonly choice: MetricSize["choice"];
  readonly coarse: number | null;
  readonly fine: readonly number[];
  readonly selectedFine: readonly number[];
  readonly outside: readonly number[];
};

function sizes({ d, choice, coarse, fine, selectedFine, outside }: Row): MetricSize[] {
  const size = (P: number, series: MetricSize["series"]): MetricSize => {
    const selected =
      series === "coarse" ? choice !== 3 && !NOT_SELECTED.includes(d) : series === "fine" && selectedFine.includes(P);
    const source = series === "outside ISO 261" ? OUTSIDE : sourceOf(d, selected);
    return { designation: `M${d}x${P}`, d_mm: d, P_mm: P, series, choice, selected, source };
  };
  return [
    ...(coarse === null ? [] : [size(coarse, "coarse")]),
    ...fine.map((P) => size(P, "fine")),
    ...outside.map((P) => size(P, "outside ISO 261")),
  ];
}

/** The selection was seen in print from M6 to M42. */
function sourceOf(d: number, selected: boolean): Source {
  if (!selected) return SERIES;
  return d >= 6 && d <= 42 ? SELECTION : SELECTION_FROM_MEMORY;
}

/** M14x1.25 is meant for spark plugs only and M35x1.5 for locking nuts of bearings only. */
function rows(): readonly Row[] {
  const row = (
    d: number,
    choice: Row["choice"],
    coarse: number | null,
    fine: readonly number[],
    selectedFine: readonly number[] = [],
    outside: readonly number[] = [],
  ): Row => ({ d, choice, coarse, fine, selectedFine, outside });
  return [
    row(1.6, 1, 0.35, [0.2]),
    row(1.8, 2, 0.35, [0.2]),
    row(2, 1, 0.4, [0.25]),
    row(2.2, 2, 0.45, [0.25]),
    row(2.3, null, null, [], [], [0.45, 0.4]),
    row(2.5, 1, 0.45, [0.35]),
    row(3, 1, 0.5, [0.35]),
    row(3.5, 2, 0.6, [0.35]),
    row(4, 1, 0.7, [0.5]),
    row(4.5, 2, 0.75, [0.5]),
    row(5, 1, 0.8, [0.5]),
    row(5.5, 3, null, [0.5]),
    row(6, 1, 1, [0.75], [], [0.7, 0.5]),
    row(7, 2, 1, [0.75], [], [0.5]),
    row(8, 1, 1.25, [1, 0.75], [1], [0.5]),
    row(9, 3, 1.25, [1, 0.75], [], [0.5]),
    row(10, 1, 1.5, [1.25, 1, 0.75], [1.25, 1], [1.12, 0.5]),
    row(11, 3, 1.5, [1, 0.75], [], [0.5]),
    row(12, 1, 1.75, [1.5, 1.25, 1], [1.5, 1.25], [0.75]),
    row(14, 2, 2, [1.5, 1.25, 1], [1.5], [0.75]),
    row(15, 3, null, [1.5, 1]),
    row(16, 1, 2, [1.5, 1], [1.5], [0.75]),
    row(17, 3, null, [1.5, 1]),
    row(18, 2, 2.5, [2, 1.5, 1], [2, 1.5], [0.75]),
    row(20, 1, 2.5, [2, 1.5, 1], [2, 1.5], [0.75]),
    row(22, 2, 2.5, [2, 1.5, 1], [2, 1.5], [0.75]),
    row(24, 1, 3, [2, 1.5, 1], [2], [0.75]),
    row(25, 3, null, [2, 1.5, 1]),
    row(26, 3, null, [1.5]),
    row(27, 2, 3, [2, 1.5, 1], [2], [0.75]),
    row(28, 3, null, [2, 1.5, 1]),
    row(30, 1, 3.5, [3, 2, 1.5, 1], [2], [0.75]),
    row(32, 3, null, [2, 1.5]),
    row(33, 2, 3.5, [3, 2, 1.5], [2], [1, 0.75]),
    row(35, 3, null, [1.5]),
    row(36, 1, 4, [3, 2, 1.5], [3], [1]),
    row(38, 3, null, [1.5]),
    row(39, 2, 4, [3, 2, 1.5], [3], [1]),
    row(40, 3, null, [3, 2, 1.5]),
    row(42, 1, 4.5, [4, 3, 2, 1.5], [3], [1]),
    row(45, 2, 4.5, [4, 3, 2, 1.5], [3], [1]),
    row(48, 1, 5, [4, 3, 2, 1.5], [3]),
    row(50, 3, null, [3, 2, 1.5], [], [4]),
    row(52, 2, 5, [4, 3, 2, 1.5], [4]),
    row(55, 3, null, [4, 3, 2, 1.5]),
    row(56, 1, 5.5, [4, 3, 2, 1.5], [4], [1]),
    row(58, 3, null, [4, 3, 2, 1.5]),
    row(60, 2, 5.5, [4, 3, 2, 1.5], [4], [1]),
    row(62, 3, null, [4, 3, 2, 1.5]),
    row(63, null, null, [], [], [1.5]),
    row(64, 1, 6, [4, 3, 2, 1.5], [4], [5.5, 1]),
  ];
}
