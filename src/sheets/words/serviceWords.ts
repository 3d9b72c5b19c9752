import type { ServiceFinding, ServiceReason } from "../../mechanics/fluid/serviceClass.ts";
import type { ServiceClass } from "../../mechanics/tables/apiClasses.ts";
import { sourceText } from "../../mechanics/tables/source.ts";

export type ServiceVerdict = "blocked" | "look first" | "nothing stands against it";

/** What the findings come to: a block stands in the way, a warning asks for a look, a note only informs. */
export function serviceVerdict(findings: readonly ServiceFinding[]): ServiceVerdict {
  if (findings.some(({ level }) => level === "block")) return "blocked";
  return findings.some(({ level }) => level === "warn") ? "look first" : "nothing stands against it";
}

/** The verdict first, then blocks, warnings and notes, each with its reason. */
export function serviceLines(label: readonly ServiceClass[], findings: readonly ServiceFinding[]): readonly string[] {
  const name = label.length > 0 ? label.join("/") : "This oil";
  const order = ["block", "warn", "note"] as const;
  const sorted = order.flatMap((level) => findings.filter((it) => it.level === level));
  return [
    verdictLines[serviceVerdict(findings)](name),
    ...sorted.map((it) => `  ${levelWords[it.level]}  ${serviceSentence(it)}`),
    "The unit's own sheet goes before all of this.",
  ];
}

/** One finding as a sentence, without its source. */
export const serviceSentence = ({ reason, classes }: ServiceFinding): string => sentences[reason](classes.join(", "));

export const serviceSource = ({ source }: ServiceFinding): string => sourceText(source);

const verdictLines: Readonly<Record<ServiceVerdict, (name: string) => string>> = {
  blocked: (name) => `Do not fill it. ${name} does not go in here as it stands.`,
  "look first": (name) => `Look first. ${name} may go in here once this is answered.`,
  "nothing stands against it": (name) => `Nothing stands against ${name} here.`,
};

const levelWords: Readonly<Record<ServiceFinding["level"], string>> = { block: "block", warn: "warn ", note: "note " };

const sentences: Readonly<Record<ServiceReason, (classes: string) => string>> = {
  "GL-5 on yellow metal": () =>
    "The sulphur and phosphorus of GL-5 may eat brass and bronze synchronisers and bushes; GL-4, or the maker's word.",
  "GL-5 on yellow metal, allowed by the maker": () =>
    "The unit has yellow metal and its maker allows GL-5: make sure the sheet is for this very unit.",
  "yellow metal not known": () =>
    "Are there brass or bronze synchronisers or bushes? GL-5 may eat them. Ask before it is filled.",
  "less than GL-5 on a hypoid": (classes) =>
    `A hypoid slides under load and needs GL-5; ${classes} may let it score and seize.`,
  "less than GL-5 on a hypoid, allowed by the maker": (classes) =>
    `The maker allows ${classes} on this hypoid: make sure the sheet is for this very unit.`,
  "hypoid not known": (classes) => `Is there a hypoid in it? It would need GL-5, and this is ${classes}.`,
  "yellow metal and hypoid: the maker decides": () =>
    "Yellow metal and a hypoid share one oil: what one needs may hurt the other. Only the maker's oil goes in.",
  "both GL-4 and GL-5 claimed": () =>
    "The can claims GL-4 and GL-5 at once: it may carry all the additive of GL-5. Ask who made it about yellow metal.",
  "none of the maker's classes": (classes) => `The maker names ${classes}; the can names none of them.`,
  "class not in current use": (classes) => `${classes} is not in current use: nobody tests for it any more.`,
  "class no longer verifiable": (classes) =>
    `${classes} can no longer be tested in full, the test hardware is no longer made: the claim is the seller's word.`,
  "no class on the label": () => "The can names no class: nothing is known of its additives.",
  "other class in the case": (classes) =>
    classes === ""
      ? "Nobody knows the class of what is in the case: drain it rather than top it up."
      : `In the case is ${classes}: nobody knows how additives that meet will do. Drain it rather than top it up.`,
  "limited-slip additive is the axle maker's": () =>
    "The friction that limited slip needs is set by the axle's maker: no class tells it. Ask for the additive.",
  "limited slip not known": () =>
    "Is there a limited-slip differential in it? Its additive is named by the axle's maker.",
};
