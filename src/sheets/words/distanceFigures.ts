/** Two digits are what a few readings by hand earn. */
export const nearFigure = (x: number): string => inTwoDigits(x, Math.round);

/** The near end of a range, never later than it is. */
export const earlyFigure = (x: number): string => inTwoDigits(x + slack * Math.abs(x), Math.floor);

/** The far end of a range, never sooner than it is. */
export const lateFigure = (x: number): string => inTwoDigits(x - slack * Math.abs(x), Math.ceil);

/** What arithmetic leaves in the last digits moves no figure by a step. */
const slack = 1e-9;

function inTwoDigits(x: number, round: (x: number) => number): string {
  if (x === 0) return "0";
  const power = Math.floor(Math.log10(Math.abs(x))) - 1;
  return String(Number(`${round(Number(`${x}e${-power}`))}e${power}`));
}
