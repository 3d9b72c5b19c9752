import type { ComponentChildren } from "preact";
import type { PortSection as Section } from "../../mechanics/joint/section.ts";
import { BeforeAfter } from "./BeforeAfter.tsx";
import type { Box } from "./lettering.ts";
import { PortSection } from "./PortSection.tsx";
import { sectionLayout } from "./sectionLayout.ts";
import { pairLayout } from "./sideBySide.ts";
import { WindowBar } from "./WindowBar.tsx";
import { type WindowProps, windowLayout } from "./windowLayout.ts";

/** One closure as it is drawn: its section, and its window unless it is refused. */
export type DrawnClosure = {
  readonly caption: string;
  readonly section: Section;
  readonly window: WindowProps | null;
};

/** Width of the sheet and of the gap between its drawings, in units of its own. */
const width = 760;
const gap = 14;

/** The sheet of an answer: the joint as found, what would be done beside it on the same scale, and a window under each. */
export function AnswerSheet({ before, after }: { readonly before: DrawnClosure; readonly after: DrawnClosure | null }) {
  const pair = after && pairLayout(before, after);
  const drawing = pair ? pair.view : sectionLayout(before.section, before.caption).view;
  const top = { x: 0, y: 0, ...fitted(drawing, pair ? width : width * 0.62) };
  const bars = [before, ...(after ? [after] : [])].flatMap(({ window }) => (window ? [window] : []));
  const barWidth = pair ? (width - gap) / 2 : width * 0.62;
  const places = bars.map((props, i) => {
    const place = fitted(windowLayout(props).view, barWidth);
    const column = pair && bars.length === 1 && before.window === null ? 1 : i;
    return { props, x: column * (barWidth + gap), y: top.height + gap, ...place };
  });
  const height = places.reduce((lowest, it) => Math.max(lowest, it.y + it.height), top.height);
  const sheetWidth = pair ? width : width * 0.62;
  return (
    <svg class="drawing" viewBox={`0 0 ${round(sheetWidth)} ${round(height)}`} role="img">
      <title>{after ? `${before.caption}; ${after.caption}` : before.caption}</title>
      <rect class="paper" x={0} y={0} width={round(sheetWidth)} height={round(height)} />
      <Placed at={top}>
        {after ? (
          <BeforeAfter before={before} after={after} />
        ) : (
          <PortSection section={before.section} caption={before.caption} />
        )}
      </Placed>
      {places.map(({ props, ...place }) => (
        <Placed at={place}>
          <WindowBar {...props} />
        </Placed>
      ))}
    </svg>
  );
}

function Placed({ at, children }: { readonly at: Box; readonly children: ComponentChildren }) {
  return (
    <svg x={round(at.x)} y={round(at.y)} width={round(at.width)} height={round(at.height)}>
      {children}
    </svg>
  );
}

const fitted = (view: Box, to: number): { width: number; height: number } => ({
  width: to,
  height: (to * view.height) / view.width,
});

const round = (x: number): number => Math.round(x * 100) / 100;
