import type { RemedyId } from "../../mechanics/remedies/method.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { BeforeAfter } from "../drawings/section/BeforeAfter.tsx";
import { standaloneSvg } from "../drawings/standalone.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { sectionAfter, sectionOf, sectionRepaired } from "./pictures.ts";

/** A port before and after a remedy in section; null where the remedy leaves nothing to draw a plug in. */
export function methodSvg(weighed: Weighed, id: RemedyId): string | null {
  const { portCase, asFound } = weighed;
  const before = { caption: "As found", section: sectionOf(portCase, asFound) };
  const after = sectionAfter(id, weighed) ?? sectionRepaired(id, weighed);
  return after && standaloneSvg(<BeforeAfter before={before} after={{ caption: remedyNames[id], section: after }} />);
}
