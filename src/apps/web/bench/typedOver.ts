import type { Texts } from "./benchTexts.ts";

/**
 * What was typed, with what is known now in its place: with a reading goes how it was known, and an element of a list goes whole,
 * so that no figure stands beside another one's seal.
 */
export function knownOverTyped(known: Texts, typed: Texts): Texts {
  const taken = new Set(Object.keys(known).map(wholeOf));
  const stays = Object.entries(typed).filter(([name]) => !taken.has(wholeOf(name)));
  return { ...Object.fromEntries(stays), ...known };
}

/** The reading or the element of a list that a text belongs to. */
const wholeOf = (name: string): string => /^\w+\.\d+(?=\.)/.exec(name)?.[0] ?? name.replace(/\.how$/, "");
