import type { WorkshopId } from "../journal/facts/ids.ts";
import { isLater, type OwnerCard, type OwnerCards } from "../journal/ownerCards.ts";
import type { Database } from "./database.ts";

/**
 * Owners' cards beside the journal of one workshop. The database itself erases the card of an owner in the same breath as it
 * keeps the entry that says so, so that no stop in between leaves one.
 */
export function sqlCards(database: Database, workshop: WorkshopId): OwnerCards {
  return {
    async put(cards) {
      await database.transaction(async (run) => {
        for (const card of cards) {
          const [gone] = await run("select owner from owner_erased where workshop = $1 and owner = $2", [
            workshop,
            card.owner,
          ]);
          const [known] = await run("select body from owner_card where workshop = $1 and owner = $2", [
            workshop,
            card.owner,
          ]);
          if (gone || (known && !isLater(card, JSON.parse(String(known["body"])) as OwnerCard))) continue;
          await run("delete from owner_card where workshop = $1 and owner = $2", [workshop, card.owner]);
          await run("insert into owner_card (workshop, owner, body) values ($1, $2, $3)", [
            workshop,
            card.owner,
            JSON.stringify(card),
          ]);
        }
      });
    },
    async all() {
      const rows = await database.query("select owner, body from owner_card where workshop = $1", [workshop]);
      const cards = rows.map(({ body }) => JSON.parse(String(body)) as OwnerCard);
      return cards.sort((a, b) => (a.owner < b.owner ? -1 : 1));
    },
  };
}
