import type { OwnRings } from "./plugRings.ts";
import { fromMemory } from "./source.ts";

const bondedSource = fromMemory("bonded seals for G threads, trade lists");

/** What closes plugs of G 1/8 to G 1, by size. DIN 7603, DIN 908 and DIN 910; bonded seals from trade lists; from memory. */
export const pipeRings: Readonly<Record<string, OwnRings>> = {
  "1/8": { flat: [10, 13.5, 1], bonded: [10.4, 15.9, 2], collar: 14, bondedSource },
  "1/4": { flat: [14, 18, 1.5], bonded: [13.7, 20.6, 2], collar: 18, bondedSource },
  "3/8": { flat: [17, 21, 1.5], bonded: [17.3, 23.8, 2], collar: 22, bondedSource },
  "1/2": { flat: [21, 26, 1.5], bonded: [21.5, 28.6, 2.5], collar: 26, bondedSource },
  "3/4": { flat: [27, 32, 2], bonded: [27.1, 34.9, 2.5], collar: 32, bondedSource },
  "1": { flat: [33, 39, 2], bonded: [33.9, 42.8, 3.4], collar: 39, bondedSource },
};
