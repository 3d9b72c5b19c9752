import type { HoleClass, PlugClass } from "./toleranceClass.ts";

/** The classes of ordinary plugs and holes, where none is named: 6g and 6H. ISO 965-1:2013, tolerance quality medium. */
export const standardPlug: PlugClass = {
  designation: "6g",
  pitch: { grade: 6, deviation: "g" },
  major: { grade: 6, deviation: "g" },
};
export const standardHole: HoleClass = {
  designation: "6H",
  pitch: { grade: 6, deviation: "H" },
  minor: { grade: 6, deviation: "H" },
};
