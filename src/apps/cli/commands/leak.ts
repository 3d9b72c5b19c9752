import type { Command } from "commander";
import { dropVolume, oilSurfaceTension, ordinaryDrop } from "../../../mechanics/fluid/drop.ts";
import { type DripFlow, dripFlow } from "../../../mechanics/fluid/dropCount.ts";
import { fallFor, type LossOverDistance, lossOverDistance } from "../../../mechanics/fluid/leakDistance.ts";
import { type LeakTriage, leakTriage, stopSigns } from "../../../mechanics/fluid/leakTriage.ts";
import { levelReading } from "../../../mechanics/fluid/levelReadings.ts";
import { limitDistance } from "../../../mechanics/fluid/limitDistance.ts";
import { exact, type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { d, degC, kg_m3, km, ml, ml_d, mm } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import { leakClasses, leakClassSources, leakSights } from "../../../mechanics/tables/leakClasses.ts";
import { sourceText } from "../../../mechanics/tables/source.ts";
import { limitFanSvg } from "../../../sheets/answer/limitFanSvg.tsx";
import { classLines, distanceLines, dripLines, lossLines } from "../../../sheets/words/leakWords.ts";
import { writeSvg } from "../files.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";
import { sightingsIn } from "../sightings.ts";

type Options = {
  readonly look?: string;
  readonly drops?: string;
  readonly in?: string;
  readonly lipRadius?: string;
  readonly toLimit?: string;
  readonly perMm?: string;
  readonly breather?: string;
  readonly signs?: string;
  readonly fallen?: string;
  readonly over?: string;
  readonly readings?: string;
  readonly limit?: string;
  readonly svg?: string;
  readonly working?: boolean;
  readonly json?: boolean;
};

export function leakCommand(program: Command): void {
  program
    .command("leak")
    .description("what a drip or a falling level loses, how long it lasts, and what to tell the caller")
    .option("--look <sight>", `what is seen after it was wiped dry: ${leakSights.join(", ")}`)
    .option("--drops <count>", "drops counted, as 7")
    .option("--in <time>", 'the time they were counted in, as "10 min"')
    .option("--lip-radius <length>", 'radius of the lip the drop hangs from, as "2 mm"')
    .option("--to-limit <height>", 'from the level to its low limit, as "8 mm"')
    .option("--per-mm <volume>", 'what a millimetre of level holds, as "22 ml/mm"')
    .option("--breather <state>", "free, blocked or none; asked first")
    .option("--signs <signs>", "stop signs seen, with commas, or none; asked first")
    .option("--fallen <height>", 'what the level fell since the last service, as "12 mm"')
    .option("--over <distance>", 'the distance since then, as "5000 km"')
    .option("--readings <file.csv>", "levels on the way: distance_km, below_mm")
    .option("--limit <height>", "the low limit below the lip, for --readings", "10 mm")
    .option("--svg <file>", "write the fan of the distance to the limit, for --readings")
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText("after", `\nStop signs: ${stopSigns.join(", ")}.`)
    .addHelpText(
      "after",
      '\nExample:\n  turnsleft leak --drops 7 --in "10 min" --to-limit "8 mm" --per-mm "22 ml/mm" --breather free --signs none',
    )
    .action((options: Options) => {
      if (options.look) return look(options.look, options);
      if (options.readings) return overReadings(options.readings, options);
      if (options.fallen) return overDistance(options.fallen, options);
      drip(options);
    });
}

function look(text: string, { json = false }: Options): void {
  const sight = leakSights.find((it) => it === text);
  if (!sight) throw mistaken("--look", text, leakSights.join(", "));
  const { pmcs, isoTr11340, calls } = leakClasses[sight];
  const sources = Object.values(leakClassSources).map(sourceText);
  print(json, { sight, pmcs, isoTr11340, calls, sources }, classLines(sight));
}

function drip(options: Options): void {
  if (!options.drops || !options.in)
    throw mistaken("--drops", options.drops ?? "nothing", "--drops and --in together, or --fallen, or --readings");
  if (!/^\d+$/.test(options.drops)) throw mistaken("--drops", options.drops, "a whole number of drops, as 7");
  const time = positiveOption("--in", "t", "time", "10 min", options.in);
  const flow = dripFlow({ drops: Number(options.drops), time, id: "--drops" }, dropOf(options.lipRadius), 0.95);
  const k = options.perMm ? positiveOption("--per-mm", "k", "volume per length", "22 ml/mm", options.perMm) : null;
  const margin = k && options.toLimit ? marginOf(k, options.toLimit) : null;
  const triage = leakTriage(
    { stopSigns: signsOf(options.signs), breather: breatherOf(options.breather) },
    margin ?? nothingKnown,
    flow,
  );
  const told = margin || triage.type !== "margin used up" ? triage : null;
  const steps = working(flow.flow, flow.honest.low, flow.honest.high);
  print(options.json ?? false, dripDocument(flow, told, margin !== null, steps), [
    ...dripLines(flow, margin ? told : withoutDays(triage), k),
    ...(options.working ? workingLines(steps) : []),
  ]);
}

const nothingKnown = exact("V", 0, ml, "no limit given");

/** Without a margin nothing can be said of days; signs and questions stand all the same. */
const withoutDays = (triage: LeakTriage): LeakTriage | null =>
  triage.type === "lasts" || triage.type === "margin used up" ? null : triage;

function dropOf(lipRadius: string | undefined) {
  if (!lipRadius) return ordinaryDrop;
  const r = positiveOption("--lip-radius", "r", "length", "2 mm", lipRadius);
  const found = dropVolume(
    r,
    oilSurfaceTension(exact("T", 20, degC)),
    exact("rho", 877, kg_m3, "gear oil at 20 °C (from memory)"),
  );
  if (!found.ok)
    throw mistaken("--lip-radius", lipRadius, "a lip of about 0.5 to 6 mm: outside it the law of drops does not hold");
  return found.drop;
}

function marginOf(k: Quantity, toLimit: string): Quantity {
  const height = positiveOption("--to-limit", "Dh", "length", "8 mm", toLimit);
  return exact(
    "V",
    valueIn(ml, { ...height, value: height.value * k.value, unit: ml }),
    ml,
    "height to the limit times the volume of a millimetre",
  );
}

function signsOf(text: string | undefined) {
  if (text === undefined) return null;
  if (text.trim() === "none") return [];
  return text.split(",").map((it) => {
    const sign = stopSigns.find((known) => known === it.trim());
    if (!sign) throw mistaken("--signs", it.trim(), `none, or ${stopSigns.join(", ")}`);
    return sign;
  });
}

function breatherOf(text: string | undefined) {
  if (text === undefined) return null;
  if (text === "free" || text === "blocked" || text === "none") return text;
  throw mistaken("--breather", text, "free, blocked or none");
}

function dripDocument(flow: DripFlow, triage: LeakTriage | null, margin: boolean, steps: ReturnType<typeof working>) {
  const perDay = (it: Quantity): number => digits(valueIn(ml_d, it), 2);
  const days = (it: Quantity | null): number | null => it && digits(valueIn(d, it), 2);
  const lasting = margin && triage?.type === "lasts" ? triage : null;
  return {
    perDay_ml: perDay(flow.flow),
    bySize_ml: [perDay(flow.bySize.low), perDay(flow.bySize.high)],
    honest_ml: [perDay(flow.honest.low), perDay(flow.honest.high)],
    triage: margin ? (triage?.type ?? null) : (triage && withoutDays(triage)?.type) || null,
    parked_days: lasting && [days(lasting.parked.low), days(lasting.parked.high)],
    parkedHonest_days: lasting && [days(lasting.parkedHonest.low), days(lasting.parkedHonest.high)],
    driven_days: lasting && [days(lasting.driven.low), days(lasting.driven.high)],
    working: steps,
  };
}

function overDistance(fallen: string, options: Options): void {
  const k = positiveOption("--per-mm", "k", "volume per length", "22 ml/mm", options.perMm ?? "");
  const distance = positiveOption("--over", "s", "length", "5000 km", options.over ?? "");
  const fall = positiveOption("--fallen", "h", "length", "12 mm", fallen);
  const then = levelReading(0, mm, "wire hook", "level after the last service");
  const now = levelReading(-valueIn(mm, fall), mm, "wire hook", "--fallen");
  const loss = lossOverDistance(k, then, now, { ...distance, unit: km });
  const steps = working(loss.lost, ...(loss.type === "loses" ? [loss.perDistance] : [loss.most]));
  print(options.json ?? false, lossDocument(loss, k, steps), [
    ...lossLines(loss),
    ...(options.working ? workingLines(steps) : []),
  ]);
}

function lossDocument(loss: LossOverDistance, k: Quantity, steps: ReturnType<typeof working>) {
  const lost = valueIn(ml, loss.lost);
  return {
    type: loss.type,
    lost_ml: digits(lost, 2),
    fallen_mm: digits(valueIn(mm, fallFor(loss.lost, k)), 2),
    per100km_ml: loss.type === "loses" ? digits(loss.per100km_ml, 2) : null,
    working: steps,
  };
}

function overReadings(file: string, options: Options): void {
  const sightings = sightingsIn(file);
  const limit = positiveOption("--limit", "y_L", "length", "10 mm", options.limit ?? "10 mm");
  const s = exact("s", 1, mm, "a wire hook tells a level to 1 mm (judgement)");
  const reached = limitDistance(sightings, limit, s, 0.9);
  const steps = reached.type === "reached" ? working(reached.at, reached.earliest, reached.latest) : [];
  if (options.svg) writeSvg(options.svg, limitFanSvg(sightings, limit, reached));
  const kilometres = (it: Quantity): number => digits(valueIn(km, it), 3);
  const known = reached.type === "reached" ? reached : null;
  const document = {
    type: reached.type,
    at_km: known && kilometres(known.at),
    earliest_km: known && kilometres(known.earliest),
    latest_km: known && kilometres(known.latest),
    left_km: known && kilometres(known.left),
    leftAtLeast_km: known && kilometres(known.leftAtLeast),
    working: steps,
  };
  print(options.json ?? false, document, [...distanceLines(reached), ...(options.working ? workingLines(steps) : [])]);
}
