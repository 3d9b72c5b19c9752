import { readFileSync } from "node:fs";
import { checkout } from "./checkout.ts";

/** The version of the engine, as package.json states it. */
export const engine: string = JSON.parse(readFileSync(new URL("package.json", checkout), "utf8")).version;
