import type { FirstQuestion } from "../../mechanics/remedies/portCase.ts";
import type { Refusal, RefusalReason } from "../../mechanics/remedies/refusalRules.ts";
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
      return "A taper thread or no seal at all is not covered by the torque window.";
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

/** Who may take a refusal on himself. */
export const overrideWords: Readonly<Record<Refusal["override"], string>> = {
  never: "Nobody overrides it.",
  "name and reason": "Whoever overrides it gives his name and a reason.",
  "answer them": "Answered, it is weighed.",
  "free it": "Freed, it is weighed.",
};

const cutting = ["a wire-coil insert or a solid bushing", "a new part"];
const fullStrength = "a longer plug where it restores the full turns";

/** What is allowed where a make-do is refused. */
export function allowedInstead({ reason }: Refusal): readonly string[] {
  switch (reason.type) {
    case "structure":
      return ["an insert or a bushing by the maker's procedure", "a new part", "it stays here until then"];
    case "working pressure":
      return ["a rated repair by the maker's procedure", "a solid bushing rated for the pressure", "a new part"];
    case "water jacket sealed by sealant alone":
      return [
        "another seal, with a pressure test at the cap's value",
        "a wire-coil insert, sealed and tested",
        "a new part",
      ];
    case "combustion":
      return ["a solid bushing or a wire-coil insert made for it", "another cylinder head"];
    case "motorcycle sump":
      return ["a wire-coil insert with lockwire", "a solid bushing", fullStrength, "a new cover"];
    case "oil reaches":
      return [...cutting, fullStrength];
    case "water side without a passed test":
      return ["pressure and vacuum test first", "a solid bushing, then the test", "ashore until then"];
    case "crack":
      return ["welding by a specialist, part off", "an adaptor plate on sound metal", "a new part"];
    case "too few turns":
    case "slides over":
    case "thread gone":
    case "too little height":
      return [...cutting, fullStrength, "an expanding bung while it stands, locked against running"];
    case "not counted":
      return ["count the turns by hand, with a paint dot"];
    case "same method again":
      return ["name what was different last time", ...cutting];
    case "people":
      return [...cutting, fullStrength];
    case "question open":
      return ["answer the question"];
    case "kind of joint not said":
      return ["name the kind of joint"];
    case "breather blocked":
      return ["free the breather, then weigh again"];
    case "alloy not tested":
      return ["test the alloy first", "a new part"];
    case "method not for this port":
      return ["another method of this list", "a new part"];
    case "seal not covered":
      return ["name the seal that closes it", "paste or tape for taper threads, by their own rules"];
    default:
      return reason satisfies never;
  }
}
