import { hatching, path, type XY } from "./hatch.ts";
import { Lettering } from "./LetteringBlock.tsx";
import { inWhole, type Label, rounded } from "./lettering.ts";
import { viewBox } from "./PortSection.tsx";

type Props = {
  /** Against the lower lip, negative below it. */
  readonly level_mm: number;
  readonly lowest_mm: number;
  readonly perHeight_ml_mm: number;
};

const width = 360;
const letter = 15;
const left = 24;
const tank = { left: 150, right: 336, top: 3.6 * letter };
/** The hole as drawn: its lower lip stands at 0 mm. */
const hole = { radius: 34 };

/** The level beside its hole on a hook rule: lip, allowance, oil line, and the millilitres to the lip. */
export function LevelGauge({ level_mm, lowest_mm, perHeight_ml_mm }: Props) {
  const deepest = Math.min(level_mm, lowest_mm) - 4;
  const scale = Math.min(9, 190 / Math.max(12, -deepest));
  const lipY = tank.top + 2 * hole.radius;
  const at = (mm: number): number => lipY - mm * scale;
  const bottom = at(deepest);
  const oil: readonly XY[] = rectangle(tank.left, tank.right, at(level_mm), bottom);
  const band: readonly XY[] = rectangle(tank.left, tank.right, lipY, at(lowest_mm));
  // Two digits are what a hook and a syringe earn.
  const short = Number((-level_mm * perHeight_ml_mm).toPrecision(2));
  const height = bottom + 3.2 * letter;
  return (
    <svg class="drawing" viewBox={viewBox({ x: 0, y: 0, width, height })} font-size={letter} role="img">
      <title>Level</title>
      <desc>{`Oil ${inWhole(Math.abs(level_mm))} mm ${level_mm <= 0 ? "below" : "above"} the lip, ${inWhole(Math.abs(short))} ml.`}</desc>
      <rect class="paper" x={0} y={0} width={width} height={rounded(height)} />
      <path class="amber bare" d={path(oil, true)} />
      <path class="hatch" d={hatching(band, 0.6 * letter, 1)} />
      <path class="edge line" d={path(rectangle(tank.left, tank.right, tank.top - 0.6 * letter, bottom), true)} />
      <circle class="paper edge" cx={(tank.left + tank.right) / 2} cy={rounded(lipY - hole.radius)} r={hole.radius} />
      <Mark y={lipY} />
      <Mark y={at(lowest_mm)} dashed />
      <path
        class="heavy line"
        d={path([
          [tank.left, at(level_mm)],
          [tank.right, at(level_mm)],
        ])}
      />
      <Rule at={at} deepest={deepest} />
      <Lettering labels={[...names(lipY, at(lowest_mm), at(level_mm)), ...answer(level_mm, short, height)]} />
    </svg>
  );
}

function Mark({ y, dashed = false }: { readonly y: number; readonly dashed?: boolean }) {
  return (
    <path
      class={dashed ? "ghost line" : "edge line"}
      d={path([
        [tank.left - 40, y],
        [tank.right, y],
      ])}
    />
  );
}

/** A hook rule beside the case: a stroke for every millimetre, a longer one for every fifth. */
function Rule({ at, deepest }: { readonly at: (mm: number) => number; readonly deepest: number }) {
  const marks = Array.from({ length: Math.floor(-deepest) + 1 }, (_, i) => -i);
  return (
    <>
      {marks.map((mm) => (
        <path
          class="thin line"
          d={path([
            [tank.left - 8, at(mm)],
            [tank.left - (mm % 5 === 0 ? 22 : 14), at(mm)],
          ])}
        />
      ))}
    </>
  );
}

/** Names at the left, pushed down where two marks lie close. */
function names(lipY: number, lowestY: number, levelY: number): readonly Label[] {
  const wishes = [
    { text: "lip", y: lipY },
    { text: "lowest", y: lowestY },
    { text: "oil", y: levelY },
  ].toSorted((a, b) => a.y - b.y);
  let above = Number.NEGATIVE_INFINITY;
  return wishes.map(({ text, y }) => {
    const baseline = Math.max(y + 0.35 * letter, above + 1.15 * letter);
    above = baseline;
    return { text, x: left, y: baseline, size: letter, anchor: "start", bold: text === "oil" };
  });
}

function answer(level_mm: number, short: number, height: number): readonly Label[] {
  const down = `${inWhole(Math.abs(level_mm))} mm ${level_mm <= 0 ? "below" : "above"} the lip`;
  const missing = `about ${inWhole(Math.abs(short))} ml ${short >= 0 ? "short" : "over"}`;
  return [
    { text: down, x: left, y: 1.4 * letter, size: 1.15 * letter, anchor: "start", bold: true },
    { text: missing, x: left, y: height - 1.1 * letter, size: 1.6 * letter, anchor: "start", bold: true },
  ];
}

const rectangle = (x1: number, x2: number, y1: number, y2: number): readonly XY[] => [
  [x1, y1],
  [x2, y1],
  [x2, y2],
  [x1, y2],
];
