import type { CarryingTurns } from "../joint/carryingTurns.ts";
import type { Closure } from "../joint/port.ts";
import { sealNeed } from "../joint/sealTorque.ts";
import { valueIn } from "../quantity/quantity.ts";
import { one, turn } from "../quantity/unit.ts";
import { jointRows } from "../tables/jointKinds.ts";
import { materialRows } from "../tables/materialRows.ts";
import { isTaper } from "../threads/thread.ts";
import { isNamedBy, isSealantAlone, type Method, type RemedyId } from "./method.ts";
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
/** The rules of the list, what the torque window knows nothing of, and what the table of ports forbids besides. */
export type RefusalRule = (typeof refusalRules)[number] | "not covered" | "not for this port";

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
  | { readonly type: "same method again"; readonly method: RemedyId }
  | { readonly type: "people" }
  | { readonly type: "question open"; readonly question: FirstQuestion }
  | { readonly type: "kind of joint not said" }
  | { readonly type: "breather blocked" }
  | { readonly type: "seal not covered" }
  | { readonly type: "taper thread"; readonly thread: string }
  | { readonly type: "alloy not tested" }
  | { readonly type: "method not for this port" };

/**
 * The first refusal that stands against a method; null where none does. A make-do is a sealant, a self-cutting plug, cast
 * resin, a bung in use, or any torque reduced because the thread is hurt; a repair of full strength is bound by fewer
 * rules. Where several stand, one that nobody has taken on himself comes before those that somebody has.
 */
export function refusalOf(method: Method, portCase: PortCase, turns: CarryingTurns | null): Refusal | null {
  const bound = method.fullStrength ? rules.filter((rule) => !rulesOfMakeDos.includes(rule)) : rules;
  return firstOf(bound, method, portCase, turns);
}

/** The first refusal that stands against a method, of those rules of the list that bind it. */
export function refusalBy(
  names: readonly RefusalRule[],
  method: Method,
  portCase: PortCase,
  turns: CarryingTurns | null,
): Refusal | null {
  const bound = ruleNames.flatMap(([name, rule]) => (names.includes(name) ? [rule] : []));
  return firstOf(bound, method, portCase, turns);
}

function firstOf(
  bound: readonly Rule[],
  method: Method,
  portCase: PortCase,
  turns: CarryingTurns | null,
): Refusal | null {
  const refusals = bound.flatMap((rule) => {
    const refusal = rule(method, portCase, turns);
    return refusal ? [withOverride(refusal, portCase)] : [];
  });
  return refusals.find(({ overridden }) => overridden === null) ?? refusals[0] ?? null;
}

type Standing = Omit<Refusal, "overridden">;
type Rule = (method: Method, portCase: PortCase, turns: CarryingTurns | null) => Standing | null;

const never = (rule: RefusalRule, reason: RefusalReason): Standing => ({ rule, reason, override: "never" });

const structure: Rule = (_, { joint }) =>
  jointRows[joint].structure ? never("1 structure", { type: "structure" }) : null;

const pressure: Rule = (method, { joint, asked, asFound }) => {
  const { workingPressure, coolant } = jointRows[joint];
  if (coolant) {
    return isSealantAlone(method) ? never("2 pressure", { type: "water jacket sealed by sealant alone" }) : null;
  }
  const pressurised = asked.pressure !== null && asked.pressure !== "none" && asked.pressure.value > 0;
  if ((!workingPressure && !pressurised) || (method.fullStrength && isSealOf(method, asFound))) return null;
  return never("2 pressure", { type: "working pressure" });
};

const combustion: Rule = (_, { joint }) =>
  jointRows[joint].combustion ? never("3 combustion", { type: "combustion" }) : null;

const reach: Rule = (_, { joint, asked }) => {
  if (jointRows[joint].motorcycle) return never("4 reach", { type: "motorcycle sump" });
  const what = asked.reaches?.find((it) => it !== "water");
  return what ? never("4 reach", { type: "oil reaches", what }) : null;
};

const waterSide: Rule = (method, { joint, asked, asFound }) => {
  const wet = jointRows[joint].waterSide || asked.reaches?.includes("water");
  if (!wet || asked.waterTest === "passed" || (method.fullStrength && isSealOf(method, asFound))) return null;
  return never("5 water side", { type: "water side without a passed test" });
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
  const caught = Math.max(0, valueIn(turn, turns.caught));
  if (caught >= least - 1e-9) return null;
  const reason: RefusalReason = { type: "too few turns", caught, least, underOil: row.alwaysUnderOil };
  return { rule: "7 too little", reason, override: closed ? "never" : "name and reason" };
};

const again: Rule = (method, { asked }) => {
  const before = asked.repairedBefore;
  if (before === null || before === "no" || before.cause) return null;
  return isNamedBy(method, before.method)
    ? { rule: "8 again", reason: { type: "same method again", method: method.id }, override: "name and reason" }
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

/** A taper plug has no seat for any other seal. */
const covered: Rule = (method, { asFound }) =>
  asFound.seal.kind === "taper" || !sealNeed(method.seal) ? never("not covered", { type: "seal not covered" }) : null;

/** A taper thread closes by its own flanks: no seal, no clamp and so no window. */
const taper: Rule = (_, { port: { thread } }) =>
  isTaper(thread) ? never("not covered", { type: "taper thread", thread: thread.designation }) : null;

/** Only what is welded or ground is asked for its alloy. */
const alloy: Rule = (_, { asked, port }) =>
  materialRows[port.material].lightAlloy && asked.alloyTested !== "yes"
    ? never("9 alloy", { type: "alloy not tested" })
    : null;

/** In this order; what a mechanic can answer or free comes before what he can only count. */
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
  taper,
  tooLittle,
  again,
  covered,
];
const rulesOfMakeDos: readonly Rule[] = [reach, people, tooLittle, again];

/** The rules by name, in their order, for methods that only some of them bind. */
const ruleNames: readonly (readonly [RefusalRule, Rule])[] = [
  ["1 structure", structure],
  ["2 pressure", pressure],
  ["3 combustion", combustion],
  ["4 reach", reach],
  ["5 water side", waterSide],
  ["6 crack", crack],
  ["9 alloy", alloy],
  ["10 people", people],
  ["13 not asked", notAsked],
  ["14 breather", breather],
  ["7 too little", tooLittle],
  ["8 again", again],
];

const isSealOf = ({ seal }: Method, { seal: found }: Closure): boolean =>
  seal.kind === found.kind && seal.material === found.material;

/** The first of the six questions that nobody has answered. */
export const openQuestion = (asked: Asked): FirstQuestion | null =>
  firstQuestions.find((it) => asked[it] === null) ?? null;

/** Whether a text names a rule: by its number, its word, or both. */
export function namesRule(text: string, rule: RefusalRule): boolean {
  const [number = "", ...word] = rule.split(" ");
  return [rule, number, word.join(" ")].includes(text.trim().toLowerCase());
}

/** An override counts only where the list allows it. */
function withOverride(refusal: Standing, { asked }: PortCase): Refusal {
  const given = asked.overrides.find((it) => namesRule(it.rule, refusal.rule));
  const overridden = refusal.override === "name and reason" ? (given ?? null) : null;
  return { ...refusal, overridden };
}
