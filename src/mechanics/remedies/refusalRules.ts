import type { CarryingTurns } from "../joint/carryingTurns.ts";
import { valueIn } from "../quantity/quantity.ts";
import { one, turn } from "../quantity/unit.ts";
import { jointRows } from "../tables/jointKinds.ts";
import {
  type Asked,
  type FirstQuestion,
  firstQuestions,
  type Override,
  type PortCase,
  type Reached,
} from "./portCase.ts";

/** Why a make-do is refused. Numbered as the shop's list prints them. */
export type Refusal = {
  readonly rule: RefusalRule;
  readonly reason: RefusalReason;
  readonly override: "never" | "name and reason" | "answer them" | "free it";
  /** Who took it on himself; the figure is then his, never ours. */
  readonly overridden: Override | null;
};

export const refusalRules = [
  "1 structure",
  "2 pressure",
  "3 combustion",
  "4 reach",
  "5 water side",
  "6 crack",
  "7 too little",
  "8 again",
  "9 alloy",
  "10 people",
  "11 evidence",
  "12 release",
  "13 not asked",
  "14 breather",
] as const;
export type RefusalRule = (typeof refusalRules)[number];

export type RefusalReason =
  | { readonly type: "structure" }
  | { readonly type: "working pressure" }
  | { readonly type: "water jacket sealed by sealant alone" }
  | { readonly type: "combustion" }
  | { readonly type: "motorcycle sump" }
  | { readonly type: "oil reaches"; readonly what: Reached }
  | { readonly type: "water side without a passed test" }
  | { readonly type: "crack" }
  | { readonly type: "too few turns"; readonly caught: number; readonly least: number; readonly underOil: boolean }
  | { readonly type: "slides over" }
  | { readonly type: "thread gone" }
  | { readonly type: "too little height" }
  | { readonly type: "not counted" }
  | { readonly type: "same method again"; readonly method: string }
  | { readonly type: "people" }
  | { readonly type: "question open"; readonly question: FirstQuestion }
  | { readonly type: "kind of joint not said" }
  | { readonly type: "breather blocked" }
  | { readonly type: "seal not covered" };

/** What a make-do does, as far as a rule asks. */
export type MakeDo = { readonly method: string; readonly sealantAlone: boolean };

/**
 * The first refusal that stands against a make-do; null where none does. Make-do is a sealant, a self-cutting plug, cast
 * resin, a bung in use, or any torque reduced because the thread is hurt.
 */
export function refusalOf(makeDo: MakeDo, portCase: PortCase, turns: CarryingTurns | null): Refusal | null {
  for (const rule of rules) {
    const refusal = rule(makeDo, portCase, turns);
    if (refusal) return withOverride(refusal, portCase);
  }
  return null;
}

type Standing = Omit<Refusal, "overridden">;
type Rule = (makeDo: MakeDo, portCase: PortCase, turns: CarryingTurns | null) => Standing | null;

const never = (rule: RefusalRule, reason: RefusalReason): Standing => ({ rule, reason, override: "never" });

const structure: Rule = (_, { joint }) =>
  jointRows[joint].structure ? never("1 structure", { type: "structure" }) : null;

const pressure: Rule = ({ sealantAlone }, { joint, asked }) => {
  const { workingPressure, coolant } = jointRows[joint];
  if (coolant) {
    return sealantAlone ? never("2 pressure", { type: "water jacket sealed by sealant alone" }) : null;
  }
  const pressurised = asked.pressure !== null && asked.pressure !== "none" && asked.pressure.value > 0;
  return workingPressure || pressurised ? never("2 pressure", { type: "working pressure" }) : null;
};

const combustion: Rule = (_, { joint }) =>
  jointRows[joint].combustion ? never("3 combustion", { type: "combustion" }) : null;

const reach: Rule = (_, { joint, asked }) => {
  if (jointRows[joint].motorcycle) return never("4 reach", { type: "motorcycle sump" });
  const what = asked.reaches?.find((it) => it !== "water");
  return what ? never("4 reach", { type: "oil reaches", what }) : null;
};

const waterSide: Rule = (_, { joint, asked }) => {
  const wet = jointRows[joint].waterSide || asked.reaches?.includes("water");
  return wet && asked.waterTest !== "passed"
    ? never("5 water side", { type: "water side without a passed test" })
    : null;
};

const crack: Rule = (_, { asked }) => (asked.crack === "yes" ? never("6 crack", { type: "crack" }) : null);

const tooLittle: Rule = (_, { joint, asked, port, levels }, turns) => {
  const row = jointRows[joint];
  const closed = row.motorcycle || row.waterSide || asked.reaches?.includes("water");
  const { left } = port;
  const always = (reason: RefusalReason): Standing => never("7 too little", reason);
  if (left.catch === "slides over") return always({ type: "slides over" });
  if (left.condition === "gone") return always({ type: "thread gone" });
  if (left.height && valueIn(one, left.height) < levels.leastHeight) return always({ type: "too little height" });
  if (!turns) return always({ type: "not counted" });
  const least = row.alwaysUnderOil ? levels.leastTurnsUnderOil : levels.leastTurns;
  const caught = valueIn(turn, turns.caught);
  if (caught >= least - 1e-9) return null;
  const reason: RefusalReason = { type: "too few turns", caught, least, underOil: row.alwaysUnderOil };
  return { rule: "7 too little", reason, override: closed ? "never" : "name and reason" };
};

const again: Rule = ({ method }, { asked }) => {
  const before = asked.repairedBefore;
  if (before === null || before === "no" || before.cause) return null;
  return sameMethod(before.method, method)
    ? { rule: "8 again", reason: { type: "same method again", method }, override: "name and reason" }
    : null;
};

const people: Rule = (_, { asked }) => (asked.people === "yes" ? never("10 people", { type: "people" }) : null);

const notAsked: Rule = (_, { joint, asked }) => {
  if (joint === "other")
    return { rule: "13 not asked", reason: { type: "kind of joint not said" }, override: "answer them" };
  const question = openQuestion(asked);
  return question
    ? { rule: "13 not asked", reason: { type: "question open", question }, override: "answer them" }
    : null;
};

const breather: Rule = (_, { asked }) =>
  asked.breather === "blocked"
    ? { rule: "14 breather", reason: { type: "breather blocked" }, override: "free it" }
    : null;

const rules: readonly Rule[] = [
  structure,
  pressure,
  combustion,
  reach,
  waterSide,
  crack,
  people,
  notAsked,
  breather,
  tooLittle,
  again,
];

/** The first of the six questions that nobody has answered. */
export const openQuestion = (asked: Asked): FirstQuestion | null =>
  firstQuestions.find((it) => asked[it] === null) ?? null;

/** An override names a rule by its number, its word, or both. It counts only where the list allows it. */
function withOverride(refusal: Standing, { asked }: PortCase): Refusal {
  const given = asked.overrides.find((it) => {
    const [number = "", ...word] = refusal.rule.split(" ");
    return [refusal.rule, number, word.join(" ")].includes(it.rule.trim());
  });
  const overridden = refusal.override === "name and reason" ? (given ?? null) : null;
  return { ...refusal, overridden };
}

const sameMethod = (before: string, now: string): boolean =>
  before
    .trim()
    .toLowerCase()
    .split(/\W+/)
    .some((word) => word.length > 3 && now.toLowerCase().includes(word));
