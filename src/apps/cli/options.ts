import { exact, type Quantity } from "../../mechanics/quantity/quantity.ts";
import { quantityFromText } from "../../mechanics/quantity/quantityText.ts";
import type { Kind } from "../../mechanics/quantity/unit.ts";
import { metricThreadFromText } from "../../mechanics/threads/metricText.ts";
import type { MetricThread } from "../../mechanics/threads/metricThread.ts";
import { acceptedQuantity, acceptedThread } from "../../sheets/words/problemWords.ts";
import { mistaken } from "./mistake.ts";

/** A quantity given as an option. @throws InputMistake if it cannot be read. */
export function quantityOption(name: string, symbol: string, kind: Kind, example: string, text: string): Quantity {
  const read = quantityFromText(text, kind);
  if (!read.ok) throw mistaken(name, text, acceptedQuantity(read.problem, `"${example}"`));
  return exact(symbol, read.written.value, read.written.unit);
}

/** The same for a quantity that cannot lie at or below nothing. */
export function positiveOption(name: string, symbol: string, kind: Kind, example: string, text: string): Quantity {
  const quantity = quantityOption(name, symbol, kind, example, text);
  if (quantity.value <= 0) throw mistaken(name, text, `more than nothing, as "${example}"`);
  return quantity;
}

/** A metric thread given as an argument or option. @throws InputMistake if it names none. */
export function threadOption(name: string, text: string): MetricThread {
  const read = metricThreadFromText(text);
  if (!read.ok) throw mistaken(name, text, acceptedThread(read.problem));
  return read.thread;
}
