import { crestGap, pitchClearance, type ThreadPath, threadPath } from "../../../mechanics/fluid/threadFlowPath.ts";
import { normal } from "../../../mechanics/quantity/distribution.ts";
import { exact, type Quantity, reading, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { mm } from "../../../mechanics/quantity/unit.ts";
import { judgement, sourceText } from "../../../mechanics/tables/source.ts";
import { limits } from "../../../mechanics/threads/metricLimits.ts";
import type { MetricThread } from "../../../mechanics/threads/metricThread.ts";
import { standardHole, standardPlug } from "../../../mechanics/threads/standardClasses.ts";
import { holeClassFromText, plugClassFromText } from "../../../mechanics/threads/toleranceClass.ts";
import { lengthText } from "../../../sheets/words/figures.ts";
import { acceptedClass } from "../../../sheets/words/threadProblemWords.ts";
import { mistaken } from "../mistake.ts";
import type { Assumed } from "../oilAt.ts";
import { positiveOption, threadOption } from "../options.ts";

export type ThreadWayOptions = {
  readonly through?: string;
  readonly engaged?: string;
  readonly plug?: string;
  readonly hole?: string;
  readonly clearance?: string;
  readonly crestGap?: string;
};

type Three<T> = { readonly least: T; readonly mean: T; readonly most: T };

/** The way out along the helix of a thread, for the least, the mean and the greatest clearance. */
export type ThreadWay = {
  readonly clearance: Three<Quantity>;
  readonly known: "given" | "by its classes";
  readonly paths: Three<ThreadPath>;
  readonly assumed: readonly Assumed[];
};

/** @throws InputMistake */
export function threadWay(text: string, options: ThreadWayOptions): ThreadWay {
  const thread = threadOption("--through", text);
  if (options.engaged === undefined)
    throw mistaken("--engaged", null, 'the length of thread that meets thread, as "10 mm", with --through');
  const engaged = positiveOption("--engaged", "l_e", "length", "10 mm", options.engaged);
  const h_c =
    options.crestGap === undefined
      ? crestGap(thread)
      : positiveOption("--crest-gap", "h_c", "length", "0.2 mm", options.crestGap);
  const given = options.clearance !== undefined;
  const clearance = given ? asMeasured(options.clearance ?? "", options) : byClasses(thread, options);
  if (given && clearance.mean.value >= overlap(thread))
    throw mistaken(
      "--clearance",
      options.clearance ?? null,
      `less than ${lengthText(overlap(thread) / mm.inSI)}: beyond it the threads do not meet`,
    );
  const path = (c: Quantity): ThreadPath => threadPath(thread, engaged, c, h_c);
  const { least, mean, most } = clearance;
  return {
    clearance,
    known: given ? "given" : "by its classes",
    paths: { least: path(least), mean: path(mean), most: path(most) },
    assumed: [
      ...(options.crestGap === undefined ? [crestAssumed(h_c)] : []),
      ...(given ? [] : classesAssumed(options)),
    ],
  };
}

/** Twice the height on which the basic profiles of hole and plug meet, 2 · 5/8 H. */
const overlap = ({ H }: MetricThread): number => (10 / 8) * H.value;

function byClasses(thread: MetricThread, { plug, hole }: ThreadWayOptions): Three<Quantity> {
  const plugClass = plugClassFromText(plug ?? standardPlug.designation);
  if (!plugClass.ok) throw mistaken("--plug", plug ?? "", acceptedClass(plugClass.problem));
  const holeClass = holeClassFromText(hole ?? standardHole.designation);
  if (!holeClass.ok) throw mistaken("--hole", hole ?? "", acceptedClass(holeClass.problem));
  return pitchClearance(limits(thread, plugClass.toleranceClass, holeClass.toleranceClass));
}

/** A clearance found by rocking the plug: known to 0.05 mm, and told for two of these either way. */
function asMeasured(text: string, { plug, hole }: ThreadWayOptions): Three<Quantity> {
  if (plug ?? hole)
    throw mistaken(plug ? "--plug" : "--hole", plug ?? hole ?? null, "nothing beside --clearance: one or the other");
  const c_mm = valueIn(mm, positiveOption("--clearance", "c", "length", "0.3 mm", text));
  const end = (value: number): Quantity => exact("c", value, mm, "twice its standard uncertainty away");
  return {
    least: end(Math.max(0.001, c_mm - 2 * ROCKED_mm)),
    mean: reading("c", normal(c_mm, ROCKED_mm), mm, "--clearance", "rocked"),
    most: end(c_mm + 2 * ROCKED_mm),
  };
}

const ROCKED_mm = 0.05;

const crestAssumed = (h_c: Quantity): Assumed => ({
  reading: "gap at the crests",
  value: `${Number(valueIn(mm, h_c).toPrecision(2))} mm`,
  source: sourceText(judgement("0.20 mm for 6H/6g at 1.5 mm pitch, in proportion to the pitch")),
});

const classesAssumed = ({ plug, hole }: ThreadWayOptions): readonly Assumed[] => [
  ...(plug === undefined ? [{ reading: "plug", value: "6g", source: "what plugs are made to, ISO 965-1" }] : []),
  ...(hole === undefined ? [{ reading: "hole", value: "6H", source: "what holes are cut to, ISO 965-1" }] : []),
];
