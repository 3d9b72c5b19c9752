import { inOrder, type Watched } from "./heldCases.ts";

/** The same watching with all times multiplied by `factor`. */
export function scaledBy(factor: number, watch: Watched): Watched {
  switch (watch.type) {
    case "failed at":
    case "held until":
      return { ...watch, t: watch.t * factor };
    case "failed between":
      return { ...watch, from: watch.from * factor, to: watch.to * factor };
    default:
      return watch satisfies never;
  }
}

/** The logarithm of a time that stands for what was watched: the middle of an interval on a scale of logarithms. */
export function logTime(watch: Watched): number {
  if (watch.type !== "failed between") return Math.log(watch.t);
  return watch.from > 0 ? (Math.log(watch.from) + Math.log(watch.to)) / 2 : Math.log(watch.to / 2);
}

/** The geometric mean of the times: in it as unit, logarithms of times are small and lose no digits. */
export const middle = (watches: readonly Watched[]): number =>
  Math.exp(inOrder(watches).reduce((sum, watch) => sum + logTime(watch), 0) / watches.length);
