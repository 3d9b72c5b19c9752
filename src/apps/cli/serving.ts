import { existsSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { backupAge } from "../../stores/lastBackup.ts";
import { usualRates } from "../server/api/api.ts";
import { serverApp } from "../server/app.ts";
import { builtFiles } from "../server/builtFiles.ts";
import { type Listening, listen } from "../server/listen.ts";
import { usualPort } from "../server/port.ts";
import { servedFolder } from "../server/servedFolder.ts";
import { checkout } from "./checkout.ts";
import { dailyBackups } from "./dailyBackups.ts";
import { mistaken } from "./mistake.ts";
import { takenApart } from "./takenApart.ts";
import { engine } from "./version.ts";

/** A bench and a workshop's journal, served until it is closed. */
export type Serving = {
  readonly address: string;
  readonly port: number;
  readonly workshop: string;
  /** The code by which the first device is let in. */
  readonly pairing: { readonly code: string; readonly seconds: number };
  /** Where the daily backups go. */
  readonly backups: string;
  readonly close: () => Promise<void>;
};

/** What was typed: the port, the data folder, and where daily backups go. */
export type Wanted = {
  readonly port: string | undefined;
  readonly folder: string;
  readonly backups: string | undefined;
};

/**
 * The built web app and the journal in `folder`, served at the port that was typed; an empty folder becomes a new workshop.
 * @throws InputMistake if the port cannot be had or the web app is not built
 * @throws StoreTrouble if the folder cannot be written, or another process writes into it
 */
export async function serving({ port: text, folder, backups = join(folder, "backups") }: Wanted): Promise<Serving> {
  const port = portFrom(text);
  const files = builtBench();
  const served = servedFolder(folder, usualRates);
  try {
    const backup = () => backupAge(folder, new Date().toISOString());
    const { fetch } = serverApp({ files, version: engine, backup }, served.api);
    const heard = listening(await listen(fetch, port), port);
    served.announce(heard.address);
    const apart = takenApart(folder);
    const daily = dailyBackups({
      folder,
      workshop: served.workshop,
      place: backups,
      take: apart.take,
      now: () => new Date(),
      tell: (sentence) => process.stderr.write(`turnsleft: ${sentence}\n`),
    });
    daily.start();
    return {
      address: heard.address,
      port: heard.port,
      workshop: served.workshop,
      pairing: served.code.open(),
      backups,
      async close() {
        apart.stop();
        await daily.stop();
        await heard.close();
        await served.close();
      },
    };
  } catch (fault) {
    await served.close();
    throw fault;
  }
}

function builtBench(): ReturnType<typeof builtFiles> {
  const folder = fileURLToPath(new URL("dist/web", checkout));
  if (!existsSync(`${folder}/index.html`)) throw mistaken("dist/web", null, "the built web app; npm start builds it");
  return builtFiles(folder);
}

function listening(served: Awaited<ReturnType<typeof listen>>, port: number): Listening {
  if (typeof served === "object") return served;
  const another = `as --port ${port < 65_535 ? port + 1 : usualPort}, or --port 0 for any free one`;
  const accepted = { taken: "a port that no other program holds", "not allowed": "a port that this user may open" };
  throw mistaken("--port", String(port), `${accepted[served]}, ${another}`);
}

/** @throws InputMistake unless it is a whole number from 0 to 65535. */
function portFrom(text: string | undefined): number {
  if (text === undefined) return usualPort;
  const port = /^\d{1,5}$/.test(text) ? Number(text) : Number.NaN;
  if (!(port <= 65_535)) throw mistaken("--port", text, `a whole number from 0 to 65535, as ${usualPort}`);
  return port;
}
