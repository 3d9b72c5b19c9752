import type { Entry } from "./entry.ts";

/** A field of an entry that is not as it has to be, and what is accepted there. */
export type EntryProblem = { readonly field: string; readonly accepted: string };

/** What was handed over is no entry; nothing of it was kept. */
export class MalformedEntry extends Error {
  override readonly name = "MalformedEntry";
  /** Which entry it was, as far as that can be told. */
  readonly place: string;
  readonly problems: readonly EntryProblem[];
  constructor(place: string, problems: readonly EntryProblem[]) {
    super(`${place}: ${problems.map(({ field, accepted }) => `${field}: accepted: ${accepted}`).join("; ")}`);
    this.place = place;
    this.problems = problems;
  }
}

type Place = Pick<Entry, "device" | "number">;

/** Two different entries claim one place: a device was restored from a backup and wrote on. */
export class JournalFork extends Error {
  override readonly name = "JournalFork";
  readonly place: Place;
  constructor({ device, number }: Place) {
    super(`a different entry ${device}/${number} is already held`);
    this.place = { device, number };
  }
}

/** An entry came before the ones that its device wrote earlier. */
export class JournalGap extends Error {
  override readonly name = "JournalGap";
  readonly place: Place;
  readonly expected: number;
  constructor({ device, number }: Place, expected: number) {
    super(`${device}/${number} came, but ${device}/${expected} is the next that can be added`);
    this.place = { device, number };
    this.expected = expected;
  }
}

/** The clock of an entry is not later than that of the one before it on the same device. */
export class JournalDisorder extends Error {
  override readonly name = "JournalDisorder";
  readonly place: Place;
  constructor({ device, number }: Place) {
    super(`the clock of ${device}/${number} is not after that of ${device}/${number - 1}`);
    this.place = { device, number };
  }
}

/** Somebody takes something on himself, and did not show by his PIN that it is he. */
export class PinNeeded extends Error {
  override readonly name = "PinNeeded";
  /** Whose PIN, and whether each has set one. */
  readonly persons: readonly { readonly person: string; readonly set: boolean }[];
  constructor(persons: PinNeeded["persons"]) {
    super(`an override needs the PIN of ${persons.map(({ person }) => person).join(", ")}`);
    this.persons = persons;
  }
}

/** An entry of another workshop. */
export class ForeignEntry extends Error {
  override readonly name = "ForeignEntry";
  readonly place: Place;
  readonly workshop: string;
  readonly here: string;
  constructor({ device, number, workshop }: Place & { readonly workshop: string }, here: string) {
    super(`${device}/${number} is of the workshop ${workshop}; this journal is of ${here}`);
    this.place = { device, number };
    this.workshop = workshop;
    this.here = here;
  }
}
