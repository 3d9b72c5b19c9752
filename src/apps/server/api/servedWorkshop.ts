import type { WorkshopId } from "../../../journal/facts/ids.ts";
import type { OwnerCards } from "../../../journal/ownerCards.ts";
import type { PairedDevices } from "../../../stores/pairedDevices.ts";
import type { PhotoFolder } from "../../../stores/photoFolder.ts";
import type { Pins } from "../../../stores/pins.ts";
import type { PairingCode } from "./pairingCode.ts";
import type { PinProofs } from "./pinProofs.ts";
import type { WatchedStore } from "./watchedStore.ts";

/** A workshop as it is served: its journal, who is let in, and how others get in. */
export type ServedWorkshop = {
  readonly workshop: WorkshopId;
  readonly store: WatchedStore;
  readonly cards: OwnerCards;
  readonly photos: PhotoFolder;
  readonly devices: PairedDevices;
  readonly code: PairingCode;
  readonly pins: Pins;
  readonly proofs: PinProofs;
  /** What the workshop's own screen shows to be known by. */
  readonly key: string;
};
