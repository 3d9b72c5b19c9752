import type { Projection } from "../projection.ts";
import { type Book, book } from "./book.ts";
import { type Instruments, instruments } from "./instruments.ts";
import { type Machines, machines } from "./machines.ts";
import { type People, people } from "./people.ts";
import { type Stock, stock } from "./stock.ts";

/** All that is known of the workshop itself. */
export type Shop = {
  readonly people: People;
  readonly machines: Machines;
  readonly instruments: Instruments;
  readonly stock: Stock;
  readonly book: Book;
};

export const shop: Projection<Shop> = {
  empty: {
    people: people.empty,
    machines: machines.empty,
    instruments: instruments.empty,
    stock: stock.empty,
    book: book.empty,
  },

  apply: (state, entry) => ({
    people: people.apply(state.people, entry),
    machines: machines.apply(state.machines, entry),
    instruments: instruments.apply(state.instruments, entry),
    stock: stock.apply(state.stock, entry),
    book: book.apply(state.book, entry),
  }),
};
