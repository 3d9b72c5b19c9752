import type { ComponentChildren } from "preact";
import type { PortSection as Section } from "../../mechanics/joint/section.ts";
import { type Box, rounded } from "./lettering.ts";
import { BeforeAfter } from "./section/BeforeAfter.tsx";
import { PortSection } from "./section/PortSection.tsx";
import { sectionLayout } from "./section/sectionLayout.ts";
import { pairLayout } from "./section/sideBySide.ts";
import { WindowBar } from "./window/WindowBar.tsx";
import { comparedLayout, WindowsCompared } from "./window/WindowsCompared.tsx";
import { windowLayout } from "./window/windowLayout.ts";
import type { WindowProps } from "./window/windowProps.ts";

/** One closure as it is drawn: its section, and its window unless it is refused. */
export type DrawnClosure = {
  readonly caption: string;
  readonly section: Section;
  readonly window: WindowProps | null;
};

type Drawing = { readonly name: string; readonly view: Box; readonly picture: ComponentChildren };

/** Width of the sheet and of the gap between its drawings, in units of its own. */
const width = 400;
const gap = 10;

/** The sheet of an answer: the joint as found, what would be done beside it on the same scale, and the windows below. */
export function AnswerSheet({ before, after }: { readonly before: DrawnClosure; readonly after: DrawnClosure | null }) {
  const drawings = [sectionDrawing(before, after), ...windowDrawing(before.window, after?.window ?? null)];
  const heights = drawings.map(({ view }) => (width * view.height) / view.width);
  const total = heights.reduce((sum, it) => sum + it + gap, -gap);
  return (
    <svg class="drawing" viewBox={`0 0 ${width} ${rounded(total)}`} role="img">
      <title>{after ? `${before.caption}; ${after.caption}` : before.caption}</title>
      <rect class="paper" x={0} y={0} width={width} height={rounded(total)} />
      {drawings.map(({ name, picture }, i) => (
        <svg
          x={0}
          y={rounded(heights.slice(0, i).reduce((sum, it) => sum + it + gap, 0))}
          width={width}
          height={rounded(heights[i] ?? 0)}
        >
          <title>{name}</title>
          {picture}
        </svg>
      ))}
    </svg>
  );
}

function sectionDrawing(before: DrawnClosure, after: DrawnClosure | null): Drawing {
  const name = "The port in section";
  if (after)
    return { name, view: pairLayout(before, after).view, picture: <BeforeAfter before={before} after={after} /> };
  const { section, caption } = before;
  return {
    name,
    view: sectionLayout(section, caption).view,
    picture: <PortSection section={section} caption={caption} />,
  };
}

function windowDrawing(before: WindowProps | null, after: WindowProps | null): readonly Drawing[] {
  const name = "The torque window";
  if (before && after) {
    const picture = <WindowsCompared before={before} after={after} />;
    return [{ name, view: comparedLayout(before, after).view, picture }];
  }
  const only = before ?? after;
  return only ? [{ name, view: windowLayout(only).view, picture: <WindowBar {...only} /> }] : [];
}
