import type { Signal } from "@preact/signals";
import { fieldId } from "./NumberField.tsx";

/** One choice of a row of taps: what is kept, and the word on it. */
export type Tap = { readonly value: string; readonly word: string };

/** Choices side by side; tapping the chosen one takes it back, for unanswered is not "no". */
export function Taps(props: {
  readonly name: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly taps: readonly Tap[];
  readonly value: Signal<string>;
  readonly give: (value: string) => void;
  /** A question of its own, or how a reading beside it is known. */
  readonly kind?: "question" | "evidence";
}) {
  const { name, label, hint, taps, value, give, kind = "question" } = props;
  const id = fieldId(name);
  return (
    <fieldset class={`taps ${kind}`} id={id} tabIndex={-1}>
      <legend>{label}</legend>
      {hint && <p class="hint">{hint}</p>}
      <div class="row">
        {taps.map((tap) => (
          <TapButton
            key={tap.value}
            word={tap.word}
            chosen={value.value === tap.value}
            act={() => give(value.peek() === tap.value ? "" : tap.value)}
          />
        ))}
      </div>
    </fieldset>
  );
}

/** Choices of which several may hold, and one that says that none does. Kept as a list with commas. */
export function SeveralTaps(props: {
  readonly name: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly taps: readonly Tap[];
  readonly none: Tap;
  readonly value: Signal<string>;
  readonly give: (value: string) => void;
}) {
  const { name, label, hint, taps, none, value, give } = props;
  const chosen = value.value === "" || value.value === none.value ? [] : value.value.split(",");
  const toggled = (it: string): string =>
    taps
      .map((tap) => tap.value)
      .filter((other) => (other === it ? !chosen.includes(it) : chosen.includes(other)))
      .join(",");
  return (
    <fieldset class="taps question" id={fieldId(name)} tabIndex={-1}>
      <legend>{label}</legend>
      {hint && <p class="hint">{hint}</p>}
      <div class="row">
        <TapButton
          word={none.word}
          chosen={value.value === none.value}
          act={() => give(value.peek() === none.value ? "" : none.value)}
        />
        {taps.map((tap) => (
          <TapButton
            key={tap.value}
            word={tap.word}
            chosen={chosen.includes(tap.value)}
            act={() => give(toggled(tap.value))}
          />
        ))}
      </div>
    </fieldset>
  );
}

/** A chosen tap is inked and ticked: never by colour alone. */
function TapButton(props: { readonly word: string; readonly chosen: boolean; readonly act: () => void }) {
  const { word, chosen, act } = props;
  return (
    <button type="button" class="tap" aria-pressed={chosen} onClick={act}>
      <span class="tick" aria-hidden="true">
        {chosen ? "✓" : ""}
      </span>
      {word}
    </button>
  );
}
