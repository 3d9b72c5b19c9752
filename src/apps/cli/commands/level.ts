import type { Command } from "commander";
import { type Calibration, calibration } from "../../../mechanics/fluid/levelCalibration.ts";
import {
  allowedBelowLip,
  type LevelVerdict,
  levelVerdict,
  lip,
  type Overflow,
  overflow,
} from "../../../mechanics/fluid/levelLip.ts";
import { levelReading, volumeReading } from "../../../mechanics/fluid/levelReadings.ts";
import { drawBack, type Strokes, strokes } from "../../../mechanics/fluid/levelVolumes.ts";
import { type LevelOnTheLevel, levelOnTheLevel } from "../../../mechanics/fluid/tilt.ts";
import { exactly, normal } from "../../../mechanics/quantity/distribution.ts";
import { exact, type Quantity, reading, standardUncertainty, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { deg, ml, ml_mm, mm } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import { levelGaugeSvg } from "../../../sheets/answer/levelGaugeSvg.tsx";
import { levelLines } from "../../../sheets/words/levelWords.ts";
import { writeSvg } from "../files.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption, quantityOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";

type Options = {
  readonly drawn?: string;
  readonly fallen?: string;
  readonly perMm?: string;
  readonly below?: string;
  readonly allowed?: string;
  readonly target?: string;
  readonly pour?: string;
  readonly syringe: string;
  readonly tilt?: string;
  readonly offset?: string;
  readonly fill?: string;
  readonly svg?: string;
  readonly working?: boolean;
  readonly json?: boolean;
};

/** What `level` found: what a millimetre holds, and what that means for the level as it stands. */
export type LevelFound = {
  readonly perHeight: Quantity;
  readonly calibration: Extract<Calibration, { type: "known" }> | null;
  readonly level: Quantity | null;
  readonly lowest: Quantity;
  readonly verdict: LevelVerdict | null;
  readonly toLip: Quantity | null;
  readonly toTarget: { readonly volume: Quantity; readonly strokes: Strokes } | null;
  readonly overflow: Overflow | null;
  readonly tilt: LevelOnTheLevel | null;
};

export function levelCommand(program: Command): void {
  program
    .command("level")
    .description("what a millimetre of level holds, and how far a level is from its lip")
    .option("--drawn <volume>", 'a volume drawn out between two readings, as "60 ml"')
    .option("--fallen <height>", 'what the level fell by it, as "2.7 mm"')
    .option("--per-mm <volume>", 'what a millimetre holds, where it is known, as "22 ml/mm"')
    .option("--below <height>", 'the level below the lip as it stands, as "8 mm"')
    .option("--allowed <height>", "the lowest level that is left as it is, below the lip; 5 mm is common practice")
    .option("--target <height>", 'the level wanted, below the lip, as "0 mm"')
    .option("--pour <volume>", 'what is about to be poured in, as "200 ml"')
    .option("--syringe <volume>", "what the syringe holds", "60 ml")
    .option("--tilt <angle>", 'the hole lower by this angle than level, as "1 °"')
    .option("--offset <length>", 'from the middle of the oil to the hole, along the tilt, as "140 mm"')
    .option("--fill <volume>", 'the whole fill, where it is known, as "2.4 L"')
    .option("--svg <file>", "write the level gauge")
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText("after", '\nExample:\n  turnsleft level --drawn "60 ml" --fallen "2.7 mm" --below "8 mm"')
    .action(answer);
}

function answer(options: Options): void {
  const found = levelFound(options);
  const steps = working(
    found.perHeight,
    ...[found.toLip, found.toTarget?.volume, found.overflow?.volume].filter((it) => it != null),
  );
  if (options.svg) {
    if (!found.level) throw mistaken("--svg", options.svg, "a level to draw: give --below");
    writeSvg(options.svg, levelGaugeSvg(found.level, found.lowest, found.perHeight));
  }
  print(options.json ?? false, document(found, steps), [
    ...levelLines(found),
    ...(options.working ? workingLines(steps) : []),
  ]);
}

function levelFound(options: Options): LevelFound {
  const known = options.perMm ? null : calibrated(options);
  const perHeight =
    known?.perHeight ?? positiveOption("--per-mm", "k", "volume per length", "22 ml/mm", options.perMm ?? "");
  const tilt = options.tilt ? tiltOf(options) : null;
  const read = options.below ? below("--below", options.below) : null;
  const level = tilt?.type === "corrected" ? tilt.level : read;
  const lowest = options.allowed ? negative("--allowed", "h_min", options.allowed) : allowedBelowLip;
  const target = options.target ? negative("--target", "h_t", options.target) : null;
  const toTarget = level && target ? drawBack(perHeight, level, target) : null;
  const syringe = positiveOption("--syringe", "V", "volume", "60 ml", options.syringe);
  const pour = options.pour ? positiveOption("--pour", "V_f", "volume", "200 ml", options.pour) : null;
  return {
    perHeight,
    calibration: known,
    level,
    lowest,
    verdict: level && levelVerdict(level, lowest),
    toLip: level && drawBack(perHeight, level, lip),
    toTarget: toTarget && {
      volume: toTarget,
      strokes: strokes({ ...toTarget, value: Math.abs(toTarget.value) }, syringe),
    },
    overflow: pour && level ? overflow(perHeight, level, pour) : null,
    tilt,
  };
}

/** Two readings against the lip whose difference is what the level fell; the wire hook reads each to half a millimetre. */
function calibrated({ drawn, fallen, fill }: Options): Extract<Calibration, { type: "known" }> {
  if (!drawn || !fallen) throw mistaken("--drawn", drawn ?? "nothing", "--drawn and --fallen together, or --per-mm");
  const volume = positiveOption("--drawn", "V", "volume", "60 ml", drawn);
  const fall = positiveOption("--fallen", "Dh", "length", "2.7 mm", fallen);
  const whole = fill ? positiveOption("--fill", "V_fill", "volume", "2.4 L", fill) : null;
  const at = (symbol: string, value: number): Quantity =>
    reading(symbol, normal(value, hookTwice_mm), mm, symbol, "wire hook, one lip");
  const known = calibration(
    volumeReading(valueIn(ml, volume), ml, "60 ml syringe", "--drawn"),
    at("h_1", 0),
    at("h_2", -valueIn(mm, fall)),
    whole,
  );
  if (known.type === "known") return known;
  throw mistaken(
    "--fallen",
    fallen,
    known.type === "fall too small" ? `at least ${known.least_mm.toFixed(1)} mm: draw more` : "a level that fell",
  );
}

/** Two readings at one lip by the same hand tell their difference better than either tells the level. */
const hookTwice_mm = 0.5;

const below = (name: string, text: string): Quantity =>
  levelReading(-valueIn(mm, quantityOption(name, "h", "length", "8 mm", text)), mm, "wire hook", name);

const negative = (name: string, symbol: string, text: string): Quantity =>
  exact(symbol, -valueIn(mm, quantityOption(name, symbol, "length", "5 mm", text)), mm, "as given");

function tiltOf({ tilt = "", offset, below: read }: Options): LevelOnTheLevel {
  if (!read) throw mistaken("--tilt", tilt, "a level to correct: give --below");
  const phi = quantityOption("--tilt", "phi", "angle", "1 °", tilt);
  const angle = reading("phi", normal(valueIn(deg, phi), 0.3), deg, "--tilt", "inclinometer, flipped");
  const level = { phi: angle, theta: reading("theta", exactly(0), deg, "theta", "not given") };
  const x = offset ? positiveOption("--offset", "x", "length", "140 mm", offset) : null;
  const surface = { x, y: exact("y", 0, mm), halfLength: null, halfWidth: null, roomToStep: null };
  return levelOnTheLevel(below("--below", read), level, surface);
}

function document(found: LevelFound, steps: ReturnType<typeof working>) {
  const { perHeight, calibration: known, level, verdict, toLip, toTarget, overflow: over, tilt } = found;
  const k = valueIn(ml_mm, perHeight);
  return {
    perMillimetre_ml: digits(k, 4),
    perMillimetreUncertainty_ml: digits(standardUncertainty(perHeight) / ml_mm.inSI, 2),
    strength: known?.strength ?? null,
    betterDraw_ml: known && Math.ceil(known.betterDraw_ml / 10) * 10,
    plausibility: known?.plausibility ?? null,
    level_mm: level && digits(valueIn(mm, level), 3),
    verdict,
    shortOfLip_ml: toLip && digits(-valueIn(ml, toLip), 3),
    shortOfLipUncertainty_ml: toLip && digits(standardUncertainty(toLip) / ml.inSI, 2),
    toTarget_ml: toTarget && digits(-valueIn(ml, toTarget.volume), 3),
    strokes: toTarget && { full: toTarget.strokes.full, last_ml: digits(toTarget.strokes.last_ml, 2) },
    overflow: over && { verdict: over.verdict, volume_ml: digits(Math.max(0, valueIn(ml, over.volume)), 3) },
    tilt: tilt?.type ?? null,
    working: steps,
  };
}
