import type { SeparatingMeasurement } from "../../mechanics/threads/namingSeparate.ts";
import type { ThreadNaming } from "../../mechanics/threads/threadName.ts";

/** The one measurement that tells the first candidate from its nearest rival, in one sentence. */
export function separatingSentence({ candidates, rivals, separateBy }: ThreadNaming): string {
  if (separateBy) {
    const [a, b] = separateBy.between;
    const doubt = separateBy.wrong > 0.1 ? ", though doubt may stay" : "";
    return `${how(separateBy)}: that tells ${a} from ${b}${doubt}.`;
  }
  const [first, second] = candidates;
  const rival = rivals[0] ?? second?.designation;
  const otherwise = onePlug(first?.designation, rival)
    ? "the same R plug closes both"
    : "hold it against a plug that is known";
  return `No other reading at the lift tells ${first?.designation} from ${rival}: ${otherwise}.`;
}

/** Whether two are the taper and the parallel hole for one plug, so that no plug tells them apart. */
const onePlug = (a = "", b = ""): boolean => a !== b && a.replace(/^Rp /, "R ") === b.replace(/^Rp /, "R ");

function how(by: SeparatingMeasurement): string {
  switch (by.type) {
    case "gaps":
      return `Lay it along a rule with light behind, 0 on a crest, the next crest is "one", at least ${by.atLeast} gaps`;
    case "outside diameter":
      return "Caliper over the middle threads of the good plug";
    case "two diameters":
      return `Caliper the plug at two places ${by.apart_mm} mm apart, the same or ${(by.apart_mm / 16).toFixed(1)} mm more`;
    case "spin a known plug":
      return `Spin a known ${by.known} into the hole by hand, ${by.freeTurns} easy turns speak for it and tight sooner means stop`;
    case "pitch gauge":
      return `Lay in the leaves ${by.leaves_mm.map(leafMarked).join(" and ")}, which one sits without light`;
    case "bore":
      return "Inside jaws at the mouth of the hole, the narrowest reading";
    case "two bores":
      return `Inside jaws past the first turn of the hole and ${by.apart_mm} mm deeper, the same or ${(by.apart_mm / 16).toFixed(1)} mm less`;
    default:
      return by satisfies never;
  }
}

/** A leaf as it is marked: a pitch in mm, or threads to the inch, which no metric pitch comes near. */
export function leafMarked(P_mm: number): string {
  const perInch = 25.4 / P_mm;
  const marked = Math.round(2 * perInch) / 2;
  return Math.abs(perInch - marked) < 1e-3 ? `${marked}/in` : `${Number(P_mm.toFixed(3))} mm`;
}
