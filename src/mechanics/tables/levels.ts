import { judgement, published, type Source } from "./source.ts";

/** A threshold of the method, and why it stands where it does. */
type Level = { readonly value: number; readonly source: Source };

const level = (value: number, source: Source): Level => ({ value, source });

/** The levels of the method, by the name under which a case may override them. */
export const referenceLevels = {
  stripOdds: level(0.01, judgement("the careful limit: at most 1 in 100 strips")),
  shareOfMedian: level(0.5, judgement("the careful limit: never above half of the median strip torque")),
  closeOdds: level(0.95, judgement("the need: 95 of 100 close")),
  narrowBelow: level(1.3, judgement("a window narrower than this ratio is called narrow")),
  healthyFrom: level(0.8, judgement("share of the healthy turns from which a port is healthy")),
  floorBelowM12_Nm: level(3, judgement("against walking loose by vibration")),
  floorM12toM14_Nm: level(6, judgement("against walking loose by vibration")),
  floorFromM16_Nm: level(10, judgement("against walking loose by vibration")),
  leastTurns: level(2, judgement("fewer caught turns take no make-do")),
  leastTurnsUnderOil: level(3, judgement("fewer caught turns take no make-do in a port always under oil")),
  leastHeight: level(0.25, judgement("less thread height takes no make-do")),
  leastShareOfScale: level(0.2, published("ISO 6789:2003, 6.2.3: verified at 20, 60 and 100 % of full scale")),
  calibrationDays: level(365, published("ISO 6789:2003, 6.3: twelve months where nothing else is laid down")),
} as const satisfies Record<string, Level>;

export type LevelName = keyof typeof referenceLevels;
export type Levels = { readonly [N in LevelName]: number };

/** The values of all levels, with some of them replaced. */
export const levelsWith = (overrides: { readonly [N in LevelName]?: number }): Levels => ({
  ...(Object.fromEntries(Object.entries(referenceLevels).map(([name, { value }]) => [name, value])) as Levels),
  ...overrides,
});
