import type { Kind } from "../../mechanics/quantity/unit.ts";
import type { Assumption, GivenCase } from "../../mechanics/remedies/givenCase.ts";
import type { Asked } from "../../mechanics/remedies/portCase.ts";
import { judgement } from "../../mechanics/tables/source.ts";
import type { InputProblem } from "../words/problemWords.ts";
import type { WrittenCase, WrittenQuantity } from "./caseSchema.ts";
import { contradictions } from "./contradictions.ts";
import {
  type Field,
  type FieldReader,
  givenQuantity,
  type ReadField,
  turnsField,
  type WrittenFigure,
} from "./givenQuantity.ts";
import { bookFiguresGiven, wrenchesGiven } from "./shopGiven.ts";
import type { ThreadReader } from "./threadGiven.ts";

/** A case read from its document, or every mistake in it. */
export type CaseRead =
  | {
      readonly ok: true;
      readonly given: GivenCase;
      /** How readings are known where nobody said: the field's ordinary evidence. */
      readonly ordinary: readonly Assumption[];
    }
  | { readonly ok: false; readonly problems: readonly [InputProblem, ...InputProblem[]] };

/** What a document may hold and no bench asks for: figures of its own in place of ours, the air of the bay, the record. */
export type Besides = Pick<GivenCase, "air" | "shop" | "record" | "ranges" | "levels">;

/** Reads what a document may hold and no bench writes. */
export type DocumentReader = {
  readonly range: (field: Field, written: Exclude<WrittenQuantity, WrittenFigure>) => ReadField;
  readonly besides: (take: FieldReader, problems: InputProblem[]) => Besides;
};

/**
 * Reads a case that has the shape of the schema. `today` stands in where it names no day; `threads` reads its thread and
 * the rest what else it holds.
 */
export function readWritten(
  written: WrittenCase,
  today: string | null,
  threads: ThreadReader,
  { range, besides }: DocumentReader,
): CaseRead {
  const problems: InputProblem[] = [];
  const ordinary: Assumption[] = [];
  const take: FieldReader = (field, value) => {
    if (value === undefined) return null;
    const read = typeof value === "object" && "low" in value ? range(field, value) : givenQuantity(field, value);
    if (!read.ok) {
      problems.push(read.problem);
      return null;
    }
    if (!read.howSaid && field.kind !== "turns" && field.kind !== "torque" && field.kind !== "pressure")
      ordinary.push({
        reading: `${field.name}.how`,
        value: field.ordinarily,
        source: judgement("the ordinary evidence of this field"),
      });
    return read.quantity;
  };
  const given = given_(written, today, take, problems, threads, besides);
  if (given) problems.push(...contradictions(given));
  if (isSome(problems)) return { ok: false, problems };
  if (given && written.today === undefined && given.wrenches.some(({ calibrated }) => calibrated !== null))
    ordinary.push({ reading: "today", value: given.today ?? "", source: judgement("the clock of this machine") });
  if (!given) throw new Error("a case was not read and no mistake was told");
  return { ok: true, given, ordinary };
}

export const isSome = (problems: readonly InputProblem[]): problems is readonly [InputProblem, ...InputProblem[]] =>
  problems.length > 0;

function given_(
  written: WrittenCase,
  today: string | null,
  take: FieldReader,
  problems: InputProblem[],
  threads: ThreadReader,
  besides: DocumentReader["besides"],
): GivenCase | null {
  const threaded = threads(written, problems);
  const { plug = {}, seal = {}, left, case: housing } = written;
  const length = (name: string, symbol: string, ordinarily: string, value: WrittenQuantity | undefined) =>
    take({ name, symbol, kind: "length", ordinarily, example: "12 mm" }, value);
  const field = (name: string, symbol: string, kind: Kind, ordinarily: string, example: string): Field => ({
    name,
    symbol,
    kind,
    ordinarily,
    example,
  });

  const quantities = {
    threadDepth: length("case.threadDepth", "l_t", "wire hook", housing.threadDepth),
    thinnestWall: length("case.thinnestWall", "w", "caliper", housing.thinnestWall),
    roomBehind: length("case.roomBehind", "l_b", "blunt wire", housing.roomBehind),
    roomInFront: length("case.roomInFront", "l_v", "rule", housing.roomInFront),
    temperature: take(
      field("temperature", "theta", "temperature", "contact probe", "20 °C"),
      written.temperature ?? housing.temperature,
    ),
  };
  const readings = {
    plug: {
      propertyClass: plug.propertyClass ?? null,
      underHead: length("plug.underHead", "l", "caliper", plug.underHead),
      headDiameter: length("plug.headDiameter", "d_w", "caliper", plug.headDiameter),
      chamfer: length("plug.chamfer", "c", "rule", plug.chamfer),
      original: plug.original ?? null,
    },
    seal: {
      kind: seal.kind ?? null,
      material: seal.material ?? null,
      outside: length("seal.outside", "D_o", "caliper", seal.outside),
      inside: length("seal.inside", "D_i", "caliper", seal.inside),
      thickness: length("seal.thickness", "t", "caliper", seal.thickness),
      chamfer: length("seal.chamfer", "z_c", "depth rod", seal.chamfer),
      original: seal.original ?? null,
    },
    left: {
      turns: take(turnsField("left.turns", "n_0"), left.turns),
      counting: left.counted ?? null,
      withWasher: left.withWasher ?? null,
      condition: left.condition ?? null,
      catch: left.catch ?? null,
      goodFrom: length("left.goodFrom", "z_1", "wire hook", left.goodFrom),
      goodTo: length("left.goodTo", "z_2", "wire hook", left.goodTo),
      height: take(field("left.height", "h", "plain number", "caliper", "0.6"), left.height),
    },
    healthyTurns: take(turnsField("healthyTurns", "n_h"), written.healthyTurns),
  };
  const shop = {
    bookFigures: bookFiguresGiven(written.bookFigures ?? [], take),
    wrenches: wrenchesGiven(written.wrenches ?? [], take),
    prevailing: take(field("prevailing", "T_p", "torque", "torque wrench", "1.5 N·m"), written.prevailing),
  };
  const asked = askedGiven(written.asked ?? {}, take);
  dayMistake("today", written.today, problems);
  written.wrenches?.forEach((it, i) => void dayMistake(`wrenches[${i}].calibrated`, it.calibrated, problems));
  const others = besides(take, problems);
  if (!threaded || problems.length > 0) return null;
  return {
    joint: written.joint.kind,
    asked,
    ...threaded,
    material: housing.material,
    ...quantities,
    ...readings,
    healthyWithWasher: written.healthyWithWasher ?? null,
    surface: written.surface ?? null,
    ...shop,
    today: written.today ?? today,
    wish: {
      today: written.wish?.today ?? null,
      ceiling: written.wish?.ceiling ?? null,
      opensAgain: written.wish?.opensAgain ?? null,
      afterRepair: written.wish?.afterRepair ?? null,
    },
    ...others,
  };
}

function askedGiven(asked: NonNullable<WrittenCase["asked"]>, take: FieldReader): Asked {
  const { crack, pressure, reaches, people, repairedBefore, breather, waterTest, alloyTested, overrides } = asked;
  const bars: Field = { name: "asked.pressure", symbol: "p", kind: "pressure", ordinarily: "said", example: "1.2 bar" };
  return {
    crack: crack ?? null,
    pressure: pressure === undefined ? null : pressure === "none" ? "none" : take(bars, pressure),
    reaches: reaches ?? null,
    people: people ?? null,
    repairedBefore:
      repairedBefore === undefined
        ? null
        : repairedBefore === "no"
          ? "no"
          : { method: repairedBefore.method, cause: repairedBefore.cause ?? null },
    breather: breather ?? null,
    waterTest: waterTest ?? null,
    alloyTested: alloyTested ?? null,
    overrides: overrides ?? [],
  };
}

function dayMistake(field: string, day: string | undefined, problems: InputProblem[]): void {
  if (day === undefined || isDay(day)) return;
  problems.push({ field, given: `"${day}"`, accepted: 'a day as "2026-11-25"' });
}

/** A day of the calendar: the thirtieth of February parses as a date, and comes back as another day. */
function isDay(day: string): boolean {
  const at = Date.parse(`${day}T00:00:00Z`);
  return /^\d{4}-\d{2}-\d{2}$/.test(day) && !Number.isNaN(at) && new Date(at).toISOString().startsWith(day);
}
