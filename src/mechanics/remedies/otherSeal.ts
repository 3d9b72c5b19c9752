import { chamferDepth, overCord } from "../joint/oRingChamfer.ts";
import type { Closure, Seal, SealKind, WasherMaterial } from "../joint/port.ts";
import { support, triangular } from "../quantity/distribution.ts";
import { formula } from "../quantity/formula.ts";
import { distributionOf, exact, reading, valueIn } from "../quantity/quantity.ts";
import { mm, turn } from "../quantity/unit.ts";
import { sourceText } from "../tables/source.ts";
import type { RemedyId } from "./method.ts";
import type { PortCase } from "./portCase.ts";
import { forbiddenHere } from "./portFit.ts";
import { type Check, type Remedy, remedyOf } from "./remedy.ts";
import { nothingBetween, sealSize } from "./sealSize.ts";

type Offer = {
  readonly id: RemedyId;
  readonly kind: SealKind;
  readonly material: WasherMaterial | null;
  readonly checks: readonly Check[];
};

const seat: Check = { type: "seat flat and clean" };
const rubber: Check = { type: "rubber suits fluid and heat" };

const offers: readonly Offer[] = [
  { id: "other seal: bonded seal", kind: "bonded seal", material: null, checks: [seat, rubber] },
  { id: "other seal: fibre", kind: "flat washer", material: "fibre", checks: [seat] },
  { id: "other seal: O-ring", kind: "O-ring", material: null, checks: [rubber] },
  { id: "other seal: crush ring", kind: "crush ring", material: null, checks: [seat] },
  { id: "other seal: aluminium", kind: "flat washer", material: "aluminium", checks: [seat] },
  { id: "other seal: copper", kind: "flat washer", material: "copper", checks: [seat] },
];

/** The same plug on every other kind of seal: one that needs less clamp, or that takes less thread. */
export const otherSeals = (portCase: PortCase): readonly Remedy[] =>
  offers
    .filter(({ kind, material }) => kind !== portCase.asFound.seal.kind || material !== portCase.asFound.seal.material)
    .map(({ id, kind, material, checks }) => {
      const closure = withSeal(portCase, kind, material);
      const cut = chamferFor(portCase, closure.seal);
      return remedyOf(
        cut?.portCase ?? portCase,
        id,
        closure,
        [...(cut?.checks ?? []), ...checks],
        forbiddenHere(id, portCase),
      );
    });

const cutOf = formula("n_c = z_c / P", { z_c: mm, P: mm, n_c: turn }, "plain geometry");

/**
 * What cutting the chamfer of a ring does to the port: where nobody measured the plug, nobody knows how near to the face the
 * turns begin that were counted, and none to all of its depth may take some of them. Null for a seal that lies in none.
 */
function chamferFor(portCase: PortCase, seal: Seal): { portCase: PortCase; checks: readonly Check[] } | null {
  const depth = chamferDepth(seal);
  if (!depth) return null;
  const { port, asFound } = portCase;
  const { turns } = port.left;
  const blind = turns !== null && asFound.plug.underHead === null;
  const [from_mm, to_mm] = support(distributionOf(overCord)).map((k) => (k * valueIn(mm, depth)) / overCord.value) as [
    number,
    number,
  ];
  const checks: readonly Check[] = [{ type: "chamfer cut for the ring", from_mm, to_mm, blind }];
  if (!blind) return { portCase, checks };
  const n = valueIn(turn, turns);
  const n_c = valueIn(turn, cutOf({ z_c: depth, P: port.thread.P }));
  const left = reading(
    "n",
    triangular(n - n_c, n - n_c / 2, n),
    turn,
    "left.turns",
    "counted, less what the chamfer may take",
  );
  return { portCase: { ...portCase, port: { ...port, left: { ...port.left, turns: left } } }, checks };
}

/** The closure as found on another seal; a flat ring keeps the sizes of the flat ring that was there. */
export function withSeal({ port, asFound }: PortCase, kind: SealKind, material: WasherMaterial | null): Closure {
  const surface = asFound.surface === "wet sealant" ? "oiled" : asFound.surface;
  return { ...asFound, surface, heldOtherwise: false, seal: sealFor() };

  function sealFor(): Seal {
    if (kind === "flat washer" && asFound.seal.kind === "flat washer")
      return { ...asFound.seal, material, original: false };
    const size = sealSize(kind, port.thread, asFound.plug.headDiameter);
    const source = sourceText(size.source);
    return {
      kind,
      material,
      outside: exact("D_o", size.outside_mm, mm, source),
      inside: exact("D_i", size.inside_mm, mm, source),
      thickness: size.thickness_mm === 0 ? nothingBetween : exact("t", size.thickness_mm, mm, source),
      chamfer: null,
      original: false,
    };
  }
}
