import type { FactOf } from "../facts/fact.ts";
import type { FigureId, PortId } from "../facts/ids.ts";
import type { Projection } from "../projection.ts";

export type BookFigureNoted = FactOf<"BookFigureNoted">["is"];

/** The workshop's own book: figures with their sources, by port. Two sources may disagree; both stand. */
export type Book = Readonly<Record<PortId, readonly BookFigureNoted[]>>;

export const book: Projection<Book> = {
  empty: {},

  apply(state, { fact }) {
    switch (fact.type) {
      case "BookFigureNoted": {
        const { port, figure } = fact.is;
        return { ...state, [port]: [...without(state[port], figure), fact.is] };
      }
      case "BookFigureStruck":
        return Object.fromEntries(
          Object.entries(state).map(([port, figures]) => [port, without(figures, fact.figure)]),
        ) as Book;
      default:
        return state;
    }
  },
};

const without = (figures: readonly BookFigureNoted[] | undefined, figure: FigureId): readonly BookFigureNoted[] =>
  (figures ?? []).filter((it) => it.figure !== figure);
