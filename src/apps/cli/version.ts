import { readFileSync } from "node:fs";

/** The version of the engine, as package.json states it. */
export const engine: string = version();

function version(): string {
  // Sources lie three folders deep, what is built from them four.
  for (const up of ["../../../", "../../../../"]) {
    try {
      const { name, version } = JSON.parse(readFileSync(new URL(`${up}package.json`, import.meta.url), "utf8"));
      if (name === "turnsleft") return version;
    } catch {}
  }
  throw new Error("package.json of turnsleft was not found beside the program");
}
