import {
  cut,
  type Distribution,
  exactly,
  lognormal,
  lognormalByMean,
  normal,
  triangular,
  uniform,
} from "../quantity/distribution.ts";
import { MPa, N_mm, one, turn, type Unit } from "../quantity/unit.ts";
import { judgement, published, type Source } from "./source.ts";

/** A range that stands for what nobody can measure at the lift. Every one may be overridden by name. */
export type ReferenceRange = { readonly distribution: Distribution; readonly unit: Unit; readonly source: Source };

const row = (distribution: Distribution, unit: Unit, source: Source): ReferenceRange => ({
  distribution,
  unit,
  source,
});

const strength = (mean: number, cv: number, least: number, reason: string): ReferenceRange =>
  row(cut(lognormalByMean(mean, cv), least, null), MPa, judgement(reason));
const ratio = (mean: number, sd: number, least: number, most: number, reason: string): ReferenceRange =>
  row(cut(normal(mean, sd), least, most), one, judgement(reason));
const pressure = (low: number, likely: number, high: number, reason: string): ReferenceRange =>
  row(triangular(low, likely, high), MPa, judgement(reason));
const lineLoad = (low: number, likely: number, high: number, reason: string): ReferenceRange =>
  row(triangular(low, likely, high), N_mm, judgement(reason));
const spread = (low: number, high: number, reason: string): ReferenceRange =>
  row(uniform(low, high), one, judgement(reason));
const height = (low: number, likely: number, high: number, reason: string): ReferenceRange =>
  row(triangular(low, likely, high), one, judgement(reason));

const dieCast = "EN 1706 separately cast bars 240 MPa (from memory), less in the boss of a casting, scatter 8 to 15 %";
const nadca = "NADCA A-3-2-12 die-cast shear and tensile strengths, ratio 0.57 to 0.61, insert practice 0.6 to 0.7";
const sealPractice = "between code seating stress (ASME VIII-1, table 2-5.1) and the flow stress of soft rings";

/** The reference ranges of the torque window, by the name under which a case may override them. */
export const referenceRanges = {
  "strength EN AC-46000": strength(225, 0.12, 140, dieCast),
  "strength EN AC-46100": strength(225, 0.12, 140, dieCast),
  "strength EN AC-47100": strength(225, 0.12, 140, dieCast),
  "strength A380": strength(225, 0.12, 140, `${dieCast}; typical bars of NADCA A-3-2-12 stand higher`),
  "strength A356-T6": strength(235, 0.1, 165, "ASTM B26 least 234 MPa for sand castings; scatter of good castings"),
  "strength cast aluminium": strength(
    185,
    0.15,
    110,
    "sand and chill cast alloys, in the casting down to 70 % of bars",
  ),
  "strength unknown light alloy": strength(190, 0.22, 100, "any of the light alloys of this table"),
  "strength AZ91D": strength(220, 0.12, 140, "die-cast bars 230 MPa, less in a boss"),
  "strength EN-GJL-200": strength(180, 0.1, 120, "EN 1561 expected in castings of 10 mm wall"),
  "strength EN-GJL-250": strength(215, 0.1, 150, "EN 1561 expected in castings of 10 to 20 mm wall"),
  "strength EN-GJS-400-15": strength(410, 0.06, 370, "EN 1563 least 400 MPa"),
  "strength pressed steel": strength(340, 0.08, 270, "deep-drawing sheet"),

  "shear ratio die-cast": ratio(0.63, 0.04, 0.52, 0.74, nadca),
  "shear ratio A356-T6": ratio(0.7, 0.05, 0.6, 0.8, "356-T6 handbook ratio 0.79, VDI 2230 aluminium 0.70"),
  "shear ratio cast aluminium": ratio(0.63, 0.05, 0.5, 0.8, "between die-cast and wrought alloys"),
  "shear ratio unknown light alloy": ratio(0.62, 0.05, 0.5, 0.78, "any of the light alloys of this table"),
  "shear ratio AZ91D": ratio(0.61, 0.04, 0.5, 0.72, "140 MPa shear beside 230 MPa tensile"),
  "shear ratio grey iron": ratio(1.1, 0.06, 0.9, 1.3, "VDI 2230 grey iron 1.1 (from memory)"),
  "shear ratio ductile iron": ratio(0.9, 0.03, 0.8, 1.0, "VDI 2230 ductile iron 0.9 (from memory)"),
  "shear ratio steel": ratio(0.62, 0.03, 0.54, 0.7, "VDI 2230 steel 0.60 to 0.65 (from memory)"),

  "strip model": row(
    lognormal(0.85, 0.2),
    one,
    judgement("bare shear model against the scatter of castings and the third rule of NASA RP-1228"),
  ),
  "plug strength": row(
    normal(1.05, 0.04),
    one,
    judgement("what is made to ISO 898-1 stands a little above its minimum"),
  ),
  "plug shear ratio": row(exactly(0.62), one, judgement("heat-treated and cold-headed steel; seldom governs")),

  "lead-in": row(uniform(0, 0.8), turn, judgement("VDI 2230 adds 0.8 P to the engagement (from memory)")),
  "count with a dot": row(exactly(0.15), turn, judgement("standard uncertainty of a count past a paint dot")),
  "count by eye": row(exactly(0.3), turn, judgement("standard uncertainty of a count by eye")),
  "count felt": row(exactly(0.5), turn, judgement("standard uncertainty of a count by feel")),

  "height good": height(0.8, 0.95, 1, "clean turns of a used hole"),
  "height doubtful": height(0.4, 0.7, 0.95, "rolled or torn crests on part of the turns"),
  "height poor": height(0.25, 0.45, 0.7, "crests gone; rolled-over crests leave half at most"),
  "height effect": spread(0.42, 1, "between tap-drill practice and load in proportion to height"),

  "sharing exponent": spread(0, 1, "from even sharing to the first turn deciding"),
  "sharing light alloy": row(
    exactly(0.19),
    one,
    judgement("near Yamamoto's shares for M18x1.5 steel in aluminium, which 0.17 fits best"),
  ),
  "sharing grey iron": row(exactly(0.25), one, judgement("between light alloy and steel")),
  "sharing ductile iron": row(exactly(0.28), one, judgement("between grey iron and steel")),
  "sharing steel": row(
    exactly(0.3),
    one,
    judgement("near Yamamoto's shares for M10 steel in steel, which 0.36 fits best"),
  ),

  "friction oiled": spread(0.09, 0.17, "VDI 2230 table A5, class B"),
  "friction wet sealant": spread(0.09, 0.16, "as class B of VDI 2230 table A5 while the sealant is wet"),
  "friction dry": spread(0.14, 0.3, "VDI 2230 table A5, classes C to E"),
  "friction anti-seize": spread(0.06, 0.12, "VDI 2230 table A5, classes A to B"),
  "friction own": row(lognormal(1, 0.08), one, judgement("thread and head differ from their common friction")),

  "wrench over 10 N·m": row(uniform(-0.04, 0.04), one, published("ISO 6789:2003, 5.1.5.2")),
  "wrench up to 10 N·m": row(uniform(-0.06, 0.06), one, published("ISO 6789:2003, 5.1.5.2")),

  "seal flat aluminium": pressure(25, 40, 61, sealPractice),
  "seal flat copper": pressure(35, 60, 90, sealPractice),
  "seal flat fibre": pressure(4, 8, 20, `${sealPractice}; vegetable fibre 7.6 MPa`),
  "seal crush ring": pressure(10, 15, 22, "enough to fold: a third to half of a flat ring"),
  "seal bonded": lineLoad(10, 30, 60, "to bring the metal ring to its stop"),
  "seal O-ring": lineLoad(4, 8, 12, "squeeze of 15 to 25 %"),
  "seal sealant": lineLoad(8, 14, 20, "contact while it cures"),

  "heat above 60 °C": row(exactly(0.9), one, judgement("light alloys tightened hot; estimate")),
  "heat above 120 °C": row(exactly(0.8), one, judgement("sustained heat; estimate")),
} as const satisfies Record<string, ReferenceRange>;

export type RangeName = keyof typeof referenceRanges;
export type Ranges = { readonly [N in RangeName]: ReferenceRange };

/** The reference ranges with some of them replaced. */
export const rangesWith = (overrides: { readonly [N in RangeName]?: ReferenceRange }): Ranges => ({
  ...referenceRanges,
  ...overrides,
});
