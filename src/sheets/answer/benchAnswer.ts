import { lbf_ft } from "../../mechanics/quantity/unit.ts";
import type { Assumption } from "../../mechanics/remedies/givenCase.ts";
import { type Weighed, weigh } from "../../mechanics/remedies/weigh.ts";
import type { WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import { readCase } from "../caseForm/readCase.ts";
import type { BenchSign } from "../words/benchWords.ts";
import { pullFigure, torqueFigure } from "../words/figures.ts";
import { nextSentence } from "../words/measurementWords.ts";
import type { InputProblem } from "../words/problemWords.ts";
import { refusalSentence } from "../words/refusalWords.ts";
import { answerSentence } from "../words/windowWords.ts";
import { answerFirst } from "./answerFirst.ts";
import { cautionsByPlace, foundReasons } from "./reasons.ts";

/** A port weighed for the bench, or what could not be read of it. */
export type BenchWeighed =
  | { readonly ok: true; readonly weighed: Weighed; readonly ordinary: readonly Assumption[] }
  | { readonly ok: false; readonly problems: readonly InputProblem[] };

/** The answer of the bench in figures, as they are read, and sentences. */
export type BenchAnswer = {
  readonly sign: BenchSign;
  readonly narrow: boolean;
  /** The torque to pull, N·m and lbf·ft, as its wrench sets it; null where none is advised. */
  readonly figure: { readonly newtonMetres: string; readonly poundFeet: string } | null;
  readonly sentences: readonly string[];
  readonly because: string;
  readonly next: { readonly sentence: string; readonly field: string | null } | null;
  readonly reasons: readonly string[];
  readonly cautions: readonly string[];
};

/** Reads a case and weighs it; `today` stands in where it names no day. */
export function weighBench(written: unknown, today: string): BenchWeighed {
  const read = readCase(written, today);
  return read.ok
    ? { ok: true, weighed: weigh(read.given), ordinary: read.ordinary }
    : { ok: false, problems: read.problems };
}

/** The answer for the port as found. */
export function benchAnswer(weighed: Weighed): BenchAnswer {
  const { asFound } = weighed;
  const sentences = answerFirst(weighed);
  const reasons = foundReasons(weighed).filter((it) => !said(it, sentences, asFound));
  return {
    sign: signOf(weighed),
    narrow: asFound.window?.open === true && asFound.window.narrow,
    figure: figureOf(asFound),
    sentences,
    because: reasons.slice(0, becauses).join(" "),
    reasons: reasons.slice(becauses),
    next: nextOf(weighed),
    cautions: cautionsByPlace(weighed)
      .filter(({ where }) => where === "port" || (where !== "cutting" && asFound.closure.heldOtherwise))
      .map(({ text }) => text),
  };
}

/** What is caught, and what that stands: the two reasons that are said with the answer. */
const becauses = 2;

const said = (reason: string, sentences: readonly string[], closure: WeighedClosure): boolean =>
  reason === answerSentence(closure) || sentences.some((it) => it.includes(reason));

function signOf({ asFound, health }: Weighed): BenchSign {
  const { advice, refused } = asFound;
  if (refused) return "refused";
  if (health.healthy) return advice?.type === "pull" ? "book figure" : "look again";
  if (advice?.type === "pull") return "pull";
  return advice?.type === "no wrench sets this" ? "no wrench" : advice ? "no torque" : "look again";
}

function figureOf({ advice }: WeighedClosure): BenchAnswer["figure"] {
  if (advice?.type !== "pull") return null;
  return { newtonMetres: pullFigure(advice.torque_Nm), poundFeet: torqueFigure(advice.torque_Nm / lbf_ft.inSI) };
}

/** What to do next at the port: the open question that stands in the way, or the reading that is worth most. */
function nextOf({ asFound, next }: Weighed): BenchAnswer["next"] {
  const reason = asFound.refused?.reason;
  if (reason?.type === "question open") return { sentence: refusalSentence(reason), field: `asked.${reason.question}` };
  if (reason?.type === "kind of joint not said") return { sentence: refusalSentence(reason), field: "joint.kind" };
  if (reason?.type === "breather blocked") return { sentence: refusalSentence(reason), field: "asked.breather" };
  if (reason?.type === "not counted") return { sentence: refusalSentence(reason), field: "left.turns" };
  if (reason?.type === "alloy not tested") return { sentence: refusalSentence(reason), field: "asked.alloyTested" };
  const sentence = nextSentence(next.measurements);
  if (sentence === null) return null;
  const worth = next.measurements.find((it) => it.worthIt);
  return { sentence, field: worth?.reading ?? null };
}
