import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import sharp from "sharp";

/**
 * What the command costs on a photo of 4000 x 3000: the example enlarged, so that its file decodes to as much as a telephone's.
 * Run with a file it reports its own greatest memory once the command is done.
 */
const asked = process.argv[2];
if (asked === undefined) {
  const folder = mkdtempSync(join(tmpdir(), "turnsleft-"));
  const file = join(folder, "large.jpg");
  await sharp("examples/plug.jpg").resize(4000, 3000).jpeg({ quality: 90 }).toFile(file);
  const { stdout, stderr } = spawnSync(process.execPath, [fileURLToPath(import.meta.url), file], { encoding: "utf8" });
  rmSync(folder, { recursive: true });
  process.stdout.write(stdout.split("\n").findLast((it) => it.startsWith("12 megapixels")) ?? stderr);
} else {
  process.argv = [process.execPath, "turnsleft", "photo", asked, "--outside", "19.9 mm", "--json"];
  const before = process.cpuUsage();
  await import(new URL("../../src/apps/cli/main.js", import.meta.url).href);
  const { user, system } = process.cpuUsage(before);
  const { maxRSS } = process.resourceUsage();
  process.stdout.write(
    `12 megapixels: ${((user + system) / 1e6).toFixed(1)} s of processor, ${(maxRSS / 1024).toFixed(0)} MB at most\n`,
  );
}
