import type { Signal } from "@preact/signals";
import { fieldId } from "./NumberField.tsx";
import type { Tap } from "./Taps.tsx";

/** One of many choices, in the device's own list. */
export function Chooser(props: {
  readonly name: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly taps: readonly Tap[];
  readonly value: Signal<string>;
  readonly give: (value: string) => void;
}) {
  const { name, label, hint, taps, value, give } = props;
  const id = fieldId(name);
  return (
    <div class="chooser">
      <label for={id}>{label}</label>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <select
        id={id}
        value={value}
        aria-describedby={hint ? `${id}-hint` : undefined}
        onChange={(event) => give(event.currentTarget.value)}
      >
        <option value="">not said</option>
        {taps.map((tap) => (
          <option key={tap.value} value={tap.value}>
            {tap.word}
          </option>
        ))}
      </select>
    </div>
  );
}
