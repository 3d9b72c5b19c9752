import { resolve } from "node:path";
import type { Command } from "commander";
import { usualPort } from "../../server/port.ts";
import { dataFlags, dataFolder, dataHelp } from "../dataOption.ts";
import { pairingLine } from "../pairingLine.ts";
import { print } from "../print.ts";
import { engine } from "../version.ts";
import { printExample } from "../workedExample.ts";

type Options = {
  readonly port?: string;
  readonly data?: string;
  readonly backups?: string;
  readonly example?: boolean;
  readonly json?: boolean;
};

export function startCommand(program: Command): void {
  program
    .command("start")
    .description(
      "the bench and the workshop's journal, served on this machine alone; --example prints a worked example",
    )
    .option("--port <number>", `the port to serve on, ${usualPort} if none is given, 0 for any free one`)
    .option(dataFlags, `${dataHelp}; an empty one becomes a new workshop`)
    .option("--backups <folder>", "where the daily backups go; the folder backups among the data unless told")
    .option("--example", "print a worked example and how to go on, and end")
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft start --example")
    .action(async ({ port, data, backups, example = false, json = false }: Options) => {
      if (example) return printExample(json);
      const stop = stopped();
      // The other commands need not wait until a server is loaded.
      const { serving } = await import("../serving.ts");
      const folder = dataFolder(data);
      const served = await serving({ port, folder, backups: backups && resolve(backups) });
      const { address, workshop, pairing } = served;
      print(json, { engine, address, port: served.port, folder, workshop, pairing, backups: served.backups }, [
        `Turnsleft ${engine}: the bench is open in a browser at`,
        "",
        address,
        "",
        pairingLine(pairing),
        `The journal lies in ${folder}; a backup a day in ${served.backups}.`,
        "Only this machine can reach it, and nothing that is entered leaves it. Ctrl-C stops it.",
        "In a terminal: npx turnsleft start --example",
      ]);
      await stop;
      await served.close();
    });
}

/** Waits for Ctrl-C, or for the end of the program that started this one to be asked for. */
function stopped(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => resolve());
  });
}
