import { unlikeBackground } from "./background.ts";
import { connectedFrom } from "./connected.ts";
import type { Frame } from "./frame.ts";
import type { Planes } from "./shrinking.ts";

/** Something that stands out from the background: its middle and axis, and half of its extent, in pixels of the photo. */
export type Standing = { readonly frame: Frame; readonly halfLength: number; readonly halfWidth: number };

/** The two largest things that stand out at Otsu's threshold, and at half of it. */
export function standingOut(planes: Planes): readonly Standing[] {
  const unlike = unlikeBackground(planes);
  const threshold = otsu(unlike);
  return [threshold, threshold / 2].flatMap((least) =>
    components(unlike, planes.width, least)
      .slice(0, 2)
      .map((points) => standing(points, planes)),
  );
}

/** The threshold that parts the values into two groups most unlike each other (Otsu 1979), of those up to 255. */
function otsu(values: Float32Array): number {
  const counts = new Float64Array(256);
  for (const value of values) {
    const bin = Math.min(255, Math.floor(value));
    counts[bin] = (counts[bin] as number) + 1;
  }
  let all = 0;
  for (let i = 0; i < 256; i++) all += i * (counts[i] as number);
  let [below, sum, best, threshold] = [0, 0, 0, 20];
  for (let i = 0; i < 255; i++) {
    below += counts[i] as number;
    sum += i * (counts[i] as number);
    const above = values.length - below;
    if (below === 0 || above === 0) continue;
    const between = below * above * (sum / below - (all - sum) / above) ** 2;
    if (between > best) [best, threshold] = [between, i + 1];
  }
  return Math.max(8, threshold);
}

/** The connected regions above `least`, largest first, without specks. */
function components(unlike: Float32Array, width: number, least: number): readonly Int32Array[] {
  const seen = new Uint8Array(unlike.length);
  const room = new Int32Array(unlike.length);
  const found: Int32Array[] = [];
  for (let start = 0; start < unlike.length; start++) {
    if (seen[start] || (unlike[start] as number) < least) continue;
    const region = connectedFrom(start, { values: unlike, width, least }, seen, room);
    if (region.length > 60) found.push(region);
  }
  return found.sort((a, b) => b.length - a.length);
}

/** Middle, long axis (that of the greatest second moment) and extent of a region. */
function standing(points: Int32Array, { width, scale }: Planes): Standing {
  let [mx, my] = [0, 0];
  for (const at of points) {
    mx += at % width;
    my += Math.floor(at / width);
  }
  mx /= points.length;
  my /= points.length;
  let [xx, xy, yy] = [0, 0, 0];
  for (const at of points) {
    const [dx, dy] = [(at % width) - mx, Math.floor(at / width) - my];
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
  }
  const angle = 0.5 * Math.atan2(2 * xy, xx - yy);
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  let [s0, s1, x0, x1] = [0, 0, 0, 0];
  for (const at of points) {
    const [dx, dy] = [(at % width) - mx, Math.floor(at / width) - my];
    const [s, x] = [dx * ux + dy * uy, -dx * uy + dy * ux];
    s0 = Math.min(s0, s);
    s1 = Math.max(s1, s);
    x0 = Math.min(x0, x);
    x1 = Math.max(x1, x);
  }
  const [s, x] = [(s0 + s1) / 2, (x0 + x1) / 2];
  const frame = { x: (mx + s * ux - x * uy + 0.5) * scale, y: (my + s * uy + x * ux + 0.5) * scale, ux, uy };
  return { frame, halfLength: ((s1 - s0) / 2) * scale, halfWidth: ((x1 - x0) / 2) * scale };
}
