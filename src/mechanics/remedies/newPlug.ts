import { isSound } from "../joint/health.ts";
import type { PortCase } from "./portCase.ts";
import { type Repair, repairOf } from "./repair.ts";
import type { WeighedClosure } from "./weighedClosure.ts";

/** A new plug and a new seal in a hole that is sound: where the plug is hurt, foreign or of the wrong reach. */
export const newPlug = (portCase: PortCase, asFound: WeighedClosure): Repair =>
  repairOf(portCase, "new plug", {
    bound: ["6 crack", "13 not asked", "14 breather"],
    lasting: true,
    whyNot: isSound(portCase.port, portCase.levels) ? null : "the hole is hurt, not the plug",
    checks: [{ type: "new plug", thread: portCase.port.thread.designation, underHead_mm: null }],
    // What the sound thread bears was weighed for the port as found.
    closed: () => (asFound.window ? asFound : null),
  });

/** The ordinary reseal of a healthy port: the same plug, a new seal, the book figure. */
export const ordinaryReseal = (portCase: PortCase): Repair =>
  repairOf(portCase, "ordinary reseal", { bound: [], lasting: true });
