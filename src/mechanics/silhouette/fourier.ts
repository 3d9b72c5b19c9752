/** What the transform of one length needs: its sines, the order its values are taken in, and room to work. */
export type Transform = {
  readonly cosine: Float64Array;
  readonly sine: Float64Array;
  readonly order: Uint16Array;
  readonly re: Float64Array;
  readonly im: Float64Array;
};

/** What the transform of `n` numbers (a power of 2, 4 at least) needs. */
export function fourierTransform(n: number): Transform {
  const [cosine, sine] = [new Float64Array(n / 2), new Float64Array(n / 2)];
  for (let i = 0; i < n / 2; i++) {
    cosine[i] = Math.cos((2 * Math.PI * i) / n);
    sine[i] = -Math.sin((2 * Math.PI * i) / n);
  }
  return { cosine, sine, order: bitsReversed(n), re: new Float64Array(n), im: new Float64Array(n) };
}

/**
 * In place, the discrete Fourier transform of complex numbers at `start`, `stride` apart, by halving (Cooley and Tukey
 * 1965). A function of its own, not one made for each length: those would each have to be made fast anew.
 */
export function transformed(
  { cosine, sine, order, re: a, im: b }: Transform,
  re: Float64Array,
  im: Float64Array,
  start: number,
  stride: number,
): void {
  const n = order.length;
  // The first two rounds at once: their sines are 0 and 1.
  for (let i = 0; i < n; i += 4) {
    const p = start + (order[i] as number) * stride;
    const q = start + (order[i + 1] as number) * stride;
    const r = start + (order[i + 2] as number) * stride;
    const s = start + (order[i + 3] as number) * stride;
    const addedRe = (re[p] as number) + (re[q] as number);
    const addedIm = (im[p] as number) + (im[q] as number);
    const lessRe = (re[p] as number) - (re[q] as number);
    const lessIm = (im[p] as number) - (im[q] as number);
    const nextRe = (re[r] as number) + (re[s] as number);
    const nextIm = (im[r] as number) + (im[s] as number);
    const lastRe = (re[r] as number) - (re[s] as number);
    const lastIm = (im[r] as number) - (im[s] as number);
    a[i] = addedRe + nextRe;
    b[i] = addedIm + nextIm;
    a[i + 1] = lessRe + lastIm;
    b[i + 1] = lessIm - lastRe;
    a[i + 2] = addedRe - nextRe;
    b[i + 2] = addedIm - nextIm;
    a[i + 3] = lessRe - lastIm;
    b[i + 3] = lessIm + lastRe;
  }
  for (let size = 8; size <= n; size *= 2) {
    const half = size / 2;
    const turn = n / size;
    for (let block = 0; block < n; block += size)
      for (let k = 0; k < half; k++) {
        const low = block + k;
        const high = low + half;
        const c = cosine[k * turn] as number;
        const s = sine[k * turn] as number;
        const p = a[high] as number;
        const q = b[high] as number;
        const tr = p * c - q * s;
        const ti = p * s + q * c;
        const ur = a[low] as number;
        const ui = b[low] as number;
        a[low] = ur + tr;
        b[low] = ui + ti;
        a[high] = ur - tr;
        b[high] = ui - ti;
      }
  }
  for (let i = 0; i < n; i++) {
    re[start + i * stride] = a[i] as number;
    im[start + i * stride] = b[i] as number;
  }
}

function bitsReversed(n: number): Uint16Array {
  const bits = Math.log2(n);
  return Uint16Array.from({ length: n }, (_, i) => {
    let out = 0;
    for (let b = 0; b < bits; b++) out |= ((i >> b) & 1) << (bits - 1 - b);
    return out;
  });
}
