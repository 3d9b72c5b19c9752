import { useSignal } from "@preact/signals";
import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";
import { Taps } from "../kit/Taps.tsx";
import { DigitPad } from "./DigitPad.tsx";
import { outcomeOf } from "./journalState.ts";

/** As many digits as the workshop's screen shows. */
const DIGITS = 6;

const kinds = ["phone", "tablet", "screen by the bay"];

/** Pairs this browser with the workshop: six digits from its screen, tapped on a pad of our own. */
export function PairPart({ trouble, again }: { readonly trouble: string | null; readonly again: boolean }) {
  const digits = useSignal("");
  const kind = useSignal("");
  const said = useSignal<string | null>(null);
  const busy = useSignal(false);

  async function pair(): Promise<void> {
    said.value = kind.value === "" ? words.deviceWanted : digits.value.length < DIGITS ? words.digitsWanted : null;
    if (said.value !== null || busy.value) return;
    busy.value = true;
    const outcome = await outcomeOf({ ask: "pair", code: digits.value, name: kind.value });
    busy.value = false;
    if (outcome.type === "written") {
      // A browser that is short of room clears the least used pages first, unless it was asked not to.
      navigator.storage?.persist?.().catch(() => {});
      return;
    }
    said.value = outcome.type === "trouble" ? outcome.sentence : null;
    digits.value = "";
  }

  return (
    <section class="part" aria-labelledby="pair">
      <h2 id="pair" tabIndex={-1}>
        {words.pair}
      </h2>
      {trouble && (
        <p class="mistake" role="alert">
          {trouble}
        </p>
      )}
      <p>
        {again ? words.pairAgain : words.pairFirst} {words.pairHow}
      </p>
      <Taps
        name="device"
        label={words.device}
        taps={kinds.map((it) => ({ value: it, word: it }))}
        value={kind}
        give={(it) => {
          kind.value = it;
          said.value = null;
        }}
      />
      <DigitPad
        digits={digits.value}
        most={DIGITS}
        places={DIGITS}
        hidden={false}
        label={words.digits}
        give={(it) => {
          digits.value = it;
          said.value = null;
        }}
      />
      <p class="mistake" role="alert">
        {said.value}
      </p>
      <p class="row">
        <button type="button" class="write" aria-busy={busy.value} onClick={pair}>
          {words.pair}
        </button>
      </p>
    </section>
  );
}
