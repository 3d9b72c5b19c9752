import type { Thread } from "./shownThread.ts";

export type Vec = readonly [x: number, y: number, z: number];

/** A four-sided patch, millimetres, with a normal at each corner; `shade` darkens what little light reaches. */
export type Patch = {
  readonly corners: readonly [Vec, Vec, Vec, Vec];
  readonly normals: readonly [Vec, Vec, Vec, Vec];
  readonly shade: readonly [number, number, number, number];
  readonly material: number;
};

/** The helix of a thread along z from 0 (at the head) to its length, cut off by the chamfer of its tip, and its end face. */
export function threadMesh(thread: Thread, material: number): readonly Patch[] {
  const { pitch_mm: P, length_mm: L, hand } = thread;
  const nodes = profileNodes(thread);
  const patches: Patch[] = [];
  for (let turn = -1; turn <= Math.ceil(L / P) + 1; turn++)
    for (let j = 0; j + 1 < nodes.length; j++)
      for (let i = 0; i < AROUND; i++) {
        const at = (k: number, node: number) => {
          const [along, down] = nodes[node] as readonly [number, number];
          const theta = (2 * Math.PI * (i + k)) / AROUND;
          return cutPoint(thread, theta, (turn + along + (hand * (i + k)) / AROUND) * P, down);
        };
        const [a, b, c, d] = [at(0, j), at(1, j), at(1, j + 1), at(0, j + 1)] as const;
        if (a.cut && b.cut && c.cut && d.cut && a.point[2] === c.point[2] && a.r === c.r) continue;
        patches.push(patch([a.point, b.point, c.point, d.point], [a.shade, b.shade, c.shade, d.shade], material));
      }
  return [...patches, ...disc(tipRadius(thread, L), L, 1, material)];
}

/** A solid of revolution about z through (z, r) in order, each part of its outline with an edge of its own. */
export function revolved(outline: readonly (readonly [z: number, r: number])[], material: number): readonly Patch[] {
  const patches: Patch[] = [];
  for (let j = 0; j + 1 < outline.length; j++)
    for (let i = 0; i < AROUND; i++) {
      const at = (k: number, node: number): Vec => {
        const [z, r] = outline[node] as readonly [number, number];
        const theta = (2 * Math.PI * (i + k)) / AROUND;
        return [r * Math.cos(theta), r * Math.sin(theta), z];
      };
      patches.push(patch([at(0, j), at(1, j), at(1, j + 1), at(0, j + 1)], even, material));
    }
  return patches;
}

/** A hexagonal prism about z, `flats` across, from `low` to `high`. */
export function hexagon(flats: number, low: number, high: number, turned: number, material: number): readonly Patch[] {
  const r = flats / Math.sqrt(3);
  const corner = (i: number, z: number): Vec => {
    const theta = turned + (Math.PI * i) / 3;
    return [r * Math.cos(theta), r * Math.sin(theta), z];
  };
  return Array.from({ length: 6 }, (_, i) => [
    patch([corner(i, low), corner(i + 1, low), corner(i + 1, high), corner(i, high)], even, material),
    patch([[0, 0, high], corner(i, high), corner(i + 1, high), [0, 0, high]], even, material),
    patch([[0, 0, low], corner(i + 1, low), corner(i, low), [0, 0, low]], even, material),
  ]).flat();
}

const AROUND = 112;
const even = [1, 1, 1, 1] as const;

/** From one crest to the next in pitches: along, and how far below the crest. */
function profileNodes({ form }: Thread): readonly (readonly [number, number])[] {
  // ISO 68-1:1998: crest P/8, flanks of 60 degrees; the root of a plug is rounded within H/8 to H/4 of the sharp corner.
  if (form === "60 degrees")
    return [
      [-1 / 16, 0],
      [1 / 16, 0],
      [0.39, 0.568],
      [0.44, 0.606],
      [0.5, 0.6134],
      [0.56, 0.606],
      [0.61, 0.568],
      [15 / 16, 0],
    ];
  // ISO 228-1:2000: 55 degrees, crest and root rounded by 0.137 P, height 0.640 P.
  const arc = [0, 0.25, 0.5, 0.75, 1].map((t) => {
    const beta = t * ((62.5 * Math.PI) / 180);
    return [0.1373 * Math.sin(beta), 0.1373 * (1 - Math.cos(beta))] as const;
  });
  const half = [...arc, ...arc.toReversed().map(([x, y]) => [0.5 - x, 0.6403 - y] as const)];
  return [
    ...half,
    ...half
      .toReversed()
      .slice(1)
      .map(([x, y]) => [1 - x, y] as const),
  ];
}

function cutPoint(thread: Thread, theta: number, along: number, down: number) {
  const { outside_mm, pitch_mm, length_mm, taper } = thread;
  const z = Math.min(Math.max(along, 0), length_mm);
  // The outside diameter is that of the middle of the thread.
  const full = outside_mm / 2 - (taper / 2) * (z - length_mm / 2);
  const r = Math.min(full - down * pitch_mm, tipRadius(thread, z));
  const point: Vec = [r * Math.cos(theta), r * Math.sin(theta), z];
  return { point, r, shade: 1 - 0.75 * (down / 0.62) ** 1.3, cut: along !== z };
}

/** The chamfer of 45 degrees at the tip, down to the root. */
function tipRadius({ outside_mm, pitch_mm, length_mm, chamfer }: Thread, z: number): number {
  return outside_mm / 2 - chamfer * 0.62 * pitch_mm + Math.max(0, length_mm - z);
}

function disc(r: number, z: number, facing: 1 | -1, material: number): readonly Patch[] {
  return Array.from({ length: AROUND }, (_, i) => {
    const rim = (k: number): Vec => {
      const theta = (2 * Math.PI * (i + k)) / AROUND;
      return [r * Math.cos(theta), r * Math.sin(theta), z];
    };
    const corners = facing > 0 ? ([rim(0), rim(1)] as const) : ([rim(1), rim(0)] as const);
    return patch([[0, 0, z], ...corners, [0, 0, z]], even, material);
  });
}

/** A patch whose normals are smooth around the axis and flat along the outline. */
function patch(corners: Patch["corners"], shade: Patch["shade"], material: number): Patch {
  const [a, b, c, d] = corners;
  const around = (p: Vec, q: Vec): Vec => cross(sub(q, p), [0, 0, 1]);
  const normal = unit(cross(sub(b, a), sub(d, a)), cross(sub(c, b), sub(d, c)), around(a, b));
  // Turned by half a step to either side, so that facets do not show.
  const turn = Math.PI / AROUND;
  const round =
    Math.hypot(a[0], a[1]) > 1e-9 && Math.hypot(a[0] - b[0], a[1] - b[1]) < 3 * turn * Math.hypot(a[0], a[1]);
  const [low, high] = round ? [turned(normal, -turn), turned(normal, turn)] : [normal, normal];
  return { corners, normals: [low, high, high, low], shade, material };
}

const turned = ([x, y, z]: Vec, by: number): Vec => [
  x * Math.cos(by) - y * Math.sin(by),
  x * Math.sin(by) + y * Math.cos(by),
  z,
];

const sub = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

const cross = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** The first of the vectors that has a length, as a unit vector. */
function unit(...vectors: readonly Vec[]): Vec {
  for (const [x, y, z] of vectors) {
    const length = Math.hypot(x, y, z);
    if (length > 1e-12) return [x / length, y / length, z / length];
  }
  return [0, 0, 1];
}
