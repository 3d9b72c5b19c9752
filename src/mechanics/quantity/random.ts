/** Gives the next uniform number, above 0 and below 1. */
export type Random = () => number;

/**
 * A repeatable stream of uniform numbers k / 2^53 in the open interval (0, 1), two 32-bit outputs to each number.
 * The state is four outputs of splitmix32 from `seed`, an integer from 0 to 2^32 - 1. Not for secrets.
 * Source: D. Blackman, S. Vigna, "Scrambled Linear Pseudorandom Number Generators", ACM TOMS 47 (2021), xoshiro128**.
 * @throws RangeError if the seed is not such an integer.
 */
export function xoshiro128(seed: number): Random {
  const splitmix = splitmix32(seed);
  const next = xoshiro128Words([splitmix(), splitmix(), splitmix(), splitmix()]);
  return () => {
    const k = (next() >>> 5) * 2 ** 26 + (next() >>> 6);
    // k = 0 would be an infinite normal deviate; half a step keeps the pairs of outputs in step.
    return k === 0 ? 2 ** -54 : k * 2 ** -53;
  };
}

/**
 * The 32-bit outputs of xoshiro128** 1.1 from a state of four unsigned 32-bit words, not all 0.
 * Source: D. Blackman, S. Vigna, xoshiro128starstar.c, prng.di.unimi.it (public domain).
 */
export function xoshiro128Words(state: readonly [number, number, number, number]): () => number {
  let [s0, s1, s2, s3] = state;
  return () => {
    const output = Math.imul(rotated(Math.imul(s1, 5), 7), 9) >>> 0;
    const t = s1 << 9;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= t;
    s3 = rotated(s3, 11);
    return output;
  };
}

/**
 * The 32-bit outputs of a Weyl sequence of step 0x9e3779b9, each mixed by the finaliser of MurmurHash3.
 * Four in a row are never all 0, because the mixing is one to one and the sequence does not stand still.
 * Source: G. Steele, D. Lea, C. Flood, "Fast Splittable Pseudorandom Number Generators", OOPSLA 2014, in 32 bits, with
 * fmix32 of A. Appleby's MurmurHash3 (public domain).
 * @throws RangeError if the seed is not an integer from 0 to 2^32 - 1.
 */
export function splitmix32(seed: number): () => number {
  if (!Number.isInteger(seed) || seed < 0 || seed >= 2 ** 32) {
    throw new RangeError(`splitmix32: seed (${seed}) is not an integer from 0 to 4294967295`);
  }
  let weyl = seed;
  return () => {
    weyl = (weyl + 0x9e3779b9) >>> 0;
    let z = Math.imul(weyl ^ (weyl >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return (z ^ (z >>> 16)) >>> 0;
  };
}

function rotated(word: number, left: number): number {
  return (word << left) | (word >>> (32 - left));
}
