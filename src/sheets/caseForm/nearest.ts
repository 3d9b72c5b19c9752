/** The word nearest to `given`, by letters to change; null where none is near. */
export function nearest(given: string, words: readonly string[]): string | null {
  const near = words
    .map((word) => ({ word, distance: lettersToChange(given.toLowerCase(), word.toLowerCase()) }))
    .toSorted((a, b) => a.distance - b.distance)[0];
  return near && near.distance <= Math.max(2, given.length / 2) ? near.word : null;
}

/** Levenshtein's distance: letters to insert, leave out or replace. */
function lettersToChange(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
