import type { PortSection as Section } from "../../../mechanics/joint/section.ts";
import { sectionInWords } from "../drawingWords.ts";
import { path } from "../hatch.ts";
import type { Box } from "../lettering.ts";
import { placed, viewBox } from "./PortSection.tsx";
import { SectionFigure } from "./SectionFigure.tsx";
import { halfWidth, headTopOf } from "./sectionLayout.ts";

/** A section without lettering, for a row of them on one scale: `view` is the same for all. One unit is one millimetre. */
export function SmallSection(props: { readonly section: Section; readonly view: Box; readonly caption: string }) {
  const { section, view, caption } = props;
  const letter = letterFor(section);
  return (
    <svg class="drawing" viewBox={viewBox(view)} font-size={letter} role="img">
      <title>{`${caption}. ${sectionInWords(section)}`}</title>
      <rect class="paper" {...placed(view)} />
      <SectionFigure
        section={section}
        side={1}
        cut={cutOf(section)}
        headTop={headTopOf(section, letter)}
        letter={letter}
      />
      <path
        class="axis line"
        d={path([
          [0, headTopOf(section, letter) - letter],
          [0, section.tip_mm + 1.5 * letter],
        ])}
      />
    </svg>
  );
}

/** The sheet that holds every one of some sections on one scale. */
export function commonView(sections: readonly Section[]): Box {
  const most = (of: (section: Section) => number): number => Math.max(...sections.map(of));
  const left = most(cutOf) + 0.6;
  const top = most((it) => -headTopOf(it, letterFor(it)) + letterFor(it)) + 0.6;
  const right = most(halfWidth) + 0.8;
  const bottom = most((it) => Math.max(it.tip_mm + 1.5 * letterFor(it), it.behind_mm + 1.3 * letterFor(it)));
  return { x: -left, y: -top, width: left + right, height: top + bottom };
}

/** Widths of lines and hatching go by the size of lettering that is not there. */
const letterFor = ({ d_mm }: Section): number => Math.max(1, d_mm / 14);
const cutOf = ({ d_mm }: Section): number => 0.4 * d_mm;
