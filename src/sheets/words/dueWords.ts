import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { d, h, km } from "../../mechanics/quantity/unit.ts";
import type { Due, DueBy, DueLimit } from "../../mechanics/service/due.ts";
import type { DueCheck } from "../../mechanics/service/dueChecks.ts";
import type { MeterVerdict } from "../../mechanics/service/meter.ts";
import { earlyFigure, lateFigure, nearFigure } from "./distanceFigures.ts";
import { meterText } from "./meterWords.ts";

/** What stands beside the answer: how severe duty is set, and the looks after a repaired seal. */
export type DueBeside = {
  /** The share that distance and hours are cut to; null for ordinary duty. */
  readonly severe: number | null;
  readonly looks: readonly LookInWords[] | null;
};

/** One look after a repair, by its day where that can be told. */
export type LookInWords = {
  readonly id: DueCheck["id"];
  readonly on: string | null;
  readonly earliest: string | null;
  readonly latest: string | null;
};

/** When the next service falls due, by what, and what the meter says of itself. */
export function dueLines(due: Due, meter: MeterVerdict | null, { severe, looks }: DueBeside): readonly string[] {
  return [
    ...answerLines(due),
    ...meterLines(meter),
    ...(looks ? ["", "Look again after the repair", ...looks.map((it) => `  ${lookText(it)}`)] : []),
    "",
    "Mind",
    ...(due.type === "now" ? [] : [dutyLine(severe)]),
    "  The maker's interval comes first; after water or milky oil it is due now (--happened).",
    ...(looks ? [] : ["  After a seal repair look again early: --repaired with its day."]),
  ];
}

const dutyLine = (severe: number | null): string =>
  severe === null
    ? "  Ordinary duty is set. Towing, dust, water, heat, short runs: set severe duty (--severe 0.5; 0.5 to 0.7 from memory)."
    : `  Severe duty is set: distance and hours are cut to ${severe} of the interval.`;

function lookText({ id, on, earliest, latest }: LookInWords): string {
  const days =
    earliest && latest && earliest !== latest ? `, about ${on} (${earliest} to ${latest})` : on ? `, ${on}` : "";
  return `${lookWords[id]}${days}`;
}

const lookWords: Readonly<Record<DueCheck["id"], string>> = {
  "wipe dry": "wipe it dry first",
  "first look": "after 30 minutes",
  "first hot run": "after the first hot run of 20 to 30 km",
  "next day": "the next day",
  "by distance": "after 500 km",
  "each service": "at each service",
};

function answerLines(due: Due): readonly string[] {
  switch (due.type) {
    case "now":
      return [`Due now: ${due.because}.`];
    case "overdue":
      return [`Overdue by ${byWords[due.by]}.`, ...due.limits.map(limitLine)];
    case "not known":
      return [`Not known: ${due.missing.map((it) => byWords[it]).join(", ")} cannot be told without its meter.`];
    case "due":
      return [
        `Due about ${due.on}, by ${byWords[due.by]}${due.earliest === due.latest ? "" : ` (from ${due.earliest} to ${due.latest})`}.`,
        ...due.limits.map(limitLine),
        ...due.missing.map((it) => `  ${byWords[it]}: laid down, but nobody can tell without its meter`),
      ];
    default:
      return due satisfies never;
  }
}

function limitLine({ by, left, likely, earliest, latest }: DueLimit): string {
  const days = (it: Quantity): string => String(Math.max(0, Math.floor(valueIn(d, it))));
  if (by === "date") return `  by date in ${days(likely)} days`;
  const rest = by === "distance" ? `${Math.round(valueIn(km, left))} km` : `${Math.round(valueIn(h, left))} h`;
  if (left.value < 0) return `  by ${byWords[by]} it is over already: ${rest.replace("-", "")} too many`;
  const [near, far] = [earliest, latest].map((it) => Math.max(0, valueIn(d, it)));
  return `  by ${byWords[by]} ${rest} are left: about ${nearFigure(Math.max(0, valueIn(d, likely)))} days, ${earlyFigure(near ?? 0)} to ${lateFigure(far ?? 0)}`;
}

const meterLines = (meter: MeterVerdict | null): readonly string[] =>
  meter === null || meter.type === "plausible" ? [] : [`The meter: ${meterText(meter)}`];

const byWords: Readonly<Record<DueBy, string>> = { distance: "distance", hours: "hours", date: "date" };
