import { closeSync, existsSync, fsyncSync, openSync, renameSync, writeSync } from "node:fs";
import { resolve } from "node:path";
import type { Command } from "commander";
import { ForeignEntry, JournalDisorder, JournalFork, JournalGap } from "../../../journal/refusals.ts";
import type { JournalStore } from "../../../journal/store.ts";
import { StoreTrouble } from "../../../journal/storeTrouble.ts";
import { openToRead, openToWrite } from "../../../stores/dataFolder.ts";
import { fileTroubleOf } from "../../../stores/fileTrouble.ts";
import { type Exported, exportedIn, jsonLines, UnreadableLine } from "../../../stores/jsonLines.ts";
import { dataFlags, dataFolder, dataHelp } from "../dataOption.ts";
import { textIn } from "../files.ts";
import { mistaken } from "../mistake.ts";
import { print } from "../print.ts";

type Options = { readonly data?: string; readonly json?: boolean };

export function exportCommand(program: Command): void {
  program
    .command("export")
    .description("the journal as JSON Lines: one entry a line, in their order, with the owners' cards")
    .argument("<file>", "the file to write, which must not be there yet; - for standard output")
    .option(dataFlags, dataHelp)
    .option("--json", "one JSON document that says what was written; not with -")
    .addHelpText("after", "\nExample:\n  turnsleft export hollin-reach.jsonl --data hollin-reach")
    .action(async (file: string, { data, json = false }: Options) => {
      if (file === "-" && json)
        throw mistaken("--json", "-", "a file: the export is itself what goes to standard output");
      const { store, cards, workshop, close } = openToRead(dataFolder(data));
      const lines = jsonLines({ store, cards }, workshop);
      if (file === "-") for await (const line of lines) process.stdout.write(`${line}\n`);
      else await writeLines(resolve(file), lines, json);
      await close();
    });
}

async function writeLines(file: string, lines: AsyncIterable<string>, json: boolean): Promise<void> {
  if (existsSync(file)) throw new StoreTrouble("already there", file);
  let end = "";
  try {
    const part = openSync(`${file}.part`, "w", 0o600);
    for await (const line of lines) {
      writeSync(part, `${line}\n`);
      end = line;
    }
    fsyncSync(part);
    closeSync(part);
    renameSync(`${file}.part`, file);
  } catch (cause) {
    throw fileTroubleOf(file, cause);
  }
  const { entries, owners } = JSON.parse(end).end;
  print(json, { file, entries, owners }, [`Wrote ${entries} entries and ${owners} owners' cards to ${file}.`]);
}

export function importCommand(program: Command): void {
  program
    .command("import")
    .description("the entries of an export; those that are there already change nothing")
    .argument("<file>", "an export; - for standard input")
    .option(dataFlags, dataHelp)
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft import hollin-reach.jsonl --data hollin-reach-copy")
    .action(async (file: string, { data, json = false }: Options) => {
      const given = read(file);
      const folder = dataFolder(data);
      const work = openToWrite(folder, given.workshop);
      try {
        const before = await countIn(work.store);
        await work.store.add(given.entries);
        await work.cards.put(given.cards);
        const added = (await countIn(work.store)) - before;
        const entries = given.entries.length;
        print(json, { folder, workshop: work.workshop, entries, added, owners: given.cards.length }, [
          `Read ${entries} entries and ${given.cards.length} owners' cards; ${added} entries were new here.`,
        ]);
      } catch (fault) {
        throw refusalOf(file, fault);
      } finally {
        await work.close();
      }
    });
}

const countIn = async (store: JournalStore): Promise<number> =>
  Object.values<number>(await store.heads()).reduce((sum, last) => sum + last, 0);

/** What a journal refuses as a whole is a mistake in the file; nothing of it was added. */
function refusalOf(file: string, fault: unknown): unknown {
  if (fault instanceof JournalFork)
    return mistaken(
      file,
      fault.message,
      "entries that were written once: a device was restored from a backup and wrote on",
    );
  if (fault instanceof JournalGap)
    return mistaken(file, fault.message, "an export that holds all of a device's entries");
  if (fault instanceof JournalDisorder) return mistaken(file, fault.message, "entries in the order of their clocks");
  if (fault instanceof ForeignEntry) return mistaken(file, fault.message, "entries of one workshop");
  return fault;
}

function read(file: string): Exported {
  try {
    return exportedIn(textIn("file", file));
  } catch (fault) {
    if (fault instanceof UnreadableLine)
      throw mistaken(`${file}, line ${fault.line}`, "what cannot be read", fault.accepted);
    throw fault;
  }
}
