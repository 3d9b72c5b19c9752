import { hatching, path, type XY } from "../hatch.ts";
import { Lettering } from "../LetteringBlock.tsx";
import { rounded } from "../lettering.ts";
import { viewBox } from "../section/PortSection.tsx";
import { type GaugedLevel, type LevelGaugeLayout, levelGaugeLayout } from "./levelGaugeLayout.ts";

/** The level beside its round hole on a hook rule: lip, allowance, oil line, and the millilitres to the next mark. */
export function LevelGauge(level: GaugedLevel) {
  const it = levelGaugeLayout(level);
  const across = (y: number): string =>
    path([
      [it.marks.left, y],
      [it.marks.right, y],
    ]);
  return (
    <svg
      class="drawing"
      viewBox={viewBox({ x: 0, y: 0, width: it.width, height: it.height })}
      font-size={it.letter}
      role="img"
    >
      <title>Level</title>
      <desc>{it.sentence}</desc>
      <rect class="paper" x={0} y={0} width={it.width} height={rounded(it.height)} />
      <circle class="paper edge" cx={rounded(it.hole.x)} cy={rounded(it.hole.y)} r={it.hole.radius} />
      <path class="amber bare" d={path(it.oil, true)} />
      <path class="hatch" d={hatching(it.band, 0.6 * it.letter, 1)} />
      <path class="edge line" d={path(it.wall, true)} />
      <path class="edge line" d={across(it.lipY)} />
      <path class="ghost line" d={across(it.lowestY)} />
      <path class="heavy line" d={across(it.levelY)} />
      <HookRule {...it.rule} />
      {it.toNext && <Dimension {...it.toNext} />}
      <Lettering labels={it.labels} />
    </svg>
  );
}

function HookRule({ body, hook, ticks }: LevelGaugeLayout["rule"]) {
  return (
    <>
      <path class="steel edge" d={path(body, true)} />
      <path class="edge line" d={path(hook)} />
      {ticks.map((tick) => (
        <path class="flank line" d={path(tick)} />
      ))}
    </>
  );
}

/** A dimension line with a short stroke at each end. */
function Dimension({ x, from, to }: NonNullable<LevelGaugeLayout["toNext"]>) {
  const end = (y: number): readonly XY[] => [
    [x - 4, y],
    [x + 4, y],
  ];
  return (
    <path
      class="edge line"
      d={
        path([
          [x, from],
          [x, to],
        ]) +
        path(end(from)) +
        path(end(to))
      }
    />
  );
}
