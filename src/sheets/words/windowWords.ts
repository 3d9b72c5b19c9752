import type { Advice } from "../../mechanics/joint/advice.ts";
import type { TorqueWindow } from "../../mechanics/joint/window.ts";
import { lbf_ft } from "../../mechanics/quantity/unit.ts";
import type { WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import { limitFigure, needFigure, pullFigure, rangeText, torqueFigure } from "./figures.ts";
import { sealWord } from "./remedyWords.ts";

/** The answer for one closure in one sentence. */
export function answerSentence({ window, advice, closure }: WeighedClosure): string {
  if (!window || !advice) return "";
  const seal = sealWord(closure.seal);
  switch (advice.type) {
    case "pull":
      return `Pull to ${pullText(advice)}.`;
    case "window empty":
      return window.limit_Nm < 0.05
        ? `No torque closes this: the ${seal} needs ${needFigure(leastOf(window))} N·m, and more than 1 in 100 strips at any pull.`
        : `No torque closes this: the ${seal} needs ${needFigure(leastOf(window))} N·m, the careful limit is ${limitFigure(window.limit_Nm)}.`;
    case "no wrench sets this":
      return `The window is ${rangeText(leastOf(window), window.limit_Nm)}, and no wrench here sets this.`;
    default:
      return advice satisfies never;
  }
}

/** "12 N·m (9 lbf·ft) on W-1", with what to set where a crow-foot changes it and what may not be claimed. */
export function pullText(advice: Extract<Advice, { type: "pull" }>): string {
  const pounds = `${torqueFigure(advice.torque_Nm / lbf_ft.inSI)} lbf·ft`;
  const wrench = advice.wrench ? ` on ${advice.wrench.name}` : "";
  const none = !advice.wrench && advice.evidence === "out of range" ? "; no wrench here sets it" : "";
  const set = Math.abs(advice.set_Nm - advice.torque_Nm) > 0.005 ? `, set to ${advice.set_Nm.toFixed(1)} N·m` : "";
  const claim =
    advice.evidence === "out of range" && advice.wrench
      ? " (out of its range: it may tighten, it may not claim)"
      : advice.evidence === "out of date"
        ? " (out of date: it may tighten, it may not claim)"
        : "";
  return `${pullFigure(advice.torque_Nm)} N·m (${pounds})${wrench}${set}${claim}${none}`;
}

/** Where a window begins: what the seal needs, or the floor against vibration. */
export const leastOf = ({ need_Nm, floor_Nm }: TorqueWindow): number => Math.max(need_Nm, floor_Nm ?? 0);
