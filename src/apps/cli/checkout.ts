import { existsSync } from "node:fs";

/** The folder that holds package.json, as an address that ends in a slash. */
export const checkout: URL = found();

function found(): URL {
  // Sources lie three folders deep, what is built from them four.
  for (const up of ["../../../", "../../../../"]) {
    const folder = new URL(up, import.meta.url);
    if (existsSync(new URL("package.json", folder))) return folder;
  }
  throw new Error("package.json of turnsleft was not found beside the program");
}
