import { useComputed } from "@preact/signals";
import { useCallback } from "preact/hooks";
import { NumberField } from "../kit/NumberField.tsx";
import { SeveralTaps, type Tap, Taps } from "../kit/Taps.tsx";
import { TextField } from "../kit/TextField.tsx";
import type { SumBench } from "./sumBench.ts";
import type { SumState } from "./sumState.ts";

/** One field of a bench: the control that its kind asks for. */
export function SumReading(props: {
  readonly bench: Pick<SumBench, "fields" | "words" | "choiceWords" | "filled">;
  readonly state: Pick<SumState, "text" | "give" | "mistakes">;
  readonly name: string;
}) {
  const { bench, state, name } = props;
  const field = bench.fields[name];
  const { label, hint } = bench.words[name] ?? { label: name };
  const problem = useComputed(() => state.mistakes.value.get(name) ?? null);
  const give = useCallback((text: string) => state.give(name, text), [state, name]);
  const common = { name, label, hint, value: state.text(name), give };
  const filled = bench.filled[name];
  const tapOf = (value: string): Tap => ({ value, word: bench.choiceWords[value] ?? value });
  switch (field?.type) {
    case "number":
      return (
        <NumberField
          {...common}
          unit={field.unit}
          step={field.step}
          start={field.start}
          least={field.from === "anywhere" ? Number.NEGATIVE_INFINITY : 0}
          problem={problem}
        />
      );
    case "choice":
      return <Taps {...common} taps={field.choices.map(tapOf)} />;
    case "several":
      return <SeveralTaps {...common} taps={field.choices.map(tapOf)} none={tapOf(field.none)} />;
    case "text":
      return (
        <div class="reading">
          <TextField {...common} problem={problem} />
          {filled && (
            <p class="row">
              <button type="button" class="plain" onClick={() => give(filled.text())}>
                {filled.word}
              </button>
            </p>
          )}
          {field.common.length > 0 && (
            <Taps
              {...common}
              hint={undefined}
              name={`${name}-common`}
              label="Common"
              taps={field.common.map(tapOf)}
              kind="evidence"
            />
          )}
        </div>
      );
    default:
      throw new Error(`the bench has no field ${name}`);
  }
}
