import type { UnitId } from "../../journal/facts/ids.ts";
import { choice, measured, type SumField, type SumFields } from "../sums/sumField.ts";
import { type UnitActName, unitFieldWords } from "../words/actWords.ts";
import { type Act, type Around, actForm, answerTo, ownWords, saidYes, startOf, unitOf, yesNo } from "./act.ts";

const volumeBy = ["jug", "meter pump", "60 ml syringe"] as const;
const levelBy = ["wire hook", "mirror", "finger", "finger, calibrated"] as const;
const metals = ["none", "paste", "flakes", "pieces"] as const;
const waters = ["no", "milky", "free water"] as const;
const litres = { type: "number", unit: "L", step: 0.05, start: "1", from: "nothing" } as const;
const degrees = { type: "number", unit: "°C", step: 5, start: "20", from: "anywhere" } as const;

const depth = { type: "number", unit: "mm", step: 0.5, start: "0", from: "anywhere" } as const;

/** Readings that an ordinary job does without. */
const seldom = ["temperature", "colour"];

/** Litres whose stepper begins at what the unit should hold. */
const litresOf = (around: Around): SumField => {
  const expected = around.sheet.units[unitOf(around) as UnitId]?.is?.expected;
  return { ...litres, start: startOf(expected, "L", litres.start) };
};

/** What goes out of a unit and into it. */
export const unitActs: Readonly<Record<UnitActName, Act>> = {
  drained: act(
    "drained",
    (around) => ({
      out: litresOf(around),
      how: choice(...volumeBy),
      temperature: degrees,
      metal: choice(...metals),
      water: choice(...waters),
      colour: ownWords,
    }),
    (it, around) => ({
      type: "UnitDrained",
      unit: unitOf(around),
      out: it.reading("out"),
      how: it.chosen("how", volumeBy),
      temperature: it.reading("temperature"),
      metal: it.chosen("metal", metals),
      water: it.chosen("water", waters),
      colour: it.text("colour"),
    }),
    (fact) =>
      fact.type === "UnitDrained"
        ? {
            out: fact.out ?? "",
            how: fact.how ?? "",
            temperature: fact.temperature ?? "",
            metal: fact.metal ?? "",
            water: fact.water ?? "",
            colour: fact.colour ?? "",
          }
        : null,
  ),

  filled: act(
    "filled",
    (around) => ({
      volume: litresOf(around),
      called: { type: "text", common: Object.values(around.shop.stock.fluids).map(({ called }) => called) },
      how: choice(...volumeBy),
      temperature: degrees,
    }),
    (it, around) => {
      it.want("volume", "called");
      const called = it.text("called");
      const stocked = Object.values(around.shop.stock.fluids).find((fluid) => fluid.called === called);
      return {
        type: "UnitFilled",
        unit: unitOf(around),
        fluid: stocked?.fluid ?? noFluid,
        called,
        volume: it.reading("volume"),
        how: it.chosen("how", volumeBy),
        temperature: it.reading("temperature"),
      };
    },
    (fact) =>
      fact.type === "UnitFilled"
        ? { volume: fact.volume, called: fact.called, how: fact.how ?? "", temperature: fact.temperature ?? "" }
        : null,
  ),

  level: act(
    "level",
    () => ({
      right: yesNo,
      below: depth,
      how: choice(...levelBy),
      temperature: degrees,
      words: ownWords,
    }),
    (it, around) => {
      it.want("right");
      return {
        type: "LevelChecked",
        unit: unitOf(around),
        right: answerTo(it, "right"),
        belowLip: it.reading("below"),
        how: it.chosen("how", levelBy),
        temperature: it.reading("temperature"),
        words: it.text("words"),
      };
    },
    (fact) =>
      fact.type === "LevelChecked"
        ? {
            right: saidYes(fact.right),
            below: fact.belowLip ?? "",
            how: fact.how ?? "",
            temperature: fact.temperature ?? "",
            words: fact.words ?? "",
          }
        : null,
  ),

  drawn: act(
    "drawn",
    () => ({ out: measured("ml", 20, "60"), fell: measured("mm", 0.5, "5") }),
    (it, around) => {
      it.want("out");
      return { type: "LevelDrawnDown", unit: unitOf(around), out: it.reading("out"), fell: it.reading("fell") };
    },
    (fact) => (fact.type === "LevelDrawnDown" ? { out: fact.out, fell: fact.fell ?? "" } : null),
  ),
};

/** A drum that nobody put on the shelf list: its name as it stands on it is what counts. */
const noFluid = null;

function act(name: UnitActName, fields: (around: Around) => SumFields, read: Act["read"], texts: Act["texts"]): Act {
  return {
    form: (around) => {
      const asked = fields(around);
      const folded = Object.keys(asked).filter((it) => seldom.includes(it));
      return actForm(name, asked, unitFieldWords, { folded });
    },
    read,
    texts,
  };
}
