import type { DeviceId } from "../journal/facts/ids.ts";
import {
  type EntryProblem,
  ForeignEntry,
  JournalDisorder,
  JournalFork,
  JournalGap,
  MalformedEntry,
  PinNeeded,
} from "../journal/refusals.ts";
import { StoreTrouble, type Trouble } from "../journal/storeTrouble.ts";

/** A refusal as a server of ours tells it. */
export type Told = {
  readonly error?: string;
  readonly sentence?: string;
  readonly device?: DeviceId;
  readonly number?: number;
  readonly expected?: number;
  readonly workshop?: string;
  readonly here?: string;
  readonly place?: string;
  readonly problems?: readonly EntryProblem[];
  readonly persons?: PinNeeded["persons"];
};

/** What was told, as the error that the journal there threw, or as a trouble on the way to it. */
export function remoteRefusal(address: string, status: number, told: Told): Error {
  const { device = "" as DeviceId, number = 0, expected = 0, workshop = "", here = "" } = told;
  switch (told.error) {
    case "malformed":
      return new MalformedEntry(told.place ?? "an entry", told.problems ?? []);
    case "foreign":
      return new ForeignEntry({ device, number, workshop }, here);
    case "pin needed":
      return new PinNeeded(told.persons ?? []);
    case "fork":
      return new JournalFork({ device, number });
    case "gap":
      return new JournalGap({ device, number }, expected);
    case "disorder":
      return new JournalDisorder({ device, number });
    default: {
      const trouble = troubles[told.error ?? ""];
      return trouble
        ? new StoreTrouble(trouble, address, new Error(told.sentence))
        : new Error(`${address}: ${status} ${told.error ?? "no answer of ours"}`);
    }
  }
}

const troubles: Readonly<Record<string, Trouble>> = {
  full: "full",
  "read-only": "read-only",
  "in use": "in use",
  damaged: "damaged",
  "not reachable": "not reachable",
  "not paired": "not let in",
  "too large": "too much at once",
  "too many": "busy",
};
