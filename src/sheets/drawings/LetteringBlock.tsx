import type { Block } from "./block.ts";
import { type Box, type Label, rounded } from "./lettering.ts";

/** Lines of lettering where a layout put them; `ink` overrides the class that colours them. */
export function Lettering({ labels, ink }: { readonly labels: readonly Label[]; readonly ink?: string }) {
  return (
    <>
      {labels.map(({ text, x, y, size, anchor, bold }) => (
        <text
          class={[bold ? "bold" : "", ink ?? ""].filter((it) => it !== "").join(" ") || undefined}
          x={rounded(x)}
          y={rounded(y)}
          font-size={rounded(size)}
          text-anchor={anchor === "start" ? undefined : anchor}
        >
          {text}
        </text>
      ))}
    </>
  );
}

/** A block of lettering on a plain ground, for where it stands on hatching; below `ends` there is paper in place of that ground. */
export function LetteringBlock(props: {
  readonly block: Block;
  readonly ground: string;
  readonly letter: number;
  readonly ends?: number;
  readonly ink?: string;
}) {
  const { block, ground, letter, ends = Number.POSITIVE_INFINITY, ink = "" } = props;
  const { y, height } = block.box;
  const [top, bottom] = [y, y + height];
  const edge = Math.min(bottom, Math.max(top, ends));
  return (
    <g>
      <Ground name={ground} box={{ ...block.box, height: edge - top }} margin={0.12 * letter} />
      <Ground name="paper" box={{ ...block.box, y: edge, height: bottom - edge }} margin={0.12 * letter} />
      <Lettering labels={block.labels} ink={ink} />
    </g>
  );
}

function Ground({ name, box, margin }: { readonly name: string; readonly box: Box; readonly margin: number }) {
  const { x, y, width, height } = box;
  if (height <= 0) return null;
  return (
    <rect
      class={`${name} bare`}
      x={rounded(x - margin)}
      y={rounded(y)}
      width={rounded(width + 2 * margin)}
      height={rounded(height)}
    />
  );
}
