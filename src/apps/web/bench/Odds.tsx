import { useComputed } from "@preact/signals";
import { mistakeSentence } from "../../../sheets/words/problemWords.ts";
import { NumberField } from "../kit/NumberField.tsx";
import { LivePicture } from "../kit/Picture.tsx";
import { pictures, weighNow } from "./benchState.ts";
import { tried } from "./laidTexts.ts";

/** A hundred joints like this one at a torque that may be tried. */
export function Odds() {
  const odds = useComputed(() => pictures.value?.odds ?? null);
  const picture = useComputed(() => odds.value?.picture ?? null);
  const start = useComputed(() => odds.value?.at ?? "10");
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
        start={start.value}
        least={0}
        value={shown}
        problem={problem}
        give={tryTorque}
      />
      <LivePicture svg={picture} kind="sheet" />
    </div>
  );
}

const acceptedTorque = 'a torque above nothing, as "46" or "34 lbf·ft"';

function tryTorque(text: string): void {
  tried.value = text;
  weighNow();
}
