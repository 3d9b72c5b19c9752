import type { FactOf } from "../facts/fact.ts";
import type { FluidId, SealantId } from "../facts/ids.ts";
import type { Projection } from "../projection.ts";

export type Fluid = Omit<FactOf<"FluidStocked">, "type">;
export type Sealant = Omit<FactOf<"SealantStocked">, "type">;

export type Stock = {
  readonly fluids: Readonly<Record<FluidId, Fluid>>;
  readonly sealants: Readonly<Record<SealantId, Sealant>>;
};

/** The fluids and sealants on the shelf, with batch and shelf date; what is used up is gone from it. */
export const stock: Projection<Stock> = {
  empty: { fluids: {}, sealants: {} },

  apply(state, { fact }) {
    switch (fact.type) {
      case "FluidStocked": {
        const { type: _, ...fluid } = fact;
        return { ...state, fluids: { ...state.fluids, [fluid.fluid]: fluid } };
      }
      case "SealantStocked": {
        const { type: _, ...sealant } = fact;
        return { ...state, sealants: { ...state.sealants, [sealant.sealant]: sealant } };
      }
      case "StockUsedUp": {
        const { [fact.stock as FluidId]: _fluid, ...fluids } = state.fluids;
        const { [fact.stock as SealantId]: _sealant, ...sealants } = state.sealants;
        return { fluids, sealants };
      }
      default:
        return state;
    }
  },
};
