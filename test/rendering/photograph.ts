import { developed } from "./development.ts";
import { fingers } from "./fingers.ts";
import type { Patch, Vec } from "./mesh.ts";
import { grain, type Plane } from "./plane.ts";
import { type Camera, draw, type Pose, posed, projected, type Seen, unseen } from "./raster.ts";
import type { Scene } from "./scene.ts";
import { shadowOn } from "./shadow.ts";
import { addLight, shading } from "./surfaces.ts";

/** Red, green and blue in one row after another, linear light from 0 to 1. */
export type LightPicture = {
  readonly width: number;
  readonly height: number;
  readonly planes: readonly [Plane, Plane, Plane];
};

/** A picture with its pixels as bytes, and where the crests' lines truly run: the middle of the thread and its axis. */
export type Photograph = {
  readonly width: number;
  readonly height: number;
  readonly bytes: Uint8Array;
  readonly middle: readonly [number, number];
  readonly ends: readonly [readonly [number, number], readonly [number, number]];
};

/** Takes the photo of a scene, before it is packed. */
export function photograph(scene: Scene): Photograph {
  const { width, height, distance_mm, pixelsPerMm } = scene;
  const camera: Camera = { focal: distance_mm * pixelsPerMm, cx: width / 2, cy: height / 2 };
  const pose = poseOf(scene);
  const held = scene.name === "held" ? fingers(scene) : [];
  const bodies: readonly Patch[] = [...scene.part.patches, ...held];
  const seen = viewOf(camera, pose, bodies, width, height);
  draw(seen, camera, pose, bodies);
  const picture = backgroundOf(scene, shadowOn(scene, camera, pose));
  over(picture, seen, scene);
  const at = (z: number) => projected(camera, posed(pose, [0, 0, z]));
  const { length_mm } = scene.thread;
  return {
    width,
    height,
    bytes: developed(picture, scene, seen),
    middle: at(length_mm / 2),
    ends: [at(0), at(length_mm)],
  };
}

/** The middle of the thread stands at its place; z of the part runs along the axis. */
function poseOf({
  turned_deg,
  tilt_deg,
  rolled_deg,
  thread,
  place,
  width,
  height,
  distance_mm,
  pixelsPerMm,
}: Scene): Pose {
  const [a, t, r] = [turned_deg, tilt_deg, rolled_deg].map((it) => (it * Math.PI) / 180) as [number, number, number];
  const axis: Vec = [Math.cos(a) * Math.cos(t), Math.sin(a) * Math.cos(t), -Math.sin(t)];
  const across: Vec = [-Math.sin(a), Math.cos(a), 0];
  const third: Vec = [
    across[1] * axis[2] - across[2] * axis[1],
    across[2] * axis[0] - across[0] * axis[2],
    across[0] * axis[1] - across[1] * axis[0],
  ];
  // (third, across, axis) is turned about the axis by the roll; third x across = -axis, so across is taken the other way.
  const [u, v] = [across, third.map((it) => -it) as unknown as Vec];
  const mixed = (c: number, s: number): Vec =>
    [0, 1, 2].map((i) => c * (u[i] as number) + s * (v[i] as number)) as unknown as Vec;
  const x = mixed(Math.cos(r), Math.sin(r));
  const y = mixed(-Math.sin(r), Math.cos(r));
  const within = (share: number, size: number): number => (Math.max(-0.2, Math.min(0.2, share)) * size) / pixelsPerMm;
  const middle: Vec = [within(place[0], width), within(place[1], height), distance_mm];
  const half = thread.length_mm / 2;
  return {
    axes: [x, y, axis],
    place: [middle[0] - half * axis[0], middle[1] - half * axis[1], middle[2] - half * axis[2]],
  };
}

function viewOf(camera: Camera, pose: Pose, patches: readonly Patch[], width: number, height: number): Seen {
  let [left, right, top, bottom] = [width, 0, height, 0];
  for (const { corners } of patches)
    for (const corner of corners) {
      const [x, y] = projected(camera, posed(pose, corner));
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
  const [l, t] = [Math.max(0, Math.floor(left) - 2), Math.max(0, Math.floor(top) - 2)];
  const [r, b] = [Math.min(width, Math.ceil(right) + 2), Math.min(height, Math.ceil(bottom) + 2)];
  return unseen(l, t, Math.max(1, r - l), Math.max(1, b - t), 2);
}

/** The background with its shading, its texture and the shadow on it. */
function backgroundOf(scene: Scene, shadow: Plane | null): LightPicture {
  const { width, height, background, texture, random } = scene;
  const [sx, sy, sxx] = [0.25 * (random() - 0.5), 0.25 * (random() - 0.5), -0.15 * random()];
  const fine = grain(width, height, texture.size, texture.longer, random);
  const planes = [0, 1, 2].map(() => ({ width, height, at: new Float32Array(width * height) }));
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [u, v] = [x / width - 0.5, y / height - 0.5];
      const at = y * width + x;
      const weave = texture.woven
        ? 0.6 * Math.sin((2 * Math.PI * (x + y)) / 7.3) * Math.sin((2 * Math.PI * (x - y)) / 6.1)
        : 0;
      const light =
        (1 + sx * u + sy * v + sxx * (u * u + v * v) * 4) *
        (1 + texture.strength * ((fine.at[at] as number) + weave)) *
        (1 - (shadow ? (shadow.at[at] as number) : 0));
      for (let c = 0; c < 3; c++) (planes[c] as Plane).at[at] = (background[c] as number) * light;
    }
  return { width, height, planes: planes as unknown as LightPicture["planes"] };
}

/** Lays what is seen over the picture; a pixel is as much of it as its fine pixels say. */
function over({ width, planes }: LightPicture, seen: Seen, scene: Scene): void {
  const { fine, depth, normals, shade, material } = seen;
  const surfaces = [scene.surface, scene.skin].map((it) => shading(it, scene.lighting));
  const light = new Float64Array(3);
  const spots = grain(seen.width, seen.height, 5 * fine, 1, scene.random);
  for (let y = 0; y < seen.height / fine; y++)
    for (let x = 0; x < seen.width / fine; x++) {
      let covered = 0;
      light.fill(0);
      for (let dy = 0; dy < fine; dy++)
        for (let dx = 0; dx < fine; dx++) {
          const at = (y * fine + dy) * seen.width + x * fine + dx;
          if ((depth[at] as number) === 0) continue;
          const surface = surfaces[material[at] as number] as (typeof surfaces)[number];
          addLight(
            surface,
            normals[2 * at] as number,
            normals[2 * at + 1] as number,
            shade[at] as number,
            spots.at[at] as number,
            light,
          );
          covered++;
        }
      if (covered === 0) continue;
      const at = (seen.top + y) * width + seen.left + x;
      const rest = 1 - covered / (fine * fine);
      for (let c = 0; c < 3; c++) {
        const plane = planes[c as 0 | 1 | 2].at;
        plane[at] = (plane[at] as number) * rest + (light[c] as number) / (fine * fine);
      }
    }
}
