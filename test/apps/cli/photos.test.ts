import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { JobId, PersonId } from "../../../src/journal/facts/ids.ts";
import { openToWrite } from "../../../src/stores/dataFolder.ts";
import { photosIn } from "../../../src/stores/photoCopies.ts";
import { started } from "../../browser/startedTurnsleft.ts";
import { inPieces, nameOf, phonePhoto, plainPhoto, plainPng } from "../../stores/pictures.ts";
import type { Run } from "./turnsleft.ts";

const root = new URL("../../..", import.meta.url).pathname;
const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
afterAll(() => rmSync(scratch, { recursive: true }));
const file = (...names: string[]): string => join(scratch, ...names);
const turnsleft = (...options: string[]): Run =>
  spawnSync(process.execPath, [`${root}dist/src/apps/cli/main.js`, ...options], { cwd: scratch, encoding: "utf8" });
const answer = (...options: string[]) => {
  const { status, stdout, stderr } = turnsleft(...options, "--json");
  if (status !== 0 || stderr !== "") throw new Error(`${options.join(" ")}: ${status} ${stderr}`);
  return JSON.parse(stdout);
};

const away = "f".repeat(64);
let workshop: string;
let names: string[];
beforeAll(async () => {
  const work = openToWrite(file("shop"));
  workshop = work.workshop;
  const [before, after, another] = [await plainPhoto(), await plainPng(), await plainPhoto(90, 60, 60)];
  names = [before, after, another].map(nameOf);
  const [a = "", b = "", c = ""] = names;
  for (const bytes of [before, after, another]) await photosIn(file("shop")).keep(nameOf(bytes), inPieces(bytes));
  const signed = { by: "jory" as PersonId, job: "0412" as JobId, at: "2026-11-25T08:00:00Z" };
  const [noted] = await work.pen.write(
    signed,
    { type: "NoteWritten", words: "paper dry", photos: [a, b] },
    { type: "NoteWritten", words: "tag in place", photos: [away] },
  );
  await work.pen.write(signed, {
    type: "EntryCorrected",
    entry: noted ?? ("" as never),
    reason: "the wrong side",
    is: { type: "ConditionFound", words: "wet below the plug", photos: [c] },
  });
  await work.close();
});

const photosOf = (folder: string): readonly string[] => photosIn(file(folder)).names();

describe("photos go where the journal goes", () => {
  test("a backup has them beside it and a folder out of it has them again; one on its way is told and no fault", () => {
    const backup = answer("backup", "stick.backup", "--data", "shop");
    expect(backup).toMatchObject({
      photos: 3,
      photosAdded: 3,
      photosMissing: [away],
      photosDamaged: [],
      readBack: true,
    });
    expect(backup.photosAt).toBe(file(`${workshop}.photos`));
    expect(answer("restore", "stick.backup", "--data", "again")).toMatchObject({ photos: 3, photosMissing: [away] });
    expect(photosOf("again")).toEqual([...names].sort());
    expect(answer("check", "--data", "again")).toMatchObject({ whole: true, photos: 3, photosMissing: [away] });
  });

  test("the next backup beside it, and an export, cost what is new", async () => {
    const bytes = await plainPhoto(70, 70, 200);
    await photosIn(file("shop")).keep(nameOf(bytes), inPieces(bytes));
    names.push(nameOf(bytes));
    expect(answer("backup", "second.backup", "--data", "shop")).toMatchObject({ photos: 4, photosAdded: 1 });
    const exported = answer("export", "shop.jsonl", "--data", "shop");
    expect(exported).toMatchObject({ entries: 3, photos: 4, photosAdded: 0 });
    expect(readdirSync(exported.photosAt)).toHaveLength(4);
  });

  test("an import brings them in, and importing again changes nothing", () => {
    const first = answer("import", "shop.jsonl", "--data", "copy");
    expect(first).toMatchObject({ entries: 3, added: 3, photosAdded: 4, photosMissing: [away] });
    expect(photosOf("copy")).toEqual([...names].sort());
    expect(answer("import", "shop.jsonl", "--data", "copy")).toMatchObject({ added: 0, photosAdded: 0 });
  });

  test("to standard output goes the journal alone, and a line beside it says so", () => {
    const { status, stdout, stderr } = turnsleft("export", "-", "--data", "shop");
    expect([status, stderr]).toEqual([0, "turnsleft: 4 photos are not in it; named a file, it has them beside it.\n"]);
    expect(stdout).toBe(readFileSync(file("shop.jsonl"), "utf8"));
  });

  test("in lines for people", () => {
    const { stdout } = turnsleft("check", "--data", "shop");
    expect(stdout).toContain("Whole: 3 entries, 1 jobs, 1 devices, 0 owners' cards, 4 photos.");
    expect(stdout).toContain(
      `1 photos that the journal names are not here; another device may still have them:\n  ${away}`,
    );
    expect(turnsleft("backup", "third.backup", "--data", "shop").stdout).toContain(
      `4 photos in ${file(`${workshop}.photos`)}, 0 of them new there.`,
    );
  });
});

test("a server that is killed while a photo comes leaves nothing of it once it serves again", async () => {
  const folder = file("killed");
  const serve = () =>
    started(
      process.execPath,
      ["dist/src/apps/cli/main.js", "start", "--port", "0", "--json", "--data", folder],
      /\}\n$/,
    );
  const run = await serve();
  const { address, pairing } = JSON.parse(run.printed);
  const paired = await fetch(`${address}api/devices`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ code: pairing.code, name: "phone" }),
  });
  const { token } = (await paired.json()) as { token: string };
  const bytes = await plainPhoto(800, 600);
  const asked = request(`${address}api/photos/${nameOf(bytes)}`, {
    method: "PUT",
    headers: { authorization: `Bearer ${token}`, "content-length": bytes.length },
  });
  asked.on("error", () => {});
  asked.write(bytes.subarray(0, bytes.length / 2));
  const photos = (): readonly string[] =>
    existsSync(join(folder, "photos")) ? readdirSync(join(folder, "photos")) : [];
  await expect.poll(() => photos().length, { timeout: 20_000 }).toBe(1);
  run.process.kill("SIGKILL");
  await run.ended;
  expect(photos()).toEqual([expect.stringMatching(/^incoming-/)]);
  const again = await serve();
  expect(photos()).toEqual([]);
  again.process.kill("SIGTERM");
  expect(await again.ended).toBe(0);
});

describe("a damaged photo", () => {
  test("is found, keeps nothing else from being saved, and is mended by who has it whole", async () => {
    const [name = ""] = names;
    const path = photosIn(file("shop")).at(name)?.path ?? "";
    const bytes = readFileSync(path);
    writeFileSync(path, Buffer.concat([bytes.subarray(0, 500), Buffer.alloc(40), bytes.subarray(540)]));
    const checked = turnsleft("check", "--data", "shop");
    expect(checked.status).toBe(3);
    expect(checked.stdout).toContain("NOT WHOLE: 1 faults");
    expect(checked.stdout).toContain(`  ${name}: the photo is damaged`);
    // Where the backups lie it is whole from an earlier one.
    expect(answer("backup", "fourth.backup", "--data", "shop")).toMatchObject({ photos: 4, photosDamaged: [] });
    const elsewhere = turnsleft("export", "moved.jsonl", "--data", "shop", "--json");
    expect(elsewhere.status).toBe(0);
    renameSync(file(`${workshop}.photos`), file("put away"));
    const bare = turnsleft("backup", "fifth.backup", "--data", "shop", "--json");
    expect(bare.status).toBe(3);
    expect(JSON.parse(bare.stdout)).toMatchObject({
      photos: 3,
      photosDamaged: [name],
      photosMissing: [name, away].sort(),
    });
    rmSync(file(`${workshop}.photos`), { recursive: true });
    renameSync(file("put away"), file(`${workshop}.photos`));
    expect(answer("import", "shop.jsonl", "--data", "shop")).toMatchObject({ added: 0, photosAdded: 1 });
    expect(answer("check", "--data", "shop")).toMatchObject({ whole: true, faults: [] });
  });
});

describe("what somebody put among the photos", () => {
  test("is refused by an import with its name, and no entry is added", async () => {
    const bytes = await phonePhoto("jpeg");
    const planted = file(`${workshop}.photos`, `${nameOf(bytes)}.jpg`);
    writeFileSync(planted, bytes);
    const { status, stdout, stderr } = turnsleft("import", "shop.jsonl", "--data", "fresh");
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toBe(
      `turnsleft: ${planted}: given "carries more"; accepted: a JPEG, PNG or WebP of at most 25 MB and 50 million pixels, named by the SHA-256 of its bytes, with nothing but the picture in it\n`,
    );
    expect(answer("check", "--data", "fresh").entries).toBe(0);
    expect(existsSync(photosIn(file("fresh")).at(nameOf(bytes))?.path ?? "")).toBe(false);
    rmSync(planted);
  });

  test("is told by a check where it is none of ours", () => {
    writeFileSync(file("shop", "photos", "holiday.jpg"), "");
    expect(answer("check", "--data", "shop")).toMatchObject({ whole: true, strangers: ["holiday.jpg"] });
  });
});
