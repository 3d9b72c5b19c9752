import { useComputed } from "@preact/signals";
import type { SumState } from "./sumState.ts";

/** The figure that is read from under the lift, in sight while readings are made. */
export function SumFigure({ state }: { readonly state: SumState }) {
  const { answer, mistakes } = state;
  const sign = useComputed(() => answer.value?.sign ?? (mistakes.value.size > 0 ? "Not read" : "Not yet"));
  const stop = useComputed(() => answer.value?.stop ?? mistakes.value.size > 0);
  const figure = answer.value?.figure ?? null;
  return (
    <div class="main-figure sum" data-stop={stop.value ? "" : undefined}>
      <p class="sign">{sign}</p>
      {figure && (
        <p class={figure.value.length > shortFigure ? "figure long" : "figure"}>
          <b>{figure.value}</b>
          <span class="units">
            {figure.unit !== "" && <span>{figure.unit}</span>}
            {figure.also !== "" && <span class="also">{figure.also}</span>}
          </span>
        </p>
      )}
    </div>
  );
}

/** Letters that stand in the main size on the smallest phone. */
const shortFigure = 8;
