import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
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

const serve = ["dist/src/apps/cli/main.js", "start", "--port", "0", "--json", "--data"];

/** One served bench and one browser for all files of a run. @returns what ends both. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const browser = await chromium.launchServer({ executablePath: chromiumHere() });
  const folder = mkdtempSync(join(tmpdir(), "turnsleft-browser-"));
  const server = await started(process.execPath, [...serve, folder], /\}\n$/);
  project.provide("address", JSON.parse(server.printed).address);
  project.provide("browser", browser.wsEndpoint());
  return async () => {
    await browser.close();
    server.process.kill("SIGTERM");
    await server.ended;
    rmSync(folder, { recursive: true });
  };
}
