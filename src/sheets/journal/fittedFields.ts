import type { FactOf } from "../../journal/facts/fact.ts";
import { sealKinds, surfaces, washerMaterials } from "../../mechanics/joint/port.ts";
import { choice, measured } from "../sums/sumField.ts";
import type { Typed } from "../sums/typed.ts";
import { plugCommon } from "../words/repairActWords.ts";

/** What is asked of the plug that is in now, and of its seal. */
export const fittedFields = {
  plug: { type: "text", common: plugCommon },
  seal: choice(...sealKinds),
  material: choice(...washerMaterials),
  underHead: measured("mm", 0.5, "16"),
  surface: choice(...surfaces),
} as const;

type Fitted = FactOf<"PortTorqued">["fitted"];

/** The plug that is in now with its seal; a plug alone is half of it, and so is a seal. */
export function fittedIn(it: Typed): Readonly<Record<string, unknown>> | null {
  const [plug, seal] = [it.text("plug"), it.chosen("seal", sealKinds)];
  if (plug === null && seal === null) return null;
  it.want("plug", "seal");
  const further = {
    underHead: it.reading("underHead"),
    material: seal === "flat washer" ? it.chosen("material", washerMaterials) : null,
    surface: it.chosen("surface", surfaces),
  };
  return { plug, seal, ...Object.fromEntries(Object.entries(further).filter(([, value]) => value !== null)) };
}

export const fittedTexts = (fitted: Fitted | undefined): Readonly<Record<keyof typeof fittedFields, string>> => ({
  plug: fitted?.plug ?? "",
  seal: fitted?.seal ?? "",
  material: fitted?.material ?? "",
  surface: fitted?.surface ?? "",
  underHead: fitted?.underHead ?? "",
});
