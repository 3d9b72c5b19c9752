import {
  type Bead,
  type BeadSpread,
  beadSpread,
  squeezedFromThread,
  usualFilm_mm,
  volumeOfBead,
} from "../../../mechanics/cure/bead.ts";
import { clearanceVolume, crestGap, pitchClearance, threadPath } from "../../../mechanics/fluid/threadFlowPath.ts";
import { exact, type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { ml, mm } from "../../../mechanics/quantity/unit.ts";
import { limits } from "../../../mechanics/threads/metricLimits.ts";
import { standardHole, standardPlug } from "../../../mechanics/threads/standardClasses.ts";
import type { BeadInWords, OnThreadInWords } from "../../../sheets/words/beadWords.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption, threadOption } from "../options.ts";
import { decimals, digits } from "../print.ts";

export type BeadOptions = {
  readonly beadDiameter?: string;
  readonly beadLength?: string;
  readonly beadOn?: string;
  readonly seatInside?: string;
  readonly seatOutside?: string;
  readonly film?: string;
  readonly onThread?: string;
  readonly thread?: string;
  readonly engaged?: string;
};

/** The volume of a bead and, where it is known on which circle of which seat it lies, where it goes. @throws InputMistake */
export function beadLaid(options: BeadOptions): BeadInWords | null {
  const { beadDiameter, beadLength, beadOn } = options;
  const bare = Object.entries({ "--bead-length": beadLength, "--bead-on": beadOn }).find(
    ([, text]) => text !== undefined,
  );
  if (beadDiameter === undefined) {
    if (bare) throw mistaken("--bead-diameter", null, `how thick the bead is laid, as "2 mm", with ${bare[0]}`);
    return null;
  }
  const thickness = length("--bead-diameter", "d_b", beadDiameter, "2 mm");
  if (beadLength !== undefined && beadOn !== undefined)
    throw mistaken("--bead-on", beadOn, "nothing beside --bead-length: one or the other");
  if (beadLength !== undefined)
    return { volume: volumeOfBead(thickness, length("--bead-length", "l", beadLength, "75 mm")), spread: null };
  if (beadOn === undefined)
    throw mistaken("--bead-on", null, 'the circle it is laid on, as "24 mm" across; or --bead-length');
  const seat = {
    thickness,
    laidOn: length("--bead-on", "D_l", beadOn, "24 mm"),
    seatInside: needed("--seat-inside", "D_i", options.seatInside, "20 mm"),
    seatOutside: needed("--seat-outside", "D_o", options.seatOutside, "27 mm"),
  };
  if (seat.seatOutside.value <= seat.seatInside.value)
    throw mistaken("--seat-outside", options.seatOutside ?? null, `more than --seat-inside, ${options.seatInside}`);
  const pressed = (film: Quantity): BeadSpread => beadSpread({ ...seat, film } satisfies Bead);
  if (options.film !== undefined) {
    const spread = pressed(length("--film", "t", options.film, "0.2 mm"));
    return { volume: spread.volume, spread, range: null };
  }
  const { low, high, source } = usualFilm_mm;
  const film = (t: number): Quantity => exact("t", t, mm, source);
  const spread = pressed(film((low + high) / 2));
  return { volume: spread.volume, spread, range: { low: pressed(film(high)), high: pressed(film(low)) } };
}

/** What a thread cannot hold of the sealant put on it. @throws InputMistake */
export function laidOnThread({ onThread, thread, engaged }: BeadOptions): OnThreadInWords | null {
  if (onThread === undefined) return null;
  if (thread === undefined) throw mistaken("--thread", null, "the thread, as M20x1.5, with --on-thread");
  if (engaged === undefined) throw mistaken("--engaged", null, 'the length on which thread meets thread, as "10 mm"');
  const size = threadOption("--thread", thread);
  const { mean } = pitchClearance(limits(size, standardPlug, standardHole));
  const holds = clearanceVolume(threadPath(size, length("--engaged", "l_e", engaged, "10 mm"), mean, crestGap(size)));
  const put = positiveOption("--on-thread", "V", "volume", "0.3 ml", onThread);
  return { thread: thread.trim(), holds, squeezed: squeezedFromThread(put, holds) };
}

/** The keys of the bead and of what was put on the thread. */
export function beadDocument(bead: BeadInWords | null, onThread: OnThreadInWords | null) {
  const spread = bead?.spread ?? null;
  const range = bead?.range ?? null;
  return {
    bead_ml: bead && digits(valueIn(ml, bead.volume), 2),
    inwardShare: spread && decimals(spread.inward.value, 2),
    inward_ml: spread && decimals(spread.inward_ml, 2),
    inwardRange_ml: range && [decimals(range.low.inward_ml, 2), decimals(range.high.inward_ml, 2)],
    covers: spread?.covers ?? null,
    beadAdvice: spread?.advice ?? null,
    threadHolds_ml: onThread && digits(valueIn(ml, onThread.holds), 1),
    squeezedInside_ml: onThread && digits(valueIn(ml, onThread.squeezed), 1),
  };
}

const length = (name: string, symbol: string, text: string, example: string): Quantity =>
  positiveOption(name, symbol, "length", example, text);

function needed(name: string, symbol: string, text: string | undefined, example: string): Quantity {
  if (text === undefined) throw mistaken(name, null, `the diameter of the seat, as "${example}", with --bead-on`);
  return length(name, symbol, text, example);
}
