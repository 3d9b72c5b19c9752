/** A torque as it is read off a wrench: whole N·m, tenths below 10. */
export const torqueFigure = (torque_Nm: number): string => inSteps(torque_Nm, Math.round);
export const torqueText = (torque_Nm: number): string => `${torqueFigure(torque_Nm)} N·m`;

/** A figure that is pulled, as the marks of the wrench give it. */
export const pullFigure = (torque_Nm: number): string => trimmed(torque_Nm.toFixed(1));

/** A need, rounded up: one that is met is met. */
export const needFigure = (torque_Nm: number): string => inSteps(torque_Nm - 1e-6, Math.ceil);

/** A limit, rounded down: one that is kept is kept. */
export const limitFigure = (torque_Nm: number): string => inSteps(torque_Nm + 1e-6, Math.floor);

/** "12 to 41 N·m"; in tenths where whole figures would hide that there is room at all. */
export function rangeText(need_Nm: number, limit_Nm: number): string {
  const whole = [needFigure(need_Nm), limitFigure(limit_Nm)];
  const [from, to] = Number(whole[0]) < Number(whole[1]) ? whole : [need_Nm.toFixed(1), limit_Nm.toFixed(1)];
  return `${from} to ${to} N·m`;
}

function inSteps(torque_Nm: number, round: (x: number) => number): string {
  const tenths = round(torque_Nm * 10) / 10;
  return tenths < 10 ? trimmed(tenths.toFixed(1)) : round(torque_Nm).toFixed(0);
}

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

/** A length, to the tenth of a millimetre at most. */
export const lengthText = (length_mm: number): string => `${trimmed(length_mm.toFixed(1))} mm`;

/** Turns by quarters, as they are counted: "2", "2¼", "3½". */
export function turnsText(turns: number): string {
  const quarters = Math.max(0, Math.round(turns * 4));
  const whole = Math.floor(quarters / 4);
  const part = ["", "¼", "½", "¾"][quarters % 4] ?? "";
  return whole === 0 && part !== "" ? part : `${whole}${part}`;
}

export const turnsWord = (turns: number): string =>
  `${turnsText(turns)} ${turnsText(turns) === "1" ? "turn" : "turns"}`;

const trimmed = (text: string): string => text.replace(/\.0+$/, "");

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
