import { normalQuantile } from "../../src/mechanics/quantity/normal.ts";
import { exact, valueIn } from "../../src/mechanics/quantity/quantity.ts";
import { xoshiro128 } from "../../src/mechanics/quantity/random.ts";
import { mm } from "../../src/mechanics/quantity/unit.ts";
import { type PhotoAnswer, threadFromPhoto } from "../../src/mechanics/silhouette/photoPitch.ts";
import { rendered } from "../../test/rendering/packed.ts";
import { type SceneName, scenes } from "../../test/rendering/scene.ts";

/** What came of one rendered photo. */
export type PhotoResult = {
  readonly scene: SceneName;
  readonly seed: number;
  readonly designation: string;
  readonly surface: string;
  readonly verdict: PhotoAnswer["verdict"];
  /** What the reading is worth; null where another photo was asked for. */
  readonly grade: "good" | "fair" | null;
  readonly reasons: readonly string[];
  /** The name put first; null where another photo was asked for. */
  readonly named: string | null;
  /** Error of the pitch as a share, without the caliper's own. */
  readonly error: number | null;
  /** Processor time of this process, ms: others on the machine do not count. */
  readonly time_ms: number;
};

/** One photo of 1600 x 1200 through the whole way, found by itself or along a line drawn over its thread. */
export async function photoResult(scene: SceneName, seed: number, assisted: boolean): Promise<PhotoResult> {
  const { scene: shown, photograph, photo } = await rendered(scene, seed);
  const { outside_mm, pitch_mm, designation } = shown.thread;
  const read_mm = caliperReading(outside_mm, xoshiro128(7 * seed + scenes.indexOf(scene)));
  const [a, b] = photograph.ends.map(([x, y]) => ({ x, y }));
  const before = process.cpuUsage();
  const line = assisted && a && b ? ([a, b] as const) : null;
  const answer = threadFromPhoto(photo, { length: exact("d", read_mm, mm), id: "caliper" }, line);
  const { user, system } = process.cpuUsage(before);
  const told = answer.verdict === "again" ? null : answer;
  return {
    scene,
    seed,
    designation,
    surface: shown.surface.name,
    verdict: answer.verdict,
    grade: told?.grade ?? null,
    reasons: answer.reasons,
    named: told?.naming.candidates[0]?.designation ?? null,
    error: told && valueIn(mm, told.pitch) / read_mm / (pitch_mm / outside_mm) - 1,
    time_ms: (user + system) / 1000,
  };
}

/** The true diameter as a caliper reads it: 0.03 mm off (one standard deviation), and to its scale of 0.05 mm. */
const caliperReading = (outside_mm: number, random: () => number): number =>
  Math.round((outside_mm + 0.03 * normalQuantile(random())) / 0.05) * 0.05;
