import type { ReadonlySignal } from "@preact/signals";
import { useEffect, useMemo, useRef } from "preact/hooks";
import { heldDown } from "./heldDown.ts";
import { stepped } from "./stepped.ts";

export type NumberFieldProps = {
  readonly name: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly unit: string;
  readonly step: number;
  /** Where the first tap of a stepper begins in an empty field. */
  readonly start: string;
  /** Below this no stepper goes; what is typed may. */
  readonly least: number;
  readonly value: ReadonlySignal<string>;
  /** What is accepted where the text does not read; null where it does. */
  readonly problem: ReadonlySignal<string | null>;
  readonly give: (text: string) => void;
};

/**
 * A reading as text: kept as typed, never rounded, clamped or read as something else. The steppers go by the marks of the
 * instrument; where the text is not a plain number on its scale they leave it alone.
 */
export function NumberField(props: NumberFieldProps) {
  const { name, label, hint, unit, step, value, problem, give } = props;
  // A button that is held while the page is drawn anew keeps its handlers, or nothing would stop it.
  const now = useRef(props);
  now.current = props;
  const [less, more] = useMemo(() => {
    const by = (direction: 1 | -1) => (): void => {
      const { value, start, step, least, give } = now.current;
      const text = value.peek();
      const next = text.trim() === "" ? start : stepped(text, step, direction, least);
      if (next !== null) give(next);
    };
    return [heldDown(by(-1)), heldDown(by(1))];
  }, []);
  useEffect(
    () => () => {
      less.stop();
      more.stop();
    },
    [less, more],
  );
  const id = fieldId(name);
  const described = [hint ? `${id}-hint` : "", unit ? `${id}-unit` : "", `${id}-problem`].filter((it) => it !== "");
  const by = `${step}${unit === "" ? "" : ` ${unit}`}`;
  return (
    <div class="number" data-wrong={problem.value === null ? undefined : ""}>
      <label for={id}>{label}</label>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div class="dial">
        <button type="button" class="step" aria-label={`${label}: ${by} less`} {...handlersOf(less)}>
          <span aria-hidden="true">−</span>
        </button>
        <span class="box">
          <span class="typed">
            <input
              id={id}
              type="text"
              inputmode="decimal"
              autocomplete="off"
              spellcheck={false}
              value={value}
              aria-invalid={problem.value === null ? undefined : true}
              aria-describedby={described.join(" ")}
              onInput={(event) => give(event.currentTarget.value)}
            />
            {unit !== "" && (
              <span class="unit" id={`${id}-unit`}>
                {unit}
              </span>
            )}
          </span>
        </span>
        <button type="button" class="step" aria-label={`${label}: ${by} more`} {...handlersOf(more)}>
          <span aria-hidden="true">+</span>
        </button>
      </div>
      <Mistake id={id} problem={problem} />
    </div>
  );
}

const handlersOf = ({ stop, ...handlers }: ReturnType<typeof heldDown>) => handlers;

/** What is accepted in a field, said as soon as what was typed does not read. */
export function Mistake({ id, problem }: { readonly id: string; readonly problem: ReadonlySignal<string | null> }) {
  return (
    <p class="mistake" role="alert" id={`${id}-problem`}>
      {problem}
    </p>
  );
}

/** The id of a field's control in the page. */
export const fieldId = (name: string): string => `field-${name.replaceAll(".", "-")}`;
