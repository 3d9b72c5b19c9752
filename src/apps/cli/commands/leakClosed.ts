import { densityAt } from "../../../mechanics/fluid/expansion.ts";
import { headPressure } from "../../../mechanics/fluid/leakHead.ts";
import { type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { kPa } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import { closedLines } from "../../../sheets/words/passageWords.ts";
import { type ClosedCaseFound, type ClosedOptions, closedCase } from "../closedCase.ts";
import { densityOf } from "../oilAt.ts";
import { positiveOption } from "../options.ts";
import { decimals, digits, print, workingLines } from "../print.ts";

type Options = ClosedOptions & { readonly head?: string; readonly working?: boolean; readonly json?: boolean };

/** What builds up in a case whose breather is blocked, and how many times a head it is. @throws InputMistake */
export function closedBreather(closedAt: string, options: Options): void {
  const found = closedCase(closedAt, options);
  const head = options.head === undefined ? null : headUnder(options.head, found, options);
  const times = head && found.pressure.value > 0 ? 1 + found.pressure.value / head.value : null;
  const steps = working(found.pressure, ...(head ? [head] : []));
  print(
    options.json ?? false,
    {
      ...closedDocument(found),
      timesAsMuch: times === null ? null : digits(times, 2),
      assumed: found.assumed,
      working: steps,
    },
    [
      ...closedLines(found, options.oil ?? "", closedAt, times === null ? null : { times, head: options.head ?? "" }),
      ...(options.working ? workingLines(steps) : []),
    ],
  );
}

/** The keys of a closed case, in its own answer and inside that of a flow. */
export const closedDocument = ({ dry, pressure, water, verdict }: ClosedCaseFound) => ({
  closed_kPa: tenths(pressure),
  dry_kPa: tenths(dry),
  freeWater: water,
  verdict,
});

const tenths = (it: Quantity): number => decimals(valueIn(kPa, it), 1) + 0;

function headUnder(text: string, { to }: ClosedCaseFound, options: Options): Quantity {
  const h = positiveOption("--head", "h", "length", "10 mm", text);
  const rho = densityAt(densityOf(options).rho_60, to);
  if (!rho.ok) throw new TypeError("a temperature that was in range before");
  return headPressure(rho.result, h);
}
