/** Odds in one figure: "about 2 in 5", "fewer than 1 in 100", "rare". */
export function oddsText(probability: number): string {
  if (probability < 0.001) return "rare";
  if (probability < 0.0095) return "fewer than 1 in 100";
  if (probability > 0.95) return "nearly all";
  if (probability > 0.855) return "about 9 in 10";
  if (probability < 0.15) return `about 1 in ${roundOne(1 / probability)}`;
  const [above, below] = nearestShare(probability);
  return above * 2 === below ? "about half" : `about ${above} in ${below}`;
}

/** "strips about 2 in 5", "stripping is rare". */
export const stripsWord = (probability: number): string =>
  oddsText(probability) === "rare" ? "stripping is rare" : `strips ${oddsText(probability).replace("all", "always")}`;

/** "closes about 9 in 10", "hardly ever closes". */
export const closesWord = (probability: number): string =>
  probability < 0.0095 ? "hardly ever closes" : `closes ${oddsText(probability).replace("all", "always")}`;

const roundOne = (x: number): number => (x >= 20 ? Math.round(x / 10) * 10 : Math.round(x));

/** The simple share, in fifths, quarters, thirds or tenths, nearest to a probability. */
function nearestShare(probability: number): readonly [number, number] {
  const shares = [
    [1, 5],
    [1, 4],
    [1, 3],
    [2, 5],
    [1, 2],
    [3, 5],
    [2, 3],
    [3, 4],
    [4, 5],
  ] as const;
  const distance = ([above, below]: readonly [number, number]): number => Math.abs(above / below - probability);
  return shares.reduce((best, it) => (distance(it) < distance(best) ? it : best));
}
