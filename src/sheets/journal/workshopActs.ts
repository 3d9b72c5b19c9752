import { wrenchKinds } from "../../mechanics/joint/wrenchKinds.ts";
import { choice, measured, type SumFields } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import { type WorkshopActName, workshopFieldWords } from "../words/actWords.ts";
import { type Act, type ActForm, type Around, actForm, dayIn, ownWords, type PlainFact } from "./act.ts";
import { another, isAnother } from "./asked.ts";
import { callOf } from "./callActs.ts";
import { meterFields, meterIn } from "./meterFields.ts";
import { identity } from "./named.ts";
import { layoutNames, unitOfLayout } from "./unitLayouts.ts";

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

const formOf = (act: WorkshopActName, fields: SumFields): ActForm => actForm(act, fields, workshopFieldWords);

/** The machines that were here are tapped; of another one its unit and ports are laid out first. */
function openForm({ shop, sheet }: Around): ActForm {
  const machines = Object.values(shop.machines);
  const calledAbout = callOf(sheet)?.machine;
  const form = formOf("open", {
    machine: choice(...machines.map(({ machine }) => machine), another),
    called: ownWords,
    unit: choice(...layoutNames),
    expected: measured("L", 0.1, "4"),
    drainThread: ownWords,
    fillThread: ownWords,
    cameFor: { type: "text", common: ["oil change", "drip", "torn thread"] },
    bay: { type: "text", common: ["bay 1", "bay 2", "yard"] },
    ...meterFields,
  });
  return {
    ...form,
    choiceWords: { ...Object.fromEntries(machines.map((it) => [it.machine, it.called])), [another]: "another one" },
    given: calledAbout ? { machine: calledAbout } : machines.length === 0 ? { machine: another } : {},
  };
}

function opened(it: Typed, around: Around): readonly PlainFact[] {
  it.want("machine", "cameFor");
  const meter = meterIn(it);
  const tapped = it.text("machine");
  const known = tapped === null || isAnother(tapped) ? null : around.shop.machines[tapped as never];
  const met = tapped !== null && isAnother(tapped) ? machineMet(it, around) : [];
  const machine = known ? known.machine : met[0]?.["machine"];
  const units = known ? Object.values(known.units) : (met[0]?.["units"] as readonly unknown[] | undefined);
  const job: PlainFact = {
    type: "JobOpened",
    machine,
    ...(known?.owner ? { owner: known.owner } : {}),
    cameFor: it.text("cameFor"),
    ...(it.text("bay") ? { bay: it.text("bay") } : {}),
    ...(meter ? { meter } : {}),
  };
  return [...met, job, ...(units ?? []).map((is) => ({ type: "UnitIdentified" as const, is }))];
}

function machineMet(it: Typed, around: Around): readonly PlainFact[] {
  it.want("called", "unit");
  const called = it.text("called") ?? "";
  const layout = it.chosen("unit", layoutNames);
  const machine = identity(called, around);
  if (!layout) return [];
  const unit = unitOfLayout(layout, machine, {
    expected: it.reading("expected"),
    drain: it.text("drainThread"),
    fill: it.text("fillThread"),
  });
  return [{ type: "MachineMet", machine, called, units: [unit] }];
}
