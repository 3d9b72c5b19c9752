import { type Command, Option } from "commander";
import { ordinaryDrop } from "../../../mechanics/fluid/drop.ts";
import type { Range } from "../../../mechanics/fluid/dropCount.ts";
import { caseMetals } from "../../../mechanics/fluid/expansionInCase.ts";
import type { Lasting } from "../../../mechanics/fluid/leakTriage.ts";
import { stopSigns } from "../../../mechanics/fluid/stopSigns.ts";
import { type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { d, ml_d, mm } from "../../../mechanics/quantity/unit.ts";
import type { Step } from "../../../mechanics/quantity/working.ts";
import { leakClasses, leakClassSources, leakSights } from "../../../mechanics/tables/leakClasses.ts";
import { sourceText } from "../../../mechanics/tables/source.ts";
import { dripInWords, dripWorking, dropFromLip } from "../../../sheets/sums/dripInWords.ts";
import { callerText, classLines, type DripInWords, dripLines } from "../../../sheets/words/leakWords.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";
import { closedBreather } from "./leakClosed.ts";
import { type LeakDistanceOptions, overDistance, overReadings } from "./leakOverDistance.ts";
import { spotOnGround } from "./leakSpot.ts";
import { type ThroughOptions, throughPassages } from "./leakThrough.ts";

type Options = LeakDistanceOptions &
  ThroughOptions & {
    readonly spot?: string;
    readonly look?: string;
    readonly drops?: string;
    readonly in?: string;
    readonly lipRadius?: string;
    readonly signs?: string;
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
    .addOption(new Option("--breather <state>", "asked first").choices(["free", "blocked", "none"]))
    .option("--signs <signs>", "stop signs seen, with commas, or none; asked first")
    .option("--fallen <height>", 'what the level fell since the last service, as "12 mm"')
    .option("--over <distance>", 'the distance since then, as "5000 km"')
    .option("--fill <volume>", 'the whole fill, as "2.4 L": the share that is gone, with --fallen')
    .option("--readings <file.csv>", "levels on the way: distance_km, below_mm; or by days: on, below_mm")
    .option("--limit <height>", "the low limit below the lip, for --readings", "10 mm")
    .option("--read-to <height>", "the standard error of one reading, for --readings", "1 mm")
    .option("--svg <file>", "write the fan of the distance to the limit, for --readings")
    .option("--spot <diameter>", 'of a spot on smooth ground, as "75 mm", grown in the time of --in')
    .option("--through <thread>", "what gets through a thread without sealant, as M20x1.5")
    .option("--engaged <length>", 'the length on which thread meets thread, as "10 mm"')
    .option("--clearance <gap>", 'of the pitch diameters, as the plug rocks: "0.3 mm"; by its classes unless told')
    .option("--plug <class>", "tolerance class of the plug, as 6g")
    .option("--hole <class>", "tolerance class of the hole, as 6H")
    .option("--crest-gap <gap>", 'at the crests, as "0.2 mm"')
    .option("--seat-gap <gap>", 'what gets past a seat open all round by so much, as "0.03 mm"')
    .option("--score <width>", 'what gets along a score across the seat, as wide as "0.1 mm"')
    .option("--seat-inside <diameter>", 'of the seat, as "20 mm"')
    .option("--seat-outside <diameter>", 'of the seat, as "26 mm"')
    .option("--oil <temperature>", 'of the oil, as "90 °C"')
    .option("--label <grade>", "the grade on the can, as 75W-90")
    .option("--base <base>", "of the oil of that label: mineral, synthetic or unknown")
    .option("--kv40 <mm2/s>", "kinematic viscosity at 40 °C, in place of --label")
    .option("--kv100 <mm2/s>", "kinematic viscosity at 100 °C, in place of --label")
    .option("--density <density>", 'of the oil at 60 °F, as "880 kg/m³"')
    .option("--head <height>", 'of oil above the joint, as "10 mm"')
    .option("--pressure <pressure>", 'over the oil, as "5 kPa"')
    .option("--closed-at <temperature>", "the breather is blocked: closed at this, warmed to --oil")
    .option("--air <volume>", 'the room for air over the oil, as "1 L", with --closed-at and --fill')
    .addOption(new Option("--case <metal>", "what the case is cast of: it grows too").choices([...caseMetals]))
    .option("--water", "there is free water in the oil, with --closed-at")
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText("after", `\nStop signs: ${stopSigns.join(", ")}.`)
    .addHelpText(
      "after",
      [
        "\nExamples:",
        '  turnsleft leak --drops 7 --in "10 min" --to-limit "8 mm" --per-mm "22 ml/mm" --breather free --signs none',
        '  turnsleft leak --fallen "12 mm" --per-mm "18 ml/mm" --over "5000 km"',
        "  turnsleft leak --readings examples/levels.csv",
        '  turnsleft leak --through M20x1.5 --engaged "10 mm" --head "10 mm" --oil "90 °C" --label 75W-90',
        '  turnsleft leak --seat-gap "0.03 mm" --seat-inside "20 mm" --seat-outside "26 mm" --head "10 mm" --oil "90 °C" --label 75W-90',
        '  turnsleft leak --closed-at "20 °C" --oil "90 °C" --fill "1.2 L" --air "1 L" --case aluminium --head "10 mm"',
        '  turnsleft leak --spot "75 mm" --in "5 min"',
      ].join("\n"),
    )
    .action((options: Options) => {
      oneWay(options);
      const { through, seatGap, score, closedAt, spot } = options;
      if (spot !== undefined) return spotOnGround(spot, options);
      if (through ?? seatGap ?? score) return throughPassages(options);
      if (closedAt !== undefined) return closedBreather(closedAt, options);
      if (options.readings !== undefined) return overReadings(options.readings, options);
      if (options.fallen !== undefined) return overDistance(options.fallen, options);
      if (options.look !== undefined) return look(options.look, options);
      drip(options);
    });
}

/** A leak is told in one way at a time: what was typed for another would go unheard. */
function oneWay({ drops, fallen, readings, look, spot, ...flow }: Options): void {
  const gap = Object.entries({ "--through": flow.through, "--seat-gap": flow.seatGap, "--score": flow.score });
  const [opening] = gap.filter(([, text]) => text !== undefined);
  const ways = {
    "--drops": drops,
    "--fallen": fallen,
    "--readings": readings,
    "--look": look,
    "--spot": spot,
    ...(opening ? Object.fromEntries([opening]) : { "--closed-at": flow.closedAt }),
  };
  const [first, second] = Object.entries(ways).filter(([, text]) => text !== undefined);
  if (first && second) throw mistaken(second[0], second[1] ?? null, `nothing beside ${first[0]}: one or the other`);
}

function look(text: string, { json = false }: Options): void {
  const sight = leakSights.find((it) => it === text);
  if (!sight) throw mistaken("--look", text, leakSights.join(", "));
  const { pmcs, isoTr11340, calls } = leakClasses[sight];
  const sources = Object.values(leakClassSources).map(sourceText);
  print(json, { sight, pmcs, isoTr11340, calls, sources }, classLines(sight));
}

function drip(options: Options): void {
  if (options.drops === undefined)
    throw mistaken(
      "--drops",
      null,
      "--drops and --in, or --fallen, --readings, --look, --spot, --through or --closed-at",
    );
  if (options.in === undefined) throw mistaken("--in", null, 'the time the drops were counted in, as "10 min"');
  if (!/^\d{1,6}$/.test(options.drops)) throw mistaken("--drops", options.drops, "a whole number of drops, as 7");
  const time = positiveOption("--in", "t", "time", "10 min", options.in);
  const found = dripInWords({
    drops: Number(options.drops),
    time,
    id: "--drops",
    drop: dropOf(options.lipRadius),
    perHeight: options.perMm ? positiveOption("--per-mm", "k", "volume per length", "22 ml/mm", options.perMm) : null,
    aboveLimit: options.toLimit ? positiveOption("--to-limit", "h", "length", "8 mm", options.toLimit) : null,
    answers: { stopSigns: signsOf(options.signs), breather: options.breather ?? null },
  });
  const steps = dripWorking(found);
  print(options.json ?? false, document(found, steps), [
    ...dripLines(found),
    ...(options.working ? workingLines(steps) : []),
  ]);
}

function dropOf(lipRadius: string | undefined) {
  if (lipRadius === undefined) return ordinaryDrop;
  const r = positiveOption("--lip-radius", "r", "length", "2 mm", lipRadius);
  const drop = dropFromLip(r);
  if (drop) return drop;
  throw mistaken("--lip-radius", lipRadius, "a lip of about 0.5 to 6 mm: outside it the law of drops does not hold");
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

const ends = ({ low, high }: Range): readonly Quantity[] => [low, high];

function document(found: DripInWords, steps: readonly Step[]) {
  const { flow, triage, fallADay, drops } = found;
  const volumes = (range: Range): readonly number[] => ends(range).map((it) => digits(valueIn(ml_d, it), 2));
  const falls = (range: Range): readonly number[] => ends(range).map((it) => digits(valueIn(mm, it), 2));
  const days = ({ low, high }: Lasting): readonly (number | null)[] =>
    [low, high].map((it) => it && digits(valueIn(d, it), 2));
  const lasting = triage?.type === "lasts" ? triage : null;
  return {
    perDay_ml: digits(valueIn(ml_d, flow.flow), 2),
    bySize_ml: volumes(flow.bySize),
    honest_ml: volumes(flow.honest),
    bySize_mm: fallADay && falls(fallADay.bySize),
    honest_mm: fallADay && falls(fallADay.honest),
    pmcs: drops > 0 ? leakClasses.drip.pmcs : null,
    isoTr11340: drops > 0 ? leakClasses.drip.isoTr11340 : null,
    triage: triage?.type ?? null,
    signs: triage?.type === "do not drive" ? triage.signs : [],
    questions: triage?.type === "ask first" ? triage.questions : [],
    parked_days: lasting && days(lasting.parked),
    parkedHonest_days: lasting && days(lasting.parkedHonest),
    driven_days: lasting && days(lasting.driven),
    message: callerText(found),
    working: steps,
  };
}
