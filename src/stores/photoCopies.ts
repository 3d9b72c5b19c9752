import { dirname, join, resolve } from "node:path";
import type { WorkshopId } from "../journal/facts/ids.ts";
import { type PhotoFolder, photoFolder, strangersIn } from "./photoFolder.ts";

/** Where the photos lie inside a data folder. */
export const photosIn = (folder: string): PhotoFolder => photoFolder(join(folder, "photos"));

/**
 * Where the photos of backups and exports lie: beside the file, in one folder for all files of the workshop in that place. Since
 * each is there once under its digest, the next backup beside it costs what is new and not all of them again.
 */
export const photosBeside = (file: string, workshop: WorkshopId): PhotoFolder =>
  photoFolder(join(dirname(resolve(file)), `${workshop}.photos`));

/** What came over: how many there are, how many of them were new there, and which of them are damaged where they come from. */
export type PhotosCopied = {
  readonly photos: number;
  readonly added: number;
  readonly damaged: readonly string[];
};

/** Brings the photos of one folder into another and reads every one of them back there. @throws StoreTrouble */
export async function copyPhotos(from: PhotoFolder, to: PhotoFolder): Promise<PhotosCopied> {
  const names = from.names();
  const damaged: string[] = [];
  let added = 0;
  for (const name of names) {
    if (await to.whole(name)) continue;
    const photo = from.at(name);
    const keeping = photo ? await to.copy(name, photo) : null;
    if (keeping?.type === "kept" && (await to.whole(name))) added++;
    else damaged.push(name);
  }
  return { photos: names.length - damaged.length, added, damaged };
}

/** What was found beside a journal that names `named`. Missing ones may be on their way; they are no fault. */
export type PhotosFound = {
  readonly photos: number;
  readonly missing: readonly string[];
  readonly damaged: readonly string[];
  readonly strangers: readonly string[];
};

/** Reads every photo of a data folder through. @throws StoreTrouble */
export async function photosFound(folder: string, named: readonly string[]): Promise<PhotosFound> {
  const photos = photosIn(folder);
  const names = photos.names();
  const damaged: string[] = [];
  for (const name of names) if (!(await photos.whole(name))) damaged.push(name);
  return {
    photos: names.length,
    missing: missingOf(named, photos),
    damaged,
    strangers: strangersIn(photos.folder),
  };
}

/** The photos of `named` that are not there. */
export const missingOf = (named: readonly string[], photos: PhotoFolder): readonly string[] =>
  named.filter((it) => photos.at(it) === null);
