import type { BalanceBand, VolumeBalance } from "../../mechanics/fluid/volumeBalance.ts";
import type { UnitPair } from "../../mechanics/fluid/volumeBalanceUnits.ts";
import { quantile } from "../../mechanics/quantity/distribution.ts";
import { distributionOf, type Quantity, standardUncertainty, valueIn } from "../../mechanics/quantity/quantity.ts";
import { L, ml } from "../../mechanics/quantity/unit.ts";
import { oddsText } from "./oddsWords.ts";

/** What came out against what should have, with the units its two figures were written in. */
export type BalanceInWords = {
  readonly balance: VolumeBalance;
  readonly outUnit: string;
  readonly expectedUnit: string;
  readonly flushPoured: Quantity | null;
  readonly used: Quantity | null;
};

/** What came out against what should have: a stop first, then what would explain it, then the bill. */
export function volumeLines(it: BalanceInWords): readonly string[] {
  const { balance } = it;
  const percent = `${Math.round(100 * balance.ratio.value)} % of what should have come out`;
  return [
    `${mustStop(balance) ? "STOP before you fill anything: wrong unit? " : ""}${percent}: ${bandWords[balance.band]}`,
    ...doubtLines(balance),
    ...(worthNaming(it) ? unitLines(it) : []),
    ...(balance.band === "as expected" ? [] : beforeLines(balance)),
    ...flushLines(it),
  ];
}

/** Too much, far too little, or little and just what another unit would make of it: nothing is filled before it is clear. */
export const mustStop = ({ stop, band, unitPairs }: VolumeBalance): boolean =>
  stop || (band === "low" && unitPairs.some((it) => it.asWritten));

/** A drain like any other is not picked apart, unless it was written in units that are ordinarily mistaken. */
const worthNaming = ({ balance, outUnit, expectedUnit }: BalanceInWords): boolean =>
  !balance.fitsAsRead && (mustStop(balance) || [outUnit, expectedUnit].some((it) => /^(US|imp) /.test(it)));

function unitLines({ balance, outUnit, expectedUnit }: BalanceInWords): readonly string[] {
  return balance.unitPairs
    .filter((it) => it.asWritten)
    .slice(0, 2)
    .map((pair) => `It would fit if ${mistakeText(pair, outUnit, expectedUnit)}.`);
}

function mistakeText({ writtenAs, meant }: UnitPair, outUnit: string, expectedUnit: string): string {
  const onJug = `what came out was ${meant}, not ${writtenAs}`;
  const inBook = `the expected figure is in ${writtenAs}, not ${meant}`;
  const [jug, book] = [sameMark(writtenAs, outUnit), sameMark(meant, expectedUnit)];
  return jug && book ? `${onJug}, or ${inBook}` : jug ? onJug : inBook;
}

/** Millilitres and litres are marks on one jug. */
const sameMark = (pairUnit: string, given: string): boolean =>
  pairUnit === given || (pairUnit === L.symbol && !/^(US|imp) /.test(given));

/** A figure near the edge of its band may belong to the next. */
function doubtLines({ band, odds }: VolumeBalance): readonly string[] {
  const next = Object.entries(odds)
    .map(([name, probability]) => ({ name: name as BalanceBand, probability }))
    .filter(({ name, probability }) => name !== band && probability >= 0.1)
    .sort((a, b) => b.probability - a.probability)[0];
  return next ? [`A jug reads to 3 %: ${oddsText(next.probability)} it is "${next.name}".`] : [];
}

function beforeLines({ before }: VolumeBalance): readonly string[] {
  if (before.value <= 0) return ["Nothing was in it: look for damage from running dry before it is filled."];
  const [low, high] = [0.05, 0.95].map((p) => quantile(distributionOf(before), p) * before.unit.inSI) as [
    number,
    number,
  ];
  return [`Before it was drained it held ${litres(low)} to ${litres(high)} L (9 in 10).`];
}

const litres = (V: number): string => String(Number((V / L.inSI).toPrecision(2)));

function flushLines({ balance: { flushLeft }, flushPoured, used }: BalanceInWords): readonly string[] {
  return [
    ...(flushLeft ? [flushText(flushLeft)] : []),
    ...(used
      ? [`For the bill: ${Number(valueIn(L, used).toPrecision(3))} L of fluid, the flush included.`]
      : flushPoured
        ? [`For the bill: ${Number(valueIn(L, flushPoured).toPrecision(2))} L of flush beside the fill.`]
        : []),
  ];
}

/** Two jugs do not tell the single millilitres of their difference. */
function flushText(left: Quantity): string {
  const [left_ml, doubt_ml] = [valueIn(ml, left), (2 * standardUncertainty(left)) / ml.inSI].map(toTens);
  if (Math.abs(left_ml ?? 0) <= (doubt_ml ?? 0))
    return `As much of the flush came back as two jugs can tell (within ${doubt_ml} ml); it is not counted as fill.`;
  return (left_ml ?? 0) < 0
    ? `More flush came back than was poured, about ${-(left_ml ?? 0)} ml: old oil came with it.`
    : `Of the flush about ${left_ml} ml stayed inside; it is not counted as fill.`;
}

const toTens = (x: number): number => Math.round(x / 10) * 10;

const bandWords: Readonly<Record<BalanceBand, string>> = {
  "far too little": "far too little. Is this the right unit? Look for another drain, or for a machine that ran dry.",
  low: "low. A leak, or drained cold? Look where it went before it is filled.",
  "as expected": "as expected.",
  "too much": "too much. Wrong unit drained, or overfilled before?",
};
