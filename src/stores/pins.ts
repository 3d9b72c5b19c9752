import { randomBytes, type ScryptOptions, scrypt, timingSafeEqual } from "node:crypto";
import { join } from "node:path";
import * as z from "zod/mini";
import { type PersonId, personId } from "../journal/facts/ids.ts";
import { documentIn } from "./documentFile.ts";
import { replaceFile } from "./replacedFile.ts";

/** What came of a PIN that somebody typed. */
export type PinTried =
  | { readonly type: "right" | "none set" }
  /** Wrong, or not looked at because the one before was: in so many seconds the next one is looked at. */
  | { readonly type: "wrong" | "too soon"; readonly wait_s: number };

/** The PINs of persons, by which each answers for what he takes on himself. */
export type Pins = {
  persons(): readonly PersonId[];
  /** Sets a PIN: the first one freely, another only by the one before. @throws StoreTrouble */
  set(person: PersonId, pin: string, was: string | null): Promise<PinTried>;
  /** @throws StoreTrouble */
  check(person: PersonId, pin: string): Promise<PinTried>;
  /** Takes a PIN away; false if there was none. @throws StoreTrouble */
  forget(person: PersonId): boolean;
};

/**
 * 32 MB and three passes of it, of the strengths that OWASP's Password Storage Cheat Sheet holds for equal. A PIN of four digits
 * is found in minutes by who has the file all the same: the file is its owner's alone, and the tries at the door are few.
 */
const COST: ScryptOptions = { N: 2 ** 15, r: 8, p: 3, maxmem: 64 * 1024 * 1024 };
/** Tries without a wait, the first wait and the longest: a four-digit PIN takes a year of guessing. Judgement. */
const FREE_TRIES = 3;
const FIRST_WAIT_s = 30;
const LONGEST_WAIT_s = 3600;

const hex = (length: number) => z.string().check(z.regex(new RegExp(`^[0-9a-f]{${length}}$`)));
const kept = z.record(personId, z.strictObject({ salt: hex(32), hash: hex(64), wrong: z.int() }));
type Kept = z.infer<typeof kept>;

/** The PINs of a data folder. `clock` gives milliseconds and is never set back. @throws StoreTrouble */
export function pinsIn(folder: string, clock: () => number): Pins {
  const path = join(folder, "pins.json");
  let known: Kept = documentIn(path, kept) ?? {};
  // Who tried too often waits anew after a start: a restart is no way round.
  const lastWrongAt = new Map(Object.keys(known).map((person) => [person, clock()]));
  const keep = (changed: Kept): void => {
    replaceFile(path, `${JSON.stringify(changed, null, 2)}\n`);
    known = changed;
  };
  const of = (person: PersonId) => (Object.hasOwn(known, person) ? known[person] : undefined);

  // One after the other: guesses at the same time would all be looked at before the first one counts.
  let last: Promise<unknown> = Promise.resolve();
  const alone = <Result>(work: () => Promise<Result>): Promise<Result> => {
    const result = last.then(work);
    last = result.catch(() => {});
    return result;
  };

  async function tried(person: PersonId, pin: string): Promise<PinTried> {
    const own = of(person);
    if (!own) return { type: "none set" };
    const wait_s = waitAfter(own.wrong) - (clock() - (lastWrongAt.get(person) ?? 0)) / 1000;
    if (wait_s > 0) return { type: "too soon", wait_s };
    if (timingSafeEqual(Buffer.from(own.hash, "hex"), await hashOf(pin, own.salt))) {
      if (own.wrong > 0) keep({ ...known, [person]: { ...own, wrong: 0 } });
      return { type: "right" };
    }
    keep({ ...known, [person]: { ...own, wrong: own.wrong + 1 } });
    lastWrongAt.set(person, clock());
    return { type: "wrong", wait_s: waitAfter(own.wrong + 1) };
  }

  return {
    persons: () => Object.keys(known).sort() as PersonId[],
    check: (person, pin) => alone(() => tried(person, pin)),
    set: (person, pin, was) =>
      alone(async () => {
        const before = await tried(person, was ?? "");
        if (before.type !== "right" && before.type !== "none set") return before;
        const salt = randomBytes(16).toString("hex");
        keep({ ...known, [person]: { salt, hash: (await hashOf(pin, salt)).toString("hex"), wrong: 0 } });
        return { type: "right" };
      }),
    forget(person) {
      if (!of(person)) return false;
      const { [person]: _, ...others } = known;
      keep(others);
      return true;
    },
  };
}

/** Each wrong try beyond the free ones doubles the wait. */
const waitAfter = (wrong: number): number =>
  wrong < FREE_TRIES ? 0 : Math.min(LONGEST_WAIT_s, FIRST_WAIT_s * 2 ** (wrong - FREE_TRIES));

const hashOf = (pin: string, salt: string): Promise<Buffer> =>
  new Promise((resolve, reject) => {
    scrypt(pin, Buffer.from(salt, "hex"), 32, COST, (fault, key) => (fault ? reject(fault) : resolve(key)));
  });
