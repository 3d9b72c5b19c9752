import type { CureClocks } from "../../../mechanics/cure/clocks.ts";
import { hatching, path, type XY } from "../hatch.ts";
import { Lettering, LetteringBlock } from "../LetteringBlock.tsx";
import { labelBox } from "../lettering.ts";
import { placed, viewBox } from "../section/PortSection.tsx";
import { type CureClockLayout, cureClockLayout } from "./cureClockLayout.ts";

type Props = {
  readonly clocks: CureClocks;
  readonly caption: string;
  /** The two answers in words: "3 h" or "14:40". */
  readonly splashText: string;
  readonly throughText: string;
};

/** The two clocks of a sealed joint on one bar: when it may be splashed, and when it is cured through. */
export function CureClock({ clocks, caption, splashText, throughText }: Props) {
  const layout = cureClockLayout(clocks, caption, splashText, throughText);
  const { view, bar, letter, splash, through } = layout;
  const right = bar.x + bar.width;
  return (
    <svg class="drawing" viewBox={viewBox(view)} font-size={letter} role="img">
      <title>{caption}</title>
      <desc>{`May be splashed ${splashText}; cured through ${throughText}.`}</desc>
      <rect class="paper" {...placed(view)} />
      <Lettering labels={layout.labels} />
      <path class="amber bare" d={path(zone(layout, bar.x, splash), true)} />
      <path class="hatch" d={hatching(zone(layout, bar.x, splash), 0.5 * letter, 1)} />
      <path class="hatch" d={hatching(zone(layout, splash, through), letter, 1)} />
      <path class="sealant bare" d={path(zone(layout, through, right), true)} />
      <path class="edge line" d={path(zone(layout, bar.x, right), true)} />
      <Edge x={splash} layout={layout} />
      <Edge x={through} layout={layout} />
      <Range layout={layout} />
      {layout.zones.map((label) => (
        <LetteringBlock
          block={{ id: label.text, labels: [label], box: labelBox(label) }}
          ground="paper"
          letter={letter}
        />
      ))}
      <Lettering labels={layout.ticks} />
    </svg>
  );
}

/** Where a clock runs out: a heavy stroke through the bar, up to its answer. */
function Edge({ x, layout: { bar, letter } }: { readonly x: number; readonly layout: CureClockLayout }) {
  return (
    <path
      class="heavy line"
      d={path([
        [x, bar.y - 0.7 * letter],
        [x, bar.y + bar.height + 0.3 * letter],
      ])}
    />
  );
}

/** How early and how late the bead may be cured through, as a bracket over the bar. */
function Range({ layout: { soonest, latest, bar, letter } }: { readonly layout: CureClockLayout }) {
  const [foot, head] = [bar.y - 1.1 * letter, bar.y - 1.6 * letter];
  return (
    <path
      class="edge line"
      d={path([
        [soonest, foot],
        [soonest, head],
        [latest, head],
        [latest, foot],
      ])}
    />
  );
}

function zone({ bar }: CureClockLayout, from: number, to: number): readonly XY[] {
  const bottom = bar.y + bar.height;
  return [
    [from, bar.y],
    [to, bar.y],
    [to, bottom],
    [from, bottom],
  ];
}
