import sharp from "sharp";
import type { Photo } from "../../src/mechanics/silhouette/photo.ts";
import { photoOfPixels } from "../../src/mechanics/silhouette/photo.ts";
import type { Pixels } from "../../src/mechanics/silhouette/pixels.ts";
import { type Photograph, photograph } from "./photograph.ts";
import { type Fixed, type Scene, type SceneName, sceneOf } from "./scene.ts";

/** A rendered photo after a JPEG round trip, with the scene that it shows. */
export type Rendered = { readonly scene: Scene; readonly photograph: Photograph; readonly photo: Photo };

/** The photo of a seed, packed and unpacked as a telephone does. */
export async function rendered(name: SceneName, seed: number, fixed: Fixed = {}): Promise<Rendered> {
  const scene = sceneOf(name, seed, fixed);
  const taken = photograph(scene);
  return { scene, photograph: taken, photo: photoOfPixels(await unpacked(await jpegOf(scene, taken))) };
}

const jpegOf = ({ quality }: Scene, { width, height, bytes }: Photograph): Promise<Buffer> =>
  sharp(bytes, { raw: { width, height, channels: 3 } })
    .jpeg({ quality })
    .toBuffer();

async function unpacked(jpeg: Buffer): Promise<Pixels> {
  const { data, info } = await sharp(jpeg).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return { left: 0, top: 0, width: info.width, height: info.height, channels: 3, bytes: data };
}
