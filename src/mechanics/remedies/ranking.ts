import { formula } from "../quantity/formula.ts";
import { one } from "../quantity/unit.ts";
import { type Comeback, comeback } from "../service/comeback.ts";
import type { HeldCase } from "../service/heldCases.ts";
import { jointRows } from "../tables/jointKinds.ts";
import type { Span } from "../tables/shopEstimates.ts";
import { methodOf, type RemedyId } from "./method.ts";
import type { Offer } from "./offers.ts";
import type { PortCase } from "./portCase.ts";
import type { ShopFigures } from "./shopFigures.ts";

/** What the workshop sets. Null is not said. */
export type Wish = {
  /** The machine is wanted today. */
  readonly today: boolean | null;
  /** The most that it may cost, in the workshop's currency. */
  readonly ceiling: number | null;
  /** The port must open again, as for every change of oil. */
  readonly opensAgain: boolean | null;
  /** The port as repaired is weighed although it is refused as found; else a refused case holds no torque at all. */
  readonly afterRepair: boolean | null;
};

/** Why an offer stands behind others that the order of the trade puts after it. */
export type Objection = "over the ceiling" | "not today" | "opens badly again";

export type Ranked = {
  readonly id: RemedyId;
  /** The line of the decision order that brings it here; the first true line wins. */
  readonly line: number;
  readonly objections: readonly Objection[];
  /** Hours at the rate of the shop, and parts. */
  readonly price: Span;
  readonly comesBack: Comeback | null;
};

/**
 * The offers that may be made, best first: what the workshop rules out goes last, then the decision order of the trade. What
 * is refused, does not apply or does not fit, and what opens no window, is no offer.
 */
export function ranked(
  offers: readonly Offer[],
  portCase: PortCase,
  wish: Wish,
  record: readonly HeldCase[],
): readonly Ranked[] {
  const may = offers.filter(({ stands }) => stands === "fits" || stands === "doubtful" || stands === "measure first");
  return may
    .map((offer) => ({ offer, place: placeOf(offer, portCase, wish), row: rowOf(offer, portCase, wish, record) }))
    .toSorted((a, b) => a.row.objections.length - b.row.objections.length || byPlace(a.place, b.place))
    .map(({ row }) => row);
}

/** The best of each method, in the order: two kinds of ring are one way to go. */
export const oneOfEach = (rows: readonly Ranked[]): readonly Ranked[] =>
  rows.filter(({ id }, i) => rows.findIndex((it) => methodOf[it.id] === methodOf[id]) === i);

/** What a dearer remedy has to be worth: the share of comebacks that it must avoid against the cheapest. */
export type BreakEven = {
  readonly id: RemedyId;
  readonly against: RemedyId;
  readonly extra: number;
  /** What a comeback costs the shop. */
  readonly comeback: number;
  /** It is worth it if it avoids more than this share of comebacks; above 1 it never is by money alone. */
  readonly share: number;
  /** What it avoids by the estimates or the own record. */
  readonly avoids: number;
};

const breakEvenShare = formula(
  "q = dC / C_c",
  { dC: one, C_c: one, q: one },
  "the extra price against the cost of a comeback",
);

/** The break-even of every ranked remedy that costs more than the cheapest of them. */
export function breakEvens(rows: readonly Ranked[], shop: ShopFigures): readonly BreakEven[] {
  const comparable = rows.flatMap((it) => (it.comesBack ? [{ ...it, comesBack: it.comesBack }] : []));
  const cheapest = comparable.toSorted((a, b) => a.price.likely - b.price.likely)[0];
  if (!cheapest) return [];
  const C_c = shop.comeback.high;
  return comparable.flatMap(({ id, price, comesBack }) => {
    const extra = price.likely - cheapest.price.likely;
    if (id === cheapest.id || extra <= 0) return [];
    const share = breakEvenShare.over({ dC: extra, C_c })[0] as number;
    return [
      { id, against: cheapest.id, extra, comeback: C_c, share, avoids: cheapest.comesBack.likely - comesBack.likely },
    ];
  });
}

const priceOf = formula(
  "C = t * r + C_p",
  { t: one, r: one, C_p: one, C: one },
  "hours at the rate of the shop, and parts",
);

function rowOf(offer: Offer, portCase: PortCase, wish: Wish, record: readonly HeldCase[]): Ranked {
  const { id, estimate } = offer;
  const at = (end: keyof Span): number =>
    priceOf.over({ t: estimate.hours[end], r: portCase.shop.rate_perHour, C_p: estimate.parts[end] })[0] as number;
  const price = { low: at("low"), likely: at("likely"), high: at("high") };
  return {
    id,
    line: lineOf(id, portCase),
    objections: objectionsTo(offer, price, wish),
    price,
    comesBack: estimate.comesBack && comeback(estimate.comesBack, id, record),
  };
}

function objectionsTo({ id, readyAfter_h }: Offer, price: Span, wish: Wish): readonly Objection[] {
  const today = wish.today === true && !onlyWaits.includes(id) && (readyAfter_h === null || readyAfter_h > workday_h);
  return [
    ...(wish.ceiling !== null && price.high > wish.ceiling ? (["over the ceiling"] as const) : []),
    ...(today ? (["not today"] as const) : []),
    ...(wish.opensAgain === true && opensBadly.includes(id) ? (["opens badly again"] as const) : []),
  ];
}

/** What is not ready within a day at the bench does not leave today. */
const workday_h = 8;
const onlyWaits: readonly RemedyId[] = ["left and watched"];
const opensBadly: readonly RemedyId[] = [
  "sealant, no washer",
  "self-cutting plug",
  "cast thread",
  "closed for good",
  "expanding bung",
];

/** The lines of the decision order, 1 to 10, in which each remedy comes. */
function lineOf(id: RemedyId, { asked }: PortCase): number {
  const cracked = asked.crack === "yes";
  switch (id) {
    case "ordinary reseal":
    case "new plug":
      return 1;
    case "welded and re-cut":
    case "adaptor plate":
    case "new part":
      return cracked ? 3 : 10;
    case "first thread cleaned":
      return 4;
    case "lower torque":
      return 5;
    case "longer plug":
    case "longer plug, bonded seal":
      return 6;
    case "other seal: aluminium":
    case "other seal: copper":
    case "other seal: fibre":
    case "other seal: crush ring":
    case "other seal: bonded seal":
    case "other seal: O-ring":
      return 7;
    case "solid bushing":
    case "wire coil":
    case "next size":
    case "next size, other thread":
    case "stud and nut":
      return 8;
    case "sealant, no washer":
      return 9;
    case "expanding bung":
    case "closed for good":
    case "bonded bush":
    case "cast thread":
    case "self-cutting plug":
    case "left and watched":
      return 10;
    default:
      return id satisfies never;
  }
}

type Place = { readonly line: number; readonly unsure: number; readonly within: number };

/** Within a line: what fits surely before what must be measured first, a wide window before a narrow one. */
function placeOf({ id, stands, narrow }: Offer, portCase: PortCase, wish: Wish): Place {
  const unsure = stands === "fits" ? 0 : stands === "doubtful" ? 1 : 2;
  const order = orderWithin(portCase, wish);
  const within = order.indexOf(id) < 0 ? order.length : order.indexOf(id);
  return { line: lineOf(id, portCase) + (narrow ? 0.5 : 0), unsure, within };
}

const byPlace = (a: Place, b: Place): number => a.line - b.line || a.unsure - b.unsure || a.within - b.within;

/** Torn, under oil or hot: a bushing first. Opened often and clean: a coil first. */
function orderWithin({ joint, port }: PortCase, wish: Wish): readonly RemedyId[] {
  const torn = port.left.condition === "poor" || port.left.condition === "gone";
  const often = wish.opensAgain === true && !torn && !jointRows[joint].alwaysUnderOil;
  const cut: readonly RemedyId[] = often
    ? ["wire coil", "solid bushing", "next size"]
    : ["solid bushing", "wire coil", "next size"];
  return [
    ...cut,
    "next size, other thread",
    "longer plug",
    "longer plug, bonded seal",
    "other seal: bonded seal",
    "other seal: fibre",
    "other seal: O-ring",
    "other seal: crush ring",
    "other seal: aluminium",
    "other seal: copper",
    "expanding bung",
    "closed for good",
    "bonded bush",
    "adaptor plate",
    "welded and re-cut",
    "new part",
    "cast thread",
    "left and watched",
    "self-cutting plug",
  ];
}
