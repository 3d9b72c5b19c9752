import { existsSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { backupAge } from "../../stores/lastBackup.ts";
import { usualRates } from "../server/api/api.ts";
import { serverApp } from "../server/app.ts";
import { builtFiles } from "../server/builtFiles.ts";
import type { OpenLan } from "../server/lan/lanSide.ts";
import { type Listening, listen } from "../server/listen.ts";
import { type PortProblem, usualPort } from "../server/port.ts";
import { servedFolder } from "../server/servedFolder.ts";
import { checkout } from "./checkout.ts";
import { dailyBackups } from "./dailyBackups.ts";
import { checkLanOptions, type LanWanted, lanFrom } from "./lanOption.ts";
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
  /** What the local network sees; null where it was not asked for. */
  readonly lan: OpenLan | null;
  readonly close: () => Promise<void>;
};

/** What was typed: the port, the data folder, where daily backups go, and what of the local network. */
export type Wanted = LanWanted & {
  readonly port: string | undefined;
  readonly folder: string;
  readonly backups: string | undefined;
};

/**
 * The built web app and the journal in `folder`, served at the port that was typed; an empty folder becomes a new workshop.
 * @throws InputMistake if the port cannot be had or the web app is not built
 * @throws StoreTrouble if the folder cannot be written, or another process writes into it
 */
export async function serving(wanted: Wanted): Promise<Serving> {
  const { folder, backups = join(folder, "backups") } = wanted;
  const port = portFrom("--port", wanted.port, usualPort);
  checkLanOptions(wanted);
  const files = builtBench();
  const tell = (sentence: string) => process.stderr.write(`turnsleft: ${sentence}\n`);
  const served = servedFolder(folder, usualRates, tell);
  let heard: Listening | null = null;
  try {
    const lan = await lanFrom(wanted, folder);
    const backup = () => backupAge(folder, new Date().toISOString());
    const app = serverApp({ files, version: engine, backup, ...(lan && { lan }) }, served.api);
    heard = had("--port", port, await listen(app.fetch, port));
    const lanPort = portFrom("--lan-port", wanted.lanPort, port === 0 ? 0 : heard.port + 1);
    const openLan = lan && had("--lan-port", lanPort, await lan.open(app, lanPort));
    const { address } = heard;
    served.announce(address);
    const apart = takenApart(folder);
    const daily = dailyBackups({
      folder,
      workshop: served.workshop,
      place: backups,
      take: apart.take,
      now: () => new Date(),
      tell,
    });
    daily.start();
    const here = heard;
    return {
      address,
      port: here.port,
      lan: openLan,
      workshop: served.workshop,
      pairing: served.code.open(),
      backups,
      async close() {
        apart.stop();
        await daily.stop();
        await openLan?.close();
        await here.close();
        await served.close();
      },
    };
  } catch (fault) {
    await heard?.close();
    await served.close();
    throw fault;
  }
}

function builtBench(): ReturnType<typeof builtFiles> {
  const folder = fileURLToPath(new URL("dist/web", checkout));
  if (!existsSync(`${folder}/index.html`)) throw mistaken("dist/web", null, "the built web app; npm start builds it");
  return builtFiles(folder);
}

/** What was opened at a port. @throws InputMistake if it could not be had */
function had<Opened extends object>(option: string, port: number, opened: Opened | PortProblem): Opened {
  if (typeof opened === "object") return opened;
  const another = `as ${option} ${port < 65_535 ? port + 1 : usualPort}, or ${option} 0 for any free one`;
  const accepted = { taken: "a port that no other program holds", "not allowed": "a port that this user may open" };
  throw mistaken(option, String(port), `${accepted[opened]}, ${another}`);
}

/** @throws InputMistake unless it is a whole number from 0 to 65535. */
function portFrom(option: string, text: string | undefined, usual: number): number {
  if (text === undefined) return usual;
  const port = /^\d{1,5}$/.test(text) ? Number(text) : Number.NaN;
  if (!(port <= 65_535)) throw mistaken(option, text, `a whole number from 0 to 65535, as ${usualPort}`);
  return port;
}
