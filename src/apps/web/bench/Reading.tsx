import { useComputed } from "@preact/signals";
import { useCallback } from "preact/hooks";
import { choiceWords, type FieldName, type FieldWords, fieldWords } from "../../../sheets/words/fieldWords.ts";
import { Chooser } from "../kit/Chooser.tsx";
import { lazily } from "../kit/lazily.tsx";
import { NumberField } from "../kit/NumberField.tsx";
import { SeveralTaps, type Tap, Taps } from "../kit/Taps.tsx";
import { TextField } from "../kit/TextField.tsx";
import { benchFields } from "./benchFields.ts";
import { give, mistakes } from "./benchState.ts";
import { withoutPlace } from "./benchTexts.ts";
import { text } from "./laidTexts.ts";

/** One field of the bench by its name: the control that its kind asks for, and how it is known. */
export function Reading({ name }: { readonly name: string }) {
  const field = benchFields[withoutPlace(name)];
  const { label, hint }: FieldWords = fieldWords[withoutPlace(name) as FieldName];
  const problem = useComputed(() => mistakes.value.get(name) ?? null);
  const set = useCallback((value: string) => give(name, value), [name]);
  const value = text(name);
  const common = { name, label, hint, value, give: set };
  if (!field) throw new Error(`the bench has no field ${name}`);
  switch (field.type) {
    case "number":
      return (
        <div class="reading">
          <NumberField
            {...common}
            unit={field.unit}
            step={field.step}
            start={field.start}
            least={field.least ?? 0}
            problem={problem}
          />
          {field.how.length > 0 && <Evidence name={name} label={label} how={field.how} />}
        </div>
      );
    case "yes or no":
      return <Taps {...common} taps={yesNo} />;
    case "choice":
      return field.choices.length <= mostTaps ? (
        <Taps {...common} taps={field.choices.map(tapOf)} />
      ) : (
        <Chooser {...common} taps={field.choices.map(tapOf)} />
      );
    case "remedy":
      return <RemedyChooser {...common} />;
    case "several":
      return <SeveralTaps {...common} taps={field.choices.map(tapOf)} none={tapOf(field.none)} />;
    case "text":
      return (
        <div class="reading">
          <TextField {...common} problem={problem} />
          {field.common && (
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
    case "money":
      return <TextField {...common} problem={problem} />;
    default:
      return field satisfies never;
  }
}

/** How a reading is known: one tap, and the answer goes by it. */
function Evidence({
  name,
  label,
  how,
}: {
  readonly name: string;
  readonly label: string;
  readonly how: readonly string[];
}) {
  const set = useCallback((value: string) => give(`${name}.how`, value), [name]);
  return (
    <Taps
      name={`${name}.how`}
      label={`${label}: how do you know?`}
      taps={how.map(tapOf)}
      value={text(`${name}.how`)}
      give={set}
      kind="evidence"
    />
  );
}

/** The list of them is long, and few ports are asked for one. */
const RemedyChooser = lazily(() => import("./RemedyChooser.tsx"), "RemedyChooser");

/** More than these stand better in a list of the device. */
const mostTaps = 5;

const yesNo: readonly Tap[] = [
  { value: "yes", word: "yes" },
  { value: "no", word: "no" },
];

const tapOf = (value: string): Tap => ({ value, word: choiceWords[value] ?? value });
