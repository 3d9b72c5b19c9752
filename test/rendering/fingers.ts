import { type Patch, revolved, type Vec } from "./mesh.ts";
import type { Scene } from "./scene.ts";

/** Two fingers that hold the head and as much of the thread as the scene does not leave free, in the part's coordinates. */
export function fingers({ thread, free, random, rolled_deg }: Scene): readonly Patch[] {
  const least = Math.min(thread.length_mm, Math.max(free * thread.length_mm, 3.2 * thread.pitch_mm));
  const covered = thread.length_mm - least;
  const thick = 6.5 + 2 * random();
  // Seen from the camera the two lie on either side of the axis, one before it and one behind.
  const roll = (-rolled_deg * Math.PI) / 180;
  return [-1, 1].flatMap((side) => {
    const spread = (0.25 + 0.35 * random()) * side;
    const tip: Vec = turnedAbout(
      [
        side * thick * (0.45 + 0.3 * random()),
        side * (thick * 0.8 + thread.outside_mm / 4),
        covered - thick * (0.6 + 0.3 * random()),
      ],
      roll,
    );
    const away: Vec = turnedAbout([Math.sin(spread), 0.15 * side, -Math.cos(spread)], roll);
    return capsule(tip, away, thick, 70);
  });
}

const turnedAbout = ([x, y, z]: Vec, by: number): Vec => [
  x * Math.cos(by) - y * Math.sin(by),
  x * Math.sin(by) + y * Math.cos(by),
  z,
];

/** A rounded rod with joints, from the middle of its tip on. */
function capsule(tip: Vec, away: Vec, radius: number, length: number): readonly Patch[] {
  const outline: [number, number][] = [];
  for (let i = 0; i <= 12; i++) {
    const angle = (i / 12) * (Math.PI / 2);
    outline.push([-radius * Math.cos(angle), radius * Math.sin(angle)]);
  }
  for (let z = 1; z <= length; z += 1.5) outline.push([z, radius * (1 + 0.07 * Math.sin(z / 5.5))]);
  const axis = scaled(away, 1 / Math.hypot(...away));
  const side = crossed(Math.abs(axis[0]) < 0.8 ? [1, 0, 0] : [0, 1, 0], axis);
  const u = scaled(side, 1 / Math.hypot(...side));
  const v = crossed(axis, u);
  const turned = ([x, y, z]: Vec): Vec =>
    [0, 1, 2].map((i) => (u[i] as number) * x + (v[i] as number) * y + (axis[i] as number) * z) as unknown as Vec;
  const moved = (p: Vec): Vec => turned(p).map((it, i) => it + (tip[i] as number)) as unknown as Vec;
  return revolved(outline, 1).map((it) => ({
    ...it,
    corners: it.corners.map(moved) as unknown as Patch["corners"],
    normals: it.normals.map(turned) as unknown as Patch["normals"],
  }));
}

const scaled = (v: Vec, by: number): Vec => [v[0] * by, v[1] * by, v[2] * by];

const crossed = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
