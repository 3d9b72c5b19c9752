import { describe, expect, test } from "vitest";
import { factSchema } from "../../../src/journal/facts/fact.ts";
import { type OwnerCard, ownerCard } from "../../../src/journal/ownerCards.ts";
import { type Around, readAct } from "../../../src/sheets/journal/act.ts";
import { actNamed } from "../../../src/sheets/journal/acts.ts";
import { aroundJob } from "./aroundJob.ts";

const opened = { type: "JobOpened", machine: "chipper", cameFor: "drip" };
const card = {
  owner: "o-1",
  name: "A. Brook",
  telephone: "0155 501",
  plates: [
    { machine: "chipper", plate: "FICT 12" },
    { machine: "tractor", plate: "FICT 13" },
  ],
  clock: 4,
  device: "bench",
} as unknown as OwnerCard;
const at = (owner: OwnerCard | null, ...facts: readonly object[]): Around => ({
  ...aroundJob({ type: "machine" }, facts),
  owner,
});

/** What a form writes into the journal, and beside it; both of a shape that is kept. */
function written(texts: Readonly<Record<string, string>>, around: Around) {
  const read = readAct(actNamed("owner"), texts, around);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  for (const fact of read.facts) factSchema.parse(fact);
  ownerCard.parse({ ...read.card, clock: 1, device: "phone" });
  return { facts: read.facts, card: read.card };
}
const problems = (act: "owner" | "erased", texts: Readonly<Record<string, string>>, around: Around) => {
  const read = readAct(actNamed(act), texts, around);
  return read.ok ? [] : read.problems.map(({ field, accepted }) => [field, accepted]);
};

describe("an owner", () => {
  test("who is met gets an identity in the journal and a card beside it: no name is in a fact", () => {
    const { facts, card } = written({ name: "A. Brook", telephone: "0155 501", plate: "FICT 12" }, at(null, opened));
    expect(facts).toEqual([
      { type: "OwnerMet", owner: "o-k3f7" },
      { type: "MachineChangedHands", machine: "chipper", owner: "o-k3f7" },
    ]);
    expect(card).toEqual({
      owner: "o-k3f7",
      name: "A. Brook",
      telephone: "0155 501",
      plates: [{ machine: "chipper", plate: "FICT 12" }],
    });
  });

  test("who is known stands there, and keeps the plates of his other machines", () => {
    const around = at(card, opened);
    const { given, personal } = actNamed("owner").form(around);
    // A draft of it would outlive the card.
    expect(personal).toBe(true);
    expect(given).toEqual({ hands: "the same owner", name: "A. Brook", telephone: "0155 501", plate: "FICT 12" });
    expect(written({ ...given, telephone: "0155 502", plate: "FICT 14" }, around)).toEqual({
      facts: [],
      card: {
        owner: "o-1",
        name: "A. Brook",
        telephone: "0155 502",
        plates: [
          { machine: "tractor", plate: "FICT 13" },
          { machine: "chipper", plate: "FICT 14" },
        ],
      },
    });
  });

  test("of a machine that changed hands is another one, with a name and plates of his own", () => {
    const texts = { hands: "another one now", name: "B. Hale" };
    const { facts, card: theirs } = written(texts, at(card, opened));
    expect(facts).toMatchObject([{ owner: "o-k3f7" }, { machine: "chipper", owner: "o-k3f7" }]);
    expect(theirs).toEqual({ owner: "o-k3f7", name: "B. Hale", plates: [] });
    expect(problems("owner", { ...texts, name: "A. Brook" }, at(card, opened))).toEqual([
      ["name", "the name of the new owner"],
    ]);
  });

  test("wants a name of one line, and a machine", () => {
    expect(problems("owner", {}, at(null, opened))).toEqual([["name", ""]]);
    expect(problems("owner", { name: "x".repeat(121) }, at(null, opened))).toEqual([
      ["name", "one line of 1 to 120 characters"],
    ]);
    expect(problems("owner", { name: "A. Brook" }, at(null))).toEqual([
      ["name", "a machine: open the job on it first"],
    ]);
  });

  test("is erased by name of the identity alone, with the reason", () => {
    const read = readAct(actNamed("erased"), { erased: "the owner asked" }, at(card, opened));
    expect(read).toEqual({
      ok: true,
      facts: [{ type: "OwnerErased", owner: "o-1", why: "the owner asked" }],
      card: null,
    });
    expect(problems("erased", { erased: "x" }, at(null, opened))).toEqual([["erased", "an owner whose card is here"]]);
  });
});
