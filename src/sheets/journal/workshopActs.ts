import type { FactOf } from "../../journal/facts/fact.ts";
import { wrenchKinds } from "../../mechanics/joint/wrenchKinds.ts";
import { choice, measured, type SumFields } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import type { WorkshopActName } from "../words/actWords.ts";
import { workshopFieldWords } from "../words/workshopWords.ts";
import { type Act, type ActForm, type Around, actForm, dayIn, ownWords, type PlainFact } from "./act.ts";
import { bays, machineFields, machineIn, machineTaps } from "./machineChoice.ts";
import { meterFields, meterIn } from "./meterFields.ts";
import { identity } from "./named.ts";

/** What is written down of the workshop itself, and how a job is opened. */
export const workshopActs: Readonly<Record<WorkshopActName, Act>> = {
  open: { form: openForm, read: opened, texts: () => null },

  person: {
    form: () =>
      formOf("person", { person: ownWords, role: { type: "text", common: ["mechanic", "apprentice", "owner"] } }),
    read: (it, around) => {
      it.want("person");
      const called = it.text("person") ?? "";
      return { type: "PersonJoined", person: identity(called, around), called, role: it.text("role") };
    },
    texts: () => null,
  },

  personLeft: {
    form: ({ shop }) => {
      const here = Object.values(shop.people.persons).filter(({ left }) => !left);
      return {
        ...formOf("personLeft", { leaves: choice(...here.map(({ person }) => person)) }),
        choiceWords: Object.fromEntries(here.map(({ person, called }) => [person, called])),
      };
    },
    read: (it) => {
      it.want("leaves");
      return { type: "PersonLeft", person: it.text("leaves") };
    },
    texts: (fact) => (fact.type === "PersonLeft" ? { leaves: fact.person } : null),
  },

  workshopNamed: {
    form: ({ shop: { people } }) => ({
      ...formOf("workshopNamed", { workshop: ownWords, place: ownWords, currency: ownWords }),
      given: people.workshop ? namedTexts(people.workshop) : {},
    }),
    read: (it) => {
      it.want("workshop", "currency");
      return {
        type: "WorkshopNamed",
        called: it.text("workshop"),
        place: it.text("place"),
        currency: it.text("currency"),
      };
    },
    texts: (fact) => (fact.type === "WorkshopNamed" ? namedTexts(fact) : null),
  },

  wrench: {
    form: () =>
      formOf("wrench", {
        wrench: ownWords,
        works: choice(...wrenchKinds),
        least: measured("N·m", 1, "20"),
        most: measured("N·m", 10, "120"),
        step: measured("N·m", 1, "1"),
        calibrated: ownWords,
      }),
    read: (it) => {
      it.want("wrench", "works", "least", "most", "step");
      const instrument = it.text("wrench") ?? "";
      const on = dayIn(it, "calibrated");
      if (instrument && !/^[A-Za-z0-9][A-Za-z0-9_.-]{0,63}$/.test(instrument))
        it.refuse("wrench", "letters, digits, dot and dash, as TW-4");
      const is = {
        kind: "wrench",
        works: it.chosen("works", wrenchKinds),
        least: it.reading("least"),
        most: it.reading("most"),
        step: it.reading("step"),
      };
      return [
        { type: "InstrumentBought", instrument, is },
        ...(on === null ? [] : [{ type: "InstrumentCalibrated" as const, instrument, on }]),
      ];
    },
    texts: () => null,
  },
};

const namedTexts = ({ called, place, currency }: Omit<FactOf<"WorkshopNamed">, "type">) => ({
  workshop: called,
  place: place ?? "",
  currency,
});

const formOf = (act: WorkshopActName, fields: SumFields): ActForm => actForm(act, fields, workshopFieldWords);

/** The machines that were here are tapped; of another one its unit and ports are laid out first. */
function openForm(around: Around): ActForm {
  const taps = machineTaps(around);
  return {
    ...formOf("open", {
      ...machineFields(around),
      cameFor: { type: "text", common: ["oil change", "drip", "torn thread"] },
      bay: { type: "text", common: bays },
      ...meterFields,
    }),
    ...taps,
    given: { ...taps.given, ...(around.sheet.bay ? { bay: around.sheet.bay } : {}) },
  };
}

function opened(it: Typed, around: Around): readonly PlainFact[] {
  it.want("machine", "cameFor");
  const meter = meterIn(it);
  const { machine, owner, units, met } = machineIn(it, around);
  const job: PlainFact = {
    type: "JobOpened",
    machine,
    owner,
    cameFor: it.text("cameFor"),
    bay: it.text("bay"),
    meter,
  };
  return [...met, job, ...units.map((is) => ({ type: "UnitIdentified" as const, is }))];
}
