import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { chromiumHere } from "./chromiumHere.ts";
import { ran } from "./ran.ts";
import { started } from "./startedTurnsleft.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the bench is served. */
    readonly address: string;
    /** Where the one browser of this run is reached. */
    readonly browser: string;
    /** The folder of the invented workshop, to be copied: it is lived through once for all tests. */
    readonly inventedWorkshop: string;
  }
}

const serve = ["dist/src/apps/cli/main.js", "start", "--port", "0", "--json", "--data"];

/** One served bench and one browser for all files of a run. @returns what ends both. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const browser = await chromium.launchServer({ executablePath: chromiumHere() });
  const folder = mkdtempSync(join(tmpdir(), "turnsleft-browser-"));
  const invented = join(folder, "invented");
  ran("demo", "--data", invented);
  const server = await started(process.execPath, [...serve, join(folder, "bench")], /\}\n$/);
  project.provide("address", JSON.parse(server.printed).address);
  project.provide("browser", browser.wsEndpoint());
  project.provide("inventedWorkshop", invented);
  return async () => {
    await browser.close();
    server.process.kill("SIGTERM");
    await server.ended;
    rmSync(folder, { recursive: true });
  };
}
