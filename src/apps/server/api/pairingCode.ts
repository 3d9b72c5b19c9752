import { randomInt } from "node:crypto";

/** What came of a code that somebody typed. */
export type CodeTried =
  | { readonly type: "right" | "none open" }
  | { readonly type: "wrong"; readonly triesLeft: number };

/** The code by which one device is let in: one at a time, once, and not for long. */
export type PairingCode = {
  /** A new code in the place of the one that was open, and for how many seconds it stands. */
  open(): { readonly code: string; readonly seconds: number };
  /** Tries a code; the right one is used up by it, and so is one that was missed too often. */
  take(code: string): CodeTried;
};

/** Ten minutes are enough to walk to the telephone and back; of a million codes five may be tried. Judgement. */
const STANDS_s = 600;
const TRIES = 5;

/** `clock` gives milliseconds and is never set back: a code does not live longer because the wall clock was. */
export function pairingCode(clock: () => number): PairingCode {
  let standing: { readonly code: string; readonly until: number; triesLeft: number } | null = null;
  return {
    open() {
      const code = String(randomInt(1_000_000)).padStart(6, "0");
      standing = { code, until: clock() + STANDS_s * 1000, triesLeft: TRIES };
      return { code, seconds: STANDS_s };
    },
    take(code) {
      if (standing === null || clock() >= standing.until) {
        standing = null;
        return { type: "none open" };
      }
      if (code === standing.code) {
        standing = null;
        return { type: "right" };
      }
      standing.triesLeft--;
      const { triesLeft } = standing;
      if (triesLeft === 0) standing = null;
      return { type: "wrong", triesLeft };
    },
  };
}
