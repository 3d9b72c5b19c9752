import { expect, test } from "vitest";
import { valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import { type PhotoAnswer, threadFromPhoto } from "../../../src/mechanics/silhouette/photoPitch.ts";
import { type Rendered, rendered } from "../../rendering/packed.ts";
import type { SceneName } from "../../rendering/scene.ts";
import { caliper } from "./caliper.ts";

type Read = Rendered & { readonly answer: PhotoAnswer };

async function read(name: SceneName, seeds: readonly number[], line: boolean): Promise<readonly Read[]> {
  const all: Read[] = [];
  for (const seed of seeds) {
    const it = await rendered(name, seed);
    const [a, b] = it.photograph.ends.map(([x, y]) => ({ x, y }));
    const drawn = line && a && b ? ([a, b] as const) : null;
    all.push({ ...it, answer: threadFromPhoto(it.photo, caliper(it.scene.thread.outside_mm), drawn) });
  }
  return all;
}

const answered = (all: readonly Read[]): number => all.filter(({ answer }) => answer.verdict !== "again").length;

/** Whatever is claimed as certain is the thread that was rendered. */
function claimsNothingWrong(all: readonly Read[]): void {
  for (const { scene, answer } of all)
    if (answer.verdict === "certain")
      expect(answer.naming.candidates[0]?.designation, `${scene.name} ${scene.thread.designation}`).toBe(
        scene.thread.designation,
      );
}

/** A pitch that nothing speaks against lies within 3 % of the rendered one. */
function pitchesHold(all: readonly Read[]): void {
  for (const { scene, answer } of all)
    if (answer.verdict !== "again" && answer.reasons.length === 0)
      expect(Math.abs(valueIn(mm, answer.pitch) / scene.thread.pitch_mm - 1)).toBeLessThan(0.03);
}

test("a plug before a lit page is read in three photos of three, and nothing wrong is claimed", async () => {
  const all = await read("backlit", [2, 3, 5], false);
  expect(answered(all)).toBe(3);
  claimsNothingWrong(all);
  pitchesHold(all);
});

test("a plug on paper is read in two photos of two, and nothing wrong is claimed", async () => {
  const all = await read("paper", [1, 2], false);
  expect(answered(all)).toBe(2);
  claimsNothingWrong(all);
  pitchesHold(all);
});

test("a plug in the fingers is read along a line that was drawn in two photos of two", async () => {
  const all = await read("held", [5, 11], true);
  expect(answered(all)).toBe(2);
  claimsNothingWrong(all);
  pitchesHold(all);
});

test("few turns of a wide thread are read along a line that is shorter than the thread is wide", async () => {
  const [it] = await read("held", [145], true);
  const [a = [0, 0], b = [0, 0]] = it?.photograph.ends ?? [];
  const { outside_mm = 0, length_mm = 0 } = { ...it?.scene.thread };
  expect(length_mm, `${Math.hypot(b[0] - a[0], b[1] - a[1])} pixels`).toBeLessThan(outside_mm);
  expect(answered(it ? [it] : [])).toBe(1);
  claimsNothingWrong(it ? [it] : []);
});

test("a left-hand thread is seen to be one", async () => {
  const it = await rendered("paper", 4, { hand: -1, surface: "zinc" });
  const answer = threadFromPhoto(it.photo, caliper(it.scene.thread.outside_mm));
  expect(answer.verdict).not.toBe("again");
  if (answer.verdict !== "again") expect(answer.hand).toBe("left");
});
