import type { Vec } from "./mesh.ts";
import { blurred, type Plane } from "./plane.ts";
import { type Camera, draw, type Pose, posed, unseen } from "./raster.ts";
import type { Scene } from "./scene.ts";

/**
 * How much light is missing on the background: the part laid flat along the light's direction, its rim softened, and where
 * it lies close to the surface a darker, softer stain. Null where the background is far behind.
 */
export function shadowOn(
  { shadow, part, width, height, pixelsPerMm }: Scene,
  camera: Camera,
  pose: Pose,
): Plane | null {
  if (!shadow) return null;
  // The lowest point of the part lies on the background.
  let far = 0;
  for (const { corners } of part.patches) for (const corner of corners) far = Math.max(far, posed(pose, corner)[2]);
  const flat = (falls: readonly [number, number]): Plane => {
    const seen = unseen(0, 0, width, height, 1);
    const patches = part.patches.map((it) => ({
      ...it,
      corners: it.corners.map((corner) => {
        const [x, y, z] = posed(pose, corner);
        return [x + falls[0] * (far - z), y + falls[1] * (far - z), far];
      }) as unknown as typeof it.corners,
    }));
    draw(seen, camera, asItStands, patches);
    return { width, height, at: seen.depth.map((it) => (it > 0 ? 1 : 0)) };
  };
  const cast = blurred(flat(shadow.falls), shadow.soft);
  const stain = blurred(flat([0, 0]), Math.max(4, 1.2 * pixelsPerMm));
  return {
    width,
    height,
    at: cast.at.map((it, i) => 1 - (1 - shadow.depth * it) * (1 - 0.25 * (stain.at[i] as number))),
  };
}

const asItStands: Pose = { axes: [[1, 0, 0] as Vec, [0, 1, 0] as Vec, [0, 0, 1] as Vec], place: [0, 0, 0] };
