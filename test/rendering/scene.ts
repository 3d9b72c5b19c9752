import { type Random, xoshiro128 } from "../../src/mechanics/quantity/random.ts";
import type { Vec } from "./mesh.ts";
import { drawnPart, type Part } from "./part.ts";
import { drawnThread, type Thread } from "./shownThread.ts";
import { finishes, type Lighting, type Surface, skins } from "./surfaces.ts";

export const scenes = ["backlit", "paper", "held", "hard"] as const;
export type SceneName = (typeof scenes)[number];

/** What may be fixed instead of drawn from the seed. */
export type Fixed = {
  readonly tilt_deg?: number;
  readonly taper?: number;
  readonly hand?: 1 | -1;
  readonly surface?: string;
  /** Width of the picture in pixels; 1600 unless given. The picture is the same, larger. */
  readonly width?: number;
};

/** Everything that is in a picture, and how it is taken. */
export type Scene = {
  readonly name: SceneName;
  readonly thread: Thread;
  readonly part: Part;
  readonly surface: Surface;
  readonly skin: Surface;
  /** Angle of the axis in the picture, and out of it (tip toward the camera above 0), degrees. */
  readonly turned_deg: number;
  readonly tilt_deg: number;
  readonly rolled_deg: number;
  readonly width: number;
  readonly height: number;
  readonly pixelsPerMm: number;
  readonly distance_mm: number;
  /** Where the middle of the thread lies, as a share of the picture from its middle. */
  readonly place: readonly [number, number];
  readonly lighting: Lighting;
  /** Colour of the background, how far it lies behind the part, and what is woven or brushed into it. */
  readonly background: Vec;
  readonly behind_mm: number;
  readonly texture: {
    readonly strength: number;
    readonly size: number;
    readonly longer: number;
    readonly woven: boolean;
  };
  /** Light missing in the shadow, how soft its rim is (pixels), and where it falls, mm a mm of height. */
  readonly shadow: { readonly depth: number; readonly soft: number; readonly falls: readonly [number, number] } | null;
  /** Share of the thread that fingers leave free. */
  readonly free: number;
  readonly blur: number;
  readonly sharpened: number;
  readonly noise: number;
  readonly quality: number;
  readonly random: Random;
};

/** The scene of that name and seed. */
export function sceneOf(name: SceneName, seed: number, fixed: Fixed = {}): Scene {
  const random = xoshiro128(scenes.indexOf(name) * 1_000_003 + seed);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const normal = (): number => Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
  const drawn = drawnThread(random);
  const thread = { ...drawn, taper: fixed.taper ?? 0, hand: fixed.hand ?? 1 };
  const part = drawnPart(thread, random);
  const surface = finishes.find((it) => it.name === fixed.surface) ?? pick(finishes, random);
  const width = fixed.width ?? 1600;
  const larger = width / 1600;
  const hard = name === "hard";
  // A flange on the table tips the part; held or hung before a light it is off as a hand is.
  const tilt_deg = fixed.tilt_deg ?? Math.max(-9, Math.min(9, 3 * normal()));
  const side = between(0, 2 * Math.PI);
  const slant = hard ? between(0.5, 1.1) : between(0.2, 0.7);
  return {
    name,
    thread,
    part,
    surface,
    skin: pick(skins, random),
    turned_deg: between(-180, 180),
    tilt_deg,
    rolled_deg: between(0, 360),
    width,
    height: Math.round(width * 0.75),
    pixelsPerMm: pixelsPerMm(thread, between) * larger,
    distance_mm: between(150, 300),
    place: [0.09 * normal(), 0.09 * normal()],
    lighting: lightingOf(name, [Math.cos(side) * slant, Math.sin(side) * slant], between),
    background: backgroundOf(name, random, between),
    behind_mm: name === "backlit" ? between(30, 150) : name === "held" ? between(60, 250) : 0,
    texture: hard
      ? pick(textures, random)
      : { strength: between(0.004, 0.02), size: between(1, 3), longer: 1, woven: false },
    shadow:
      name === "paper"
        ? {
            depth: between(0.2, 0.55),
            soft: between(9, 30) * larger,
            falls: [Math.cos(side) * slant, Math.sin(side) * slant],
          }
        : hard
          ? {
              depth: between(0.55, 0.85),
              soft: between(1.5, 5) * larger,
              falls: [Math.cos(side) * slant, Math.sin(side) * slant],
            }
          : null,
    free: name === "held" ? between(0.5, 1) : 1,
    blur: between(0.6, hard ? 1.7 : 1.4) * larger,
    sharpened: random() < 0.5 ? between(0.2, 0.8) : 0,
    noise: between(0.8, hard ? 4.5 : 3),
    quality: Math.round(between(75, 93)),
    random,
  };
}

const pick = <T>(of: readonly T[], random: Random): T => of[Math.floor(random() * of.length)] as T;

/** 11 to 38 pixels a pitch, while the thread stays within 380 pixels across. */
function pixelsPerMm({ pitch_mm, outside_mm }: Thread, between: (low: number, high: number) => number): number {
  return Math.min(Math.exp(between(Math.log(11), Math.log(38))) / pitch_mm, 380 / outside_mm);
}

const textures = [
  { strength: 0.05, size: 1.5, longer: 1, woven: false },
  { strength: 0.13, size: 3, longer: 1, woven: true },
  { strength: 0.1, size: 9, longer: 0.2, woven: false },
  { strength: 0.06, size: 30, longer: 0.7, woven: false },
];

function backgroundOf(name: SceneName, random: Random, between: (low: number, high: number) => number): Vec {
  const tint = (): number => between(0.88, 1.05);
  const level = name === "backlit" ? between(0.62, 0.95) : name === "held" ? between(0.35, 0.75) : between(0.45, 0.85);
  if (name !== "backlit" && random() < 0.2)
    return pick(
      [
        [0.35, 0.62, 0.9],
        [0.62, 0.52, 0.34],
        [0.75, 0.6, 0.45],
      ] as Vec[],
      random,
    );
  return [level * tint(), level * tint(), level * tint()];
}

function lightingOf(
  name: SceneName,
  falls: readonly [number, number],
  between: (low: number, high: number) => number,
): Lighting {
  const toward = ([x, y]: readonly [number, number], z: number): Vec => {
    const size = Math.hypot(x, y, z);
    return [x / size, y / size, z / size];
  };
  // Light comes from where the shadow does not fall.
  const key = toward([-falls[0], -falls[1]], -1);
  const second = toward([between(-1, 1), between(-1.2, -0.2)], -1);
  switch (name) {
    case "backlit": {
      const even = between(0.05, 0.3);
      return {
        lights: [{ from: second, strength: between(0.02, 0.25) }],
        even,
        behind: [0.9, 0.9, 0.9],
        room: [0.4, 0.4, 0.42],
      };
    }
    case "paper":
      return {
        lights: [
          { from: key, strength: between(0.3, 0.7) },
          { from: second, strength: between(0.1, 0.5) },
        ],
        even: between(0.35, 0.6),
        behind: [0.45, 0.45, 0.45],
        room: [0.9, 0.9, 0.92],
      };
    case "held":
      return {
        lights: [
          { from: second, strength: between(0.4, 0.9) },
          { from: key, strength: between(0.1, 0.4) },
        ],
        even: between(0.3, 0.55),
        behind: [0.5, 0.5, 0.52],
        room: [0.8, 0.8, 0.82],
      };
    case "hard":
      return {
        lights: [{ from: key, strength: between(0.9, 1.3) }],
        even: between(0.15, 0.3),
        behind: [0.4, 0.4, 0.4],
        room: [0.55, 0.55, 0.58],
      };
    default:
      return name satisfies never;
  }
}
