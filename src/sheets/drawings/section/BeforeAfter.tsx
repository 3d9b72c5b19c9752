import { sectionInWords } from "../drawingWords.ts";
import { path } from "../hatch.ts";
import { Lettering, LetteringBlock } from "../LetteringBlock.tsx";
import { rounded } from "../lettering.ts";
import { Arrow, placed, TurnsBracket, viewBox } from "./PortSection.tsx";
import { SectionFigure } from "./SectionFigure.tsx";
import { type Captioned, type Half, type PairLayout, pairLayout } from "./sideBySide.ts";

/** A joint before and after a remedy, back to back on one scale with the case face on one line. One unit is one millimetre. */
export function BeforeAfter({ before, after }: { readonly before: Captioned; readonly after: Captioned }) {
  const layout = pairLayout(before, after);
  const { view, letter, strip } = layout;
  return (
    <svg class="drawing" viewBox={viewBox(view)} font-size={rounded(letter)} role="img">
      <title>{`${before.caption}; ${after.caption}`}</title>
      <desc>{[before, after].map(({ caption, section }) => `${caption}: ${sectionInWords(section)}`).join(" ")}</desc>
      <rect class="paper" {...placed(view)} />
      {layout.halves.map((half) => (
        <HalfFigure half={half} layout={layout} />
      ))}
      <path
        class="edge line"
        d={path([
          [strip.x, strip.y],
          [strip.x + strip.width, strip.y],
        ])}
      />
      <path
        class="thin line"
        d={path([
          [0, strip.y],
          [0, strip.y + strip.height],
        ])}
      />
    </svg>
  );
}

function HalfFigure({ half, layout }: { readonly half: Half; readonly layout: PairLayout }) {
  const { section, side, axis, cut, behind } = half;
  const { letter, headTop } = layout;
  return (
    <g>
      <Lettering labels={half.caption} />
      <Lettering labels={half.closure} />
      <g transform={`translate(${rounded(axis)} 0)`}>
        <SectionFigure section={section} side={side} cut={cut} headTop={headTop} letter={letter} />
        <path
          class="axis line"
          d={path([
            [0, headTop - 0.3 * letter],
            [0, section.tip_mm + 1.2 * letter],
          ])}
        />
        <path
          class="thin line"
          d={path([
            [behind.x, section.depth_mm],
            [behind.x, section.behind_mm],
          ])}
        />
        <Arrow x={behind.x} y={section.depth_mm} up letter={letter} />
        <Arrow x={behind.x} y={section.behind_mm} up={false} letter={letter} />
        <LetteringBlock block={behind.block} ground="paper" letter={letter} />
        {half.brackets.map((bracket) => (
          <TurnsBracket bracket={bracket} section={section} letter={letter} side={side} />
        ))}
      </g>
    </g>
  );
}
