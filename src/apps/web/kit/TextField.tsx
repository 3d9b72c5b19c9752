import type { ReadonlySignal, Signal } from "@preact/signals";
import { fieldId, Mistake } from "./NumberField.tsx";

/** A word or two, kept as typed. */
export function TextField(props: {
  readonly name: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly value: Signal<string>;
  readonly problem: ReadonlySignal<string | null>;
  readonly give: (text: string) => void;
}) {
  const { name, label, hint, value, problem, give } = props;
  const id = fieldId(name);
  return (
    <div class="text" data-wrong={problem.value === null ? undefined : ""}>
      <label for={id}>{label}</label>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <input
        id={id}
        type="text"
        autocomplete="off"
        spellcheck={false}
        value={value}
        aria-invalid={problem.value === null ? undefined : true}
        aria-describedby={`${hint ? `${id}-hint ` : ""}${id}-problem`}
        onInput={(event) => give(event.currentTarget.value)}
      />
      <Mistake id={id} problem={problem} />
    </div>
  );
}
