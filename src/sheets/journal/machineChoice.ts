import { choice, measured, type SumFields } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import { anotherOne } from "../words/workshopWords.ts";
import { type ActForm, type Around, ownWords, type PlainFact } from "./act.ts";
import { another, isAnother } from "./asked.ts";
import { callOf } from "./callActs.ts";
import { identity } from "./named.ts";
import { layoutNames, unitOfLayout } from "./unitLayouts.ts";

/** The places where a machine stands, by trade practice, no source. */
export const bays = ["bay 1", "bay 2", "yard"];

/** The machine that a job is about: one that was here before is tapped, of another one its unit and ports are laid out. */
export const machineFields = ({ shop }: Around): SumFields => ({
  machine: choice(...Object.values(shop.machines).map(({ machine }) => machine), another),
  called: ownWords,
  ...unitFields,
});

/** A unit with its ports, as one of the common layouts. */
export const unitFields: SumFields = {
  unit: choice(...layoutNames),
  expected: measured("L", 0.1, "4"),
  drainThread: ownWords,
  fillThread: ownWords,
};

/** The words on the taps of the machines, and the one that a call or a booking was about. */
export function machineTaps({ shop, sheet }: Around): Pick<ActForm, "choiceWords" | "given"> {
  const machines = Object.values(shop.machines);
  const known = sheet.machine ?? callOf(sheet)?.machine;
  return {
    choiceWords: { ...Object.fromEntries(machines.map((it) => [it.machine, it.called])), [another]: anotherOne },
    given: known ? { machine: known } : machines.length === 0 ? { machine: another } : {},
  };
}

/** The machine that was tapped, with its owner and units; one that was never here is met first. */
export function machineIn(it: Typed, { shop, fresh }: Around) {
  const tapped = it.text("machine");
  const isNew = tapped !== null && isAnother(tapped);
  const known = tapped === null || isNew ? null : shop.machines[tapped as never];
  if (known) return { machine: known.machine, owner: known.owner, units: Object.values(known.units), met: [] };
  if (!isNew) return { machine: null, owner: null, units: [], met: [] };
  it.want("called");
  const called = it.text("called") ?? "";
  const machine = identity(called, { fresh });
  const unit = unitIn(it, machine);
  const met: readonly PlainFact[] = unit ? [{ type: "MachineMet", machine, called, units: [unit] }] : [];
  return { machine, owner: null, units: unit ? [unit] : [], met };
}

/** A unit of a machine as it was laid out; null where its layout is still wanted. */
export function unitIn(it: Typed, machine: string) {
  it.want("unit");
  const layout = it.chosen("unit", layoutNames);
  const [expected, drain, fill] = [it.reading("expected"), it.text("drainThread"), it.text("fillThread")];
  return layout && unitOfLayout(layout, machine, { expected, drain, fill });
}
