import { type Signal, useSignal } from "@preact/signals";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { DigitPad } from "./DigitPad.tsx";
import { by, outcomeOf } from "./journalState.ts";
import { LEAST_DIGITS, MOST_DIGITS } from "./PinPart.tsx";
import { Who } from "./Who.tsx";

/** Where a person sets the PIN by which he answers for what he takes on himself. */
export function PinSet() {
  const [next, was] = [useSignal(""), useSignal("")];
  const said = useSignal<string | null>(null);
  const done = useSignal(false);

  async function set(): Promise<void> {
    done.value = false;
    said.value = by.value === "" ? words.tapWho : next.value.length < LEAST_DIGITS ? words.pinShort : null;
    if (said.value !== null) return;
    const before = was.value === "" ? null : was.value;
    const outcome = await outcomeOf({ ask: "pin", person: by.value, pin: next.value, set: true, was: before });
    said.value = outcome.type === "trouble" ? outcome.sentence : null;
    done.value = outcome.type === "written";
    if (done.value) [next.value, was.value] = ["", ""];
  }

  const pad = (label: string, digits: Signal<string>) => (
    <DigitPad
      digits={digits.value}
      most={MOST_DIGITS}
      places={LEAST_DIGITS}
      hidden={true}
      label={label}
      give={(it) => {
        digits.value = it;
        said.value = null;
      }}
    />
  );
  return (
    <details class="fold">
      <summary>{words.pinSet}</summary>
      <div class="act-fields">
        <p>{words.pinHow}</p>
        <Who />
        {pad(words.pinNext, next)}
        <details class="fold">
          <summary>{words.pinBefore}</summary>
          {pad(words.pinWas, was)}
        </details>
        <p class="mistake" role="alert">
          {said.value}
        </p>
        <p role="status">{done.value && words.pinIsSet}</p>
        <p class="row">
          <button type="button" class="write" onClick={set}>
            {words.pinSet}
          </button>
        </p>
      </div>
    </details>
  );
}
