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
  readonly lan?: boolean;
  readonly lanPort?: string;
  readonly certificate?: string;
  readonly key?: string;
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
    .option("--lan", "open it to the local network as well, by HTTPS")
    .option("--lan-port <number>", "the port there, the one after --port unless told")
    .option("--certificate <file>", "the workshop's own certificate in PEM, for --lan; else one of its own authority")
    .option("--key <file>", "the key of that certificate")
    .option("--example", "print a worked example and how to go on, and end")
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft start --example")
    .action(async ({ example = false, json = false, ...given }: Options) => {
      if (example) return printExample(json);
      const stop = stopped();
      // The other commands need not wait until a server is loaded.
      const { serving } = await import("../serving.ts");
      const { lanDocument, lanLines } = await import("../lanOption.ts");
      const { port, data, lan = false, lanPort, certificate, key } = given;
      const folder = dataFolder(data);
      const backups = given.backups && resolve(given.backups);
      const served = await serving({ port, folder, backups, lan, lanPort, certificate, key });
      const { address, workshop, pairing } = served;
      const told = { engine, address, port: served.port, folder, workshop, pairing, backups: served.backups };
      print(json, { ...told, lan: served.lan && lanDocument(served.lan) }, [
        `Turnsleft ${engine}: the bench is open in a browser at`,
        "",
        address,
        "",
        pairingLine(pairing),
        `The journal lies in ${folder}; a backup a day in ${served.backups}.`,
        ...(served.lan ? [...lanLines(served.lan), "", "Ctrl-C stops it."] : [thisMachineAlone]),
        "In a terminal: npx turnsleft start --example",
      ]);
      await stop;
      await served.close();
    });
}

const thisMachineAlone = "Only this machine can reach it, and nothing that is entered leaves it. Ctrl-C stops it.";

/** Waits for Ctrl-C, or for the end of the program that started this one to be asked for. */
function stopped(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => resolve());
  });
}
