import { hatching, path } from "../hatch.ts";
import { Lettering } from "../LetteringBlock.tsx";
import { rounded } from "../lettering.ts";
import { viewBox } from "../section/PortSection.tsx";
import { type FannedLimit, limitFanLayout } from "./limitFanLayout.ts";

/** Levels read on the way, and the fan in which the level may reach its limit: act on its near edge. */
export function LimitFan(limit: FannedLimit) {
  const it = limitFanLayout(limit);
  return (
    <svg
      class="drawing"
      viewBox={viewBox({ x: 0, y: 0, width: it.width, height: it.height })}
      font-size={it.letter}
      role="img"
    >
      <title>Distance to the limit</title>
      <desc>{it.sentence}</desc>
      <rect class="paper" x={0} y={0} width={it.width} height={rounded(it.height)} />
      {it.fan.length > 0 && <path class="hatch" d={hatching(it.fan, 0.7 * it.letter, 1)} />}
      {it.fan.length > 0 && <path class="thin line" d={path(it.fan, true)} />}
      {it.line.length > 0 && <path class="edge line" d={path(it.line)} />}
      {it.act.length > 0 && <path class="ghost line" d={path(it.act)} />}
      <path class="heavy stop-edge line" d={path(it.limit)} />
      <path class="edge line" d={path(it.frame)} />
      <path class="edge line" d={it.ticks.map((tick) => path(tick)).join("")} />
      {it.points.map(([x, y]) => (
        <circle class="ink" cx={rounded(x)} cy={rounded(y)} r={4} />
      ))}
      <Lettering labels={it.labels} />
    </svg>
  );
}
