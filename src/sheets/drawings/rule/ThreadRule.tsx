import { path } from "../hatch.ts";
import { Lettering } from "../LetteringBlock.tsx";
import { inTenths, rounded } from "../lettering.ts";
import { viewBox } from "../section/PortSection.tsx";
import { type RuledThreads, type RuleRow, threadRuleLayout } from "./threadRuleLayout.ts";

/** The likeliest threads laid along a steel rule from a crest at 0: where the last crest would lie, and where it was read. */
export function ThreadRule(ruled: RuledThreads) {
  const { width, height, letter, rows, labels } = threadRuleLayout(ruled);
  return (
    <svg class="drawing" viewBox={viewBox({ x: 0, y: 0, width, height })} font-size={letter} role="img">
      <title>Threads on the rule</title>
      <desc>{described(ruled)}</desc>
      <rect class="paper" x={0} y={0} width={width} height={rounded(height)} />
      {rows.map((row) => (
        <Row row={row} />
      ))}
      <Lettering labels={labels} />
    </svg>
  );
}

function Row({ row }: { readonly row: RuleRow }) {
  return (
    <g>
      <path class="steel bare" d={path(row.rule, true)} />
      {row.band.length > 0 && <path class="paper thin" d={path(row.band, true)} />}
      <path class="thin line" d={row.marks.map((mark) => path(mark)).join("")} />
      <path class="edge line" d={row.ruleEdges.map((edge) => path(edge)).join("")} />
      {row.reading.length > 0 && <path class="heavy line" d={path(row.reading)} />}
      <path class="steel edge" d={path(row.plug, true)} />
      <path class="ink bare" d={path(row.ridge, true)} />
    </g>
  );
}

const described = ({ threads, read }: RuledThreads): string =>
  [
    ...(read ? [`read at ${inTenths(read.at_mm)} mm`] : []),
    ...threads.map(({ designation, P_mm, crest }) => `${designation}: crest ${crest} at ${inTenths(crest * P_mm)} mm`),
  ].join("; ");
