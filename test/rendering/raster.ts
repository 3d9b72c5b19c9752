import type { Patch, Vec } from "./mesh.ts";

/** How a body stands before the camera: its axes as columns in camera coordinates (x right, y down, z away), and its place, mm. */
export type Pose = { readonly axes: readonly [Vec, Vec, Vec]; readonly place: Vec };

/** A pinhole camera: focal length in pixels and the middle of its picture. */
export type Camera = { readonly focal: number; readonly cx: number; readonly cy: number };

/** What each fine pixel of a part of the picture shows: distance (0 for nothing), x and y of the normal, light and material. */
export type Seen = {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly fine: number;
  readonly depth: Float32Array;
  readonly normals: Float32Array;
  readonly shade: Float32Array;
  readonly material: Uint8Array;
};

export const posed = ({ axes: [a, b, c], place }: Pose, [x, y, z]: Vec): Vec => [
  a[0] * x + b[0] * y + c[0] * z + place[0],
  a[1] * x + b[1] * y + c[1] * z + place[1],
  a[2] * x + b[2] * y + c[2] * z + place[2],
];

const rotated = (pose: Pose, v: Vec): Vec => posed({ ...pose, place: [0, 0, 0] }, v);

export const projected = ({ focal, cx, cy }: Camera, [x, y, z]: Vec): readonly [number, number] => [
  cx + (focal * x) / z,
  cy + (focal * y) / z,
];

/** An empty view of the part of the picture from (left, top), `fine` fine pixels to a pixel each way. */
export function unseen(left: number, top: number, width: number, height: number, fine: number): Seen {
  const count = width * fine * height * fine;
  return {
    left,
    top,
    width: width * fine,
    height: height * fine,
    fine,
    depth: new Float32Array(count),
    normals: new Float32Array(2 * count),
    shade: new Float32Array(count),
    material: new Uint8Array(count),
  };
}

/** Draws patches into a view, nearest in front, seen from both sides. */
export function draw(seen: Seen, camera: Camera, pose: Pose, patches: readonly Patch[]): void {
  for (const { corners, normals, shade, material } of patches) {
    const points = corners.map((corner) => posed(pose, corner));
    const turned = normals.map((normal) => rotated(pose, normal));
    const flat = points.map((point) => {
      const [x, y] = projected(camera, point);
      return [(x - seen.left) * seen.fine, (y - seen.top) * seen.fine] as const;
    });
    triangle(seen, points, flat, turned, shade, [0, 1, 2], material);
    triangle(seen, points, flat, turned, shade, [0, 2, 3], material);
  }
}

function triangle(
  { width, height, depth, normals, shade: shades, material: materials }: Seen,
  points: readonly Vec[],
  flat: readonly (readonly [number, number])[],
  turned: readonly Vec[],
  shade: readonly number[],
  [i, j, k]: readonly [number, number, number],
  material: number,
): void {
  const [[ax, ay], [bx, by], [cx, cy]] = [flat[i], flat[j], flat[k]] as [
    [number, number],
    [number, number],
    [number, number],
  ];
  const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  if (Math.abs(area) < 1e-9) return;
  const [za, zb, zc] = [points[i]?.[2] as number, points[j]?.[2] as number, points[k]?.[2] as number];
  const [na, nb, nc] = [turned[i] as Vec, turned[j] as Vec, turned[k] as Vec];
  const [low, high] = [
    Math.max(0, Math.ceil(Math.min(ay, by, cy) - 0.5)),
    Math.min(height - 1, Math.floor(Math.max(ay, by, cy) - 0.5)),
  ];
  const [left, right] = [
    Math.max(0, Math.ceil(Math.min(ax, bx, cx) - 0.5)),
    Math.min(width - 1, Math.floor(Math.max(ax, bx, cx) - 0.5)),
  ];
  const [wa, wb, wc] = [1 / za, 1 / zb, 1 / zc];
  for (let y = low; y <= high; y++)
    for (let x = left; x <= right; x++) {
      const [px, py] = [x + 0.5, y + 0.5];
      const u = ((bx - px) * (cy - py) - (by - py) * (cx - px)) / area;
      const v = ((cx - px) * (ay - py) - (cy - py) * (ax - px)) / area;
      const w = 1 - u - v;
      if (u < 0 || v < 0 || w < 0) continue;
      const z = 1 / (u * wa + v * wb + w * wc);
      const at = y * width + x;
      const before = depth[at] as number;
      if (z <= 0 || (before > 0 && before <= z)) continue;
      depth[at] = z;
      // Smooth normals look away a little beyond the rim; there the surface is seen edgewise.
      const nx = u * na[0] + v * nb[0] + w * nc[0];
      const ny = u * na[1] + v * nb[1] + w * nc[1];
      const nz = Math.min(-0.02, u * na[2] + v * nb[2] + w * nc[2]);
      const size = Math.sqrt(nx * nx + ny * ny + nz * nz);
      normals[2 * at] = nx / size;
      normals[2 * at + 1] = ny / size;
      shades[at] = u * (shade[i] as number) + v * (shade[j] as number) + w * (shade[k] as number);
      materials[at] = material;
    }
}
