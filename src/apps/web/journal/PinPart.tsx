import { useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { DigitPad } from "./DigitPad.tsx";
import { outcomeOf } from "./journalState.ts";
import type { PinAsked } from "./messages.ts";

/** How long a PIN may be. */
export const [LEAST_DIGITS, MOST_DIGITS] = [4, 12];

/** The PIN that an override waits for, typed by who takes it on himself, or set by him where he has none yet. */
export function PinPart(props: {
  readonly pin: PinAsked;
  /** What it is wanted for. */
  readonly why: string;
  readonly given?: () => void;
}) {
  const { pin, why, given } = props;
  const digits = useSignal("");
  const said = useSignal<string | null>(null);

  const part = useRef<HTMLElement>(null);
  // In a form it comes up at the end of it, under a thumb that just tapped.
  useEffect(() => {
    if (given) part.current?.querySelector("button")?.focus();
  }, []);

  async function give(): Promise<void> {
    if (digits.value.length < LEAST_DIGITS) {
      said.value = words.pinShort;
      return;
    }
    const outcome = await outcomeOf({ ask: "pin", person: pin.person, pin: digits.value, set: !pin.set, was: null });
    said.value = outcome.type === "trouble" ? outcome.sentence : null;
    digits.value = "";
    if (outcome.type === "written") given?.();
  }

  return (
    <section ref={part} class="part shut" aria-label={words.pinOf(pin.called)}>
      <p>{why}</p>
      <DigitPad
        digits={digits.value}
        most={MOST_DIGITS}
        places={LEAST_DIGITS}
        hidden={true}
        label={pin.set ? words.pinOf(pin.called) : words.pinNew(pin.called)}
        give={(it) => {
          digits.value = it;
          said.value = null;
        }}
      />
      <p class="mistake" role="alert">
        {said.value}
      </p>
      <p class="row">
        <button type="button" class="write" onClick={give}>
          {words.pinGive}
        </button>
      </p>
    </section>
  );
}
