import { judgement } from "./source.ts";

/** From a low to a high figure, both meant, with the likeliest between. */
export type Span = { readonly low: number; readonly likely: number; readonly high: number };

/** Where nobody knows better, the middle is the likeliest. */
export const span = (low: number, high: number): Span => ({ low, likely: (low + high) / 2, high });

export const invented = judgement("invented estimate, for the workshop to replace; hours exclude the normal service");

/** The rate of the shop per hour and what a comeback costs it, in its currency. Invented. */
export const shopEstimates = { rate_perHour: 78, comeback: span(85, 190), source: invented } as const;
