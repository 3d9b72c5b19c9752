import type { Command } from "commander";
import { usualPort } from "../../server/port.ts";
import { print } from "../print.ts";
import { engine } from "../version.ts";
import { printExample } from "../workedExample.ts";

type Options = { readonly port?: string; readonly example?: boolean; readonly json?: boolean };

export function startCommand(program: Command): void {
  program
    .command("start")
    .description("the bench in a browser, served on this machine alone; --example prints a worked example")
    .option("--port <number>", `the port to serve on, ${usualPort} if none is given, 0 for any free one`)
    .option("--example", "print a worked example and how to go on, and end")
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft start --example")
    .action(async ({ port, example = false, json = false }: Options) => {
      if (example) return printExample(json);
      const stop = stopped();
      // The other commands need not wait until a server is loaded.
      const { serving } = await import("../serving.ts");
      const served = await serving(port);
      const { address } = served;
      print(json, { engine, address, port: served.port }, [
        `Turnsleft ${engine}: the bench is open in a browser at`,
        "",
        address,
        "",
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
