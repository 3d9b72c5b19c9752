import type { CaseMetal } from "../../mechanics/fluid/expansionInCase.ts";

/** What heat does to a fill: millilitres and millimetres as they were reckoned, negative where it cools. */
export type ExpansionInWords = {
  readonly volume: string;
  readonly from: string;
  readonly to: string;
  readonly grown_ml: number;
  /** At the thickest and the thinnest oil, where the density was assumed. */
  readonly grownRange_ml: readonly [number, number] | null;
  readonly metal: CaseMetal | null;
  readonly net_ml: number | null;
  readonly rise_mm: number | null;
  readonly assumed: readonly { readonly reading: string; readonly value: string; readonly source: string }[];
};

/** The answer first: the level where it was asked for, else the volume. Two digits, as the coefficients earn. */
export function expansionLines(it: ExpansionInWords): readonly string[] {
  const { grown_ml, grownRange_ml, metal, net_ml, rise_mm } = it;
  const way = `from ${it.from} to ${it.to}`;
  const span = grownRange_ml ? ` (${ends(grownRange_ml)} ml by its density)` : "";
  const grown = `${it.volume} ${grown_ml < 0 ? "shrink" : "grow"} by ${size(grown_ml)} ml${span} ${way}`;
  return [
    ...(rise_mm === null ? [] : [`The level ${rise_mm < 0 ? "falls" : "rises"} ${size(rise_mm)} mm ${way}.`]),
    ...(grown_ml === 0
      ? ["Nothing changes: it is the same temperature."]
      : [`${grown}${net_ml === null ? "" : `, ${size(net_ml)} ml more than its ${metal} case`}.`]),
    ...it.assumed.map(({ reading, value, source }) => `Assumed: ${reading} ${value}; ${source}.`),
    "Read cold. After a run oil hangs on gears and walls for ten to twenty minutes and reads low; foam reads high.",
  ];
}

const size = (x: number): string => String(Number(Math.abs(x).toPrecision(2)));

const ends = (range: readonly [number, number]): string =>
  range
    .map(Math.abs)
    .sort((a, b) => a - b)
    .map(size)
    .join(" to ");
