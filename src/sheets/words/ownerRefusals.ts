import type { RefusalReason } from "../../mechanics/remedies/refusalRules.ts";

/** Why it cannot stay as it is, for an owner: one sentence without a word of the trade. */
export function ownerRefusal(reason: RefusalReason): string {
  switch (reason.type) {
    case "structure":
      return "This part holds the machine together: only the maker's own repair will do.";
    case "working pressure":
      return "The fluid here is under pressure: a makeshift would burst out.";
    case "water jacket sealed by sealant alone":
      return "Hot coolant under pressure is not held by sealant alone.";
    case "combustion":
      return "Every explosion in the engine pushes at this part: a makeshift would be blown out.";
    case "motorcycle sump":
      return "Oil from here gets onto the rear tyre: a makeshift could bring you down.";
    case "oil reaches":
      return `A leak here would reach the ${reason.what}: we make no makeshift there.`;
    case "water side without a passed test":
      return "There is water on the other side: it is tested for tightness before it goes back in.";
    case "crack":
      return "The housing is cracked there: no bolt will hold in it.";
    case "too few turns":
    case "slides over":
    case "thread gone":
    case "too little height":
      return "Too little of the thread is left to hold a bolt.";
    case "not counted":
      return "We have not measured yet how much of the thread is left.";
    case "same method again":
      return "The same repair has failed here before.";
    case "people":
      return "Others depend on this machine: we make no makeshift on it.";
    case "question open":
    case "kind of joint not said":
      return "We have not asked everything yet.";
    case "breather blocked":
      return "The case cannot breathe and pushes its oil out: that is put right first.";
    case "seal not covered":
    case "taper thread":
      return "This kind of seal needs its own repair.";
    case "alloy not tested":
      return "We have to find out first which metal this is.";
    case "method not for this port":
      return "That repair does not suit this place.";
    default:
      return reason satisfies never;
  }
}
