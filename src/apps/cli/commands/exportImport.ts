import { closeSync, existsSync, fsyncSync, openSync, renameSync, writeSync } from "node:fs";
import { resolve } from "node:path";
import type { Command } from "commander";
import { photosNamed } from "../../../journal/photosNamed.ts";
import { ForeignEntry, JournalDisorder, JournalFork, JournalGap } from "../../../journal/refusals.ts";
import type { JournalStore } from "../../../journal/store.ts";
import { StoreTrouble } from "../../../journal/storeTrouble.ts";
import { openToRead, openToWrite } from "../../../stores/dataFolder.ts";
import { fileTroubleOf } from "../../../stores/fileTrouble.ts";
import { halfRemoved } from "../../../stores/halfRemoved.ts";
import { type Exported, exportedIn, jsonLines, UnreadableLine } from "../../../stores/jsonLines.ts";
import { copyPhotos, missingOf, type PhotosCopied, photosBeside, photosIn } from "../../../stores/photoCopies.ts";
import { bytesOf, MOST_BYTES, type PhotoFolder } from "../../../stores/photoFolder.ts";
import { MOST_PIXELS } from "../../../stores/photoLook.ts";
import { dataFlags, dataFolder, dataHelp } from "../dataOption.ts";
import { textIn } from "../files.ts";
import { mistaken } from "../mistake.ts";
import { damagedPhotoLines, missingPhotoLines } from "../photoLines.ts";
import { print } from "../print.ts";

type Options = { readonly data?: string; readonly json?: boolean };

export function exportCommand(program: Command): void {
  program
    .command("export")
    .description(
      "the journal as JSON Lines: one entry a line, in their order, with the owners' cards; its photos beside it",
    )
    .argument("<file>", "the file to write, which must not be there yet; - for standard output, without photos")
    .option(dataFlags, dataHelp)
    .option("--json", "one JSON document that says what was written; not with -")
    .addHelpText("after", "\nExample:\n  turnsleft export hollin-reach.jsonl --data hollin-reach")
    .action(async (file: string, { data, json = false }: Options) => {
      if (file === "-" && json)
        throw mistaken("--json", "-", "a file: the export is itself what goes to standard output");
      const folder = dataFolder(data);
      const { store, cards, workshop, close } = openToRead(folder);
      const lines = jsonLines({ store, cards }, workshop);
      const photos = photosIn(folder);
      if (file === "-") await printLines(lines, photos.names().length);
      else await writeLines(resolve(file), lines, photos, photosBeside(file, workshop), json);
      await close();
    });
}

async function printLines(lines: AsyncIterable<string>, photos: number): Promise<void> {
  for await (const line of lines) process.stdout.write(`${line}\n`);
  if (photos > 0)
    process.stderr.write(`turnsleft: ${photos} photos are not in it; named a file, it has them beside it.\n`);
}

async function writeLines(
  file: string,
  lines: AsyncIterable<string>,
  photos: PhotoFolder,
  there: PhotoFolder,
  json: boolean,
): Promise<void> {
  if (existsSync(file)) throw new StoreTrouble("already there", file);
  let end = "";
  let copied: PhotosCopied;
  try {
    const part = openSync(`${file}.part`, "w", 0o600);
    for await (const line of lines) {
      writeSync(part, `${line}\n`);
      end = line;
    }
    fsyncSync(part);
    closeSync(part);
    copied = await copyPhotos(photos, there);
    renameSync(`${file}.part`, file);
  } catch (cause) {
    halfRemoved(`${file}.part`);
    throw fileTroubleOf(file, cause);
  }
  const { entries, owners } = JSON.parse(end).end;
  const { damaged, added } = copied;
  if (damaged.length > 0) process.exitCode = 3;
  const photosAt = there.folder;
  print(json, { file, entries, owners, photos: copied.photos, photosAdded: added, photosAt, photosDamaged: damaged }, [
    `Wrote ${entries} entries and ${owners} owners' cards to ${file}.`,
    ...(copied.photos > 0 ? [`${copied.photos} photos in ${photosAt}, ${added} of them new there.`] : []),
    ...damagedPhotoLines(damaged),
  ]);
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
        const photos = photosIn(folder);
        const beside = file === "-" ? photos : photosBeside(file, given.workshop);
        // First: a photo without its entry is in nobody's way, and what is refused after it is tried again.
        const photosAdded = await keptFrom(beside, photos);
        const before = await countIn(work.store);
        await work.store.add(given.entries);
        await work.cards.put(given.cards);
        const added = (await countIn(work.store)) - before;
        const { workshop } = work;
        const entries = given.entries.length;
        const owners = given.cards.length;
        const photosMissing = missingOf([...new Set(given.entries.flatMap(({ fact }) => photosNamed(fact)))], photos);
        print(json, { folder, workshop, entries, added, owners, photosAdded, photosMissing }, [
          `Read ${entries} entries and ${owners} owners' cards; ${added} entries were new here.`,
          ...(photosAdded > 0 ? [`${photosAdded} photos were new here.`] : []),
          ...missingPhotoLines(photosMissing),
        ]);
      } catch (fault) {
        throw refusalOf(file, fault);
      } finally {
        await work.close();
      }
    });
}

const acceptedPhoto = `a JPEG, PNG or WebP of at most ${MOST_BYTES / 1024 / 1024} MB and ${MOST_PIXELS / 1e6} million pixels, named by the SHA-256 of its bytes, with nothing but the picture in it`;

/** Keeps the photos beside an export, each looked at as if a stranger had handed it over; how many were new. */
async function keptFrom(beside: PhotoFolder, photos: PhotoFolder): Promise<number> {
  let added = 0;
  for (const name of beside.names()) {
    const photo = beside.at(name);
    if (!photo || (await photos.whole(name))) continue;
    const keeping = await photos.keep(name, bytesOf(photo.path));
    if (keeping.type !== "kept") throw mistaken(photo.path, keeping.type, acceptedPhoto);
    added++;
  }
  return added;
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
