import { type Quantity, standardUncertainty, valueIn } from "../../mechanics/quantity/quantity.ts";
import { ml, mm } from "../../mechanics/quantity/unit.ts";
import { lengthText } from "./figures.ts";

/** Where a level stands: "8 mm below the lip"; whole millimetres where a reading is no better. */
export function placeText(level: Quantity): string {
  const down = -stepped(valueIn(mm, level), doubt_mm(level));
  return `${lengthText(Math.abs(down))} ${down >= 0 ? "below" : "above"} the lip`;
}

/** How long a difference of level is, without its sign. */
export const sizeText = (difference: Quantity): string => lengthText(Math.abs(valueIn(mm, difference)));

/** " (give or take 0.3 mm)", rounded up; nothing where it is known to the tenth. */
export function giveOrTake(difference: Quantity): string {
  const U = Math.ceil(20 * doubt_mm(difference)) / 10;
  return U > 0.1 ? ` (give or take ${lengthText(U)})` : "";
}

/** A volume without its sign, in steps that its uncertainty earns. */
export function volumeFigure(volume: Quantity): number {
  const step = volumeStep(volume);
  return step * Math.round(Math.abs(valueIn(ml, volume)) / step);
}

/** "180 ml (give or take 90)": two standard uncertainties, rounded up. */
export function volumeText(volume: Quantity): string {
  const U = volumeDoubt(volume);
  return U > 0 ? `${volumeFigure(volume)} ml (give or take ${U})` : `${volumeFigure(volume)} ml`;
}

/** Two standard uncertainties of a volume in ml, rounded up to its step; nothing where it is known to the millilitre. */
export function volumeDoubt(volume: Quantity): number {
  const step = volumeStep(volume);
  return u_ml(volume) >= 0.5 ? step * Math.ceil((2 * u_ml(volume)) / step - 1e-9) : 0;
}

const volumeStep = (volume: Quantity): number => (u_ml(volume) > 20 ? 10 : u_ml(volume) > 5 ? 5 : 1);
const u_ml = (volume: Quantity): number => standardUncertainty(volume) / ml.inSI;
const doubt_mm = (level: Quantity): number => standardUncertainty(level) / mm.inSI;

/** A reading as it was typed has the digits of its hook; one that was worked has those of its uncertainty. */
const stepped = (value: number, u: number): number => (u >= 0.5 ? Math.round(value) : value);
