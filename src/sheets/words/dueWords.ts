import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { d, h, km } from "../../mechanics/quantity/unit.ts";
import type { Due, DueBy, DueLimit } from "../../mechanics/service/due.ts";
import type { MeterVerdict } from "../../mechanics/service/meter.ts";

/** When the next service falls due, by what, and what the meter says of itself. */
export function dueLines(due: Due, meter: MeterVerdict | null, severe: boolean): readonly string[] {
  return [
    ...answerLines(due),
    ...(severe ? ["Severe duty is set: distance and hours are shortened."] : []),
    ...meterLines(meter),
    "",
    "Mind",
    "  The maker's interval comes first; after water or milky oil it is due now. Look again after a seal repair:",
    "  30 minutes, the first hot run, the next day, 500 km, then each service.",
  ];
}

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
        `Due about ${due.on}, by ${byWords[due.by]} (from ${due.earliest} to ${due.latest}).`,
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
  return `  by ${byWords[by]} ${rest} are left: about ${days(likely)} days, ${days(earliest)} to ${days(latest)}`;
}

function meterLines(meter: MeterVerdict | null): readonly string[] {
  switch (meter?.type) {
    case undefined:
    case "plausible":
      return [];
    case "falling":
      return ["Look at the meter: it reads less than before."];
    case "too fast":
      return ["Look at the meter: nothing drives that far in the time."];
    case "unit changed":
      return [`Look at the meter: the ${meter.of} reading fits if it was in ${meter.readIn}.`];
    case "rolled over":
      return [`The meter began again at nought after ${meter.after}; it is counted on.`];
    case "different meters":
      return ["The two readings are of different meters."];
    case "dates out of order":
      return ["The dates are out of order."];
    default:
      return meter satisfies never;
  }
}

const byWords: Readonly<Record<DueBy, string>> = { distance: "distance", hours: "hours", date: "date" };
