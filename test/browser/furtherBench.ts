import type { BrowserContextOptions, Page } from "playwright-core";
import { openedPage } from "./openedPage.ts";

export const figure = (page: Page) => page.locator(".main-figure b");
export const sign = (page: Page) => page.locator(".main-figure .sign");
export const field = (page: Page, label: string) => page.getByRole("textbox", { name: label, exact: true });
export const tap = (page: Page, question: string, word: string) =>
  page.getByRole("group", { name: question, exact: true }).getByRole("button", { name: word, exact: true });

/** The check readings of each bench: what is typed and tapped, and the figure that stands then. */
const readings = {
  thread: { typed: { "Outside diameter": "21.85", "Gaps on a rule": "8", "They reach to": "12.1" }, taps: {} },
  level: { typed: { "Drawn out": "60", "The level fell by": "2.7" }, taps: {} },
  drip: {
    typed: { "Drops counted": "7", "Counted over": "10" },
    taps: { "Is any of this seen?": "none", "Is the breather free?": "free" },
  },
  cure: {
    typed: { "Width of the bead": "3", "Bay and case": "12", "Humidity of the air": "65" },
    taps: { "Edges open to air": "one edge" },
  },
  convert: { typed: { Quantity: "46 N·m" }, taps: {} },
} as const;
export type Name = keyof typeof readings;
export const names = Object.keys(readings) as Name[];

/** A bench with its check readings on it. */
export async function laid(name: Name, options: BrowserContextOptions = {}) {
  const opened = await openedPage(`/${name}`, options);
  const { typed, taps } = readings[name];
  for (const [label, text] of Object.entries(typed)) await field(opened.page, label).fill(text);
  for (const [question, word] of Object.entries(taps)) await tap(opened.page, question, word).click();
  return opened;
}
