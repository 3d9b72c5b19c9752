import { readFileSync } from "node:fs";
import type * as z from "zod/mini";
import { StoreTrouble } from "../journal/storeTrouble.ts";
import { fileTroubleOf } from "./fileTrouble.ts";

/** The document of a small file of ours, null where the file is not there. @throws StoreTrouble if it is not what it should be */
export function documentIn<Schema extends z.ZodMiniType>(path: string, schema: Schema): z.infer<Schema> | null {
  let text: string;
  try {
    text = readFileSync(path, "utf8");
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === "ENOENT") return null;
    throw fileTroubleOf(path, cause);
  }
  try {
    return schema.parse(JSON.parse(text));
  } catch (cause) {
    throw new StoreTrouble("damaged", path, cause);
  }
}
