import type { ComponentType } from "preact";
import { BenchPage } from "../bench/BenchPage.tsx";

/** One bench: where it stands, what it is called, its page. A further one is one more line in the list. */
export type Bench = {
  readonly path: string;
  readonly name: string;
  readonly Page: ComponentType;
};

export const benches: readonly Bench[] = [{ path: "/", name: "Torn thread", Page: BenchPage }];
