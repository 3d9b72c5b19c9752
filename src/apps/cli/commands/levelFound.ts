import { calibrationByDraw } from "../../../mechanics/fluid/levelByDraw.ts";
import type { ShapeFound } from "../../../mechanics/fluid/levelByShape.ts";
import type { Calibration } from "../../../mechanics/fluid/levelCalibration.ts";
import { levelAtReference } from "../../../mechanics/fluid/levelHotCold.ts";
import {
  allowedBelowLip,
  type FillTarget,
  fillTargetDoubtful,
  standsAboveLip,
} from "../../../mechanics/fluid/levelLip.ts";
import { levelReading } from "../../../mechanics/fluid/levelReadings.ts";
import { flippedReading, type LevelOnTheLevel, levelOnTheLevel } from "../../../mechanics/fluid/tilt.ts";
import { as, exact, type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { deg, mm } from "../../../mechanics/quantity/unit.ts";
import { levelInWords } from "../../../sheets/sums/levelInWords.ts";
import { acceptedFall, type LevelInWords } from "../../../sheets/words/levelWords.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption, quantityOption } from "../options.ts";
import { type ShapeOptions, shapeFound } from "./levelShape.ts";
import { riseTo, type WarmthOptions, warmthAssumed } from "./levelWarmth.ts";

export type LevelOptions = ShapeOptions &
  WarmthOptions & {
    readonly drawn?: string;
    readonly fallen?: string;
    readonly perMm?: string;
    readonly below?: string;
    readonly allowed?: string;
    readonly target?: string;
    readonly pour?: string;
    readonly syringe: string;
    readonly tilt?: string;
    readonly tiltAcross?: string;
    readonly offset?: string;
    readonly offsetAcross?: string;
    readonly toStep?: string;
    readonly ranOut?: boolean;
  };

/** All that the options let one say of a level. @throws InputMistake */
export function levelFound(options: LevelOptions): LevelInWords {
  oneWay(options);
  const shape = options.shape ? shapeFound(options.shape, options) : null;
  const known = shape || options.perMm ? null : calibrated(options);
  const perHeight =
    shape?.perHeight ??
    known?.perHeight ??
    positiveOption("--per-mm", "k", "volume per length", "22 ml/mm", options.perMm ?? "");
  const read = levelRead(options);
  if (options.toStep && !(options.tilt || options.tiltAcross))
    throw mistaken("--tilt", null, 'how the machine stands, as "1 °", with --to-step');
  const tilt = read && (options.tilt || options.tiltAcross) ? standing(read, options, shape) : null;
  const level = tilt ? (tilt.type === "corrected" || tilt.type === "bounded" ? tilt.level : null) : read;
  const cold = level && options.oil !== undefined ? atReference(level, options.oil, perHeight, options) : null;
  const lowest = options.allowed ? negative("--allowed", "h_min", options.allowed) : allowedBelowLip;
  const fillTarget = fillTargetOf(options, perHeight, lowest);
  return levelInWords({
    perHeight,
    calibration: known,
    shape: shape?.contents ?? null,
    read,
    tilt,
    level,
    cold,
    lowest,
    fillTarget,
    target: options.target ? negative("--target", "h_t", options.target) : null,
    poured: options.pour ? positiveOption("--pour", "V_f", "volume", "200 ml", options.pour) : null,
    syringe: positiveOption("--syringe", "V", "volume", "60 ml", options.syringe),
    assumed: [
      ...(options.ranOut ? [puddleAssumed] : []),
      ...(options.allowed || !read
        ? []
        : [{ reading: "lowest allowed", value: "5 mm below", source: "common practice" }]),
      ...(cold || typeof options.doubtful === "string" ? warmthAssumed(options) : []),
    ],
  });
}

/** A millimetre is known in one way: two ways would have to agree, and one of them would go unheard. */
function oneWay({ perMm, shape, drawn }: LevelOptions): void {
  const [first, second] = Object.entries({ "--per-mm": perMm, "--shape": shape, "--drawn": drawn }).filter(
    ([, text]) => text !== undefined,
  );
  if (first && second) throw mistaken(second[0], second[1] ?? null, `nothing beside ${first[0]}: one or the other`);
}

/** The level as it was read, or as it stands where it was filled until it ran out. */
function levelRead(options: LevelOptions): Quantity | null {
  const { below: text, ranOut } = options;
  if (text !== undefined && ranOut) throw mistaken("--below", text, "nothing beside --ran-out: one or the other");
  if (ranOut) return as("h", standsAboveLip);
  if (text !== undefined) return below(text);
  needsBelow(options);
  return null;
}

const puddleAssumed = {
  reading: "filled until it ran out",
  value: "it stands 0.3 to 1 mm above the lip",
  source: standsAboveLip.origin.type === "taken" ? standsAboveLip.origin.source : "",
};

/** What is asked of a level needs one. */
function needsBelow(options: LevelOptions): void {
  for (const [name, text] of [
    ["--tilt", options.tilt],
    ["--tilt-across", options.tiltAcross],
    ["--oil", options.oil],
    ["--pour", options.pour],
    ["--target", options.target],
    ["--to-step", options.toStep],
  ] as const)
    if (text !== undefined) throw mistaken("--below", null, `the level as it was read, as "8 mm", with ${name}`);
}

function calibrated({ drawn, fallen, fill }: LevelOptions): Extract<Calibration, { type: "known" }> {
  if (!drawn) throw mistaken("--drawn", null, "--drawn and --fallen together, or --per-mm, or --shape");
  if (!fallen) throw mistaken("--fallen", null, 'what the level fell by --drawn, as "2.7 mm"');
  const volume = positiveOption("--drawn", "V", "volume", "60 ml", drawn);
  const fall = positiveOption("--fallen", "Dh", "length", "2.7 mm", fallen);
  const whole = fill ? positiveOption("--fill", "V_fill", "volume", "2.4 L", fill) : null;
  const known = calibrationByDraw(volume, fall, whole);
  if (known.type === "known") return known;
  throw mistaken("--fallen", fallen, acceptedFall(known));
}

const below = (text: string): Quantity =>
  levelReading(-valueIn(mm, quantityOption("--below", "h", "length", "8 mm", text)), mm, "wire hook", "--below");

const negative = (name: string, symbol: string, text: string): Quantity =>
  exact(symbol, -valueIn(mm, quantityOption(name, symbol, "length", "5 mm", text)), mm, "as given");

/** The level as it would be standing level; an angle that was not given is taken as none. */
function standing(read: Quantity, options: LevelOptions, shape: ShapeFound | null): LevelOnTheLevel {
  const { tilt, tiltAcross, offset, offsetAcross } = options;
  const angle = (name: string, symbol: "phi" | "theta", text: string): Quantity => {
    const degrees = valueIn(deg, quantityOption(name, symbol, "angle", "1 °", text));
    return flippedReading(symbol, degrees, -degrees, name).angle;
  };
  const place = (
    name: string,
    symbol: string,
    text: string | undefined,
    tilted: string | undefined,
  ): Quantity | null => {
    if (text === undefined) return tilted === undefined ? exact(symbol, 0, mm, "not tilted that way") : null;
    return exact(symbol, valueIn(mm, quantityOption(name, symbol, "length", "140 mm", text)), mm, "as given");
  };
  const none = (symbol: string): Quantity => exact(symbol, 0, deg, "as given: not tilted that way");
  return levelOnTheLevel(
    read,
    {
      phi: tilt === undefined ? none("phi") : angle("--tilt", "phi", tilt),
      theta: tiltAcross === undefined ? none("theta") : angle("--tilt-across", "theta", tiltAcross),
    },
    {
      x: place("--offset", "x", offset, tilt),
      y: place("--offset-across", "y", offsetAcross, tiltAcross),
      halfLength: shape?.halfLength ?? halfOf("--length", "x", options.length),
      halfWidth: shape?.halfWidth ?? halfOf("--width", "y", options.width),
      roomToStep: options.toStep ? positiveOption("--to-step", "h", "length", "12 mm", options.toStep) : null,
    },
  );
}

/** Half of an inside size of the case, for a tilt whose hole is not placed. */
const halfOf = (name: string, symbol: string, text: string | undefined): Quantity | null =>
  text === undefined
    ? null
    : exact(symbol, valueIn(mm, positiveOption(name, symbol, "length", "150 mm", text)) / 2, mm, "half of the case");

function atReference(level: Quantity, oil: string, perHeight: Quantity, options: LevelOptions): LevelInWords["cold"] {
  const rise = riseTo({ name: "--oil", text: oil }, perHeight, options);
  const standing =
    rise.value > 0 && !options.settled
      ? ({ type: "hot", minutesSinceStop: null } as const)
      : ({ type: "cold" } as const);
  return { at: options.at ?? "", oil, rise, ...levelAtReference(level, rise, standing) };
}

function fillTargetOf(options: LevelOptions, perHeight: Quantity, lowest: Quantity): FillTarget | null {
  const { doubtful, target } = options;
  if (doubtful === undefined) return null;
  if (target !== undefined) throw mistaken("--target", target, "nothing beside --doubtful, which says where to fill");
  const hot = doubtful === true ? null : riseTo({ name: "--doubtful", text: doubtful }, perHeight, options);
  return fillTargetDoubtful(hot, lowest);
}
