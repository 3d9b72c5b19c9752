import { withBung } from "../../mechanics/joint/bungSection.ts";
import { valueIn } from "../../mechanics/quantity/quantity.ts";
import { mm } from "../../mechanics/quantity/unit.ts";
import type { RemedyId } from "../../mechanics/remedies/method.ts";
import type { Weighed } from "../../mechanics/remedies/weigh.ts";
import { BeforeAfter } from "../drawings/section/BeforeAfter.tsx";
import { standaloneSvg } from "../drawings/standalone.ts";
import { remedyNames } from "../words/remedyWords.ts";
import { sectionAfter, sectionOf, sectionRepaired } from "./pictures.ts";

/** Two states of a port in section, each as it was found. */
export function portsSvg(before: Found, after: Found): string {
  const found = ({ weighed: { portCase, asFound }, caption }: Found) => ({
    caption,
    section: sectionOf(portCase, asFound),
  });
  return standaloneSvg(<BeforeAfter before={found(before)} after={found(after)} />);
}

type Found = { readonly weighed: Weighed; readonly caption: string };

/** A port before and after a remedy in section; null where the remedy leaves nothing to draw a plug in. */
export function methodSvg(weighed: Weighed, id: RemedyId): string | null {
  const { portCase, asFound } = weighed;
  const before = { caption: "As found", section: sectionOf(portCase, asFound) };
  const after =
    id === "expanding bung"
      ? withBung(before.section, valueIn(mm, portCase.port.thread.D_1))
      : (sectionAfter(id, weighed) ?? sectionRepaired(id, weighed));
  return after && standaloneSvg(<BeforeAfter before={before} after={{ caption: remedyNames[id], section: after }} />);
}
