import { render } from "preact-render-to-string";
import { type QuantityProblem, quantityFromText, type Written } from "../../mechanics/quantity/quantityText.ts";
import { inSI, type Kind, onScale, type Unit } from "../../mechanics/quantity/unit.ts";
import { unitNamed, unitsMeasuring } from "../../mechanics/quantity/unitNames.ts";
import { DoubleScale } from "../drawings/DoubleScale.tsx";
import { asRead, convertSign, torqueIsNotEnergy, twoMeasures, usAndImperial } from "../words/convertBenchWords.ts";
import { convertedFigure } from "../words/convertedFigure.ts";
import { acceptedQuantity } from "../words/problemWords.ts";
import { convertFields } from "./convertFields.ts";
import { answered, type SumRead } from "./sumAnswer.ts";
import type { SumTexts } from "./sumField.ts";
import { typed } from "./typed.ts";

/** A quantity in every unit of its kind, from what is on the bench. */
export function convertSum(texts: SumTexts): SumRead {
  const it = typed(texts, convertFields);
  it.want("quantity");
  const given = it.text("quantity") ?? "";
  const bare = /^[+−–-]?[\d.,/ ¼½¾⅛⅜⅝⅞]+$/.test(given);
  const read = quantityFromText(bare && it.text("unit") ? `${given} ${it.text("unit")}` : given, null);
  if (given !== "" && !read.ok) it.refuse("quantity", accepted(read.problem));
  if (it.problems.length > 0 || !read.ok) return { ok: false, problems: it.problems };
  return answerOf(read.written);
}

/** What would be read; a bare pint, quart or gallon is refused with the reason. */
function accepted(problem: QuantityProblem): string {
  const words = acceptedQuantity(problem, '"46 N·m"');
  const measure = problem.type === "ambiguous unit" && /^(p|q|g)/i.test(problem.given);
  return measure ? `${words}, and ${twoMeasures}` : words;
}

function answerOf({ value, unit }: Written): SumRead {
  const others = unitsMeasuring(unit.kind).filter((it) => it !== unit);
  const figure = (to: Unit): string => convertedFigure(onScale(inSI(value, unit), to));
  const first = counterpart(unit) ?? others[0];
  const said = (to: Unit): string => `${figure(to)} ${to.symbol}`.trim();
  return answered({
    sign: convertSign,
    figure: first ? { value: figure(first), unit: first.symbol, also: "" } : null,
    sentences: [
      first
        ? `${convertedFigure(value)} ${unit.symbol} is ${said(first)}.`
        : `${convertedFigure(value)} ${unit.symbol} has no other unit here.`,
    ],
    because: because(unit, first),
    next: null,
    picture: first ? scales(value, unit, first) : null,
    rows: others.filter((it) => it !== first).map((it) => ({ name: it.symbol, value: figure(it) })),
    reasons: others.filter((it) => it !== first).map((it) => because(unit, it)),
    cautions: [...(cautionOf[unit.kind] ?? []), asRead],
  });
}

function scales(value: number, unit: Unit, other: Unit): string {
  const [offset, unitAway] = [onScale(inSI(0, unit), other), onScale(inSI(1, unit), other)];
  return render(
    <DoubleScale
      upper={{ symbol: unit.symbol, figure: convertedFigure(value) }}
      lower={{ symbol: other.symbol, figure: convertedFigure(onScale(inSI(value, unit), other)) }}
      value={value}
      perUpper={unitAway - offset}
      offset={offset}
    />,
  );
}

/** One of the other, by the definitions of both. */
function because(unit: Unit, other: Unit | undefined): string {
  if (!other) return "";
  if (unit.zero !== other.zero)
    return `0 ${unit.symbol} is ${convertedFigure(onScale(inSI(0, unit), other))} ${other.symbol}.`;
  return `1 ${unit.symbol} is ${convertedFigure(unit.inSI / other.inSI)} ${other.symbol} (NIST SP 811, 2008).`;
}

/** The unit that the other half of the world reads the same thing in. */
function counterpart(unit: Unit): Unit | null {
  const name = counterparts[unit.symbol] ?? null;
  const read = name === null ? null : unitNamed(name);
  return read?.ok ? read.unit : null;
}

const counterparts: Readonly<Record<string, string>> = {
  N·m: "lbf·ft",
  lbf·ft: "N·m",
  lbf·in: "N·m",
  kgf·m: "N·m",
  kgf·cm: "N·m",
  mm: "in",
  in: "mm",
  ft: "m",
  m: "ft",
  km: "mi",
  mi: "km",
  bar: "psi",
  psi: "bar",
  kPa: "bar",
  MPa: "bar",
  L: "US qt",
  ml: "US fl oz",
  "US fl oz": "ml",
  "US pt": "ml",
  "US qt": "L",
  "US gal": "L",
  "imp fl oz": "ml",
  "imp pt": "ml",
  "imp qt": "L",
  "imp gal": "L",
  "°C": "°F",
  "°F": "°C",
  N: "lbf",
  lbf: "N",
  kgf: "N",
};

const cautionOf: Readonly<Partial<Record<Kind, readonly string[]>>> = {
  volume: [usAndImperial],
  torque: [torqueIsNotEnergy],
};
