import type { Vec } from "./mesh.ts";

/** How a surface answers light: its colour, how much it mirrors and how sharply, and how uneven it is. */
export type Surface = {
  readonly name: string;
  readonly colour: Vec;
  /** 0 of paint and rust, 1 of polished metal. */
  readonly mirrors: number;
  /** 0 a mirror, 1 dull. */
  readonly roughness: number;
  /** Share by which its colour changes from place to place. */
  readonly uneven: number;
};

/** Finishes of plugs and bolts, linear light from 0 to 1; judgement. */
export const finishes: readonly Surface[] = [
  { name: "black", colour: [0.035, 0.035, 0.035], mirrors: 0.12, roughness: 0.5, uneven: 0.1 },
  { name: "rusty", colour: [0.17, 0.08, 0.045], mirrors: 0.03, roughness: 0.9, uneven: 0.35 },
  { name: "dirty", colour: [0.09, 0.075, 0.06], mirrors: 0.2, roughness: 0.6, uneven: 0.5 },
  { name: "brass", colour: [0.55, 0.38, 0.13], mirrors: 0.7, roughness: 0.35, uneven: 0.08 },
  { name: "yellow", colour: [0.5, 0.41, 0.2], mirrors: 0.6, roughness: 0.4, uneven: 0.12 },
  { name: "zinc", colour: [0.56, 0.58, 0.62], mirrors: 0.65, roughness: 0.4, uneven: 0.06 },
  { name: "alu", colour: [0.62, 0.62, 0.62], mirrors: 0.5, roughness: 0.55, uneven: 0.06 },
  { name: "stainless", colour: [0.55, 0.54, 0.52], mirrors: 0.8, roughness: 0.25, uneven: 0.04 },
  { name: "chrome", colour: [0.7, 0.71, 0.73], mirrors: 0.95, roughness: 0.12, uneven: 0.02 },
];

export const skins: readonly Surface[] = [
  [0.62, 0.37, 0.26],
  [0.5, 0.27, 0.17],
  [0.24, 0.12, 0.08],
  [0.68, 0.45, 0.36],
].map((colour) => ({ name: "skin", colour: colour as unknown as Vec, mirrors: 0.03, roughness: 0.8, uneven: 0.12 }));

/** Light and what there is to mirror: lights from a direction, an even light, the background behind and the room before. */
export type Lighting = {
  readonly lights: readonly { readonly from: Vec; readonly strength: number }[];
  readonly even: number;
  readonly behind: Vec;
  readonly room: Vec;
};

/** The light that comes to the eye from a surface, by the x and y of its normal: made once for a picture. */
export type Shading = { readonly surface: Surface; readonly table: Float32Array };

/** How a surface looks under a light at every slope, seen along z. */
export function shading(surface: Surface, light: Lighting): Shading {
  const table = new Float32Array(SIDE * SIDE * ENTRIES);
  for (let j = 0; j < SIDE; j++)
    for (let i = 0; i < SIDE; i++) {
      const [x, y] = [((i + 0.5) / SIDE) * 2 - 1, ((j + 0.5) / SIDE) * 2 - 1];
      const flat = Math.min(0.9998, Math.hypot(x, y));
      const size = flat / Math.max(1e-9, Math.hypot(x, y));
      const normal: Vec = [x * size, y * size, -Math.sqrt(1 - flat * flat)];
      const facing = -normal[2];
      const direct = light.lights.reduce(
        (sum, { from, strength }) => sum + strength * Math.max(0, dot(normal, from)),
        0,
      );
      // Schlick's approximation of Fresnel's law: everything mirrors at a grazing angle.
      const mirrors = surface.mirrors + (1 - surface.mirrors) * 0.5 * (1 - surface.roughness) * (1 - facing) ** 5;
      table.set(
        [light.even * (0.75 + 0.25 * facing), direct, mirrors, ...mirroredLight(normal, surface.roughness, light)],
        (j * SIDE + i) * ENTRIES,
      );
    }
  return { surface, table };
}

/** Adds the light of one fine pixel to `out`. `shade` is how much of the even light reaches it, `grain` from -1 to 1. */
export function addLight(
  { surface, table }: Shading,
  nx: number,
  ny: number,
  shade: number,
  grain: number,
  out: Float64Array,
): void {
  const i = Math.min(SIDE - 1, Math.floor((nx + 1) * 0.5 * SIDE));
  const j = Math.min(SIDE - 1, Math.floor((ny + 1) * 0.5 * SIDE));
  const at = (j * SIDE + i) * ENTRIES;
  const mirrors = table[at + 2] as number;
  const diffuse = (table[at] as number) * shade + (table[at + 1] as number) * (0.4 + 0.6 * shade);
  const spread = 1 + surface.uneven * grain;
  for (let c = 0; c < 3; c++) {
    const own = (surface.colour[c] as number) * spread;
    const tinted = surface.mirrors > 0.4 ? own : 0.05 + 0.5 * own;
    const mirrored = mirrors * tinted * (table[at + 3 + c] as number) * (0.3 + 0.7 * shade);
    out[c] = (out[c] as number) + own * diffuse * (1 - 0.7 * mirrors) + mirrored;
  }
}

const SIDE = 256;
const ENTRIES = 6;

/** What is seen by way of the surface: background, room, and the lights as patches that are the wider the duller it is. */
function mirroredLight(n: Vec, roughness: number, { lights, even, behind, room }: Lighting): Vec {
  // The eye's ray runs along +z; its reflection is z - 2 (z.n) n.
  const r: Vec = [-2 * n[2] * n[0], -2 * n[2] * n[1], 1 - 2 * n[2] * n[2]];
  const back = smooth((r[2] + 0.15) / (0.3 + roughness));
  let glint = 0;
  const sharp = 2 + 60 * (1 - roughness) ** 3;
  for (const { from, strength } of lights) glint += strength * 1.6 * Math.max(0, dot(r, from)) ** sharp;
  // A room is brighter above than below, with a darker belt.
  const height = 0.75 + 0.45 * r[1] - 0.5 * Math.exp(-(((r[1] + 0.25) / 0.18) ** 2));
  return [0, 1, 2].map(
    (c) => back * (behind[c] as number) + (1 - back) * (room[c] as number) * even * height + glint,
  ) as unknown as Vec;
}

const smooth = (t: number): number => {
  const x = Math.min(1, Math.max(0, t));
  return x * x * (3 - 2 * x);
};

const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
