import { type ServiceClass, serviceClasses, serviceClassRows } from "../tables/apiClasses.ts";
import { judgement, type Source } from "../tables/source.ts";

export type Known = "yes" | "no" | "unknown";

/** What a unit asks of the class of its oil. */
export type ServedUnit = {
  readonly hypoid: Known;
  /** Brass or bronze synchronisers or bushes. */
  readonly yellowMetal: Known;
  readonly limitedSlip: Known;
  /** The classes that the unit's maker names or allows; empty where nobody has looked. */
  readonly makerAllows: readonly ServiceClass[];
  /** The classes of the oil that stays in, where it is only topped up; null after a full change. */
  readonly inCase: readonly ServiceClass[] | null;
};

/** One thing to say about a class: a block stands in the way, a warning asks for a look, a note only informs. */
export type ServiceFinding = {
  readonly level: "block" | "warn" | "note";
  readonly reason: ServiceReason;
  /** The classes it is about. */
  readonly classes: readonly ServiceClass[];
  readonly source: Source;
};

export type ServiceReason =
  | "GL-5 on yellow metal"
  | "GL-5 on yellow metal, allowed by the maker"
  | "yellow metal not known"
  | "less than GL-5 on a hypoid"
  | "less than GL-5 on a hypoid, allowed by the maker"
  | "hypoid not known"
  | "yellow metal and hypoid: the maker decides"
  | "both GL-4 and GL-5 claimed"
  | "none of the maker's classes"
  | "class not in current use"
  | "class no longer verifiable"
  | "no class on the label"
  | "other class in the case"
  | "limited-slip additive is the axle maker's"
  | "limited slip not known";

/**
 * What stands against filling an oil that claims the classes `label`; empty if nothing does.
 * Sources: API 1560 as quoted in `serviceClassRows`; the blocks are judgement on it.
 */
export function serviceFindings(label: readonly ServiceClass[], unit: ServedUnit): readonly ServiceFinding[] {
  const allowed = label.filter((it) => unit.makerAllows.includes(it));
  const strong = label.includes("GL-5");
  const mild = label.includes("GL-4");
  const strongOnly = strong && !mild;
  const weakOnly = label.length > 0 && !strong;
  const found: ServiceFinding[] = [];
  const say = (level: ServiceFinding["level"], reason: ServiceReason, classes = label, source = CLASSES): void => {
    found.push({ level, reason, classes, source });
  };

  if (label.length === 0) say("warn", "no class on the label");
  if (strongOnly && unit.yellowMetal === "yes")
    if (allowed.includes("GL-5")) say("warn", "GL-5 on yellow metal, allowed by the maker", ["GL-5"], YELLOW);
    else say("block", "GL-5 on yellow metal", ["GL-5"], YELLOW);
  if (strongOnly && unit.yellowMetal === "unknown" && !allowed.includes("GL-5"))
    say("warn", "yellow metal not known", ["GL-5"], YELLOW);
  if (weakOnly && unit.hypoid === "yes")
    if (allowed.length > 0) say("warn", "less than GL-5 on a hypoid, allowed by the maker", allowed, HYPOID);
    else say("block", "less than GL-5 on a hypoid", label, HYPOID);
  if (weakOnly && unit.hypoid === "unknown" && allowed.length === 0) say("warn", "hypoid not known", label, HYPOID);
  if (unit.yellowMetal === "yes" && unit.hypoid === "yes" && allowed.length === 0)
    say("block", "yellow metal and hypoid: the maker decides", label, YELLOW);
  if (strong && mild) say("warn", "both GL-4 and GL-5 claimed", ["GL-4", "GL-5"], YELLOW);
  if (label.length > 0 && unit.makerAllows.length > 0 && allowed.length === 0)
    say("warn", "none of the maker's classes", unit.makerAllows);
  for (const it of label) {
    const { current, verifiable, source } = serviceClassRows[it];
    if (!current) say("warn", "class not in current use", [it], source);
    else if (!verifiable) say("note", "class no longer verifiable", [it], source);
  }
  const strange = unit.inCase && (unit.inCase.length === 0 || !sameClasses(unit.inCase, label));
  if (strange) say("warn", "other class in the case", unit.inCase ?? [], MIXING);
  if (unit.limitedSlip === "yes") say("warn", "limited-slip additive is the axle maker's");
  if (unit.limitedSlip === "unknown" && unit.hypoid !== "no") say("note", "limited slip not known");
  return found;
}

export type ServiceClassesRead =
  | { readonly ok: true; readonly classes: readonly ServiceClass[] }
  | { readonly ok: false; readonly problem: ServiceClassProblem };

export type ServiceClassProblem = {
  readonly type: "NoSuchClass";
  readonly given: string;
  readonly accepted: readonly ServiceClass[];
};

/** The classes that a label names, in its order: "API GL-4/GL-5", "GL5", "MT-1". "GL-4+" is no class of API's. */
export function serviceClassesFromText(text: string): ServiceClassesRead {
  const classes: ServiceClass[] = [];
  for (const word of text.split(/[\s,;/&]+/).filter((it) => it !== "" && !/^(api|and)$/i.test(it))) {
    const name = word.toUpperCase().replace(/^(GL|MT)-?(?=\d)/, "$1-");
    const known = serviceClasses.find((it) => it === name);
    if (!known) return { ok: false, problem: { type: "NoSuchClass", given: word, accepted: serviceClasses } };
    if (!classes.includes(known)) classes.push(known);
  }
  return { ok: true, classes };
}

const CLASSES: Source = serviceClassRows["GL-5"].source;
const YELLOW = judgement(
  "GL-5 carries about twice the sulphur and phosphorus of GL-4 and may stain copper to 3 (ASTM D130; from memory)",
);
const HYPOID = judgement("API 1560 gives hypoids at speed, shock and torque to GL-5 and only moderate ones to GL-4");
const MIXING = judgement("viscosity says nothing of additives that meet in a mixture");

const sameClasses = (a: readonly ServiceClass[], b: readonly ServiceClass[]): boolean =>
  a.length === b.length && a.every((it) => b.includes(it));
