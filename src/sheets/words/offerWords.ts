/** Over the row of what can be done. */
export const offeredHint =
  "In the order in which they would be offered, the best of each method. Prices are estimates.";

export const nothingOffered = "Nothing that may be offered here; every way says why not.";
