import type { BookedActName, GroupName, ShelfActName, WorkshopActName } from "../words/actWords.ts";

/** What is written of the workshop itself, the likeliest first. Kept apart from the forms: the page that draws the taps needs none of them. */
export const workshopTaps = {
  first: ["open", "booked", "call", "person", "wrench"],
  more: {
    shelf: ["tube", "drum", "usedUp"],
    tools: ["calibrated", "retired", "finger"],
    names: ["personLeft", "workshopNamed"],
  },
} as const satisfies {
  readonly first: readonly (WorkshopActName | BookedActName | "call")[];
  readonly more: { readonly [G in GroupName]?: readonly (ShelfActName | WorkshopActName)[] };
};
