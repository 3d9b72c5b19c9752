import { exact, type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { h, km, km_d } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import { fallbackDistance, h_d } from "../../../mechanics/service/dueUse.ts";
import { checkedReadings } from "../../../mechanics/service/meterList.ts";
import { type CheckedInWords, meterListLines } from "../../../sheets/words/meterWords.ts";
import { meterReadingsIn } from "../meterReadings.ts";
import { digits, print, workingLines } from "../print.ts";

type Options = { readonly working?: boolean; readonly json?: boolean };

/** Whether the readings of a meter can follow one another. @throws InputMistake */
export function meterList(file: string, options: Options): void {
  const written = meterReadingsIn(file);
  const hours = written[0]?.meter.unit.kind === "time";
  const checked: readonly CheckedInWords[] = checkedReadings(written, hours ? ordinaryHours : fallbackDistance).map(
    (it, i) => ({ ...it, text: written[i]?.text ?? "", line: written[i]?.line ?? 0 }),
  );
  const rates = checked.flatMap(({ verdict }) => (verdict && "rate" in verdict && verdict.rate ? [verdict.rate] : []));
  const steps = working(...rates);
  const document = {
    plausible: checked.every(({ verdict }) => verdict === null || verdict.type === "plausible"),
    readings: checked.map(readingDocument),
    working: steps,
  };
  print(options.json ?? false, document, [...meterListLines(checked), ...(options.working ? workingLines(steps) : [])]);
}

function readingDocument({ on, text, verdict }: CheckedInWords) {
  const rate = verdict && "rate" in verdict ? verdict.rate : null;
  const hours = rate?.unit === h_d;
  const corrected = verdict && "corrected" in verdict ? verdict.corrected : null;
  return {
    on,
    meter: text,
    verdict: verdict?.type ?? null,
    perDay_km: rate && !hours ? digits(valueIn(km_d, rate), 3) : null,
    perDay_h: rate && hours ? digits(valueIn(h_d, rate), 3) : null,
    of: verdict?.type === "unit changed" ? verdict.of : null,
    readIn: verdict?.type === "unit changed" ? verdict.readIn : null,
    corrected_km: corrected && corrected.unit.kind === "length" ? digits(valueIn(km, corrected), 7) : null,
    corrected_h: corrected && corrected.unit.kind === "time" ? digits(valueIn(h, corrected), 7) : null,
  };
}

/** A third of the day: three times that is the day itself, and nothing above it is ordinary. */
const ordinaryHours: Quantity = exact("r", 8, h_d, "a working day (judgement)");
