import type { Watched } from "../../../src/mechanics/service/heldCases.ts";

const failed = (t: number): Watched => ({ type: "failed at", t });
const between = (from: number, to: number): Watched => ({ type: "failed between", from, to });
const holds = (t: number): Watched => ({ type: "held until", t });

/** Three invented sealant repairs: two came back, one still dry. */
export const threeSealant: readonly Watched[] = [failed(71), failed(5), holds(88)];

/** Ten repairs seen at checks only. */
export const seenAtChecks: readonly Watched[] = [
  ...[0, 7, 30].map((from, i) => between(from, [7, 30, 90][i] ?? from)),
  ...[365, 365, 365, 90, 90, 30].map(holds),
  between(30, 365),
];

/** Checks far apart, and late ones. */
export const lateChecks: readonly Watched[] = [
  between(180, 365),
  between(365, 730),
  between(400, 700),
  ...[365, 400, 730, 730, 800].map(holds),
];

/** Twelve repairs, every comeback known to the day. */
export const knownToTheDay: readonly Watched[] = [
  ...[9, 64, 64, 131, 240].map(failed),
  ...[30, 92, 131, 205, 290, 330, 360].map(holds),
];

/** Three that hold: none came back. */
export const noneCameBack: readonly Watched[] = [286, 208, 173].map(holds);

/** All came back, the last at a check. */
export const allCameBack: readonly Watched[] = [failed(3), failed(10), between(10, 40)];
