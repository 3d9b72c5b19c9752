import { type ReadingName, readingKinds } from "../../journal/facts/readingFacts.ts";
import type { JobSheet } from "../../journal/job/jobSheet.ts";
import type { Noted, PortSheet } from "../../journal/job/portSheet.ts";
import type { Instruments } from "../../journal/shop/instruments.ts";
import type { Shop } from "../../journal/shop/shop.ts";
import { countings } from "../../mechanics/joint/port.ts";
import { lengthEvidence, shareEvidence, temperatureEvidence } from "../../mechanics/tables/evidence.ts";
import type { WrittenCase } from "../caseForm/caseSchema.ts";
import { namesIn } from "../words/journalNames.ts";

/** A case as far as somebody knows it. */
export type PartOfCase = Partial<Omit<WrittenCase, "joint" | "case">> & {
  readonly [K in "joint" | "case"]?: Partial<WrittenCase[K]>;
};

/**
 * What the journal knows of a port, as a case is written: what was weighed there last, and over it what was measured, felt,
 * named and answered since, with the figures of the book and the wrenches as they are now. What nobody wrote is left out.
 */
export function caseFromJournal(port: string, sheet: JobSheet, shop: Shop): PartOfCase {
  const here = sheet.ports[port as never];
  const figures = figuresOf(port, shop);
  const wrenches = wrenchesOf(shop.instruments);
  return together(portKnown(port, sheet, shop), ...(here ? [weighedBefore(here), foundSince(here)] : []), {
    ...(figures.length > 0 && { bookFigures: figures }),
    ...(wrenches.length > 0 && { wrenches }),
  }) as PartOfCase;
}

type Tree = Readonly<Record<string, unknown>>;

/** What was noted of the port when its unit was, and what a book says its thread is. */
function portKnown(port: string, sheet: JobSheet, shop: Shop): Tree {
  const is = namesIn(shop, sheet).noted(port);
  const inBook = shop.book[port as never]?.find(({ thread }) => thread !== undefined)?.thread;
  return { joint: { kind: is?.joint }, thread: is?.thread ?? inBook, case: { material: is?.material } };
}

/** What was weighed last, without what has been changed since: a seal that went in, turns that were cut anew. */
function weighedBefore(sheet: PortSheet): Tree {
  const { weighed } = sheet;
  const gone = [
    "today",
    ...(fittedOf(sheet).at > (weighed?.at ?? "") ? ["plug", "seal", "surface"] : []),
    ...(repairedAt(sheet) > (weighed?.at ?? "") ? ["left"] : []),
  ];
  return Object.fromEntries(Object.entries(weighed?.case ?? {}).filter(([part]) => !gone.includes(part)));
}

/** What was found out on this job since it was weighed; the six questions stand as they were answered last. */
function foundSince(sheet: PortSheet): Tree {
  const weighedAt = sheet.weighed?.at ?? "";
  const fitted = fittedOf(sheet);
  const later = <T extends { readonly at: string }>(it: T | null, than = weighedAt): T | null =>
    it && it.at > weighedAt && it.at >= than ? it : null;
  const reading = (name: ReadingName, than?: string) =>
    later(sheet.readings.find((it) => it.reading === name) ?? null, than);
  const readings = (part: string, than?: string) =>
    quantitiesOf(
      part,
      sheet.readings.filter((it) => later(it, than)),
    );
  const [caught, turns] = [later(sheet.caught, repairedAt(sheet)), reading("left.turns", repairedAt(sheet))];
  const healthy = reading("healthyTurns");
  const is = later(fitted)?.is;
  return {
    asked: sheet.questions,
    thread: later(sheet.thread)?.thread,
    case: { material: later(sheet.material)?.material, ...readings("case") },
    plug: {
      underHead: is?.underHead,
      original: later(sheet.plug, fitted.at)?.belongs,
      ...readings("plug", fitted.at),
    },
    seal: { kind: is?.seal, material: is?.material, ...readings("seal", fitted.at) },
    left: {
      ...readings("left", repairedAt(sheet)),
      counted: countings.find((it) => it === turns?.how),
      withWasher: turns?.withWasher,
      catch: caught?.catch,
      condition: caught?.condition,
    },
    healthyTurns: healthy?.value,
    healthyWithWasher: healthy?.withWasher,
    temperature: quantityOf(reading("case.temperature")),
    prevailing: reading("prevailing")?.value,
    surface: is?.surface,
  };
}

/** The plug and the seal that went in last on this job; at no time where nobody wrote that down. */
function fittedOf({ torqued, repairs }: PortSheet): { readonly at: string; readonly is: Fitted | null } {
  const repair = repairs.findLast(({ leaves }) => leaves);
  const inRepair = { at: repair?.at ?? "", is: repair?.leaves ?? null };
  return torqued?.fitted && torqued.at >= inRepair.at ? { at: torqued.at, is: torqued.fitted } : inRepair;
}

const repairedAt = ({ repairs }: PortSheet): string => repairs.at(-1)?.at ?? "";

type Fitted = NonNullable<Noted<"PortTorqued">["fitted"]>;
type Reading = Noted<"ReadingTaken">;

/** The readings of one part of a case, without the part's name; the temperature of a case stands in a field of its own. */
function quantitiesOf(part: string, readings: readonly Reading[]): Tree {
  const own = readings.filter(({ reading: it }) => it.startsWith(`${part}.`) && it !== "case.temperature");
  return Object.fromEntries(own.map((it) => [it.reading.slice(part.length + 1), quantityOf(it)]));
}

/** A reading with how it is known, where the case has a word for that. */
function quantityOf(it: Reading | null | undefined): unknown {
  if (!it) return undefined;
  const { value, how } = it;
  return how in (evidence[readingKinds[it.reading]] ?? {}) ? { value, how } : value;
}

const evidence: Readonly<Record<string, Tree>> = {
  length: lengthEvidence,
  temperature: temperatureEvidence,
  "plain number": shareEvidence,
};

const figuresOf = (port: string, { book }: Shop) =>
  (book[port as never] ?? []).flatMap(({ torque, source, seal, surface }) =>
    torque === undefined ? [] : [{ torque, source, ...(seal && { seal }), ...(surface && { surface }) }],
  );

/** The wrenches of the workshop that are not retired, each with the day of its last calibration. */
const wrenchesOf = (instruments: Instruments) =>
  Object.values(instruments).flatMap(({ instrument, is, calibrated, retired }) => {
    if (retired || is?.kind !== "wrench") return [];
    const on = calibrated.at(-1);
    const { works: kind, least, most, step } = is;
    return [{ name: instrument, kind, least, most, step, ...(on && { calibrated: on }) }];
  });

/** One case out of parts of it, the later over the earlier, without what nobody gave. */
function together(...parts: readonly Tree[]): Tree {
  const whole: Record<string, unknown> = {};
  for (const part of parts)
    for (const [name, value] of Object.entries(part)) {
      if (value === undefined) continue;
      whole[name] = isTree(value) && !isOne(value) ? together(treeOf(whole[name]), value) : value;
    }
  return whole;
}

/** What is one answer: a reading with how it is known, an earlier repair with its cause. */
const isOne = (it: Tree): boolean => "value" in it || "method" in it;
const isTree = (it: unknown): it is Tree => typeof it === "object" && it !== null && !Array.isArray(it);
const treeOf = (it: unknown): Tree => (isTree(it) ? it : {});
