import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "@photostructure/sqlite";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { started } from "../../browser/startedTurnsleft.ts";
import { type SmallDisk, smallDisk } from "../../smallDisk.ts";
import { nameOf, plainPhoto } from "../../stores/pictures.ts";
import { note as noteOf } from "../../stores/storeContract.ts";
import type { Run } from "./turnsleft.ts";

const root = new URL("../../..", import.meta.url).pathname;
const program = `${root}dist/src/apps/cli/main.js`;
const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
afterAll(() => rmSync(scratch, { recursive: true }));

const turnsleft = (...options: string[]): Run =>
  spawnSync(process.execPath, [program, ...options], { cwd: scratch, encoding: "utf8", timeout: 30_000 });

/** A run that does what it should. */
const done = (...options: string[]): string => {
  const { status, stdout, stderr } = turnsleft(...options);
  expect([options[0], status, stderr]).toEqual([options[0], 0, ""]);
  return stdout;
};

/** The sentence of a run in trouble: one line, exit 3, and nothing printed that could be taken for an answer. */
const trouble = (...options: string[]): string => {
  const { status, stdout, stderr } = turnsleft(...options);
  expect([options[0], status, stdout, stderr.split("\n").length]).toEqual([options[0], 3, "", 2]);
  return stderr;
};

const isFull = "the disk is full; what was kept before is safe, and nothing of this was kept.\n";
const isReadOnly = "it may be read and not written; allow writing there, or name another folder with --data.\n";

let entries: number;
beforeAll(() => {
  done("demo", "--data", "shop");
  done("export", "shop.jsonl", "--data", "shop");
  done("backup", "shop.backup", "--data", "shop");
  ({ entries } = JSON.parse(done("check", "--data", "shop", "--json")));
});

const possible = smallDisk(64);
possible?.remove();

describe.skipIf(possible === null)("a disk that is full", () => {
  let disk: SmallDisk;
  beforeEach(() => {
    disk = smallDisk(1024) as SmallDisk;
  });
  afterEach(() => disk.remove());
  const on = (name: string): string => join(disk.folder, name);

  test("takes nothing by halves, gives everything that it holds, and goes on once there is room", () => {
    writeFileSync(on("filling"), Buffer.alloc(820 * 1024));
    expect(trouble("import", "shop.jsonl", "--data", on("shop"))).toContain(isFull);
    expect(done("check", "--data", on("shop"))).toContain("Whole: 0 entries");
    disk.empty();
    expect(done("import", "shop.jsonl", "--data", on("shop"))).toContain(`${entries} entries were new here`);

    disk.fill();
    // What somebody needs at that moment: to see what stands, and to get it onto another disk.
    done("standing", "--data", on("shop"));
    expect(done("check", "--data", on("shop"))).toContain(`Whole: ${entries} entries`);
    expect(done("backup", "saved.backup", "--data", on("shop"))).toContain("Read back and found whole.");
    done("export", "saved.jsonl", "--data", on("shop"));

    expect(trouble("backup", on("x.backup"), "--data", "shop")).toBe(`turnsleft: ${on("x.backup")}: ${isFull}`);
    expect(trouble("export", on("x.jsonl"), "--data", "shop")).toBe(`turnsleft: ${on("x.jsonl")}: ${isFull}`);
    expect(trouble("start", "--port", "0", "--data", on("shop"))).toContain(isFull);
    expect(trouble("start", "--port", "0", "--data", on("new"))).toContain(isFull);
    expect(trouble("restore", "shop.backup", "--data", on("again"))).toContain(isFull);
    expect(readdirSync(disk.folder).filter((it) => it.startsWith("x.") || it.startsWith("probe"))).toEqual([]);
    expect(existsSync(on("again/journal.db"))).toBe(false);
    disk.empty();
    done("restore", "shop.backup", "--data", on("again"));
  }, 180_000);

  test("under a running server: refused with 507, nothing lost that was acknowledged, and on again without a new start", async () => {
    const run = await started(
      process.execPath,
      [program, "start", "--port", "0", "--data", on("shop"), "--backups", on("backups"), "--json"],
      /\}\n$/,
    );
    const { address, workshop, pairing } = JSON.parse(run.printed);
    const post = async (path: string, body: object, token = "") => {
      const answer = await fetch(`${address}api/${path}`, {
        method: "POST",
        headers: { "content-type": "application/json", ...(token && { authorization: `Bearer ${token}` }) },
        body: JSON.stringify(body),
      });
      return { status: answer.status, body: (await answer.json()) as Record<string, never> };
    };
    const { token } = (await post("devices", { code: pairing.code, name: "phone" })).body;
    const entry = (number: number) => ({
      ...noteOf("phone-1", number, number),
      workshop,
      fact: { type: "NoteWritten", words: "x".repeat(1900) },
    });
    await expect.poll(async () => existsSync(on("shop/lastBackup.json")), { timeout: 20_000 }).toBe(true);
    let last = 0;
    let told = await post("entries", { entries: [entry(1)] }, token);
    disk.fill();
    for (; told.status === 200 && last < 500; last++)
      told = await post("entries", { entries: [entry(last + 2)] }, token);
    expect([told.status, told.body["error"]]).toEqual([507, "full"]);
    expect(told.body["sentence"]).toContain("what was kept before is safe");
    const photo = await plainPhoto(400, 300);
    const put = () =>
      fetch(`${address}api/photos/${nameOf(photo)}`, {
        method: "PUT",
        headers: { authorization: `Bearer ${token}` },
        body: new Uint8Array(photo),
      });
    expect((await put()).status).toBe(507);
    expect(readdirSync(on("shop/photos"))).toEqual([]);
    const heads = async () => {
      const answer = await fetch(`${address}api/heads`, { headers: { authorization: `Bearer ${token}` } });
      return ((await answer.json()) as { heads: Record<string, number> }).heads;
    };
    expect(await heads()).toEqual({ "phone-1": last });
    disk.empty();
    expect((await post("entries", { entries: [entry(last + 1)] }, token)).status).toBe(200);
    expect((await put()).status).toBe(200);
    run.process.kill("SIGTERM");
    expect(await run.ended).toBe(0);
    expect(done("check", "--data", on("shop"))).toContain(
      `Whole: ${last + 1} entries, 1 jobs, 1 devices, 0 owners' cards, 1 photos.`,
    );
  });

  test("where the daily backups go: a sentence, and the server works on", async () => {
    disk.fill();
    const run = await started(
      process.execPath,
      [program, "start", "--port", "0", "--data", join(scratch, "shop"), "--backups", on("backups"), "--json"],
      /\}\n$/,
    );
    await expect.poll(run.complained, { timeout: 20_000 }).toMatch(/^turnsleft: Daily backup: .*the disk is full/);
    expect((await fetch(`${JSON.parse(run.printed).address}health`)).status).toBe(200);
    run.process.kill("SIGTERM");
    expect(await run.ended).toBe(0);
  });
});

describe.skipIf(possible === null)("a disk that may only be read", () => {
  let disk: SmallDisk;
  beforeAll(() => {
    disk = smallDisk(4096) as SmallDisk;
    done("restore", "shop.backup", "--data", join(disk.folder, "shop"));
    disk.readOnly(true);
  });
  afterAll(() => disk.remove());
  const on = (name: string): string => join(disk.folder, name);

  test("gives everything that it holds", () => {
    done("standing", "--data", on("shop"));
    expect(done("check", "--data", on("shop"))).toContain(`Whole: ${entries} entries`);
    done("backup", "from-read-only.backup", "--data", on("shop"));
    done("export", "from-read-only.jsonl", "--data", on("shop"));
    done("restore", "from-read-only.backup", "--data", "from-read-only");
  });

  test.each([
    ["import", "shop.jsonl", "--data", "shop"],
    ["start", "--port", "0", "--data", "shop"],
    ["start", "--port", "0", "--data", "new/deeper"],
    ["restore", "shop.backup", "--data", "again/deeper"],
    ["backup", "x.backup", "--data", "="],
    ["export", "x.jsonl", "--data", "="],
  ])("says so to %s %s %s %s", (command, ...options) => {
    const toDisk = ["backup", "export"].includes(command) ? 0 : options.indexOf("--data") + 1;
    const given = options.map((it, i) => (i === toDisk ? on(it) : it === "=" ? "shop" : it));
    expect(trouble(command, ...given)).toContain(isReadOnly);
  });
});

// Where no disk may be mounted, and on file systems that take files up to a size.
describe.skipIf(process.platform === "win32")("a file that may not become larger", () => {
  const limited = (blocks: number, ...options: string[]): Run =>
    spawnSync("sh", ["-c", `ulimit -f ${blocks}; exec "$0" "$@"`, process.execPath, program, ...options], {
      cwd: scratch,
      encoding: "utf8",
    });

  test.each([
    ["import", "shop.jsonl", "--data", "limited"],
    ["backup", "limited.backup", "--data", "shop"],
    ["export", "limited.jsonl", "--data", "shop"],
    ["restore", "shop.backup", "--data", "limited-again"],
  ])("is full to %s", (...options) => {
    const { status, stdout, stderr } = limited(200, ...options);
    expect([status, stdout]).toEqual([3, ""]);
    expect(stderr).toContain(isFull);
    expect(readdirSync(scratch).filter((it) => /^limited.*\.(backup|jsonl)|^probe|\.part$/.test(it))).toEqual([]);
  });

  test("and nothing of it was kept, nothing lost, and it goes on", () => {
    expect(done("check", "--data", "limited")).toContain("Whole: 0 entries");
    expect(done("import", "shop.jsonl", "--data", "limited")).toContain(`${entries} entries were new here`);
    done("restore", "shop.backup", "--data", "limited-again");
  });
});

describe("data of a newer Turnsleft", () => {
  const ofNewer = "a newer Turnsleft wrote it; this one does not read it, and has changed nothing.\n";

  test("are read by no command, and not a byte of them is changed", () => {
    done("restore", "shop.backup", "--data", "newer");
    const path = join(scratch, "newer", "journal.db");
    const file = new DatabaseSync(path);
    file.exec("pragma user_version = 99; pragma wal_checkpoint(truncate)");
    file.close();
    const bytes = readFileSync(path);
    for (const options of [
      ["standing"],
      ["check"],
      ["backup", "newer.backup"],
      ["export", "newer.jsonl"],
      ["import", "shop.jsonl"],
      ["start", "--port", "0"],
    ])
      expect(trouble(...options, "--data", "newer")).toBe(`turnsleft: ${path}: ${ofNewer}`);
    writeFileSync(join(scratch, "of-newer.backup"), bytes);
    expect(trouble("restore", "of-newer.backup", "--data", "never")).toContain(ofNewer);
    expect(existsSync(join(scratch, "never"))).toBe(false);
    expect(readFileSync(path)).toEqual(bytes);
  }, 180_000);

  test("an export says which form it has", () => {
    const lines = readFileSync(join(scratch, "shop.jsonl"), "utf8").replace('"form":1', '"form":2');
    writeFileSync(join(scratch, "newer.jsonl"), lines);
    const { status, stderr } = turnsleft("import", "newer.jsonl", "--data", "never");
    expect([status, stderr]).toEqual([
      2,
      'turnsleft: newer.jsonl, line 1: given "what cannot be read"; accepted: an export of form 1; a newer Turnsleft wrote this one, of form 2\n',
    ]);
  });
});
