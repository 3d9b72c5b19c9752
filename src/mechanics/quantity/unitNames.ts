import type { Kind, Unit } from "./unit.ts";
import * as units from "./unit.ts";

/** Every way in which a person may write a unit. Written forms differ only in case, dots, blanks and hyphens. */
const spellings: readonly (readonly [Unit, ...string[]])[] = [
  [units.percent, "%", "percent"],
  [units.turn, "turns", "turn"],
  [units.deg, "°", "deg", "degree", "degrees"],
  [units.radian, "rad"],
  [units.mm, "mm", "millimetre", "millimetres", "millimeter", "millimeters"],
  [units.cm, "cm"],
  [units.m, "m", "metre", "metres", "meter", "meters"],
  [units.um, "µm", "μm", "um", "micron", "microns"],
  [units.km, "km"],
  [units.inches, "in", "inch", "inches", '"', "″"],
  [units.feet, "ft", "foot", "feet", "'", "′"],
  [units.miles, "mi", "mile", "miles"],
  [units.mm2, "mm²", "mm2", "mm^2"],
  [units.cm2, "cm²", "cm2", "cm^2"],
  [units.ml, "ml", "millilitre", "millilitres", "milliliter", "milliliters"],
  [units.cm3, "cm³", "cm3", "cc", "ccm"],
  [units.mm3, "mm³", "mm3"],
  [units.m3, "m³", "m3"],
  [units.L, "L", "l", "litre", "litres", "liter", "liters"],
  [units.usFluidOunce, "US fl oz", "US floz", "US fluid ounce", "US fluid ounces"],
  [units.usPint, "US pt", "US pint", "US pints"],
  [units.usQuart, "US qt", "US quart", "US quarts"],
  [units.usGallons, "US gal", "US gallon", "US gallons"],
  [units.imperialFluidOunce, "imp fl oz", "imp floz", "imperial fluid ounce", "imperial fluid ounces", "UK fl oz"],
  [units.imperialPint, "imp pt", "imp pint", "imperial pint", "imperial pints", "UK pint", "UK pints"],
  [units.imperialQuart, "imp qt", "imp quart", "imperial quart", "imperial quarts", "UK quart", "UK quarts"],
  [units.imperialGallons, "imp gal", "imp gallon", "imperial gallon", "imperial gallons", "UK gallon", "UK gallons"],
  [units.kg, "kg"],
  [units.g, "g"],
  [units.kg_m3, "kg/m³", "kg/m3"],
  [units.N, "N", "newton", "newtons"],
  [units.kN, "kN"],
  [units.lbf, "lbf"],
  [units.kgf, "kgf", "kp"],
  [units.N_mm, "N/mm"],
  [units.Nm, "N·m", "Nm", "N m", "N*m", "newton metre", "newton metres", "newton meter", "newton meters"],
  [units.Ncm, "N·cm", "Ncm", "N*cm"],
  [units.kNm, "kN·m", "kNm", "kN*m"],
  [
    units.lbf_ft,
    "lbf·ft",
    "lbf ft",
    "lbfft",
    "lbf*ft",
    "lb·ft",
    "lb ft",
    "lbft",
    "ft·lbf",
    "ft lbf",
    "ft·lb",
    "ft lb",
    "ft·lbs",
    "foot·pound",
    "foot·pounds",
  ],
  [
    units.lbf_in,
    "lbf·in",
    "lbf in",
    "lbfin",
    "lbf*in",
    "lb·in",
    "lb in",
    "lbin",
    "in·lbf",
    "in lbf",
    "in·lb",
    "in lb",
    "in·lbs",
    "inch·pound",
    "inch·pounds",
  ],
  [units.kgf_m, "kgf·m", "kgf m", "kgfm", "kgf*m", "kp·m", "kpm"],
  [units.kgf_cm, "kgf·cm", "kgf cm", "kgfcm", "kgf*cm", "kp·cm", "kpcm"],
  [units.Pa, "Pa"],
  [units.kPa, "kPa"],
  [units.MPa, "MPa", "N/mm²", "N/mm2"],
  [units.GPa, "GPa"],
  [units.mbar, "mbar", "hPa"],
  [units.bar, "bar"],
  [units.psi, "psi", "lbf/in²", "lbf/in2"],
  [units.s, "s", "sec", "second", "seconds"],
  [units.min, "min", "minute", "minutes"],
  [units.h, "h", "hour", "hours"],
  [units.d, "d", "day", "days"],
  [units.K, "K", "kelvin"],
  [units.degC, "°C", "° C", "degC", "deg C", "℃"],
  [units.degF, "°F", "° F", "degF", "deg F", "℉"],
  [units.mm2_s, "mm²/s", "mm2/s", "cSt"],
  [units.mPas, "mPa·s", "mPas", "cP"],
  [units.ml_d, "ml/d", "ml/day"],
  [units.ml_h, "ml/h"],
  [units.N_m, "N/m"],
  [units.ml_mm, "ml/mm"],
  [units.ml_km, "ml/km"],
  [units.km_h, "km/h"],
  [units.km_d, "km/d", "km/day"],
];

/** Words that name two units, each with what would settle it. */
const ambiguous: Readonly<Record<string, readonly string[]>> = {
  pint: ["US pt", "imp pt"],
  quart: ["US qt", "imp qt"],
  gallon: ["US gal", "imp gal"],
  "fluid ounce": ["US fl oz", "imp fl oz"],
  ounce: ["US fl oz", "imp fl oz", "g"],
  pound: ["lbf", "kg"],
  "kilogram-metre": ["kgf·m", "N·m"],
  "kilogram-centimetre": ["kgf·cm", "N·m"],
};

const ambiguousSpellings: Readonly<Record<string, string>> = {
  pint: "pint",
  pints: "pint",
  pt: "pint",
  pts: "pint",
  quart: "quart",
  quarts: "quart",
  qt: "quart",
  qts: "quart",
  gallon: "gallon",
  gallons: "gallon",
  gal: "gallon",
  floz: "fluid ounce",
  fluidounce: "fluid ounce",
  fluidounces: "fluid ounce",
  oz: "ounce",
  lb: "pound",
  lbs: "pound",
  kgm: "kilogram-metre",
  mkg: "kilogram-metre",
  kgcm: "kilogram-centimetre",
};

export type UnitRead =
  | { readonly ok: true; readonly unit: Unit }
  | { readonly ok: false; readonly problem: UnitProblem };

export type UnitProblem =
  | { readonly type: "unknown unit"; readonly given: string }
  | { readonly type: "ambiguous unit"; readonly given: string; readonly accepted: readonly string[] };

/**
 * A name without abbreviation points, its parts joined by one dot: "lbf - ft" is "lbf·ft". What stands anywhere else is
 * kept, so that "mm 2" and "mm -" are not taken for "mm²" and "mm".
 */
const folded = (text: string): string =>
  text
    .trim()
    .replace(/(?<=\p{L})\./gu, "")
    .replace(/\s*\/\s*/g, "/")
    .replace(/(?<=[\p{L}°])(?:\s*[·⋅*-]\s*|\s+)(?=\p{L})/gu, "·")
    .replace(/μ/g, "µ");

const closed = (name: string): string => name.replaceAll("·", "");

const exactly = new Map(
  spellings.flatMap(([unit, ...names]) =>
    names.map(folded).flatMap((name) => [[name, unit] as const, [closed(name), unit] as const]),
  ),
);
const anyCase = new Map([...exactly].map(([name, unit]) => [name.toLowerCase(), unit]));

/** What is written as it is printed here, and means one thing alone: found without being folded first. */
const asPrinted = new Map(
  [...exactly].filter(([name]) => folded(name) === name && !(closed(name).toLowerCase() in ambiguousSpellings)),
);

/** The unit that `text` names. "m" and "M", "mPa" and "MPa" are kept apart; else upper and lower case are one. */
export function unitNamed(text: string): UnitRead {
  const printed = asPrinted.get(text);
  if (printed) return { ok: true, unit: printed };
  const name = folded(text);
  const twofold = ambiguous[ambiguousSpellings[closed(name).toLowerCase()] ?? ""];
  if (twofold) return { ok: false, problem: { type: "ambiguous unit", given: text, accepted: twofold } };
  const unit = exactly.get(name) ?? (caseMatters(closed(name)) ? undefined : anyCase.get(name.toLowerCase()));
  return unit ? { ok: true, unit } : { ok: false, problem: { type: "unknown unit", given: text } };
}

/** A prefix or a symbol whose case changes its meaning. */
const caseMatters = (name: string): boolean => /^(m?pa|mpas|k|m|g|s|d)$/i.test(name);

/** All units that measure `kind`. */
export const unitsMeasuring = (kind: Kind): readonly Unit[] =>
  spellings.map(([unit]) => unit).filter((unit) => unit.kind === kind);

/** The written forms of all units that measure `kind`, the first form of each. */
export const unitsOf = (kind: Kind): readonly string[] => unitsMeasuring(kind).map(({ symbol }) => symbol);
