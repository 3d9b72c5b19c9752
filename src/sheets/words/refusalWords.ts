import type { FirstQuestion } from "../../mechanics/remedies/portCase.ts";
import type { RefusalReason } from "../../mechanics/remedies/refusalRules.ts";
import { turnsWord } from "./figures.ts";
import { remedyNames } from "./remedyWords.ts";

/** Why a make-do is refused, in one sentence. */
export function refusalSentence(reason: RefusalReason): string {
  switch (reason.type) {
    case "structure":
      return "Brakes, steering, suspension, wheels, restraints and clamp bolts take no make-do: the maker's repair only.";
    case "working pressure":
      return "Fluid under working pressure takes no make-do and no other kind of seal.";
    case "water jacket sealed by sealant alone":
      return "The water side of an engine is not closed by sealant alone.";
    case "combustion":
      return "Combustion pressure drives the part out: no make-do there, and no other plug or seal than its own.";
    case "motorcycle sump":
      return "Oil from a motorcycle sump reaches the rear tyre: no make-do there.";
    case "oil reaches":
      return `The oil can reach ${reason.what === "exhaust" ? "an" : "a"} ${reason.what} in use: no make-do there.`;
    case "water side without a passed test":
      return "Water stands on the other side and no pressure and vacuum test has been passed.";
    case "crack":
      return "The boss is cracked or metal is missing: no thread in it holds anything.";
    case "too few turns":
      return `${turnsWord(wholeQuarters(reason.caught))} caught; ${reason.underOil ? "a port always under oil" : "a make-do"} takes at least ${turnsWord(reason.least)}.`;
    case "slides over":
      return "The plug slides over the thread: nothing catches.";
    case "thread gone":
      return "The thread is gone.";
    case "too little height":
      return "Less than a quarter of the thread's height is left.";
    case "not counted":
      return "Nobody has counted the turns: without a count there is nothing to weigh.";
    case "same method again":
      return `The same again (${remedyNames[reason.method].toLowerCase()}) on this port needs a different cause to be named.`;
    case "people":
      return "A failure would strand or endanger people: hire, emergency use, towing others and drinking water take no make-do.";
    case "question open":
      return `Not answered yet: ${questionText[reason.question]}`;
    case "kind of joint not said":
      return 'The kind of joint is "other": say what it is before anything is weighed.';
    case "breather blocked":
      return "The breather is blocked: it pushes oil past any repair.";
    case "seal not covered":
      return "A taper plug or no seal at all is not covered by the torque window.";
    case "taper thread":
      return `${reason.thread} seals on its own flanks: no washer to close, so this method has no torque window for it.`;
    case "alloy not tested":
      return "The light alloy has not been tested: no welding or grinding before the magnesium question is answered.";
    case "method not for this port":
      return "This method does not suit this kind of port.";
    default:
      return reason satisfies never;
  }
}

/** Turns rounded down, so that too few never read as enough. */
const wholeQuarters = (turns: number): number => Math.floor(4 * turns + 1e-9) / 4;

const questionText: Readonly<Record<FirstQuestion, string>> = {
  crack: "is there a crack or missing metal?",
  pressure: "is it under pressure?",
  reaches: "what can the fluid reach (tyre, brake, exhaust, belt, water)?",
  people: "does it carry people for hire, serve emergencies, tow others or stand in a drinking-water catchment?",
  repairedBefore: "was it repaired here before, and by what?",
  breather: "is the breather free?",
};
