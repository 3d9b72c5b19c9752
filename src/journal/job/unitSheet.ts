import { type VolumeEvidence, volumeReading } from "../../mechanics/fluid/levelReadings.ts";
import { residueShare, type VolumeBalance, volumeBalance } from "../../mechanics/fluid/volumeBalance.ts";
import type { Quantity } from "../../mechanics/quantity/quantity.ts";
import { quantityFromText } from "../../mechanics/quantity/quantityText.ts";
import { type Entry, entryId } from "../entry.ts";
import type { Fact, FactOf } from "../facts/fact.ts";
import type { UnitId } from "../facts/ids.ts";
import { asRead } from "../shop/instruments.ts";
import type { UnitNoted } from "../shop/machines.ts";

/** The fluid of a unit. "Drawn down" holds some, "filled" is not yet known to stand right. */
export type FluidState = "unknown" | "drawn down" | "drained" | "filled" | "level checked";

export type UnitSheet = {
  readonly unit: UnitId;
  /** Which ports it has and what it should hold; null until somebody said which unit this is. */
  readonly is: UnitNoted | null;
  readonly fluid: FluidState;
  readonly since: string | null;
  readonly levelFound: FactOf<"LevelFound"> | null;
  readonly drained: FactOf<"UnitDrained"> | null;
  readonly flushes: readonly FactOf<"UnitFlushed">[];
  /** What came out against what should have; null where one of them is not known. */
  readonly balance: VolumeBalance | null;
  readonly fills: readonly FactOf<"UnitFilled">[];
  readonly level: FactOf<"LevelChecked"> | null;
  readonly service: FactOf<"ServiceLaidDown"> | null;
};

export type Units = Readonly<Record<UnitId, UnitSheet>>;

export function unitsAfter(units: Units, entry: Entry): Units {
  const unit = unitOf(entry.fact);
  if (unit === null) return units;
  const known = units[unit] ?? untouched(unit);
  const now = unitAfter(known, entry);
  return { ...units, [unit]: { ...now, since: now.fluid === known.fluid ? known.since : entry.at } };
}

const untouched = (unit: UnitId): UnitSheet => ({
  unit,
  is: null,
  fluid: "unknown",
  since: null,
  levelFound: null,
  drained: null,
  flushes: [],
  balance: null,
  fills: [],
  level: null,
  service: null,
});

function unitOf(fact: Fact): UnitId | null {
  if (fact.type === "UnitIdentified") return fact.is.unit;
  switch (fact.type) {
    case "LevelFound":
    case "UnitDrained":
    case "LevelDrawnDown":
    case "UnitFlushed":
    case "UnitFilled":
    case "LevelChecked":
    case "ServiceLaidDown":
      return fact.unit;
    default:
      return null;
  }
}

function unitAfter(sheet: UnitSheet, entry: Entry): UnitSheet {
  const { fact } = entry;
  switch (fact.type) {
    case "UnitIdentified":
      return balanced({ ...sheet, is: fact.is }, entry);
    case "LevelFound":
      return { ...sheet, levelFound: fact };
    case "UnitDrained":
      return balanced({ ...sheet, fluid: "drained", drained: fact, level: null }, entry);
    case "LevelDrawnDown":
      return { ...sheet, fluid: sheet.fluid === "drained" ? "drained" : "drawn down", level: null };
    case "UnitFlushed":
      return { ...sheet, flushes: [...sheet.flushes, fact] };
    case "UnitFilled":
      return { ...sheet, fluid: "filled", fills: [...sheet.fills, fact], level: null };
    case "LevelChecked":
      return { ...sheet, fluid: fact.right ? "level checked" : sheet.fluid, level: fact };
    case "ServiceLaidDown":
      return { ...sheet, service: fact };
    default:
      return sheet;
  }
}

function balanced(sheet: UnitSheet, entry: Entry): UnitSheet {
  const { drained, is } = sheet;
  if (drained?.out === undefined || is?.expected === undefined) return { ...sheet, balance: null };
  const read = volumeBalance({
    out: volumeOf(drained.out, drained.how ?? "jug", entryId(entry)),
    expected: asRead("V_exp", is.expected, "volume"),
    residue: residueShare,
    flush: null,
  });
  return { ...sheet, balance: read.ok ? read.balance : null };
}

/** A volume as it was read; nothing at all is a volume too: a case that ran dry gives it. */
function volumeOf(text: string, how: VolumeEvidence, id: string): Quantity {
  const read = quantityFromText(text, "volume");
  if (!read.ok || !(read.written.value > 0)) return asRead("V", text, "volume");
  return volumeReading(read.written.value, read.written.unit, how, id);
}
