import { path } from "../hatch.ts";
import { type Box, rounded } from "../lettering.ts";
import { placed, viewBox } from "../section/PortSection.tsx";
import { WindowFigure } from "./WindowBar.tsx";
import { torquesOf, type WindowLayout, windowLayout } from "./windowLayout.ts";
import type { WindowProps } from "./windowProps.ts";
import { windowInWords } from "./windowWords.ts";

/** Two windows one above the other on one axis. */
export function WindowsCompared({ before, after }: { readonly before: WindowProps; readonly after: WindowProps }) {
  const { view, first, second, below } = comparedLayout(before, after);
  return (
    <svg class="drawing" viewBox={viewBox(view)} font-size={first.letter} role="img">
      <title>{`${before.caption}; ${after.caption}`}</title>
      <desc>{[before, after].map((it) => `${it.caption}: ${windowInWords(it)}`).join(" ")}</desc>
      <rect class="paper" {...placed(view)} />
      <WindowFigure props={before} layout={first} />
      <path
        class="thin line"
        d={path([
          [0, first.view.height],
          [view.width, first.view.height],
        ])}
      />
      <g transform={`translate(0 ${rounded(below)})`}>
        <WindowFigure props={after} layout={second} />
      </g>
    </svg>
  );
}

/** Where the two windows lie; `below` is where the second begins. */
export type ComparedLayout = {
  readonly view: Box;
  readonly first: WindowLayout;
  readonly second: WindowLayout;
  readonly below: number;
};

export function comparedLayout(before: WindowProps, after: WindowProps): ComparedLayout {
  const shown = [...torquesOf(before), ...torquesOf(after)];
  const [first, second] = [windowLayout(before, shown), windowLayout(after, shown)];
  const below = first.view.height + 0.6 * first.letter;
  return { view: { ...first.view, height: below + second.view.height }, first, second, below };
}
