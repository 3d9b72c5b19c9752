import type { BookFigure } from "../joint/bookFigures.ts";
import type {
  Catch,
  Closure,
  Condition,
  Counting,
  Plug,
  Port,
  Seal,
  SealKind,
  Surface,
  WasherMaterial,
} from "../joint/port.ts";
import type { Wrench } from "../joint/wrench.ts";
import { exact, type Quantity } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import type { HeldCase } from "../service/heldCases.ts";
import type { PropertyClass } from "../tables/iso898.ts";
import type { JointKind } from "../tables/jointKinds.ts";
import type { Levels } from "../tables/levels.ts";
import type { Material } from "../tables/materials.ts";
import type { Ranges } from "../tables/referenceRanges.ts";
import { commonPractice, judgement, type Source, sourceText } from "../tables/source.ts";
import { isTaper, type Thread } from "../threads/thread.ts";
import type { ThreadLimits } from "../threads/threadLimits.ts";
import type { Asked, BayAir, PortCase } from "./portCase.ts";
import type { Wish } from "./ranking.ts";
import { nothingBetween, sealSize } from "./sealSize.ts";
import type { ShopFigures } from "./shopFigures.ts";

/** A case as somebody gave it: what nobody measured or said is null. */
export type GivenCase = {
  readonly joint: JointKind;
  readonly asked: Asked;
  readonly thread: Thread;
  /** By the tolerance classes given, else by the ordinary ones of the thread's standard. */
  readonly limits: ThreadLimits;
  readonly material: Material;
  readonly threadDepth: Quantity | null;
  readonly thinnestWall: Quantity | null;
  readonly roomBehind: Quantity | null;
  readonly roomInFront: Quantity | null;
  readonly temperature: Quantity | null;
  readonly plug: {
    readonly propertyClass: PropertyClass | null;
    readonly underHead: Quantity | null;
    readonly headDiameter: Quantity | null;
    readonly chamfer: Quantity | null;
    readonly original: boolean | null;
  };
  readonly seal: {
    readonly kind: SealKind | null;
    readonly material: WasherMaterial | null;
    readonly outside: Quantity | null;
    readonly inside: Quantity | null;
    readonly thickness: Quantity | null;
    readonly chamfer: Quantity | null;
    readonly original: boolean | null;
  };
  readonly left: {
    readonly turns: Quantity | null;
    readonly counting: Counting | null;
    readonly withWasher: boolean | null;
    readonly condition: Condition | null;
    readonly catch: Catch | null;
    readonly goodFrom: Quantity | null;
    readonly goodTo: Quantity | null;
    readonly height: Quantity | null;
  };
  readonly healthyTurns: Quantity | null;
  readonly healthyWithWasher: boolean | null;
  readonly surface: Surface | null;
  readonly bookFigures: readonly BookFigure[];
  readonly wrenches: readonly Wrench[];
  readonly prevailing: Quantity | null;
  readonly today: string | null;
  readonly air: BayAir;
  readonly shop: ShopFigures;
  readonly wish: Wish;
  /** What is known of earlier repairs of the workshop, by remedy. */
  readonly record: readonly HeldCase[];
  readonly ranges: Ranges;
  readonly levels: Levels;
};

/** What was taken because nobody gave it, and why it may be taken. */
export type Assumption = {
  /** The field of the case, as "plug.propertyClass". */
  readonly reading: string;
  readonly value: string | Quantity;
  readonly source: Source;
};

/** The case with every gap filled that may be filled, and the list of what was filled. */
export function completed(given: GivenCase): { readonly portCase: PortCase; readonly assumed: readonly Assumption[] } {
  const assumed: Assumption[] = [];
  const take = <T extends string | Quantity>(reading: string, value: T, source: Source): T => {
    assumed.push({ reading, value, source });
    return value;
  };
  const says = (reading: string, value: boolean, source: Source): boolean => {
    assumed.push({ reading, value: value ? "yes" : "no", source });
    return value;
  };

  const { left } = given;
  const port: Port = {
    thread: given.thread,
    limits: given.limits,
    material: given.material,
    threadDepth: given.threadDepth,
    thinnestWall: given.thinnestWall,
    roomBehind: given.roomBehind,
    temperature: given.temperature,
    left: {
      turns: left.turns,
      counting: left.counting ?? take("left.counted", "by eye", judgement("a count nobody describes is one by eye")),
      withWasher: left.withWasher ?? says("left.withWasher", false, judgement("turns are counted without a ring")),
      condition: left.condition ?? take("left.condition", "doubtful", judgement("nobody says that the turns are good")),
      catch: left.catch ?? take("left.catch", "gritty", judgement("nobody says that it catches snugly")),
      goodFrom: left.goodFrom,
      goodTo: left.goodTo,
      height: left.height,
    },
    healthy: given.healthyTurns && {
      turns: given.healthyTurns,
      withWasher: given.healthyWithWasher ?? false,
    },
  };

  const plug: Plug = {
    propertyClass: given.plug.propertyClass ?? take("plug.propertyClass", "5.8", judgement("plugs run in 4.8 and 5.8")),
    underHead: given.plug.underHead,
    headDiameter: given.plug.headDiameter,
    chamfer: given.plug.chamfer,
    original: given.plug.original ?? says("plug.original", true, judgement("nobody says that it is foreign")),
  };
  const seal = completedSeal();
  const asFound: Closure = {
    plug,
    seal,
    surface: given.surface ?? surfaceOf(seal),
    heldOtherwise: seal.kind === "sealant, metal to metal",
  };
  const { joint, asked, bookFigures, wrenches, prevailing, today, roomInFront, air, shop, ranges, levels } = given;
  const rest = { bookFigures, wrenches, prevailing, today, roomInFront, air, shop, ranges, levels };
  return { portCase: { joint, asked, port, asFound, ...rest }, assumed };

  function surfaceOf({ kind }: Seal): Surface {
    return kind === "sealant, metal to metal"
      ? take("surface", "wet sealant", judgement("the thread is wet with the sealant that closes it"))
      : take("surface", "oiled", judgement("a plug under oil is oiled unless it was degreased"));
  }

  function takenTaper(): SealKind {
    return take("seal.kind", "taper", judgement(`${given.thread.designation} seals on its own thread`));
  }

  function completedSeal(): Seal {
    const given_ = given.seal;
    const kind =
      given_.kind ?? (isTaper(given.thread) ? takenTaper() : take("seal.kind", "flat washer", commonPractice));
    const material =
      kind !== "flat washer" ? null : (given_.material ?? take("seal.material", "aluminium", commonPractice));
    const size = sealSize(kind, given.thread, given.plug.headDiameter);
    const length = (name: "outside" | "inside" | "thickness", symbol: string, value_mm: number): Quantity =>
      given_[name] ?? take(`seal.${name}`, exact(symbol, value_mm, mm, sourceText(size.source)), size.source);
    return {
      kind,
      material,
      outside: length("outside", "D_o", size.outside_mm),
      inside: length("inside", "D_i", size.inside_mm),
      thickness:
        size.thickness_mm === 0 ? (given_.thickness ?? nothingBetween) : length("thickness", "t", size.thickness_mm),
      chamfer: given_.chamfer,
      original: given_.original ?? says("seal.original", true, judgement("nobody says that it was changed")),
    };
  }
}
