import { randomBytes } from "node:crypto";
import type { PersonId } from "../../../journal/facts/ids.ts";
import type { Caller } from "./caller.ts";

/** What shows that a person typed his PIN on a device a moment ago. It is kept in memory alone. */
export type PinProofs = {
  give(person: PersonId, caller: Caller): { readonly proof: string; readonly seconds: number };
  /** The persons whom these prove, of proofs that were given to this very caller and still count. */
  persons(proofs: readonly string[], caller: Caller): ReadonlySet<PersonId>;
};

/** Long enough to send what was written while away, short enough that a telephone left lying proves nothing. Judgement. */
const COUNTS_s = 600;

/** `clock` gives milliseconds and is never set back. */
export function pinProofs(clock: () => number): PinProofs {
  const given = new Map<string, { readonly person: PersonId; readonly to: string; readonly until: number }>();
  return {
    give(person, caller) {
      for (const [proof, { until }] of given) if (until <= clock()) given.delete(proof);
      const proof = randomBytes(32).toString("base64url");
      given.set(proof, { person, to: nameOf(caller), until: clock() + COUNTS_s * 1000 });
      return { proof, seconds: COUNTS_s };
    },
    persons: (proofs, caller) =>
      new Set(
        proofs.flatMap((proof) => {
          const it = given.get(proof);
          return it && it.to === nameOf(caller) && it.until > clock() ? [it.person] : [];
        }),
      ),
  };
}

const nameOf = (caller: Caller): string => (caller.type === "device" ? `device ${caller.device}` : caller.type);
