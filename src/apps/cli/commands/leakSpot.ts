import { ordinaryDrop } from "../../../mechanics/fluid/drop.ts";
import {
  filmOnSmoothGround,
  flowFromVolume,
  poolVerdict,
  spotArea,
  spotVolume,
} from "../../../mechanics/fluid/leakPool.ts";
import { quantile } from "../../../mechanics/quantity/distribution.ts";
import { distributionOf, exact, type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { ml, ml_d, mm } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import { spotLines } from "../../../sheets/words/spotWords.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";

type Options = { readonly in?: string; readonly working?: boolean; readonly json?: boolean };

/** What a spot on smooth ground tells of a leak, for the thinnest and the thickest film. @throws InputMistake */
export function spotOnGround(spot: string, options: Options): void {
  if (options.in === undefined) throw mistaken("--in", null, 'the time the spot grew in, as "5 min"');
  const D = positiveOption("--spot", "D", "length", "75 mm", spot);
  const t = positiveOption("--in", "t", "time", "5 min", options.in);
  const film = (p: number): Quantity =>
    exact("e", quantile(distributionOf(filmOnSmoothGround), p), mm, "contact angles of 10 to 30° (judgement)");
  const volumes = [spotVolume(spotArea(D), film(0)), spotVolume(spotArea(D), film(1))] as const;
  const [least, most] = [flowFromVolume(volumes[0], t), flowFromVolume(volumes[1], t)];
  const dropsAMinute = [least, most].map((it) => (60 * it.value) / ordinaryDrop.volume.value);
  const roadTest = poolVerdict(D, t);
  const steps = working(least, most);
  const document = {
    spot_ml: volumes.map((it) => digits(valueIn(ml, it), 2)),
    perDay_ml: [least, most].map((it) => digits(valueIn(ml_d, it), 2)),
    dropsPerMinute: dropsAMinute.map((it) => digits(it, 2)),
    roadTest,
    working: steps,
  };
  const lines = spotLines({ spot, time: options.in, volumes, perDay: [least, most], dropsAMinute, roadTest });
  print(options.json ?? false, document, [...lines, ...(options.working ? workingLines(steps) : [])]);
}
