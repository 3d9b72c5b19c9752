import type { Random } from "../../src/mechanics/quantity/random.ts";

/** One number a pixel. */
export type Plane = { readonly width: number; readonly height: number; readonly at: Float32Array };

/** Gaussian blur by three boxes in a row (Wells 1986), `sigma` in pixels; below a third of one it is weighted neighbours. */
export function blurred(plane: Plane, sigma: number): Plane {
  if (sigma <= 0) return plane;
  if (sigma < 1.3) return sharpBlur(plane, sigma);
  const width = Math.sqrt((12 * sigma * sigma) / 3 + 1);
  const reach = Math.max(1, Math.round((width - 1) / 2));
  let out = plane;
  for (let i = 0; i < 3; i++) out = boxed(out, reach);
  return out;
}

/** Grain from -1 to 1 that changes over about `size` pixels along x and `size * longer` along y. */
export function grain(width: number, height: number, size: number, longer: number, random: Random): Plane {
  const [w, h] = [Math.ceil(width / size) + 2, Math.ceil(height / (size * longer)) + 2];
  const values = Float32Array.from({ length: w * h }, () => 2 * random() - 1);
  const at = new Float32Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [gx, gy] = [x / size, y / (size * longer)];
      const [ix, iy] = [Math.floor(gx), Math.floor(gy)];
      const [fx, fy] = [gx - ix, gy - iy];
      const k = iy * w + ix;
      const top = (values[k] as number) * (1 - fx) + (values[k + 1] as number) * fx;
      const low = (values[k + w] as number) * (1 - fx) + (values[k + w + 1] as number) * fx;
      at[y * width + x] = top * (1 - fy) + low * fy;
    }
  return { width, height, at };
}

function sharpBlur({ width, height, at }: Plane, sigma: number): Plane {
  const reach = Math.ceil(2.7 * sigma);
  const kernel = Float64Array.from({ length: 2 * reach + 1 }, (_, i) => Math.exp(-0.5 * ((i - reach) / sigma) ** 2));
  const total = kernel.reduce((sum, it) => sum + it, 0);
  const across = new Float32Array(at.length);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let k = -reach; k <= reach; k++) {
        const from = x + k < 0 ? 0 : x + k >= width ? width - 1 : x + k;
        sum += (kernel[k + reach] as number) * (at[y * width + from] as number);
      }
      across[y * width + x] = sum / total;
    }
  const out = new Float32Array(at.length);
  for (let y = 0; y < height; y++)
    for (let k = -reach; k <= reach; k++) {
      const start = Math.min(height - 1, Math.max(0, y + k)) * width;
      const weight = (kernel[k + reach] as number) / total;
      for (let x = 0; x < width; x++)
        out[y * width + x] = (out[y * width + x] as number) + weight * (across[start + x] as number);
    }
  return { width, height, at: out };
}

/** A rectangle of a plane, and that rectangle laid back. */
export function cutOut({ width, at }: Plane, left: number, top: number, w: number, h: number): Plane {
  const out = new Float32Array(w * h);
  for (let y = 0; y < h; y++) out.set(at.subarray((top + y) * width + left, (top + y) * width + left + w), y * w);
  return { width: w, height: h, at: out };
}

export function laidBack({ width, at }: Plane, part: Plane, left: number, top: number): void {
  for (let y = 0; y < part.height; y++)
    at.set(part.at.subarray(y * part.width, (y + 1) * part.width), (top + y) * width + left);
}

function boxed({ width, height, at }: Plane, reach: number): Plane {
  const along = (from: Float32Array, lines: number, length: number, toNext: number, stride: number): Float32Array => {
    const out = new Float32Array(from.length);
    for (let line = 0; line < lines; line++) {
      const start = line * toNext;
      const value = (i: number): number => from[start + Math.min(length - 1, Math.max(0, i)) * stride] as number;
      let sum = 0;
      for (let i = -reach; i <= reach; i++) sum += value(i);
      for (let i = 0; i < length; i++) {
        out[start + i * stride] = sum / (2 * reach + 1);
        sum += value(i + reach + 1) - value(i - reach);
      }
    }
    return out;
  };
  return { width, height, at: along(along(at, height, width, width, 1), width, height, 1, width) };
}
