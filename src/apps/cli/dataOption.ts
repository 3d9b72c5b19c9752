import { resolve } from "node:path";
import { usualFolder } from "../../stores/dataFolder.ts";

export const dataFlags = "--data <folder>";
export const dataHelp = "the folder with the journal; the platform's usual place unless told";

/** The folder that was named, or the platform's usual place. */
export const dataFolder = (given: string | undefined): string =>
  given === undefined ? usualFolder(process.platform, process.env) : resolve(given);
