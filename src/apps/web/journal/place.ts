/** The one database of the journal in this browser. */
export const place = "turnsleft";
