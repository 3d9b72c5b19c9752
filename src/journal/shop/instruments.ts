import { type Evidence, evidence, type Wrench } from "../../mechanics/joint/wrench.ts";
import { exact, type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { quantityFromText } from "../../mechanics/quantity/quantityText.ts";
import type { Kind } from "../../mechanics/quantity/unit.ts";
import { Nm } from "../../mechanics/quantity/unit.ts";
import type { Levels } from "../../mechanics/tables/levels.ts";
import type { FactOf } from "../facts/fact.ts";
import type { InstrumentId } from "../facts/ids.ts";
import type { Projection } from "../projection.ts";

export type Instrument = {
  readonly instrument: InstrumentId;
  readonly is: FactOf<"InstrumentBought">["is"] | null;
  /** The days of its calibrations, in their order. */
  readonly calibrated: readonly string[];
  readonly retired: boolean;
};

export type Instruments = Readonly<Record<InstrumentId, Instrument>>;

/** What the workshop measures with, and when each was last calibrated. */
export const instruments: Projection<Instruments> = {
  empty: {},

  apply(state, { fact }) {
    const changed = (instrument: InstrumentId, changes: (known: Instrument) => Partial<Instrument>): Instruments => {
      const known = state[instrument] ?? { instrument, is: null, calibrated: [], retired: false };
      return { ...state, [instrument]: { ...known, ...changes(known) } };
    };
    switch (fact.type) {
      case "InstrumentBought":
        return changed(fact.instrument, () => ({ is: fact.is, retired: false }));
      case "InstrumentCalibrated":
        return changed(fact.instrument, ({ calibrated }) => ({ calibrated: [...calibrated, fact.on].sort() }));
      case "InstrumentRetired":
        return changed(fact.instrument, () => ({ retired: true }));
      default:
        return state;
    }
  },
};

/** An instrument as a wrench of the mechanics, last calibrated on `calibrated`; null if it is none. */
function wrenchOf({ instrument, is }: Instrument, calibrated: string | null): Wrench | null {
  if (is?.kind !== "wrench") return null;
  const torque = (text: string): Quantity => asRead("T", text, "torque");
  const { works, least, most, step } = is;
  return {
    name: instrument,
    kind: works,
    least: torque(least),
    most: torque(most),
    step: torque(step),
    calibrated,
    crowFoot: null,
  };
}

/** What a pull is worth as evidence. A wrench may always tighten; out of range or date it may not claim. */
export type TorqueEvidence = Evidence | "no wrench named" | "not a wrench known here";

/**
 * Whether a torque may be claimed afterwards, by the wrench and the day of its calibration as they stood when it was
 * pulled. A day that no certificate of the workshop has dates nothing.
 */
export function torqueEvidence(
  { set, wrench }: Pick<FactOf<"PortTorqued">, "set" | "wrench">,
  pulledOn: string,
  known: Instruments,
  levels: Levels,
): TorqueEvidence {
  if (!wrench) return "no wrench named";
  const instrument = known[wrench.instrument];
  const certified = wrench.calibrated !== null && instrument?.calibrated.includes(wrench.calibrated);
  const used = instrument ? wrenchOf(instrument, certified ? wrench.calibrated : null) : null;
  if (!used) return "not a wrench known here";
  return evidence(used, valueIn(Nm, asRead("T", set, "torque")), pulledOn, levels);
}

/** A quantity of a fact, whose text was checked when it was written, taken as it stands. */
export function asRead(symbol: string, text: string, kind: Kind): Quantity {
  const read = quantityFromText(text, kind);
  if (!read.ok) throw new Error(`"${text}" was kept as a ${kind}`);
  return exact(symbol, read.written.value, read.written.unit, "as read");
}
