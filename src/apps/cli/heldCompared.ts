import { type HeldCase, watched } from "../../mechanics/service/heldCases.ts";
import { exactFailures } from "../../mechanics/service/kaplanMeier.ts";
import { logRank } from "../../mechanics/service/kaplanMeierCompared.ts";
import type { ComparedInWords } from "../../sheets/words/heldWords.ts";
import { mistaken } from "./mistake.ts";
import { digits } from "./print.ts";

/** Two methods held against one another by the log-rank test. @throws InputMistake */
export function heldCompared(text: string, cases: readonly HeldCase[]): ComparedInWords {
  const [a, b, ...more] = text.split(",").map((it) => it.trim());
  if (!a || !b || more.length > 0 || a === b)
    throw mistaken("--compare", text, 'two methods, as "sealant, longer plug"');
  const [first, second] = [watchesOf(a, cases), watchesOf(b, cases)];
  const test = logRank(first, second);
  return { methods: [a, b], chiSquare: test && digits(test.chiSquared, 4), p: test && digits(test.p, 3) };
}

function watchesOf(method: string, cases: readonly HeldCase[]) {
  const seen = cases.flatMap((it) => (it.method === method ? (watched(it) ?? []) : []));
  if (seen.length === 0) {
    const known = [...new Set(cases.filter((it) => watched(it) !== null).map((it) => it.method))];
    throw mistaken("--compare", method, known.join(", "));
  }
  const exact = exactFailures(seen);
  if (!exact) throw mistaken("--compare", method, "a method whose failures are all known to the day");
  return exact;
}
