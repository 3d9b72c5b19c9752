import type { Block } from "./block.ts";
import { type Label, rounded } from "./lettering.ts";

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

/** A block of lettering on a plain ground, for where it stands on hatching. */
export function LetteringBlock(props: {
  readonly block: Block;
  readonly ground: string;
  readonly letter: number;
  readonly ink?: string;
}) {
  const { block, ground, letter, ink = "" } = props;
  const { x, y, width, height } = block.box;
  const margin = 0.12 * letter;
  return (
    <g>
      <rect
        class={`${ground} bare`}
        x={rounded(x - margin)}
        y={rounded(y)}
        width={rounded(width + 2 * margin)}
        height={rounded(height)}
      />
      <Lettering labels={block.labels} ink={ink} />
    </g>
  );
}
