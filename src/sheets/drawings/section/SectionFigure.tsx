import type { PortSection } from "../../../mechanics/joint/section.ts";
import type { Insert } from "../../../mechanics/joint/sectionInput.ts";
import {
  boreRadius_mm,
  crestRadius_mm,
  type DrawnTurn,
  type Outline,
} from "../../../mechanics/joint/sectionOutline.ts";
import { brokenEdge, hatching, path, type XY } from "../hatch.ts";
import { BungFigure } from "./BungFigure.tsx";
import { wallDrawn } from "./sectionLayout.ts";

/** What the figure of one half of a section is drawn with. */
type FigureProps = {
  readonly section: PortSection;
  /** Which side of the axis is cut open; the plug is seen uncut for `cut` millimetres on the other. */
  readonly side: 1 | -1;
  readonly cut: number;
  readonly headTop: number;
  readonly letter: number;
};

/** One half of a port in section, cut open on one side of its axis. One unit is one millimetre. */
export function SectionFigure(props: FigureProps) {
  const { section, side, letter } = props;
  const name = side === 1 ? "right" : "left";
  const turns = section.turns.filter((turn) => turn.side === name);
  return (
    <g>
      <Behind {...props} />
      <Case {...props} />
      {section.insert && <InsertFigure insert={section.insert} {...props} />}
      {!section.bung && <Plug {...props} />}
      {turns.map((turn) => (
        <Turn turn={turn} section={section} open={section.surface === "wet sealant" ? "sealant" : "paper"} />
      ))}
      {section.sealParts
        .filter(({ outline }) => outline.every(({ x_mm }) => side * x_mm >= 0))
        .map(({ material, outline }) => (
          <g>
            <path class={`${sealInk[material]} edge`} d={path(points(outline), true)} />
            {material === "sealant" && <path class="hatch" d={hatching(points(outline), 0.3 * letter, 1)} />}
            {material === "ring" && <path class="hatch" d={hatching(points(outline), 0.5 * letter, 1)} />}
            {material === "ring" && <path class="hatch" d={hatching(points(outline), 0.5 * letter, -1)} />}
          </g>
        ))}
      {section.bung ? <BungFigure pieces={section.bung} {...props} /> : <Head {...props} />}
    </g>
  );
}

const sealInk = { ring: "amber", rubber: "rubber", sealant: "sealant", chamfer: "paper" } as const;

function Case({ section, side, letter, cut }: FigureProps) {
  const { depth_mm, d_mm, wall_mm } = section;
  const outer = side * (d_mm / 2 + wallDrawn(section));
  const wallKnown = section.wallKnown && wallDrawn(section) === wall_mm;
  const wall: readonly XY[] = wallKnown
    ? [
        [outer, 0],
        [outer, depth_mm],
      ]
    : brokenEdge([outer, 0], [outer, depth_mm], 0.5 * letter);
  const inner = (y: number): XY => [side * boreRadius_mm(section, y), y];
  const outline: readonly XY[] = [inner(0), ...wall, inner(depth_mm)];
  return (
    <g>
      <path class="casting bare" d={path(outline, true)} />
      <path class="hatch" d={hatching(outline, 0.62 * letter, side)} />
      <path class="edge line" d={path([inner(depth_mm), inner(0), ...wall.slice(0, 1)])} />
      <path class={`${wallKnown ? "edge" : "thin"} line`} d={path(wall)} />
      <path class="edge line" d={path([[-side * cut, depth_mm], ...wall.slice(-1)])} />
    </g>
  );
}

/** What lies between the plug and the casting, hatched against both. */
function InsertFigure({ insert, section, side, letter }: FigureProps & { readonly insert: Insert }) {
  const [inner, outer] = [(side * section.d_mm) / 2, (side * insert.outer_mm) / 2];
  const outline: readonly XY[] = [
    [inner, insert.from_mm],
    [outer, insert.from_mm],
    [outer, insert.to_mm],
    [inner, insert.to_mm],
  ];
  return (
    <g>
      <path class={`${insertInk[insert.material]} bare`} d={path(outline, true)} />
      <path class="hatch" d={hatching(outline, 0.45 * letter, side === 1 ? -1 : 1)} />
      <path class="flank line" d={path(outline)} />
    </g>
  );
}

const insertInk = { steel: "steel", resin: "sealant" } as const;

function Plug({ section, side, cut, letter }: FigureProps) {
  const flank = section.plug.filter(({ x_mm }) => side * x_mm > 0).toSorted((a, b) => a.y_mm - b.y_mm);
  const [top, tip] = [flank[0], flank.at(-1)];
  if (!top || !tip) return null;
  const half: readonly XY[] = [[0, top.y_mm], ...points(flank), [0, tip.y_mm]];
  const broken = brokenEdge([-side * cut, tip.y_mm], [-side * cut, top.y_mm], 0.5 * letter);
  return (
    <g>
      <path class="steel bare" d={path([...half, ...broken], true)} />
      <path class="hatch" d={hatching(half, 0.95 * letter, side === 1 ? -1 : 1)} />
      <HelixLines section={section} side={side} cut={cut} />
      <path class="flank line" d={path([...points(flank), [0, tip.y_mm], ...broken.slice(0, 1)])} />
      <path class="thin line" d={path(broken)} />
    </g>
  );
}

/** The crests of the plug where it is seen uncut: a right-hand helix rises from left to right in front. */
function HelixLines({ section, side, cut }: Pick<FigureProps, "section" | "side" | "cut">) {
  const { P_mm, engaged_mm, reach_mm, seat_mm } = section;
  const at = (x: number, y: number): number =>
    y + side * (P_mm / 2) * (1 / 2 - (side * Math.asin(x / crestRadius_mm(section, y))) / Math.PI);
  const count = Math.ceil((reach_mm + seat_mm) / P_mm) + 2;
  const crests = Array.from({ length: count }, (_, i) => engaged_mm + (1 - i) * P_mm + (side === -1 ? P_mm / 2 : 0));
  const lines = crests
    .map(
      (y) =>
        [
          [0, at(0, y)],
          [-side * cut, at(-side * cut, y)],
        ] as const,
    )
    .filter((line) => line.every(([, y]) => y > -seat_mm && y < reach_mm));
  return <path class="thin line" d={lines.map((line) => path(line)).join("")} />;
}

/** One turn; `open` is the ink of what fills the room of missing metal where the plug is. */
function Turn({
  turn: { turn, metal, whole },
  section,
  open,
}: {
  readonly turn: DrawnTurn;
  readonly section: PortSection;
  readonly open: "paper" | "sealant";
}) {
  switch (turn.state) {
    case "sound":
      return (
        <path
          class={`${section.insert?.material === "resin" ? "sealant" : "ink"} edge`}
          d={path(points(metal), true)}
        />
      );
    case "worn":
      return (
        <g>
          <path class={`${open} bare`} d={path(points(whole), true)} />
          <path class="ink bare" d={path(points(metal), true)} />
          <path class="dotted" d={path(awayFromWall(whole, section))} />
        </g>
      );
    case "gone":
      return (
        <g>
          <path class={`${open} bare`} d={path(points(whole), true)} />
          <path class="ghost" d={path(drawnIn(awayFromWall(whole, section)))} />
        </g>
      );
    case "beyond the plug":
      return (
        <g>
          <path class="casting bare" d={path(points(metal), true)} />
          <path class="edge line" d={path(awayFromWall(metal, section))} />
        </g>
      );
    default:
      return turn.state satisfies never;
  }
}

function Head({ section, side, cut, headTop, letter }: FigureProps) {
  const seat = -section.seat_mm;
  const radius = side * section.headRadius_mm;
  const top = brokenEdge([radius, headTop], [-side * cut, headTop], 0.5 * letter);
  const left = brokenEdge([-side * cut, headTop], [-side * cut, seat], 0.5 * letter);
  const inHalf = top.filter(([x]) => side * x >= 0);
  const half: readonly XY[] = [[0, seat], [radius, seat], ...inHalf, [0, inHalf.at(-1)?.[1] ?? headTop]];
  return (
    <g>
      <path class="steel bare" d={path([[-side * cut, seat], [radius, seat], ...top, ...left], true)} />
      <path class="hatch" d={hatching(half, 0.95 * letter, side === 1 ? -1 : 1)} />
      <path class="edge line" d={path([[-side * cut, seat], [radius, seat], ...top.slice(0, 1)])} />
      <path class="thin line" d={path([...top, ...left])} />
    </g>
  );
}

/** What stands behind: a line with ground strokes, broken where nobody measured how far it is. */
function Behind({ section, side, cut, letter }: FigureProps) {
  const { behind_mm, behindKnown, d_mm } = section;
  const [from, to] = [-cut, d_mm / 2 + wallDrawn(section)];
  const [x1, x2] = side === 1 ? [from, to] : [-to, -from];
  const ground: readonly XY[] = [
    [x1, behind_mm],
    [x2, behind_mm],
    [x2, behind_mm + 0.8 * letter],
    [x1, behind_mm + 0.8 * letter],
  ];
  return (
    <g>
      {behindKnown && <path class="hatch" d={hatching(ground, 0.45 * letter, 1)} />}
      <path class={`edge line${behindKnown ? "" : " unknown"}`} d={path(ground.slice(0, 2))} />
    </g>
  );
}

const points = (outline: Outline): readonly XY[] => outline.map(({ x_mm, y_mm }) => [x_mm, y_mm]);

/** The outline of a tooth as an open line that begins and ends at the wall it grows from. */
function awayFromWall(outline: Outline, section: PortSection): readonly XY[] {
  const atWall = (point: Outline[number] | undefined): boolean =>
    point !== undefined && Math.abs(point.x_mm) > boreRadius_mm(section, point.y_mm) - 1e-9;
  const start = outline.findIndex((point, i) => atWall(point) && atWall(outline.at(i - 1)));
  return points([...outline.slice(start), ...outline.slice(0, start)]);
}

/** A tooth's line drawn in towards the wall, so that a missing tooth shows beside the plug's flanks that bound it. */
function drawnIn(line: readonly XY[]): readonly XY[] {
  const [first, last] = [line[0] ?? [0, 0], line.at(-1) ?? [0, 0]];
  const [wall, middle] = [first[0], (first[1] + last[1]) / 2];
  return line.map(([x, y]) => [wall + 0.68 * (x - wall), middle + 0.68 * (y - middle)]);
}
