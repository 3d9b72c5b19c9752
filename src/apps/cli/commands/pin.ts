import type { Command } from "commander";
import { dataFlags, dataFolder, dataHelp } from "../dataOption.ts";
import { mistaken } from "../mistake.ts";
import { print } from "../print.ts";
import { askServer } from "../servedData.ts";

type Options = { readonly data?: string; readonly forget?: string; readonly json?: boolean };

export function pinCommand(program: Command): void {
  program
    .command("pin")
    .description("who has a PIN for taking a refusal or a gate on himself; forgetting one")
    .option(dataFlags, dataHelp)
    .option("--forget <person>", "forget that person's PIN; he may then set another one")
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft pin --data hollin-reach")
    .action(async ({ data, forget, json = false }: Options) => {
      const folder = dataFolder(data);
      const { persons } = (await askServer(folder, "GET", "/pin")) as { persons: readonly string[] };
      if (forget === undefined) {
        const line = `A PIN is set by ${persons.join(", ")}: every override needs the PIN of who takes it on himself.`;
        print(json, { folder, persons }, [persons.length > 0 ? line : "Nobody has set a PIN; overrides need none."]);
        return;
      }
      if (!persons.includes(forget))
        throw mistaken(
          "--forget",
          forget,
          persons.length > 0 ? `one of: ${persons.join("; ")}` : "a person with a PIN; there is none",
        );
      await askServer(folder, "DELETE", `/pin/${forget}`);
      print(json, { folder, forgotten: forget }, [`The PIN of ${forget} is forgotten; another one may be set.`]);
    });
}
