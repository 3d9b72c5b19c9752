import { lbf_ft } from "../../mechanics/quantity/unit.ts";
import { type FoundPort, foundPort } from "../../mechanics/remedies/foundPort.ts";
import type { Assumption, GivenCase } from "../../mechanics/remedies/givenCase.ts";
import type { WeighedClosure } from "../../mechanics/remedies/weighedClosure.ts";
import type { WrittenCase } from "../caseForm/caseSchema.ts";
import { readTyped } from "../caseForm/readTyped.ts";
import type { ThreadReader } from "../caseForm/threadGiven.ts";
import type { BenchSign } from "../words/benchWords.ts";
import { pullFigure, torqueFigure } from "../words/figures.ts";
import type { InputProblem } from "../words/problemWords.ts";
import { foundFirst } from "./foundFirst.ts";

/** A port as it was read for the bench, and as it was found. */
export type BenchRead = {
  readonly found: FoundPort;
  readonly given: GivenCase;
  readonly ordinary: readonly Assumption[];
};

/** What a port comes to in one look: the figure, as it is read, and the sentence with it. */
export type FirstAnswer = {
  readonly sign: BenchSign;
  readonly narrow: boolean;
  /** The torque to pull, N·m and lbf·ft, as its wrench sets it; null where none is advised. */
  readonly figure: { readonly newtonMetres: string; readonly poundFeet: string } | null;
  readonly sentences: readonly string[];
};

/** Reads what the bench wrote down, its thread by `threads`, and weighs the port as found; `today` stands in where it names no day. */
export function foundOnBench(
  written: WrittenCase,
  today: string,
  threads: ThreadReader,
): ({ readonly ok: true } & BenchRead) | { readonly ok: false; readonly problems: readonly InputProblem[] } {
  const read = readTyped(written, today, threads);
  return read.ok ? { ...read, found: foundPort(read.given) } : read;
}

/** The answer for the port as found, before anybody has weighed what can be done about it. */
export const benchFound = (found: FoundPort): FirstAnswer => ({
  sign: signOf(found),
  narrow: found.asFound.window?.open === true && found.asFound.window.narrow,
  figure: figureOf(found.asFound),
  sentences: [foundFirst(found)],
});

function signOf({ asFound, health }: FoundPort): BenchSign {
  const { advice, refused } = asFound;
  if (refused) return "refused";
  if (health.healthy) return advice?.type === "pull" ? "book figure" : "look again";
  if (advice?.type === "pull") return "pull";
  return advice?.type === "no wrench sets this" ? "no wrench" : advice ? "no torque" : "look again";
}

function figureOf({ advice }: WeighedClosure): FirstAnswer["figure"] {
  if (advice?.type !== "pull") return null;
  return { newtonMetres: pullFigure(advice.torque_Nm), poundFeet: torqueFigure(advice.torque_Nm / lbf_ft.inSI) };
}
