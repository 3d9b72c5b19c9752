import { oilSurfaceTension } from "../../../mechanics/fluid/drop.ts";
import type { CaseMetal } from "../../../mechanics/fluid/expansionInCase.ts";
import { headPressure } from "../../../mechanics/fluid/leakHead.ts";
import { type LeakySeat, oneAfterOther, seatFlow } from "../../../mechanics/fluid/seatFlow.ts";
import { gapTooDoubtful, headOf, holdBack, type PassageFlow, pushOf } from "../../../mechanics/fluid/threadFlow.ts";
import { type ThreadPath, threadFlow } from "../../../mechanics/fluid/threadFlowPath.ts";
import { type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { kg_m3, ml_d, mm, mPas, Pa } from "../../../mechanics/quantity/unit.ts";
import { type Step, working } from "../../../mechanics/quantity/working.ts";
import { type FlowSum, type PassageInWords, passageLines } from "../../../sheets/words/passageWords.ts";
import { type ClosedCaseFound, closedCase } from "../closedCase.ts";
import { mistaken } from "../mistake.ts";
import { type OilAt, oilAt } from "../oilAt.ts";
import { positiveOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";
import { closedDocument } from "./leakClosed.ts";
import { type ThreadWay, type ThreadWayOptions, threadWay } from "./leakThreadWay.ts";

export type ThroughOptions = ThreadWayOptions & {
  readonly seatInside?: string;
  readonly seatOutside?: string;
  readonly seatGap?: string;
  readonly score?: string;
  readonly oil?: string;
  readonly label?: string;
  readonly base?: string;
  readonly kv40?: string;
  readonly kv100?: string;
  readonly density?: string;
  readonly head?: string;
  readonly pressure?: string;
  readonly closedAt?: string;
  readonly air?: string;
  readonly fill?: string;
  readonly case?: CaseMetal;
  readonly water?: boolean;
  readonly working?: boolean;
  readonly json?: boolean;
};

/** What oil gets through a thread, past a seat, or through both in a row. @throws InputMistake */
export function throughPassages(options: ThroughOptions): void {
  const way = options.through === undefined ? null : threadWay(options.through, options);
  const seat = seatOf(options);
  const oil = oilAt(options);
  const closed = options.closedAt === undefined ? null : closedCase(options.closedAt, options);
  if (closed && closed.pressure.value <= 0)
    throw mistaken(
      "--closed-at",
      options.closedAt ?? null,
      "colder than --oil: a case that cools draws in, and leaks nothing",
    );
  const open = openPush(options, oil, closed !== null);
  const blocked = closed && (open ? pushOf(open, closed.pressure) : closed.pressure);
  const sums = {
    open: open && flowSum(way, seat, open, oil, options),
    blocked: blocked && flowSum(way, seat, blocked, oil, options),
  };
  const found: PassageInWords = {
    thread: options.through?.trim() ?? null,
    clearance: way && { ...way.clearance, known: way.known },
    scored: seat?.score != null,
    oil: options.oil ?? "",
    head: options.head ?? null,
    pressure: options.pressure ?? null,
    sums,
    closed,
    times: open && blocked ? blocked.value / open.value : null,
    heldBack: way && held(way.paths.mean, oil, open),
    tooDoubtful: way !== null && way.known === "given" && gapTooDoubtful(way.paths.mean.h_f),
    assumed: [
      ...(way?.assumed ?? []),
      ...oil.assumed,
      ...(closed?.assumed.filter((it) => it.reading !== "density") ?? []),
    ],
  };
  const asked = [sums.open, sums.blocked].flatMap((it) => (it ? [it.thread, it.seat, it.total] : []));
  const held_ = found.heldBack ? [found.heldBack.height] : [];
  const steps = working(...[...asked, ...held_].filter((it) => it !== null));
  print(options.json ?? false, document(found, way, oil, open, closed, steps), [
    ...passageLines(found),
    ...(options.working ? workingLines(steps) : []),
  ]);
}

/** The pressure with the breather free: of the head, and of what stands over the oil. Null where only a closed case pushes. */
function openPush({ head, pressure }: ThroughOptions, { rho }: OilAt, closedToo: boolean): Quantity | null {
  const p_h = head === undefined ? null : headPressure(rho, positiveOption("--head", "h", "length", "10 mm", head));
  const p_g = pressure === undefined ? null : positiveOption("--pressure", "p_g", "pressure", "5 kPa", pressure);
  if (p_h && p_g) return pushOf(p_h, p_g);
  if (!p_h && !p_g && !closedToo)
    throw mistaken("--head", null, 'the oil that stands above the joint, as "10 mm"; or --pressure; or --closed-at');
  return p_h ?? p_g;
}

function seatOf({ seatInside, seatOutside, seatGap, score }: ThroughOptions): LeakySeat | null {
  if (seatGap === undefined && score === undefined) {
    const bare = seatInside === undefined ? null : "--seat-inside";
    if (bare)
      throw mistaken("--seat-gap", null, `what is open across the seat, as "0.03 mm", or --score, with ${bare}`);
    return null;
  }
  const size = (name: string, symbol: string, text: string | undefined, example: string): Quantity => {
    if (text === undefined) throw mistaken(name, null, `the diameter of the seat, as "${example}"`);
    return positiveOption(name, symbol, "length", example, text);
  };
  const inside = size("--seat-inside", "D_i", seatInside, "20 mm");
  const outside = size("--seat-outside", "D_o", seatOutside, "26 mm");
  if (outside.value <= inside.value)
    throw mistaken("--seat-outside", seatOutside ?? null, `more than --seat-inside, ${seatInside}`);
  const open = (name: string, symbol: string, text: string | undefined): Quantity | null =>
    text === undefined ? null : positiveOption(name, symbol, "length", "0.03 mm", text);
  return { inside, outside, gap: open("--seat-gap", "h", seatGap), score: open("--score", "a", score) };
}

function flowSum(
  way: ThreadWay | null,
  seat: LeakySeat | null,
  Dp: Quantity,
  oil: OilAt,
  options: ThroughOptions,
): FlowSum {
  const push = { Dp, mu: oil.mu, rho: oil.rho };
  const laminar = (name: string, text: string | undefined, flow: PassageFlow | null): Quantity | null => {
    if (!flow || flow.ok) return flow?.flow ?? null;
    throw mistaken(name, text ?? null, "less than so wide an opening: oil would rush through it, not seep");
  };
  const past =
    seat && laminar(options.score ? "--score" : "--seat-gap", options.score ?? options.seatGap, seatFlow(seat, push));
  const through = (path: ThreadPath): Quantity | null =>
    laminar(
      options.crestGap ? "--crest-gap" : "--clearance",
      options.crestGap ?? options.clearance,
      threadFlow(path, push),
    );
  const both = (thread: Quantity | null): Quantity | null =>
    thread && past ? oneAfterOther(thread, past) : (thread ?? past);
  const thread = way && through(way.paths.mean);
  const ends = way && [through(way.paths.least), through(way.paths.most)];
  const total = both(thread);
  if (!total) throw new TypeError("a flow through nothing");
  const [low = total, high = total] = ends?.map((it) => both(it) ?? total) ?? [];
  return { thread, seat: past, total, range: way ? { low, high } : null };
}

/** What a fine gap holds back once its outer end is dry, against what pushes with the breather free. */
function held({ h_f }: ThreadPath, { rho, T }: OilAt, open: Quantity | null): PassageInWords["heldBack"] {
  const p_c = holdBack(oilSurfaceTension(T), h_f);
  return { height: headOf(p_c, rho), more: open !== null && p_c.value > open.value };
}

function document(
  found: PassageInWords,
  way: ThreadWay | null,
  oil: OilAt,
  open: Quantity | null,
  closed: ClosedCaseFound | null,
  steps: readonly Step[],
) {
  const flow = (it: Quantity | null | undefined): number | null => (it ? digits(valueIn(ml_d, it), 2) : null);
  const { sums } = found;
  const range = (it: FlowSum | null): readonly (number | null)[] | null =>
    it?.range ? [flow(it.range.low), flow(it.range.high)] : null;
  const first = sums.open ?? sums.blocked;
  return {
    through: found.thread,
    clearance_mm:
      way && [way.clearance.least, way.clearance.mean, way.clearance.most].map((it) => digits(valueIn(mm, it), 3)),
    helix_mm: way && digits(valueIn(mm, way.paths.mean.L), 3),
    viscosity_mPas: digits(valueIn(mPas, oil.mu), 3),
    density_kgm3: digits(valueIn(kg_m3, oil.rho), 4),
    pressure_Pa: open && digits(valueIn(Pa, open), 2),
    threadPerDay_ml: flow(first?.thread),
    seatPerDay_ml: flow(first?.seat),
    perDay_ml: flow(sums.open?.total),
    perDayRange_ml: range(sums.open),
    blockedPerDay_ml: flow(sums.blocked?.total),
    blockedPerDayRange_ml: range(sums.blocked),
    timesAsMuch: found.times && digits(found.times, 2),
    closed: closed && closedDocument(closed),
    holdsBack_mm: found.heldBack && digits(valueIn(mm, found.heldBack.height), 2),
    gapTooDoubtful: found.tooDoubtful,
    assumed: found.assumed,
    working: steps,
  };
}
