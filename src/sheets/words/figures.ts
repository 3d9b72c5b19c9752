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
