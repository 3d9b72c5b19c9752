import type { Hono } from "hono";
import type { WorkshopId } from "../../journal/facts/ids.ts";
import { StoreTrouble } from "../../journal/storeTrouble.ts";
import { openToWrite } from "../../stores/dataFolder.ts";
import { pairedDevices } from "../../stores/pairedDevices.ts";
import { photosIn } from "../../stores/photoCopies.ts";
import { withoutLeftOvers } from "../../stores/photoFolder.ts";
import { pinsIn } from "../../stores/pins.ts";
import { api, type Rates } from "./api/api.ts";
import { type PairingCode, pairingCode } from "./api/pairingCode.ts";
import { pinProofs } from "./api/pinProofs.ts";
import { watchedStore } from "./api/watchedStore.ts";
import { announce, newKey } from "./runningServer.ts";

/** A data folder that is open for others to write into. */
export type ServedFolder = {
  readonly api: Hono;
  readonly workshop: WorkshopId;
  readonly code: PairingCode;
  /** Leaves word in the folder of where it is served, for the commands that ask it there; on a full disk it goes without. */
  announce(address: string): void;
  close(): Promise<void>;
};

/** Opens a data folder to serve it; an empty one becomes a new workshop. @throws StoreTrouble, also while another process has it */
export function servedFolder(folder: string, rates: Rates, report?: (line: string) => void): ServedFolder {
  const work = openToWrite(folder);
  try {
    const { workshop, cards } = work;
    const photos = photosIn(folder);
    withoutLeftOvers(photos.folder);
    const devices = pairedDevices(folder, () => new Date());
    const clock = () => performance.now();
    const code = pairingCode(clock);
    const key = newKey();
    const pins = pinsIn(folder, clock);
    const proofs = pinProofs(clock);
    const store = watchedStore(work.store);
    let withdraw = () => {};
    return {
      api: api({ workshop, store, cards, photos, devices, code, pins, proofs, key }, rates, clock, report),
      workshop,
      code,
      announce(address) {
        asTheDiskLets(() => {
          withdraw = announce(folder, { address, key });
        });
      },
      async close() {
        withdraw();
        try {
          asTheDiskLets(() => devices.close());
        } finally {
          await work.close();
        }
      },
    };
  } catch (fault) {
    void work.close();
    throw fault;
  }
}

/** What serving does not hang on: the journal is read and looked at also where the disk takes nothing more. */
function asTheDiskLets(work: () => void): void {
  try {
    work();
  } catch (fault) {
    if (!(fault instanceof StoreTrouble)) throw fault;
  }
}
