import { exact, type Quantity } from "../../mechanics/quantity/quantity.ts";
import { quantityFromText } from "../../mechanics/quantity/quantityText.ts";
import type { Kind } from "../../mechanics/quantity/unit.ts";
import { metricThreadFromText } from "../../mechanics/threads/metricText.ts";
import type { MetricThread } from "../../mechanics/threads/metricThread.ts";
import { isTaper, type TaperThread, type Thread } from "../../mechanics/threads/thread.ts";
import { threadFromText } from "../../mechanics/threads/threadText.ts";
import { acceptedQuantity } from "../../sheets/words/problemWords.ts";
import { acceptedAnyThread, acceptedThread } from "../../sheets/words/threadProblemWords.ts";
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

/** A parallel thread of any standard, which a clamp force acts in. @throws InputMistake if it names none, or a taper one. */
export function parallelThreadOption(name: string, text: string): Exclude<Thread, TaperThread> {
  const read = threadFromText(text);
  if (!read.ok) throw mistaken(name, text, acceptedAnyThread(read.problem));
  const { thread } = read;
  if (isTaper(thread))
    throw mistaken(
      name,
      text,
      `a parallel thread${thread.type === "Rp" ? ` with a parallel plug, as "G ${thread.size}"` : ""}: a taper one wedges and clamps nothing`,
    );
  return thread;
}

/** A metric thread given as an argument or option. @throws InputMistake if it names none. */
export function threadOption(name: string, text: string): MetricThread {
  const read = metricThreadFromText(text);
  if (!read.ok) throw mistaken(name, text, acceptedThread(read.problem));
  return read.thread;
}
