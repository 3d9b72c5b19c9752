import type { Fact } from "../../journal/facts/fact.ts";
import type { PortState } from "../../journal/job/portSheet.ts";
import type { FluidState } from "../../journal/job/unitSheet.ts";
import type { ActName, PortActName, UnitActName } from "../words/actWords.ts";
import type { About, Act } from "./act.ts";
import { afterActs } from "./afterActs.ts";
import { machineActs } from "./machineActs.ts";
import { portActs } from "./portActs.ts";
import { unitActs } from "./unitActs.ts";
import { workshopActs } from "./workshopActs.ts";

const acts: Readonly<Record<ActName, Act>> = {
  ...portActs,
  ...unitActs,
  ...machineActs,
  ...afterActs,
  ...workshopActs,
};

export const actNamed = (name: ActName): Act => acts[name];

/** The form that a fact was written by, and the texts that were in it; null where no form here writes such a fact. */
export function actOf(fact: Fact): { readonly act: ActName; readonly texts: Readonly<Record<string, string>> } | null {
  for (const [act, { texts }] of Object.entries(acts) as [ActName, Act][]) {
    const found = texts(fact);
    if (found) return { act, texts: Object.fromEntries(Object.entries(found).filter(([, it]) => it !== "")) };
  }
  return null;
}

/** The taps that come first for a port in a state; all the others lie behind them. */
const firstAtPort: Readonly<Record<PortState, readonly PortActName[]>> = {
  unknown: ["loose", "stuck", "closed"],
  closed: ["loose"],
  "would not open": ["loose"],
  "broken loose": ["out", "torqued"],
  out: ["washersOut", "turns", "found", "washersIn", "byHand"],
  "by hand": ["torqued", "out", "letGo"],
  "let go": ["turns", "asked", "out"],
  torqued: ["dry", "checked", "found", "cure", "letGo"],
  "dry-checked": ["checked", "loose"],
};

const firstAtUnit: Readonly<Record<FluidState, readonly UnitActName[]>> = {
  unknown: ["drained", "level"],
  "drawn down": ["filled", "level"],
  drained: ["filled"],
  filled: ["level"],
  "level checked": ["level"],
};

/** The taps of a machine in the bay come first, and those of one that has gone where a look is due. */
const ofMachine: readonly ActName[] = ["found", "note", "paper", "released", "left", "nearMiss", "done"];
const afterLeaving: readonly ActName[] = ["looked", "notReached", "planned"];

export type Offered = { readonly first: readonly ActName[]; readonly more: readonly ActName[] };

/** What may be written down of a port, unit or machine as it stands, the likeliest first. */
export function offered(
  about: About["type"],
  state: PortState | FluidState | "cap" | "held for now" | "gone" | null,
): Offered {
  switch (about) {
    case "port":
      // A cap opens by hand every day: nothing about it comes first.
      return split(state === "held for now" ? ["holdEnded"] : state === "cap" ? [] : firstAtPort[state as PortState], [
        ...(Object.keys(portActs) as PortActName[]),
        "cameBack",
      ]);
    case "unit":
      return split(firstAtUnit[state as FluidState], Object.keys(unitActs) as UnitActName[]);
    case "machine":
      return split(state === "gone" ? [...afterLeaving, "note"] : ofMachine.slice(0, 4), [
        ...ofMachine,
        ...afterLeaving,
      ]);
    case "workshop":
      return split(["open"], ["person", "wrench"]);
    default:
      return about satisfies never;
  }
}

const split = (first: readonly ActName[], all: readonly ActName[]): Offered => ({
  first,
  more: all.filter((it) => !first.includes(it)),
});
