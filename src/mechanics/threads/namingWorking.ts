import { formula } from "../quantity/formula.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { mm, one } from "../quantity/unit.ts";
import type { ThreadEvidence } from "./namingEvidence.ts";
import { along, taperChange } from "./namingLikelihood.ts";
import type { ThreadCandidate, ThreadNaming } from "./threadName.ts";

/** The pitch P that a length over gaps or turns speaks for, if they were gaps; null for other evidence. */
export function pitchRead(evidence: ThreadEvidence): Quantity | null {
  const counted = countedLength(evidence);
  return counted && pitchFromLength(counted);
}

/** What a count along the thread, or its taper, would read on a candidate; null for other evidence. */
export function lengthExpected(evidence: ThreadEvidence, { thread }: ThreadCandidate): Quantity | null {
  const source = `nominal, ${thread.designation}`;
  if (evidence.type === "taper") return taperChange({ t: exact("t", thread.taper, one, source), l: evidence.over });
  if (evidence.type === "hole taper")
    return taperChange({ t: exact("t", thread.holeTaper, one, source), l: evidence.over });
  const counted = countedLength(evidence);
  return counted && along({ N: counted.N, P: exact("P", thread.P_mm, mm, source) });
}

/** How many times likelier the first candidate of a naming is than its second. */
export function oddsOfFirst({ candidates, warnings }: ThreadNaming): Quantity {
  const [first, second] = candidates;
  if (!first || !second) throw new RangeError("fewer than two candidates");
  const e = exact("e", warnings.includes("foreign plug") ? 0.5 : 1, one, "weights of a foreign plug drawn together");
  const symbols = (it: ThreadCandidate, i: 1 | 2) => ({
    w: exact(`w_${i}`, it.thread.weight, one, `how common ${it.designation} is (judgement)`),
    l: exact(`l_${i}`, logLikelihood(it), one, `readings, if it is ${it.designation}`),
  });
  const [a, b] = [symbols(first, 1), symbols(second, 2)];
  return odds({ w_1: a.w, w_2: b.w, e, l_1: a.l, l_2: b.l });
}

const pitchFromLength = formula("P = L / N", { L: mm, N: one, P: mm }, "ISO 68-1:1998, definition of pitch, solved");
const odds = formula(
  "O = (w_1 / w_2)^e * exp(l_1 - l_2)",
  { w_1: one, w_2: one, e: one, l_1: one, l_2: one, O: one },
  "Bayes' rule; weights w are judgement, l adds the logarithms of the likelihoods of the readings",
);

function countedLength(evidence: ThreadEvidence): { readonly N: Quantity; readonly L: Quantity } | null {
  switch (evidence.type) {
    case "gaps":
      return { N: exact("N", evidence.count, one, "counted"), L: evidence.length };
    case "travel":
      return { N: exact("N", evidence.turns, one, "counted"), L: evidence.length };
    case "outside diameter":
    case "pitch gauge":
    case "pitch":
    case "bore":
    case "taper":
    case "hole taper":
    case "mesh":
    case "hexagon":
      return null;
    default:
      return evidence satisfies never;
  }
}

const logLikelihood = ({ pieces }: ThreadCandidate): number =>
  pieces.reduce((sum, piece) => sum + piece.logLikelihood, 0);
