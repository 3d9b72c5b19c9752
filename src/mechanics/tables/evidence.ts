import { commonPractice, judgement, type Source } from "./source.ts";

/** How well an instrument or a sense tells, as a standard uncertainty on the scale of its kind (mm, K, one). */
type EvidenceRow = { readonly u: number; readonly source: Source };

const row = (u: number, source: Source): EvidenceRow => ({ u, source });
const estimated = judgement("what such a reading is worth at the lift");

/** How a length is known; standard uncertainties in mm. */
export const lengthEvidence = {
  caliper: row(0.05, commonPractice),
  "caliper, worn or dirty": row(0.1, commonPractice),
  "depth rod": row(0.3, estimated),
  rule: row(0.3, estimated),
  "drill shank": row(0.3, estimated),
  "wire hook": row(1, estimated),
  "blunt wire": row(2, estimated),
  read: row(0, judgement("as printed or stamped; source given")),
  felt: row(3, estimated),
  assumed: row(0, judgement("taken as it stands")),
} as const satisfies Record<string, EvidenceRow>;

/** How a temperature is known; standard uncertainties in K. */
export const temperatureEvidence = {
  "contact probe": row(1, estimated),
  "infrared on paint or tape": row(3, estimated),
  "infrared on bare metal": row(10, estimated),
  felt: row(10, estimated),
  assumed: row(0, judgement("taken as it stands")),
} as const satisfies Record<string, EvidenceRow>;

/** How a share such as the height of a thread is known; standard uncertainties of the share. */
export const shareEvidence = {
  caliper: row(0.1, estimated),
  "by eye": row(0.2, estimated),
  assumed: row(0, judgement("taken as it stands")),
} as const satisfies Record<string, EvidenceRow>;
