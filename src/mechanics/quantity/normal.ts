/**
 * The probability that a standard normal value is at most z, relative error below 1e-14 down to 1e-300.
 * Source: W. J. Cody, "Algorithm 715: SPECFUN", ACM TOMS 19 (1993), function ANORM, on the rational approximations of
 * W. J. Cody, "Rational Chebyshev approximations for the error function", Math. Comp. 23 (1969). Coefficients from
 * memory, proved by test.
 */
export function normalCdf(z: number): number {
  if (Math.abs(z) <= CENTRE) return 0.5 + normalFromCentre(z);
  return z < 0 ? upperTail(-z) : 1 - upperTail(z);
}

/** The probability that a standard normal value is above z, relative error below 1e-14 down to 1e-300. */
export function normalSurvival(z: number): number {
  return normalCdf(-z);
}

/** The probability that a standard normal value lies between 0 and z, negative below 0, without loss near 0. */
export function normalFromCentre(z: number): number {
  if (Math.abs(z) > CENTRE) return z < 0 ? upperTail(-z) - 0.5 : 0.5 - upperTail(z);
  const square = z * z;
  return (z * polynomial(CENTRE_NUMERATOR, square)) / polynomial(CENTRE_DENOMINATOR, square);
}

/** The density of the standard normal distribution at z, relative error below 1e-14 down to 1e-300. */
export function normalDensity(z: number): number {
  return bell(z) / Math.sqrt(2 * Math.PI);
}

/**
 * The standard normal value that p of all values lie below, relative error below 1e-14 for p from 1e-300.
 * It is -Infinity for p = 0 and Infinity for p = 1. A p near 1 has lost its digits already: ask by the survival.
 * Source: M. J. Wichura, "Algorithm AS 241", Applied Statistics 37 (1988), routine PPND16. Coefficients from memory,
 * proved by test.
 * @throws RangeError if p is not from 0 to 1.
 */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`normalQuantile: p (${p}) is not from 0 to 1`);
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (q * polynomial(A, r)) / polynomial(B, r);
  }
  return q < 0 ? -upperQuantile(p) : upperQuantile(1 - p);
}

/**
 * The standard normal value that q of all values lie above, relative error below 1e-14 for q from 1e-300.
 * @throws RangeError if q is not from 0 to 1.
 */
export function normalQuantileOfSurvival(q: number): number {
  return -normalQuantile(q);
}

/** Below this distance from 0 ANORM works from the middle. */
const CENTRE = 0.67448975;

/** Beyond this even the smallest number a double can hold exceeds the tail. */
const NOTHING_LEFT = 40;

function upperTail(z: number): number {
  if (z > NOTHING_LEFT) return 0;
  if (z <= Math.sqrt(32)) return (bell(z) * polynomial(MIDDLE_NUMERATOR, z)) / polynomial(MIDDLE_DENOMINATOR, z);
  const s = 1 / (z * z);
  const correction = (s * polynomial(FAR_NUMERATOR, s)) / polynomial(FAR_DENOMINATOR, s);
  return (bell(z) * (1 / Math.sqrt(2 * Math.PI) - correction)) / z;
}

/** exp(-z^2/2), split as in ANORM: the square of z cut to sixteenths is exact, so its rounding is not magnified. */
function bell(z: number): number {
  if (Math.abs(z) > NOTHING_LEFT) return 0;
  const cut = Math.trunc(z * 16) / 16;
  return Math.exp((-cut * cut) / 2) * Math.exp((-(z - cut) * (z + cut)) / 2);
}

/** The z that a small share of all values, below 0.075, lie above. */
function upperQuantile(share: number): number {
  if (share === 0) return Number.POSITIVE_INFINITY;
  const r = Math.sqrt(-Math.log(share));
  return r <= 5 ? polynomial(C, r - 1.6) / polynomial(D, r - 1.6) : polynomial(E, r - 5) / polynomial(F, r - 5);
}

/** Horner's rule, constant term first. */
function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}

// ANORM, constant term first; each pair is the numerator and the denominator of one approximation.
const CENTRE_NUMERATOR = [
  18154.98125334356, 1067.6894854603709, 161.02823106855587, 2.2352520354606837, 0.06568233791820745,
];
const CENTRE_DENOMINATOR = [45507.78933502673, 10260.932208618979, 976.0985517377767, 47.202581904688245, 1];
const MIDDLE_NUMERATOR = [
  9842.714838383978, 11602.65143764735, 6848.190450536283, 2494.5375852903726, 597.2702763948002, 93.50665613217785,
  8.883149794388377, 0.39894151208813466, 1.0765576773720192e-8,
];
const MIDDLE_DENOMINATOR = [
  19685.429676859992, 38912.00328609327, 34900.95272114598, 18615.571640885097, 6485.558298266761, 1519.3775994075547,
  235.387901782625, 22.266688044328117, 1,
];
const FAR_NUMERATOR = [
  2.9112874951168793e-5, 0.0014216191932278934, 0.022235277870649807, 0.12740116116024736, 0.215898534057957,
  0.023073441764940174,
];
const FAR_DENOMINATOR = [
  7.297515550839662e-5, 0.0037823963320275824, 0.06598813786892856, 0.4682382124808651, 1.284260096144911, 1,
];

// PPND16, constant term first, named as in AS 241; B, D and F begin with 1.
const A = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987, 67265.7709270087,
  33430.57558358813, 2509.0809287301227,
];
const B = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271, 28729.085735721943,
  5226.495278852854,
];
const C = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684, 0.2417807251774506,
  0.022723844989269184, 0.0007745450142783414,
];
const D = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
  0.0005475938084995345, 1.0507500716444169e-9,
];
const E = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
  0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
];
const F = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133, 1.8463183175100548e-5,
  1.421511758316446e-7, 2.0442631033899397e-15,
];
