import { describe, expect, test } from "vitest";
import type { Entry } from "../../src/journal/entry.ts";
import type { OwnerId } from "../../src/journal/facts/ids.ts";
import type { Journal, OwnerCard } from "../../src/journal/ownerCards.ts";
import { note } from "./storeContract.ts";

/** What every place for owners' cards does. */
export function ownerCardsContract(name: string, open: () => Promise<Journal>): void {
  describe(`owners' cards, ${name}`, () => {
    const erasure = {
      ...note("bench", 2, 2),
      job: null,
      fact: { type: "OwnerErased", owner: "o-1", why: "he asked" },
    } as Entry;
    const owner = "o-1" as OwnerId;
    const card = (name: string, clock: number, device = "bench"): OwnerCard =>
      ({
        owner,
        name,
        telephone: "0155 501",
        plates: [{ machine: "chipper", plate: "FICT 12" }],
        clock,
        device,
      }) as unknown as OwnerCard;

    test("of two cards the later one stands, in whatever order they come", async () => {
      const { cards } = await open();
      await cards.put([card("A. Brook", 2)]);
      await cards.put([card("Old", 1), card("A. Brook-Hale", 3)]);
      await cards.put([card("Old", 2)]);
      expect(await cards.all()).toEqual([card("A. Brook-Hale", 3)]);
      await cards.put([card("Same clock", 3, "tablet"), card("Earlier device", 3, "alpha")]);
      expect(await cards.all()).toEqual([card("Same clock", 3, "tablet")]);
    });

    test("what is erased is gone and does not come back with a late card", async () => {
      const { store, cards } = await open();
      await cards.put([card("A. Brook", 2)]);
      await store.add([note("bench", 1, 1), erasure]);
      expect(await cards.all()).toEqual([]);
      await cards.put([card("A. Brook", 9, "phone")]);
      expect(await cards.all()).toEqual([]);
    });
  });
}
