import type { RemedyId } from "../../mechanics/remedies/method.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { BeforeAfter } from "../drawings/BeforeAfter.tsx";
import { standaloneSvg } from "../drawings/standalone.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { sectionOf } from "./pictures.ts";

/** A port before and after a remedy in section; null where the remedy leaves nothing to draw a plug in. */
export function methodSvg(weighed: Weighed, id: RemedyId): string | null {
  const { portCase, asFound, remedies, repairs } = weighed;
  const before = { caption: "As found", section: sectionOf(portCase, asFound) };
  const remedy = remedies.find((it) => it.id === id);
  const repair = repairs.find((it) => it.id === id);
  const after = remedy
    ? sectionOf(portCase, remedy)
    : repair?.closed && repair.repaired
      ? sectionOf(repair.repaired, repair.closed, repair.insert)
      : null;
  return after && standaloneSvg(<BeforeAfter before={before} after={{ caption: remedyNames[id], section: after }} />);
}
