import { journalWords as words } from "../../../sheets/words/journalPageWords.ts";

const pad = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "", "0"];

/** Digits under a thumb in a glove; the keys of a keyboard work as well wherever on the pad the focus is. */
export function DigitPad(props: {
  readonly digits: string;
  readonly most: number;
  /** How many places are drawn while nothing stands in them. */
  readonly places: number;
  /** Whether the digits are for nobody else's eyes. */
  readonly hidden: boolean;
  readonly label: string;
  readonly give: (digits: string) => void;
}) {
  const { digits, most, places, hidden, label, give } = props;
  const add = (digit: string): void => {
    if (digits.length < most) give(digits + digit);
  };
  const rubOut = (): void => give(digits.slice(0, -1));
  return (
    <fieldset
      class="pad"
      onKeyDown={(event) => {
        if (/^\d$/.test(event.key)) add(event.key);
        else if (event.key === "Backspace") rubOut();
        else return;
        event.preventDefault();
      }}
    >
      <legend>{label}</legend>
      <p class="digits" role="status">
        <span class="heard">
          {digits === "" ? words.noDigit : hidden ? words.digitCount(digits.length) : digits.split("").join(" ")}
        </span>
        {Array.from({ length: Math.max(places, digits.length) }, (_, i) => (
          <span key={i} class="digit" aria-hidden="true">
            {i < digits.length && hidden ? "●" : digits[i]}
          </span>
        ))}
      </p>
      <div class="keys">
        {pad.map((digit) =>
          digit === "" ? (
            <span key="none" />
          ) : (
            <button key={digit} type="button" onClick={() => add(digit)}>
              {digit}
            </button>
          ),
        )}
        <button type="button" onClick={rubOut} aria-label={words.rubOut}>
          <span aria-hidden="true">⌫</span>
        </button>
      </div>
    </fieldset>
  );
}
