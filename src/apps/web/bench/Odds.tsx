import { useComputed } from "@preact/signals";
import { mistakeSentence } from "../../../sheets/words/problemWords.ts";
import { NumberField } from "../kit/NumberField.tsx";
import { Picture } from "../kit/Picture.tsx";
import { pictures, weighNow } from "./benchState.ts";
import { tried } from "./laidTexts.ts";

/** A hundred joints like this one at a torque that may be tried. */
export function Odds() {
  const odds = useComputed(() => pictures.value?.odds ?? null);
  const weighed = useComputed(() => pictures.value?.window != null);
  const shown = useComputed(() => tried.value ?? odds.value?.at ?? "");
  const problem = useComputed(() =>
    weighed.value && odds.value === null && shown.value.trim() !== ""
      ? mistakeSentence({ field: "odds", given: `"${shown.value}"`, accepted: acceptedTorque })
      : null,
  );
  if (!weighed.value) return null;
  return (
    <div class="odds">
      <h3>A hundred like it</h3>
      <NumberField
        name="odds"
        label="Pulled to"
        unit="N·m"
        step={1}
        start={odds.value?.at ?? "10"}
        least={0}
        value={shown}
        problem={problem}
        give={tryTorque}
      />
      {odds.value && <Picture svg={odds.value.picture} kind="sheet" />}
    </div>
  );
}

const acceptedTorque = 'a torque above nothing, as "46" or "34 lbf·ft"';

function tryTorque(text: string): void {
  tried.value = text;
  weighNow();
}
