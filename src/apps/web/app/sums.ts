/** The benches of one sum, each fetched when it is opened. */
export const sums = {
  thread: () => import("../sums/threadPage.ts"),
  level: () => import("../sums/levelPage.ts"),
  drip: () => import("../sums/dripPage.ts"),
  cure: () => import("../sums/curePage.ts"),
  convert: () => import("../sums/convertPage.ts"),
};

/** Fetches all of them behind one that was opened; without a network now, whoever opens one is told then. */
export function fetchSums(): void {
  for (const fetched of Object.values(sums)) fetched().catch(() => {});
}
