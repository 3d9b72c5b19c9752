import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { clopperPearsonInterval } from "../../src/mechanics/service/proportion.ts";
import { scenes } from "../../test/rendering/scene.ts";
import { table } from "../table.ts";
import { quantileOf } from "../timed.ts";
import { type PhotoResult, photoResult } from "./photoScene.ts";

/**
 * How often a rendered photo is answered, how often rightly, how far its pitch is off, and what it costs, scene by scene.
 * `npm run bench:photo -- --seeds 10001-10100` (those unless told; the reading was set on seeds 1 to 180 and 5001 to 5152, and 6001
 * to 6100, 7001 to 7100, 8001 to 8100 and, in fingers, 9001 to 9100 have been looked at), `--scene backlit` for one scene, `--line`
 * along a line drawn over the thread, `--each` for a line a photo.
 */
const option = (name: string): string | undefined => process.argv[process.argv.indexOf(name) + 1];
const has = (name: string): boolean => process.argv.includes(name);

const [from = 10001, to = 10100] = (has("--seeds") ? (option("--seeds") ?? "") : "10001-10100").split("-").map(Number);
const chosen = scenes.filter((it) => !has("--scene") || it === option("--scene"));
const say = (line: string): void => void process.stdout.write(`${line}\n`);

say(
  `node ${process.version}, seeds ${from} to ${to}${has("--line") ? ", along a drawn line" : ""}; intervals hold 95 % (exact)`,
);
const rows: string[][] = [];
for (const scene of chosen) {
  const results: PhotoResult[] = [];
  for (let seed = from; seed <= to; seed++) {
    const result = await photoResult(scene, seed, has("--line"));
    results.push(result);
    if (has("--each")) say(lineOf(result));
  }
  rows.push(row(scene, results));
}
say(
  table(
    [
      "scene",
      "answered",
      "first is right",
      "certain",
      "certain is right",
      "good: error p50, p95",
      "all: p95",
      "ms a photo p50, p95",
    ],
    rows,
  ),
);
if (!has("--scene")) say(largePhoto());

function row(scene: string, results: readonly PhotoResult[]): string[] {
  const answered = results.filter(({ verdict }) => verdict !== "again");
  const certain = results.filter(({ verdict }) => verdict === "certain");
  const right = (all: readonly PhotoResult[]): number => all.filter((it) => it.named === it.designation).length;
  const errors = (all: readonly PhotoResult[]): number[] => all.map(({ error }) => Math.abs(error ?? 0));
  const good = errors(answered.filter(({ grade }) => grade === "good"));
  const percent = (x: number): string => (100 * x).toFixed(2);
  const times = results.map(({ time_ms }) => time_ms);
  return [
    scene,
    share(answered.length, results.length),
    share(right(answered), answered.length),
    share(certain.length, results.length),
    share(right(certain), certain.length),
    `${good.length}: ${percent(quantileOf(good, 0.5))}, ${percent(quantileOf(good, 0.95))} %`,
    `${percent(quantileOf(errors(answered), 0.95))} %`,
    `${quantileOf(times, 0.5).toFixed(0)}, ${quantileOf(times, 0.95).toFixed(0)}`,
  ];
}

/** "37 of 40 (80 to 98 %)". */
function share(x: number, n: number): string {
  const [low, high] = clopperPearsonInterval(x, n, 0.95);
  return `${x} of ${n} (${Math.floor(100 * low)} to ${Math.ceil(100 * high)} %)`;
}

function lineOf({
  scene,
  seed,
  designation,
  surface,
  verdict,
  grade,
  named,
  error,
  reasons,
  time_ms,
}: PhotoResult): string {
  const off = error === null ? "" : `${(100 * error).toFixed(2)} %`;
  const wrong = named !== null && named !== designation ? `WRONG: ${named}` : "";
  return [
    scene,
    seed,
    designation,
    surface,
    verdict,
    grade ?? "",
    off,
    wrong,
    reasons.join("; "),
    `${time_ms.toFixed(0)} ms`,
  ].join(", ");
}

/** Time and greatest memory of one photo of twelve megapixels in a process of its own. */
function largePhoto(): string {
  const script = fileURLToPath(new URL("./largePhoto.js", import.meta.url));
  const { stdout, stderr } = spawnSync(process.execPath, [script], { encoding: "utf8" });
  return stdout.trim() || stderr;
}
