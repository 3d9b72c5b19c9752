import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { inject, onTestFinished } from "vitest";
import { browser, phone } from "../openedPage.ts";
import { program, ran } from "../ran.ts";
import { started } from "../startedTurnsleft.ts";

/** The invented workshop, served by a process of its own on a file of SQLite. */
export type ServedWorkshop = {
  readonly address: string;
  readonly folder: string;
  /** Six digits as the workshop's own screen shows them. */
  readonly code: () => string;
  readonly close: () => Promise<void>;
};

/** Starts it for one test. */
export async function servedWorkshop(holds?: Parameters<typeof startedWorkshop>[0]): Promise<ServedWorkshop> {
  const workshop = await startedWorkshop(holds);
  onTestFinished(workshop.close);
  return workshop;
}

/** Starts it; whoever did closes it. */
export async function startedWorkshop(
  holds: "the invented workshop" | "nothing yet" = "the invented workshop",
): Promise<ServedWorkshop> {
  const folder = mkdtempSync(join(tmpdir(), "turnsleft-journal-"));
  if (holds === "the invented workshop") cpSync(inject("inventedWorkshop"), folder, { recursive: true });
  const server = await started(
    process.execPath,
    [program, "start", "--port", "0", "--json", "--data", folder],
    /\}\n$/,
  );
  const { address } = JSON.parse(server.printed);
  return {
    address,
    folder,
    code: () => JSON.parse(ran("pair", "--data", folder, "--json")).code,
    async close() {
      server.process.kill("SIGTERM");
      await server.ended;
      rmSync(folder, { recursive: true });
    },
  };
}

/** A device that was paired by tapping its six digits, on the standing sheet. */
export type Device = { readonly page: Page; readonly context: BrowserContext };

export async function pairedDevice(workshop: ServedWorkshop, options: BrowserContextOptions = {}): Promise<Device> {
  const context = await browser.newContext({ viewport: phone, ...options });
  onTestFinished(() => context.close());
  return paired(workshop, context);
}

/** Pairs a context that is there already. */
export async function paired(workshop: ServedWorkshop, context: BrowserContext): Promise<Device> {
  const page = await context.newPage();
  await page.goto(`${workshop.address}#/standing`);
  await page.getByRole("button", { name: "phone" }).click();
  for (const digit of workshop.code()) await page.getByRole("button", { name: digit, exact: true }).click();
  await page.getByRole("button", { name: "Pair this device" }).click();
  await kept(page, /^✓At the workshop\./);
  // Where the entries stand is told before what they show.
  await onWall(page).waitFor();
  return { page, context };
}

/** Waits until the line about where the entries stand says so. */
export async function kept(page: Page, says: RegExp): Promise<void> {
  await page.locator(".kept").filter({ hasText: says }).waitFor();
}

/** What is written of the workshop itself, on the standing sheet. */
export const onWall = (page: Page) => page.getByRole("region", { name: "Workshop", exact: true });

/** Goes to a job and waits until its page stands there, and not another one's any more. */
export async function onJob(workshop: ServedWorkshop, page: Page, job: string): Promise<void> {
  await page.goto(`${workshop.address}#/job/${job}`);
  await page.locator("#job", { hasText: job }).waitFor();
  await log(page).first().waitFor();
}

/** The part of a job's page that is about one port, unit or the machine. */
export const at = (page: Page, called: string) => page.getByRole("region", { name: called });

/** Taps in the form that stands open. */
export const form = (page: Page) => page.locator("form.act");
export const tap = (page: Page, question: string, word: string | RegExp) =>
  form(page).getByRole("group", { name: question, exact: true }).getByRole("button", { name: word }).click();
export const write = (page: Page) => form(page).getByRole("button", { name: "Write it down" }).click();

/** The lines of the log, the latest first. */
export const log = (page: Page) => page.locator("ol.log > li");
