import { createHash, randomBytes } from "node:crypto";
import { createReadStream, existsSync, readdirSync, rmSync } from "node:fs";
import { type FileHandle, open, readFile, rename, rm } from "node:fs/promises";
import { join } from "node:path";
import { fileTroubleOf } from "./fileTrouble.ts";
import { madeFolder } from "./madeFolder.ts";
import { type PhotoType, photoBytes } from "./photoBytes.ts";
import { looked, MOST_PIXELS, stripped } from "./photoLook.ts";
import { synced } from "./synced.ts";

/** A photo larger than this is none for a journal: the page makes them a tenth of it. Judgement. */
export const MOST_BYTES = 25 * 1024 * 1024;

/** The name of a photo: the SHA-256 of its bytes, 64 hexadecimal digits. */
export const isPhotoName = (text: string): boolean => /^[0-9a-f]{64}$/.test(text);

/** A photo that was kept, or why it was not; nothing of it stays then. */
export type Keeping =
  | { readonly type: "kept"; readonly name: string; readonly bytes: number }
  | { readonly type: "too large"; readonly most_bytes: number }
  | { readonly type: "wrong digest"; readonly found: string }
  | { readonly type: "no picture" }
  | { readonly type: "too many pixels"; readonly most_pixels: number; readonly found_pixels: number }
  | { readonly type: "carries more"; readonly carries: readonly string[] };

/** A photo on the disk. */
export type PhotoFile = { readonly path: string; readonly type: PhotoType };

type Bytes = AsyncIterable<Uint8Array>;

/**
 * Photos in a folder, each under the SHA-256 of its bytes.
 *
 * The name is that of what is kept, and what is kept is what was sent, to the byte: a phone writes the name into its journal
 * before anybody else has the photo, and an entry is never changed. So whoever takes a photo strips it before he names it; one
 * that still carries where it was taken is refused, not changed. `keepStripped` does it for those who cannot.
 */
export type PhotoFolder = {
  readonly folder: string;
  /** Keeps a photo under its name; one that is there already changes nothing. @throws StoreTrouble, and what `bytes` throws */
  keep(name: string, bytes: Bytes): Promise<Keeping>;
  /** Keeps a photo upright and without anything beside the picture, under the name it then has. @throws as `keep` */
  keepStripped(bytes: Bytes): Promise<Keeping>;
  /** Keeps bytes that another folder of ours had looked at already. @throws as `keep` */
  copy(name: string, from: PhotoFile): Promise<Keeping>;
  at(name: string): PhotoFile | null;
  /** The names of all photos, in order. @throws StoreTrouble */
  names(): readonly string[];
  /** Whether the bytes of a photo still have its name. @throws StoreTrouble */
  whole(name: string): Promise<boolean>;
};

const endings: Readonly<Record<PhotoType, string>> = { jpeg: "jpg", png: "png", webp: "webp" };
const types = Object.keys(endings) as PhotoType[];
const kept = /^([0-9a-f]{64})\.(jpg|png|webp)$/;
const incoming = /^incoming-[0-9a-f]+$/;

/** The photos of a folder, which need not be there yet. */
export function photoFolder(folder: string): PhotoFolder {
  const pathOf = (name: string, type: PhotoType): string => join(folder, `${name}.${endings[type]}`);

  const at = (name: string): PhotoFile | null => {
    if (!isPhotoName(name)) return null;
    const type = types.find((it) => existsSync(pathOf(name, it)));
    return type ? { path: pathOf(name, type), type } : null;
  };

  async function whole(name: string): Promise<boolean> {
    const photo = at(name);
    if (!photo) return false;
    const hash = createHash("sha256");
    for await (const chunk of bytesOf(photo.path)) hash.update(chunk);
    return hash.digest("hex") === name;
  }

  /** Takes bytes into a file without a name; hands it to `judge`, which names it, or says why it is not kept. */
  async function taken(bytes: Bytes, judge: (file: Arrived) => Promise<Keeping>): Promise<Keeping> {
    const path = join(folder, `incoming-${randomBytes(8).toString("hex")}`);
    try {
      madeFolder(folder);
      const arrived = await atDisk(folder, () => open(path, "wx", 0o600));
      const written = await writtenTo(arrived, folder, bytes);
      return written === null ? { type: "too large", most_bytes: MOST_BYTES } : await judge({ path, ...written });
    } finally {
      await rm(path, { force: true }).catch(() => {});
    }
  }

  async function named({ path, name, size }: Arrived, type: PhotoType): Promise<Keeping> {
    await atDisk(folder, async () => {
      await rename(path, pathOf(name, type));
      synced(folder);
    });
    return { type: "kept", name, bytes: size };
  }

  /** What came from outside: a picture, whole, no larger than can be unpacked, and nothing but that. */
  async function judged(file: Arrived): Promise<Keeping> {
    const found = photoBytes(await atDisk(folder, () => readFile(file.path)));
    if (!found) return { type: "no picture" };
    if (found.carries.length > 0) return { type: "carries more", carries: found.carries };
    return (await pixelFault(file.path)) ?? named(file, found.type);
  }

  return {
    folder,
    at,
    keep: (name, bytes) =>
      taken(bytes, async (file) => {
        if (file.name !== name) return { type: "wrong digest", found: file.name };
        // One that rotted on the disk is replaced by what came.
        return (await whole(name)) ? { type: "kept", name, bytes: file.size } : judged(file);
      }),
    keepStripped: (bytes) =>
      taken(bytes, async (file) => {
        if (!photoBytes(await atDisk(folder, () => readFile(file.path)))) return { type: "no picture" };
        const fault = await pixelFault(file.path);
        if (fault) return fault;
        const picture = await stripped(file.path);
        return picture ? taken(once(picture), judged) : { type: "no picture" };
      }),
    copy: (name, from) =>
      taken(bytesOf(from.path), async (file) =>
        file.name === name ? named(file, from.type) : { type: "wrong digest", found: file.name },
      ),
    names: () => namesIn(folder),
    whole,
  };
}

/** Removes what a process that was killed had not received to the end. For the one process that writes. @throws StoreTrouble */
export function withoutLeftOvers(folder: string): void {
  for (const name of entriesOf(folder)) if (incoming.test(name)) rmSync(join(folder, name), { force: true });
}

/** The files of a folder of photos that are none of ours by their names. @throws StoreTrouble */
export const strangersIn = (folder: string): readonly string[] =>
  entriesOf(folder).filter((it) => !kept.test(it) && !incoming.test(it));

const namesIn = (folder: string): readonly string[] =>
  [...new Set(entriesOf(folder).flatMap((it) => kept.exec(it)?.[1] ?? []))].sort();

function entriesOf(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === "ENOENT") return [];
    throw fileTroubleOf(folder, cause);
  }
}

/** A file that came whole: its digest is its name to be. */
type Arrived = { readonly path: string; readonly name: string; readonly size: number };

/** Writes and hashes what comes, to the disk for good; null where it is more than may come, and the rest is not read. */
async function writtenTo(file: FileHandle, folder: string, bytes: Bytes): Promise<Omit<Arrived, "path"> | null> {
  const hash = createHash("sha256");
  let size = 0;
  try {
    for await (const chunk of bytes) {
      size += chunk.byteLength;
      if (size > MOST_BYTES) return null;
      hash.update(chunk);
      await atDisk(folder, () => file.writeFile(chunk));
    }
    await atDisk(folder, () => file.sync());
    return { name: hash.digest("hex"), size };
  } finally {
    await file.close();
  }
}

async function pixelFault(path: string): Promise<Keeping | null> {
  const look = await looked(path);
  if (!look) return { type: "no picture" };
  const pixels = look.width_px * look.height_px;
  return pixels > MOST_PIXELS ? { type: "too many pixels", most_pixels: MOST_PIXELS, found_pixels: pixels } : null;
}

/** The bytes of a file. @throws StoreTrouble */
export async function* bytesOf(path: string): AsyncGenerator<Uint8Array> {
  try {
    yield* createReadStream(path);
  } catch (cause) {
    throw fileTroubleOf(path, cause);
  }
}

async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}

async function atDisk<Result>(place: string, work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (cause) {
    throw fileTroubleOf(place, cause);
  }
}
