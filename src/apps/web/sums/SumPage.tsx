import type { ComponentChildren, ComponentType } from "preact";
import { useEffect } from "preact/hooks";
import { SumFigure } from "./SumFigure.tsx";
import { SumOutcome } from "./SumOutcome.tsx";
import { SumReading } from "./SumReading.tsx";
import type { SumBench, SumPart } from "./sumBench.ts";
import { type SumState, sumState } from "./sumState.ts";

type Props = { readonly bench: SumBench; readonly state: SumState };

/** The page of a bench of one sum: what is read, and beside it what that comes to. */
export function sumPage(bench: SumBench): ComponentType {
  return function SumPage() {
    const state = sumState(bench.name);
    useEffect(() => state.reckon(), [state]);
    return (
      <div class="bench">
        <div class="figure-strip">
          <SumFigure state={state} />
        </div>
        <div class="readings">
          {bench.parts.map((part) => (
            <Part key={part.id} bench={bench} state={state} part={part} />
          ))}
          {bench.further && (
            <Fold state={state} part={bench.further}>
              {state.opened.value.has(bench.further.id) && <bench.further.Page />}
            </Fold>
          )}
          <Anew state={state} />
        </div>
        <div class="outcome">
          <SumOutcome bench={bench} state={state} />
        </div>
      </div>
    );
  };
}

/** Clears the bench; what was cleared away can be taken back until something else stands there. */
function Anew({ state }: { readonly state: SumState }) {
  const { started, cleared } = state;
  if (!started.value && !cleared.value) return null;
  return (
    <p class="begin anew">
      <button type="button" class="plain" onClick={started.value ? state.clear : state.takeBack}>
        {started.value ? "Clear this bench" : "Take back what was cleared"}
      </button>
    </p>
  );
}

function Part({ bench, state, part }: Props & { readonly part: SumPart }) {
  const asked = part.fields.filter((name) => bench.asks(name, (it) => state.text(it).value));
  const readings = asked.map((name) => <SumReading key={name} bench={bench} state={state} name={name} />);
  if (asked.length === 0) return null;
  if (part.folds)
    return (
      <Fold state={state} part={part}>
        {readings}
      </Fold>
    );
  return (
    <section class="part" aria-labelledby={part.id}>
      <h2 id={part.id} tabIndex={-1}>
        {part.title}
      </h2>
      {readings}
    </section>
  );
}

/** A part that may be folded away; whether it was open is kept with the bench. */
function Fold(props: {
  readonly state: SumState;
  readonly part: Pick<SumPart, "id" | "title">;
  readonly children: ComponentChildren;
}) {
  const { state, part, children } = props;
  const { opened } = state;
  return (
    <details
      class="part fold"
      open={opened.value.has(part.id)}
      onToggle={(event) => {
        const open = new Set(opened.peek());
        if (event.currentTarget.open) open.add(part.id);
        else open.delete(part.id);
        opened.value = open;
      }}
    >
      <summary>
        <h2 id={part.id} tabIndex={-1}>
          {part.title}
        </h2>
      </summary>
      {children}
    </details>
  );
}
