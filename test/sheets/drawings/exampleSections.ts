import type { SectionInput } from "../../../src/mechanics/joint/sectionInput.ts";
import { sectionThread } from "../../../src/mechanics/joint/sectionThread.ts";
import { valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import { metricThread } from "../../../src/mechanics/threads/metricThread.ts";
import { threadFromText } from "../../../src/mechanics/threads/threadText.ts";

/** Sizes of M`d`×`P` as a section takes them. */
export function sizesOf(d_mm: number, P_mm: number) {
  const { d_2, D_1, d_3, designation } = metricThread(d_mm, P_mm);
  const basic = { d2_mm: valueIn(mm, d_2), D1_mm: valueIn(mm, D_1), d3_mm: valueIn(mm, d_3) };
  return { designation, d_mm, P_mm, ...basic, flank_deg: 30 };
}

const fibreWasher = { kind: "flat washer", outside_mm: 26, inside_mm: 20.4, thickness_mm: 2 } as const;
const sealantBead = { kind: "sealant, metal to metal", outside_mm: 27, inside_mm: 20, thickness_mm: 0 } as const;
const bondedSeal = { kind: "bonded seal", outside_mm: 28, inside_mm: 20.7, thickness_mm: 2.5 } as const;

/** An invented chain case's level port, M20x1.5, nothing hurt. */
export const healthy: SectionInput = {
  ...sizesOf(20, 1.5),
  threadDepth_mm: 16,
  thinnestWall_mm: 7,
  roomBehind_mm: 11,
  underHead_mm: 13,
  chamfer_mm: 1,
  headDiameter_mm: 27,
  seal: fibreWasher,
  turnsCarrying: 10 / 1.5,
  turnsHealthy: 10 / 1.5,
  condition: "good",
  heightLeft: 1,
  goodFrom_mm: null,
  goodTo_mm: null,
  surface: "oiled",
};

/** The same port torn: 3.5 turns without the washer, 3.5 - 2/1.5 with it. */
export const hurt: SectionInput = { ...healthy, turnsCarrying: 3.5 - 2 / 1.5, condition: "doubtful", heightLeft: 0.7 };

export const withSealant: SectionInput = {
  ...hurt,
  seal: sealantBead,
  turnsCarrying: 3.5,
  surface: "wet sealant",
};

/** The same with the mouth of the hole chamfered for an O-ring: head and face meet, and the ring takes no thread. */
export const withORing: SectionInput = {
  ...hurt,
  seal: { kind: "O-ring", outside_mm: 25, inside_mm: 20, thickness_mm: 0, chamfer_mm: 3.2 },
  turnsCarrying: 3.5,
};

/** A plug 8 mm longer over a bonded seal passes right through the untouched turns. */
export const longerPlug: SectionInput = {
  ...hurt,
  seal: bondedSeal,
  underHead_mm: 21,
  turnsCarrying: (16 - 6.75) / 1.5,
  condition: "good",
  heightLeft: 1,
};

/** Only the thread and the count are known. */
export const mostlyUnknown: SectionInput = {
  ...hurt,
  threadDepth_mm: null,
  thinnestWall_mm: null,
  roomBehind_mm: null,
  underHead_mm: null,
  chamfer_mm: null,
  headDiameter_mm: null,
};

/** What a section takes of a thread by its name. */
export function threadNamed(text: string) {
  const read = threadFromText(text);
  if (!read.ok) throw new Error(`${text} is not read`);
  return sectionThread(read.thread);
}

/** A taper plug of NPT that turned in 4.5 turns by hand, its hole taper as well. */
export const taperPlug: SectionInput = {
  ...healthy,
  ...threadNamed("1/2-14 NPT"),
  underHead_mm: 20,
  seal: { kind: "taper", outside_mm: 27, inside_mm: 21.336, thickness_mm: 0 },
  turnsCarrying: 4.5,
  turnsHealthy: null,
};

/** An R plug in a parallel hole: it seals in the turns at the mouth. */
export const taperPlugInRp: SectionInput = { ...taperPlug, ...threadNamed("Rp 1/2") };
