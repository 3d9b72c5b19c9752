/** What was said, with commas; what was not is left out. */
export const list = (parts: readonly (string | number | false | null | undefined)[]): string =>
  parts.filter((it) => it !== undefined && it !== null && it !== false && it !== "").join(", ");
