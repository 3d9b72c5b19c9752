import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { chromiumHere } from "./chromiumHere.ts";
import { started } from "./startedTurnsleft.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the bench is served. */
    readonly address: string;
    /** Where the one browser of this run is reached. */
    readonly browser: string;
  }
}

const serve = ["dist/src/apps/cli/main.js", "start", "--port", "0", "--json"];

/** One served bench and one browser for all files of a run. @returns what ends both. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const browser = await chromium.launchServer({ executablePath: chromiumHere() });
  const server = await started(process.execPath, serve, /\}\n$/);
  project.provide("address", JSON.parse(server.printed).address);
  project.provide("browser", browser.wsEndpoint());
  return async () => {
    await browser.close();
    server.process.kill("SIGTERM");
    await server.ended;
  };
}
