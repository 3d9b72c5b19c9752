import { formula } from "../quantity/formula.ts";
import { type Quantity, standardUncertainty } from "../quantity/quantity.ts";
import { kg_m3, ml_d, mm, mm2_s, mPas, N_m, one, Pa } from "../quantity/unit.ts";
import { freeFall, m_s2 } from "./leakHead.ts";

/** A way for fluid out, L long in the direction of the flow. */
export type Passage = { readonly L: Quantity } & (
  | { readonly type: "slot"; readonly w: Quantity; readonly h: Quantity }
  /** The gap h round a circle d, off centre by the share epsilon of h; a seat crossed over its width is one too. */
  | { readonly type: "annulus"; readonly d: Quantity; readonly h: Quantity; readonly epsilon: Quantity }
  /** A score of three equal sides a. */
  | { readonly type: "triangle"; readonly a: Quantity }
  | { readonly type: "circle"; readonly d: Quantity }
);

/** What pushes, and what is pushed. */
export type Push = { readonly Dp: Quantity; readonly mu: Quantity; readonly rho: Quantity };

export type PassageFlow =
  | { readonly ok: true; readonly flow: Quantity; readonly reynolds: Quantity }
  | { readonly ok: false; readonly problem: NotLaminar };

export type NotLaminar = { readonly type: "not laminar"; readonly reynolds: number; readonly most: number };

/**
 * The laminar flow Q through a passage.
 *
 * It goes with the third power of a gap and the fourth of a bore, and the uncertainty is of first order: `gapTooDoubtful`
 * tells where that is too little. Refused above a Reynolds number of 2000.
 */
export function passageFlow(passage: Passage, push: Push): PassageFlow {
  const flow = laminarFlow(passage, push);
  const reynolds = reynoldsNumber({ rho: push.rho, Q: flow, b: breadth(passage), mu: push.mu });
  return reynolds.value > MOST_REYNOLDS
    ? { ok: false, problem: { type: "not laminar", reynolds: reynolds.value, most: MOST_REYNOLDS } }
    : { ok: true, flow, reynolds };
}

/** Whether a gap is known so badly that its cube says little: u(h)/h above 0.2. */
export const gapTooDoubtful = (h: Quantity): boolean => standardUncertainty(h) > 0.2 * Math.abs(h.value);

/** The flow of two passages side by side. */
export const together = (Q_1: Quantity, Q_2: Quantity): Quantity => sum({ Q_1, Q_2 });

/** The pressure Dp that pushes, of a head and of what stands over the oil. */
export const pushOf = (p_h: Quantity, p_g: Quantity): Quantity => pressures({ p_h, p_g });

/** The pressure p_c with which the dry outer end of a gap h holds fluid back. */
export const holdBack = (gamma: Quantity, h: Quantity): Quantity => capillary({ gamma, h });

/** The head h of fluid that a pressure balances. */
export const headOf = (p: Quantity, rho: Quantity): Quantity => head({ p, rho, g: freeFall });

/** The dynamic viscosity mu of a fluid, from its kinematic viscosity and density at one temperature. */
export const dynamicViscosity = (nu: Quantity, rho: Quantity): Quantity => viscosity({ nu, rho });

function laminarFlow(passage: Passage, { Dp, mu }: Push): Quantity {
  const { L } = passage;
  switch (passage.type) {
    case "slot":
      return slot({ w: passage.w, h: passage.h, Dp, mu, L });
    case "annulus":
      return annulus({ d: passage.d, h: passage.h, epsilon: passage.epsilon, Dp, mu, L });
    case "triangle":
      return triangle({ a: passage.a, Dp, mu, L });
    case "circle":
      return circle({ d: passage.d, Dp, mu, L });
    default:
      return passage satisfies never;
  }
}

/** The breadth b by which Re = rho Q / (b mu): half of the wetted edge, so a slot counts its width once. */
function breadth(passage: Passage): Quantity {
  switch (passage.type) {
    case "slot":
      return passage.w;
    case "annulus":
      return circumference({ d: passage.d });
    case "triangle":
      return halfEdge({ a: passage.a });
    case "circle":
      return halfCircumference({ d: passage.d });
    default:
      return passage satisfies never;
  }
}

const laminar = "F. M. White, Viscous Fluid Flow, 3-3, fully developed duct flow (from memory)";
const edges = "plain geometry: half of the wetted edge";

const slot = formula("Q = w * h^3 * Dp / (12 * mu * L)", { w: mm, h: mm, Dp: Pa, mu: mPas, L: mm, Q: ml_d }, laminar);
const annulus = formula(
  "Q = pi * d * h^3 * Dp * (1 + 1.5 * epsilon^2) / (12 * mu * L)",
  { d: mm, h: mm, Dp: Pa, epsilon: one, mu: mPas, L: mm, Q: ml_d },
  laminar,
);
const triangle = formula(
  "Q = sqrt(3) * a^4 * Dp / (320 * mu * L)",
  { a: mm, Dp: Pa, mu: mPas, L: mm, Q: ml_d },
  laminar,
);
const circle = formula("Q = pi * d^4 * Dp / (128 * mu * L)", { d: mm, Dp: Pa, mu: mPas, L: mm, Q: ml_d }, laminar);

const reynoldsNumber = formula(
  "Re = 2 * rho * Q / (b * mu)",
  { rho: kg_m3, Q: ml_d, b: mm, mu: mPas, Re: one },
  "Reynolds number on the hydraulic diameter, 4 areas over the wetted edge 2 b",
);
const circumference = formula("b = pi * d", { d: mm, b: mm }, edges);
const halfCircumference = formula("b = pi * d / 2", { d: mm, b: mm }, edges);
const halfEdge = formula("b = 3 * a / 2", { a: mm, b: mm }, edges);

const sum = formula("Q = Q_1 + Q_2", { Q_1: ml_d, Q_2: ml_d, Q: ml_d }, "passages side by side");
const pressures = formula("Dp = p_h + p_g", { p_h: Pa, p_g: Pa, Dp: Pa }, "hydrostatics");
const capillary = formula("p_c = 2 * gamma / h", { gamma: N_m, h: mm, p_c: Pa }, "Young and Laplace, a wetted slot");
const head = formula("h = p / (rho * g)", { p: Pa, rho: kg_m3, g: m_s2, h: mm }, "hydrostatics");
const viscosity = formula("mu = nu * rho", { nu: mm2_s, rho: kg_m3, mu: mPas }, "definition of kinematic viscosity");

const MOST_REYNOLDS = 2000;
