import type { OwnerCard } from "../../../journal/ownerCards.ts";
import type { Pen } from "../../../journal/pen.ts";
import { type JournalReader, journalReader } from "../../../journal/reader.ts";
import { PinNeeded } from "../../../journal/refusals.ts";
import type { Shop } from "../../../journal/shop/shop.ts";
import type { Heads } from "../../../journal/store.ts";
import { StoreTrouble } from "../../../journal/storeTrouble.ts";
import type { PlainCard } from "../../../sheets/journal/act.ts";
import { type BrowserJournal, idbJournal } from "../../../stores/browser/indexedDb.ts";
import { besideJournal, type Pairing } from "../../../stores/browser/pairing.ts";
import { type Exchange, type Exchanged, exchange } from "./exchange.ts";
import type { PinAsked, Status } from "./messages.ts";
import { type PinProof, personsWithPin } from "./pair.ts";
import { photosSent } from "./photosSent.ts";
import { place } from "./place.ts";
import { type TakenPhoto, takenPhoto } from "./takenPhoto.ts";
import { workshopAt } from "./workshopAt.ts";

/** The journal of this browser, followed and kept level with the workshop. */
export type Keeper = {
  readonly reader: JournalReader;
  readonly journal: BrowserJournal;
  readonly pen: Pen;
  /** Reads what came, tells the other tabs, and has it brought to the workshop. */
  readonly wrote: () => Promise<void>;
  /** Keeps what a camera or a file gave, as a photo that an entry may name; null where it is no picture. @throws StoreTrouble */
  readonly take: (file: Blob) => Promise<TakenPhoto["name"] | null>;
  /** A photo that is here or at the workshop; null where neither can be had. */
  readonly picture: (name: string) => Promise<Blob | null>;
  /** The card of whoever owns a machine; null where nobody does or it was erased. */
  readonly ownerOf: (machine: string | null) => OwnerCard | null;
  /** Keeps a card, later than all that are here. @throws StoreTrouble */
  readonly keepCard: (card: PlainCard) => Promise<void>;
  /** Shows, for overrides that wait and for the next ones, that a person typed his PIN here. */
  readonly proven: (person: string, proof: PinProof) => void;
  /** The PIN that an override of `person` wants before it is written; null for none, and where the workshop is away. */
  readonly pinFor: (person: string) => Promise<PinAsked | null>;
  /** Has whatever came meanwhile fetched. */
  readonly wake: () => void;
  readonly status: () => Status;
  readonly end: () => void;
};

/** The pairing that this browser keeps; null before it has one. @throws StoreTrouble */
export async function keptPairing(): Promise<Pairing | null> {
  const beside = await besideJournal(place);
  const pairing = await beside.pairing();
  beside.close();
  return pairing;
}

/** Keeps a pairing for good. @throws StoreTrouble */
export async function keepPairing(pairing: Pairing): Promise<void> {
  const beside = await besideJournal(place);
  await beside.pair(pairing);
  beside.close();
}

/** Opens the journal that belongs to a pairing; `changed` is called whenever what it shows may be another. @throws StoreTrouble */
export async function keeper(pairing: Pairing, changed: () => void, said: (fault: unknown) => string): Promise<Keeper> {
  const journal = await idbJournal(place, pairing.workshop);
  const beside = await besideJournal(place);
  const reader = journalReader(journal.store);
  let atWorkshop = await beside.atWorkshop();
  let here = {} as Heads;
  let photosWaiting = 0;
  let cards: readonly OwnerCard[] = [];
  let last: Exchanged | null = null;
  const proofs: { readonly person: string; readonly proof: string; readonly until_ms: number }[] = [];
  const tabs = new BroadcastChannel("turnsleft journal");

  const read = async (): Promise<void> => {
    await reader.refresh();
    here = await journal.store.heads();
    photosWaiting = (await journal.photos.toSend()).length;
    cards = await journal.cards.all();
    changed();
  };
  tabs.onmessage = () => void read();
  await read();

  const workshop = workshopAt(pairing, () => proofs.map(({ proof }) => proof));

  const background: Exchange = exchange({
    here: journal,
    workshop,
    changes: workshop.changes,
    beside: () => photosSent(journal.photos, workshop),
    async told(exchanged, heads) {
      last = exchanged;
      if (heads) {
        atWorkshop = heads;
        await beside.noteAtWorkshop(heads);
      }
      await read();
    },
  });

  return {
    reader,
    journal,
    pen: journal.pen(pairing.device),
    async wrote() {
      await read();
      tabs.postMessage("wrote");
      background.soon();
    },
    async take(file) {
      const photo = await takenPhoto(file);
      if (photo) await journal.photos.keep(photo.name, photo.bytes);
      return photo?.name ?? null;
    },
    async picture(name) {
      const bytes = await journal.photos.bytes(name);
      return bytes ? new Blob([bytes], { type: "image/jpeg" }) : workshop.photo(name);
    },
    ownerOf: (machine) => {
      const owner = reader.shop().machines[machine as never]?.owner ?? null;
      return cards.find((it) => it.owner === owner) ?? null;
    },
    async keepCard(card) {
      const clock = 1 + Math.max(0, ...cards.map((it) => it.clock));
      await journal.cards.put([{ ...card, clock, device: pairing.device } as OwnerCard]);
    },
    wake: background.soon,
    proven(person, { proof, seconds }) {
      proofs.push({ person, proof, until_ms: performance.now() + 1000 * seconds });
      background.soon();
    },
    async pinFor(person) {
      if (proofs.some((it) => it.person === person && it.until_ms > performance.now())) return null;
      const persons = await personsWithPin(pairing.token);
      if (!persons || persons.length === 0) return null;
      return pinOf(person, persons.includes(person), reader.shop());
    },
    status: () => ({
      paired: true,
      workshop: reader.shop().people.workshop?.called ?? pairing.workshop,
      device: pairing.name,
      persons: Object.values(reader.shop().people.persons)
        .filter(({ left }) => !left)
        .map(({ person, called }) => ({ person, called })),
      waiting: waitingOf(here, atWorkshop),
      photosWaiting,
      reached: last?.reached ?? null,
      trouble: last && last.trouble !== null ? said(last.trouble) : null,
      shutOut: last?.trouble instanceof StoreTrouble && last.trouble.trouble === "not let in",
      pin: pinNeeded(last?.trouble, reader.shop()),
    }),
    end() {
      background.end();
      tabs.close();
      beside.close();
      void journal.store.close();
    },
  };
}

/** Whose PIN the workshop asked for, the first of them. */
function pinNeeded(trouble: unknown, shop: Shop): PinAsked | null {
  const [first] = trouble instanceof PinNeeded ? trouble.persons : [];
  return first ? pinOf(first.person, first.set, shop) : null;
}

const pinOf = (person: string, set: boolean, { people }: Shop): PinAsked => ({
  person,
  called: people.persons[person as never]?.called ?? person,
  set,
});

/** Entries that are here and were not at the workshop when it was last reached. */
const waitingOf = (here: Heads, there: Heads): number =>
  Object.entries(here).reduce((sum, [device, number]) => sum + Math.max(0, number - (there[device as never] ?? 0)), 0);
