import type { Refusal } from "../../mechanics/remedies/refusalRules.ts";

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
    case "taper thread":
      return [
        "cleaned, with paste or tape for taper threads, and by its turns",
        "the maker's figure where there is one",
        "cut anew by somebody with the reamer, tap and gauge for it",
        "a new part",
      ];
    default:
      return reason satisfies never;
  }
}
