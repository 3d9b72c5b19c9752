type Count = { readonly on: string; readonly turns: number };

/** What the counts of turns say: 8, 7, 6 is the warning before a thread strips. */
export function turnsFallWords(counts: readonly Count[], falling: boolean): string {
  const said = counts.map(({ turns }) => turns).join(", ");
  if (counts.length < 2) return `Counted once: ${said}. Count at each service: the fall is what warns.`;
  return falling
    ? `${said}: they are falling. That is the warning before it strips: less torque, or a repair at the next service.`
    : `${said}: they hold, within a quarter turn of counting.`;
}
