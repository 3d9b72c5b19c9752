import { type Quantity, valueIn } from "../../mechanics/quantity/quantity.ts";
import { h, km } from "../../mechanics/quantity/unit.ts";
import type { MeterVerdict } from "../../mechanics/service/meter.ts";

/** A reading of a list as it was written, and what it is to the last that can be believed; null for the first. */
export type CheckedInWords = {
  readonly on: string;
  readonly text: string;
  readonly line: number;
  readonly verdict: MeterVerdict | null;
};

/** Whether a list of readings can be believed, then each one that cannot, with what would explain it. */
export function meterListLines(checked: readonly CheckedInWords[]): readonly string[] {
  const odd = checked.filter(({ verdict }) => verdict !== null && verdict.type !== "plausible");
  return [
    odd.length === 0
      ? `All ${checked.length} readings can follow one another.`
      : `${odd.length} of ${checked.length} readings ${odd.length === 1 ? "needs" : "need"} a look.`,
    ...odd.map(({ on, text, line, verdict }) => `  line ${line}, ${on}, ${text}: ${verdict ? meterText(verdict) : ""}`),
    ...(odd.length === 0 ? [] : ["", "Why", "  Each is held against the last one before it that can be believed."]),
  ];
}

/** What a reading is to the one before, in a clause; nothing where it is plausible. */
export function meterText(verdict: MeterVerdict): string {
  switch (verdict.type) {
    case "plausible":
      return "";
    case "falling":
      return "it reads less than before, and nothing explains it.";
    case "too fast":
      return "nothing is used that much in the time.";
    case "unit changed":
      return verdict.of === "later"
        ? `a jump of 1.609: it fits if it was read in ${verdict.readIn}, ${counted(verdict.corrected)}. Look at the meter.`
        : `a jump of 1.609: the reading before fits if it was in ${verdict.readIn}, ${counted(verdict.corrected)}. Look at the meter.`;
    case "rolled over":
      return `the meter began again at nought after ${verdict.after}; counted on it is ${counted(verdict.corrected)}.`;
    case "different meters":
      return "it is of another meter: distance and hours do not follow one another.";
    case "dates out of order":
      return "its day lies before that of the reading above.";
    default:
      return verdict satisfies never;
  }
}

const counted = (it: Quantity): string =>
  it.unit.kind === "time" ? `${Math.round(valueIn(h, it))} h` : `${Math.round(valueIn(km, it))} km`;
