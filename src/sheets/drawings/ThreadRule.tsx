import { path, type XY } from "./hatch.ts";
import { Lettering } from "./LetteringBlock.tsx";
import { type Label, rounded } from "./lettering.ts";
import { viewBox } from "./PortSection.tsx";

type Props = {
  readonly threads: readonly { readonly designation: string; readonly P_mm: number }[];
  readonly gaps: number;
  /** Where the last crest was read on the rule; null where nobody counted. */
  readonly read_mm: number | null;
};

const width = 360;
const letter = 15;
const left = 16;
const row = 4.1 * letter;
const tooth = 1.1 * letter;

/** The likeliest threads laid along a steel rule from a crest at nought: where their last crest would lie, and where it was read. */
export function ThreadRule({ threads, gaps, read_mm }: Props) {
  const longest = Math.max(read_mm ?? 0, ...threads.map(({ P_mm }) => gaps * P_mm));
  const scale = (width - 2 * left - 0.5 * letter) / (longest * 1.06);
  const at = (x_mm: number): number => left + x_mm * scale;
  const ruleY = 2.4 * letter + threads.length * row;
  const height = ruleY + 4.4 * letter;
  return (
    <svg class="drawing" viewBox={viewBox({ x: 0, y: 0, width, height })} font-size={letter} role="img">
      <title>Threads on the rule</title>
      <desc>
        {threads
          .map(({ designation, P_mm }) => `${designation}: ${gaps} gaps reach ${(gaps * P_mm).toFixed(1)} mm`)
          .join("; ")}
      </desc>
      <rect class="paper" x={0} y={0} width={width} height={rounded(height)} />
      {threads.map(({ P_mm }, i) => (
        <Flanks P_mm={P_mm} gaps={gaps} at={at} foot={2.4 * letter + (i + 0.72) * row} ruleY={ruleY} />
      ))}
      <Rule at={at} y={ruleY} longest_mm={longest * 1.04} />
      {read_mm !== null && (
        <path
          class="heavy line"
          d={path([
            [at(read_mm), 2 * letter],
            [at(read_mm), ruleY + 1.2 * letter],
          ])}
        />
      )}
      <Lettering labels={labels(threads, gaps, read_mm, at, ruleY)} />
    </svg>
  );
}

type At = (x_mm: number) => number;

/** One thread's outline from crest to crest, and a fine line from its last crest down to the rule. */
function Flanks(props: {
  readonly P_mm: number;
  readonly gaps: number;
  readonly at: At;
  readonly foot: number;
  readonly ruleY: number;
}) {
  const { P_mm, gaps, at, foot, ruleY } = props;
  const outline: readonly XY[] = Array.from(
    { length: 2 * gaps + 1 },
    (_, i): XY => [at((i * P_mm) / 2), i % 2 === 0 ? foot - Math.min(tooth, at(P_mm) - left) : foot],
  );
  const end = at(gaps * P_mm);
  return (
    <>
      <path class="steel edge" d={path([...outline, [end, foot + 6], [left, foot + 6]], true)} />
      <path
        class="ghost line"
        d={path([
          [end, foot + 6],
          [end, ruleY],
        ])}
      />
    </>
  );
}

function Rule({ at, y, longest_mm }: { readonly at: At; readonly y: number; readonly longest_mm: number }) {
  const marks = Array.from({ length: Math.floor(2 * longest_mm) + 1 }, (_, i) => i / 2);
  return (
    <>
      <path
        class="edge line"
        d={path([
          [at(0), y],
          [at(longest_mm), y],
        ])}
      />
      {marks.map((mm) => (
        <path
          class="thin line"
          d={path([
            [at(mm), y],
            [at(mm), y + (mm % 5 === 0 ? 16 : mm % 1 === 0 ? 10 : 5)],
          ])}
        />
      ))}
    </>
  );
}

function labels(
  threads: Props["threads"],
  gaps: number,
  read_mm: number | null,
  at: At,
  ruleY: number,
): readonly Label[] {
  const label = (text: string, x: number, y: number, anchor: Label["anchor"], bold = false, size = letter): Label => ({
    text,
    x,
    y,
    size,
    anchor,
    bold,
  });
  const read = read_mm === null ? `${gaps} gaps` : `${gaps} gaps read at ${read_mm.toFixed(1)} mm`;
  const fives = Array.from({ length: 40 }, (_, i) => 5 * i).filter((mm) => at(mm) < width - 1.2 * letter);
  return [
    label(read, left, 1.4 * letter, "start", true, 1.1 * letter),
    ...threads.flatMap(({ designation, P_mm }, i) => {
      const y = 2.4 * letter + (i + 0.32) * row;
      return [
        label(designation, left, y, "start", i === 0, 1.1 * letter),
        label(`${(gaps * P_mm).toFixed(1)} mm`, width - left, y, "end", i === 0),
      ];
    }),
    ...fives.map((mm) => label(String(mm), at(mm), ruleY + 2.3 * letter, "middle")),
    label("mm", width - left, ruleY + 3.7 * letter, "end"),
  ];
}
