import type { GateName } from "../../journal/job/gate.ts";
import type { PortState } from "../../journal/job/portSheet.ts";
import type { FluidState } from "../../journal/job/unitSheet.ts";

/** Why something may not be written down as done, in the words of the trade; a port or unit is named before it. */
export const gateWords: Readonly<Record<GateName, string>> = {
  "unit not named": "nobody said which unit this is",
  "fill first": "the fill plug is not broken loose; drained, the machine would be stranded",
  "volume not measured": "nobody measured what came out",
  "volume stop": "what came out cannot be right: fill nothing before it is understood",
  "washers not counted": "washers out and in were not counted",
  "washers differ": "as many washers went in as did not come out; is an old one still on the case?",
  "pulled by another": "only the one who pulled the wrench sets it torqued",
  "checked twice": "a click is checked again once at the most",
  "let go, not counted again": "it let go; count the turns again before any pull",
  "method refused": "this method was refused when the port was weighed",
  "port not tight": "not tightened",
  "held for now": "something is in the hole that is not to stay: do not run",
  "level unchecked": "level not checked",
  curing: "the sealant has not stood its time",
  "not seen dry": "nobody saw it dry",
  "no owner's sheet": "the owner's sheet is not made",
  "no tag": "the make-do has no tag",
};

/** The state of a port as it stands on the wall. */
export const portStateWords: Readonly<Record<PortState | "curing" | "held for now", string>> = {
  unknown: "not touched",
  closed: "closed",
  "broken loose": "BROKEN LOOSE",
  "would not open": "WOULD NOT OPEN",
  out: "OUT",
  "by hand": "BY HAND",
  "let go": "LET GO",
  torqued: "torqued",
  "dry-checked": "torqued, seen dry",
  curing: "CURING",
  "held for now": "HELD FOR NOW",
};

export const fluidStateWords: Readonly<Record<FluidState, string>> = {
  unknown: "not touched",
  "drawn down": "DRAWN DOWN",
  drained: "EMPTY",
  filled: "FILLED, level not checked",
  "level checked": "level checked",
};
