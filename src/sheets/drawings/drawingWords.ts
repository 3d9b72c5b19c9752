import type { HoleTurn, SealKind } from "../../mechanics/joint/port.ts";
import type { SealSizes } from "../../mechanics/joint/sealOutline.ts";
import type { PortSection, SectionDimension } from "../../mechanics/joint/section.ts";
import { inTenths } from "./lettering.ts";

/**
 * What a state of a turn is called in a drawing. Turns of a taper carry nothing that is weighed, they are counted by hand; nor do
 * those that are cast in resin.
 */
export function stateWord(state: HoleTurn["state"], { seal, insert }: Pick<PortSection, "seal" | "insert">): string {
  if (state !== "sound" && state !== "worn") return stateWords[state];
  if (insert?.material === "resin") return "of resin";
  return seal.kind === "taper" ? "by hand" : stateWords[state];
}

const stateWords: { readonly [state in HoleTurn["state"]]: string } = {
  sound: "carry",
  worn: "worn carry",
  gone: "gone",
  "beyond the plug": "unused",
};

/** What each length of a section is called. */
export function dimensionName(id: SectionDimension["id"], kind: SealKind): string {
  if (id === "seal") return kind === "flat washer" ? "washer" : kind === "bonded seal" ? "seal" : "ring";
  return id;
}

const sealWords: { readonly [kind in SealKind]: string } = {
  "flat washer": "washer",
  "crush ring": "crush ring",
  "bonded seal": "bonded seal",
  "O-ring": "O-ring",
  "sealant, metal to metal": "sealant",
  taper: "taper",
  none: "no seal",
};

/** A length as it is lettered; a question mark where nobody measured it. */
export const lengthText = (length_mm: number | null): string => (length_mm === null ? "?" : inTenths(length_mm));

/** What closes a port as it is drawn. */
export const closedBy = ({ bung, underHead_mm, seal }: PortSection): string =>
  bung ? "expanding bung" : closureText(underHead_mm, seal);

/** What closes the port: the plug's length and the seal with its size. */
function closureText(underHead_mm: number | null, { kind, outside_mm, inside_mm, thickness_mm }: SealSizes): string {
  const size =
    thickness_mm > 0 && kind !== "taper"
      ? ` ${trimmed(outside_mm)}/${trimmed(inside_mm)}/${trimmed(thickness_mm)}`
      : "";
  return `plug ${lengthText(underHead_mm)}, ${sealWords[kind]}${size}`;
}

/** What has to be said about a section besides its figures. */
export const notesOf = ({ doNotFit_turns }: PortSection): readonly string[] =>
  doNotFit_turns > tellingMisfit
    ? [`${inTenths(doNotFit_turns)} turns counted more than the plug reaches: look again`]
    : [];

/** A count is seldom better than a quarter turn. */
const tellingMisfit = 0.25;

/** The section in words, for those who hear it. */
export function sectionInWords(section: PortSection): string {
  const { designation, bands, P_mm, dimensions, seal } = section;
  const turns = bands.map(
    ({ state, from_mm, to_mm }) => `${inTenths((to_mm - from_mm) / P_mm)} turns ${stateWord(state, section)}`,
  );
  const lengths = dimensions.map(({ id, value_mm }) =>
    value_mm === null
      ? `${dimensionName(id, seal.kind)} not known`
      : `${dimensionName(id, seal.kind)} ${inTenths(value_mm)} mm`,
  );
  return `${designation}, ${closedBy(section)}. From the face inward: ${turns.join(", ")}. ${lengths.join(", ")}.`;
}

const trimmed = (x: number): string => inTenths(x).replace(/\.0$/, "");
