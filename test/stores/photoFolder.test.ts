import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, describe, expect, test } from "vitest";
import {
  type Keeping,
  MOST_BYTES,
  type PhotoFolder,
  photoFolder,
  strangersIn,
  withoutLeftOvers,
} from "../../src/stores/photoFolder.ts";
import { hugePng, inPieces, nameOf, phonePhoto, plainPhoto, plainPng, plainWebp } from "./pictures.ts";

const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
afterAll(() => rmSync(scratch, { recursive: true }));
let places = 0;
const fresh = (): PhotoFolder => photoFolder(join(scratch, `place-${places++}`));
const filesIn = ({ folder }: PhotoFolder): readonly string[] => (existsSync(folder) ? readdirSync(folder).sort() : []);

describe("a photo is kept under the digest of its bytes", () => {
  test.each([
    ["jpg", plainPhoto],
    ["png", plainPng],
    ["webp", plainWebp],
  ] as const)("as it was sent, to the byte: %s", async (ending, made) => {
    const photos = fresh();
    const bytes = await made();
    const name = nameOf(bytes);
    expect(await photos.keep(name, inPieces(bytes))).toEqual({ type: "kept", name, bytes: bytes.length });
    expect(filesIn(photos)).toEqual([`${name}.${ending}`]);
    const file = photos.at(name)?.path ?? "";
    expect(readFileSync(file)).toEqual(bytes);
    expect(statSync(file).mode & 0o777).toBe(0o600);
    expect(photos.names()).toEqual([name]);
    expect(await photos.whole(name)).toBe(true);
  });

  test("and putting it again, also twice at once, changes nothing", async () => {
    const photos = fresh();
    const bytes = await plainPhoto();
    const name = nameOf(bytes);
    const put = () => photos.keep(name, inPieces(bytes));
    const answers = [...(await Promise.all([put(), put(), put()])), await put()];
    expect(answers).toEqual(Array(4).fill({ type: "kept", name, bytes: bytes.length }));
    expect(filesIn(photos)).toHaveLength(1);
  });

  test("one that rotted on the disk is known for it, and replaced by what comes under its name", async () => {
    const photos = fresh();
    const bytes = await plainPhoto();
    const name = nameOf(bytes);
    await photos.keep(name, inPieces(bytes));
    writeFileSync(photos.at(name)?.path ?? "", bytes.subarray(0, 100));
    expect(await photos.whole(name)).toBe(false);
    await photos.keep(name, inPieces(bytes));
    expect(await photos.whole(name)).toBe(true);
  });
});

describe("what is not kept leaves nothing", () => {
  const refused = async (bytes: Uint8Array, name = nameOf(bytes)): Promise<Keeping> => {
    const photos = fresh();
    const answer = await photos.keep(name, inPieces(bytes, 100_000));
    expect(filesIn(photos)).toEqual([]);
    return answer;
  };

  test("another photo than its name says", async () => {
    const bytes = await plainPhoto();
    expect(await refused(bytes, nameOf(await plainPng()))).toEqual({ type: "wrong digest", found: nameOf(bytes) });
  });

  test("more than 25 MB, of which no more is read than it takes to know", async () => {
    const photos = fresh();
    let read = 0;
    async function* endless(): AsyncGenerator<Uint8Array> {
      for (;;) {
        read += 1_000_000;
        yield new Uint8Array(1_000_000);
      }
    }
    expect(await photos.keep("0".repeat(64), endless())).toEqual({ type: "too large", most_bytes: MOST_BYTES });
    expect(read).toBe(27_000_000);
    expect(filesIn(photos)).toEqual([]);
  });

  test("no picture, by its content and not by its name; a drawing is none", async () => {
    const whole = await plainPhoto();
    for (const bytes of [
      Buffer.from(""),
      Buffer.from("turns = 3.5"),
      Buffer.from("<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>"),
      whole.subarray(0, whole.length - 200),
      Buffer.from([0xff, 0xd8, 0xff, 0xd9]),
      await sharp({ create: { width: 9, height: 9, channels: 3, background: "#abc" } })
        .gif()
        .toBuffer(),
      await sharp({ create: { width: 9, height: 9, channels: 3, background: "#abc" } })
        .tiff()
        .toBuffer(),
    ])
      expect(await refused(bytes)).toEqual({ type: "no picture" });
  });

  test("one whose data are spoilt inside, although its marks are in order", async () => {
    const bytes = await plainPng();
    bytes.fill(0x55, 100, 400);
    expect(await refused(bytes)).toEqual({ type: "no picture" });
  });

  test("more than 50 million pixels, without unpacking them", async () => {
    expect(await refused(await hugePng(30_000))).toEqual({
      type: "too many pixels",
      most_pixels: 50_000_000,
      found_pixels: 900_000_000,
    });
  });

  test.each(["jpeg", "png", "webp"] as const)("the place where a %s was taken", async (kind) => {
    expect(await refused(await phonePhoto(kind))).toEqual({ type: "carries more", carries: ["EXIF"] });
  });

  test("a sender who goes away in the middle", async () => {
    const photos = fresh();
    const bytes = await plainPhoto();
    async function* lost(): AsyncGenerator<Uint8Array> {
      yield bytes.subarray(0, 500);
      throw new Error("hung up");
    }
    await expect(photos.keep(nameOf(bytes), lost())).rejects.toThrow("hung up");
    expect(filesIn(photos)).toEqual([]);
  });

  test("a process that was killed: what it had not received to the end is cleared away", async () => {
    const photos = fresh();
    mkdirSync(photos.folder);
    writeFileSync(join(photos.folder, "incoming-0a1b"), "half");
    writeFileSync(join(photos.folder, "shopping.txt"), "plugs");
    expect([photos.names(), strangersIn(photos.folder)]).toEqual([[], ["shopping.txt"]]);
    withoutLeftOvers(photos.folder);
    expect(filesIn(photos)).toEqual(["shopping.txt"]);
  });

  test("a place that is no folder is a trouble of the disk", async () => {
    const photos = fresh();
    writeFileSync(photos.folder, "a file");
    await expect(photos.keep("0".repeat(64), inPieces(new Uint8Array(9)))).rejects.toMatchObject({
      name: "StoreTrouble",
      trouble: "already there",
    });
  });
});

describe("a photo as a telephone hands it over", () => {
  test.each(["jpeg", "png", "webp"] as const)(
    "a %s is kept upright and without its place, under its new name",
    async (kind) => {
      const photos = fresh();
      const answer = await photos.keepStripped(inPieces(await phonePhoto(kind)));
      if (answer.type !== "kept") throw new Error(answer.type);
      const kept = readFileSync(photos.at(answer.name)?.path ?? "");
      expect(nameOf(kept)).toBe(answer.name);
      const { format, width, height, exif, xmp, orientation } = await sharp(kept).metadata();
      expect({ format, width, height, exif, xmp }).toEqual({
        format: kind,
        width: 60,
        height: 80,
        exif: undefined,
        xmp: undefined,
      });
      expect(orientation ?? 1).toBe(1);
      expect(kept.includes("Invented")).toBe(false);
      // Its left half was dark while it lay on its side; turned a quarter to the right, its upper half is.
      const { data } = await sharp(kept).removeAlpha().raw().toBuffer({ resolveWithObject: true });
      expect([data[0]! < 30, data[data.length - 3]! > 225]).toEqual([true, true]);
      expect(filesIn(photos)).toHaveLength(1);
    },
  );

  test("what is none is not kept that way either", async () => {
    const photos = fresh();
    expect(await photos.keepStripped(inPieces(Buffer.from("turns")))).toEqual({ type: "no picture" });
    expect(await photos.keepStripped(inPieces(await hugePng(9_000)))).toMatchObject({ type: "too many pixels" });
    expect(filesIn(photos)).toEqual([]);
  });
});
