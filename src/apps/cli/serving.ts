import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { serverApp } from "../server/app.ts";
import { builtFiles } from "../server/builtFiles.ts";
import { type Listening, listen } from "../server/listen.ts";
import { usualPort } from "../server/port.ts";
import { checkout } from "./checkout.ts";
import { mistaken } from "./mistake.ts";
import { engine } from "./version.ts";

/** The built web app, served at the port that was typed. @throws InputMistake if the port cannot be had or the web app is not built. */
export async function serving(text: string | undefined): Promise<Listening> {
  const port = portFrom(text);
  const folder = fileURLToPath(new URL("dist/web", checkout));
  if (!existsSync(`${folder}/index.html`)) throw mistaken("dist/web", null, "the built web app; npm start builds it");
  const app = serverApp({ files: builtFiles(folder), version: engine });
  const served = await listen((request) => app.fetch(request), port);
  if (typeof served === "object") return served;
  const another = `as --port ${port < 65_535 ? port + 1 : usualPort}, or --port 0 for any free one`;
  const accepted = { taken: "a port that no other program holds", "not allowed": "a port that this user may open" };
  throw mistaken("--port", String(port), `${accepted[served]}, ${another}`);
}

/** @throws InputMistake unless it is a whole number from 0 to 65535. */
function portFrom(text: string | undefined): number {
  if (text === undefined) return usualPort;
  const port = /^\d{1,5}$/.test(text) ? Number(text) : Number.NaN;
  if (!(port <= 65_535)) throw mistaken("--port", text, `a whole number from 0 to 65535, as ${usualPort}`);
  return port;
}
