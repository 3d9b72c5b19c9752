import type { Port } from "../joint/port.ts";
import { exactly } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { exact, type Quantity, taken, valueIn } from "../quantity/quantity.ts";
import { mm, one } from "../quantity/unit.ts";
import { commonPractice, judgement, sourceText } from "../tables/source.ts";
import { type Need, need } from "./fitNeed.ts";

export const tapForms = ["bottoming", "plug", "taper"] as const;
/** The three forms a hand tap is ground in, by the length of its point. */
export type TapForm = (typeof tapForms)[number];

/** The point of a tap in pitches, by its form. */
const points: Readonly<Record<TapForm, readonly [least: number, most: number]>> = {
  bottoming: [1, 2],
  plug: [3.5, 5],
  taper: [7, 10],
};

const practice = sourceText(commonPractice);

/** How far a tap has to run out behind the thread it cuts, o. */
const overrunOf = formula("o = k * P", { k: one, P: mm, o: mm }, practice);

/** The overrun of a tap of one form, by the longest point that such taps have. */
export const overrun = (form: TapForm, P: Quantity): Quantity =>
  overrunOf({ k: taken("k", exactly(points[form][1]), one, `${form} taps, ${practice}`), P });

/** Whether the room behind takes the point of each form of tap. */
export const tapRoom = ({ roomBehind }: Port, P: Quantity): Readonly<Record<TapForm, Need>> => ({
  bottoming: need("room behind for the tap", roomBehind, overrun("bottoming", P)),
  plug: need("room behind for the tap", roomBehind, overrun("plug", P)),
  taper: need("room behind for the tap", roomBehind, overrun("taper", P)),
});

/** What nobody measured of the room behind is asked for; what was measured only sets how deep the thread goes. */
export const roomAsked = ({ bottoming }: Readonly<Record<TapForm, Need>>): readonly Need[] =>
  bottoming.state === "not known" ? [bottoming] : [];

const free = formula("l_f = l_b - l_c", { l_b: mm, l_c: mm, l_f: mm }, "what stays free before whatever stands behind");
const shortened = formula("l_u = l_t - (o - l_f)", { l_t: mm, o: mm, l_f: mm, l_u: mm }, "plain geometry");
const clearance = exact("l_c", 2, mm, sourceText(judgement("a blunt wire tells the room behind to about 2 mm")));
const nothing: Quantity = exact("l_f", 0, mm, "blind, or taken to be");

/**
 * How deep a thread is cut full: to the end of the hole where a bottoming tap runs out behind it, else short of it by what
 * its point wants. Where nobody measured the room behind, the hole is taken to be blind.
 */
export function fullDepth({ roomBehind }: Port, l_t: Quantity, P: Quantity): Quantity {
  const o = overrun("bottoming", P);
  // The clearance is for what the room may be measured wrong by; its uncertainty counts once.
  const l_b = roomBehind && exact("l_b", valueIn(mm, roomBehind), mm, "room behind, as measured");
  const l_f = l_b && l_b.value > clearance.value ? free({ l_b, l_c: clearance }) : nothing;
  return l_f.value >= o.value ? l_t : shortened({ l_t, o, l_f });
}
