/**
 * The preferred number of series R40 that lies nearest to x, moved on by `steps` of the series, in the whole numbers
 * that thread standards print: 35.5 is printed 36 and 42.5 is printed 42, a half going to the even number.
 *
 * x in micrometres, 10 to 10 000; a number halfway between two goes to the upper one. A negative x mirrors a positive
 * one. Source: ISO 3:1973, table 1; the printed form from memory of ISO 965-1, agreeing with its tables.
 * @throws RangeError if x is outside those bounds.
 */
export function renard40(x_um: number, steps: number): number {
  if (x_um < 0) return -renard40(-x_um, steps);
  return printed(nearest(x_um) + steps);
}

/** One decade of R40, in hundredths. ISO 3:1973, table 1. */
const decade = [
  100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315, 335, 355,
  375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950,
] as const;

const PER_DECADE = decade.length;

/** The number at `index` of the series; index 0 is 1. Multiplied before it is divided, so that ties stay ties. */
const at = (index: number): number =>
  ((decade[((index % PER_DECADE) + PER_DECADE) % PER_DECADE] as number) * 10 ** Math.floor(index / PER_DECADE)) / 100;

function nearest(x: number): number {
  if (!(x >= 10 && x <= 10_000)) throw new RangeError(`renard40: ${x} is outside 10 to 10 000`);
  let upper = Math.floor(PER_DECADE * Math.log10(x)) - 1;
  while (at(upper) < x) upper++;
  return at(upper) - x <= x - at(upper - 1) ? upper : upper - 1;
}

function printed(index: number): number {
  const exact = at(index);
  const below = Math.floor(exact);
  if (exact - below !== 0.5) return Math.round(exact);
  return below % 2 === 0 ? below : below + 1;
}
