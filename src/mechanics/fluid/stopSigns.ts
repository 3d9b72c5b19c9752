/** What ends the talk about days: any of these and it is fetched, not driven. */
export const stopSigns = [
  "oil on a tyre",
  "oil on a brake",
  "oil on the exhaust",
  "oil on a belt",
  "oil on the road or in water",
  "noise",
  "drops turning to a string",
] as const;
export type StopSign = (typeof stopSigns)[number];
