/** What a joint is, by its kind: what the refusal rules ask of it. */
export type JointRow = {
  /** Brakes, steering, seats, clamp bolts and their like: any thread there is the maker's business. */
  readonly structure: boolean;
  readonly workingPressure: boolean;
  readonly combustion: boolean;
  readonly motorcycle: boolean;
  /** Water on the other side. */
  readonly waterSide: boolean;
  readonly coolant: boolean;
  readonly alwaysUnderOil: boolean;
};

const plain: JointRow = {
  structure: false,
  workingPressure: false,
  combustion: false,
  motorcycle: false,
  waterSide: false,
  coolant: false,
  alwaysUnderOil: false,
};

/** The kinds of joint a case may name. "other" is answered before it is weighed. */
export const jointRows = {
  "engine sump": { ...plain, alwaysUnderOil: true },
  "motorcycle sump": { ...plain, alwaysUnderOil: true, motorcycle: true },
  "gear case fill": plain,
  "gear case level": plain,
  "gear case drain": { ...plain, alwaysUnderOil: true },
  "hub reduction": plain,
  "coolant drain": { ...plain, alwaysUnderOil: true, coolant: true },
  "spark plug": { ...plain, combustion: true },
  "outboard lower unit": { ...plain, alwaysUnderOil: true, waterSide: true },
  "pressure port": { ...plain, workingPressure: true },
  "brake, steering, suspension, wheel or restraint": { ...plain, structure: true },
  "clamp bolt in a casting": { ...plain, structure: true },
  other: plain,
} as const satisfies Record<string, JointRow>;

export type JointKind = keyof typeof jointRows;
export const jointKinds = Object.keys(jointRows) as readonly JointKind[];
