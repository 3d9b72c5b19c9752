import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect, onTestFinished, test } from "vitest";
import { serverApp } from "../../src/apps/server/app.ts";
import { builtFiles } from "../../src/apps/server/builtFiles.ts";
import { type Listening, listen } from "../../src/apps/server/listen.ts";
import { answered, exampleSentences } from "./benchPage.ts";
import { address, browser, openedPage, routesOf } from "./openedPage.ts";

/** Waits until the worker that serves without a network has all its files and looks after the page. */
const lookedAfter = (page: Page): Promise<unknown> =>
  page.waitForFunction(
    async () => (await navigator.serviceWorker.ready) && navigator.serviceWorker.controller !== null,
  );

test("once it was opened the whole app opens again without a network, on every route", async () => {
  const { page, context, complaints } = await openedPage("/");
  const routes = await routesOf(page);
  await lookedAfter(page);
  await context.setOffline(true);
  for (const route of routes) {
    await page.goto("about:blank");
    await page.goto(`${address}#${route}`);
    await page.locator("#main *").first().waitFor();
    await expect
      .poll(() => page.locator("#main").textContent(), { message: route })
      .not.toMatch(/One moment|could not be fetched/);
  }
  await page.goto(`${address}#/`);
  await page.getByRole("button", { name: "Show the worked example" }).click();
  await answered(page, exampleSentences());
  // Whoever leaves a page breaks off what it was fetching ahead.
  expect(complaints.filter((it) => !it.includes("ERR_ABORTED"))).toEqual([]);
});

test("a newer version is fetched behind the page, waits under the hand, and is taken over by a tap", async () => {
  const built = mkdtempSync(join(tmpdir(), "turnsleft-built-"));
  onTestFinished(() => rmSync(built, { recursive: true }));
  cpSync("dist/web", built, { recursive: true });
  const older = await servedFrom(built, 0);
  const context = await browser.newContext();
  onTestFinished(() => context.close());
  const page = await context.newPage();
  await page.goto(`${older.address}#/standing`);
  await lookedAfter(page);
  await older.close();

  changed(join(built, "index.html"), '<html lang="en">', '<html lang="en" data-version="newer">');
  changed(join(built, "sw.js"), /\\"version\\":\\"\w+\\"/, '\\"version\\":\\"newer\\"');
  const newer = await servedFrom(built, older.port);
  onTestFinished(() => newer.close());
  await page.reload();
  const load = page.getByRole("button", { name: "Load it" });
  await load.waitFor();
  expect(await version(page)).toBeUndefined();
  await load.click();
  await page.waitForFunction(() => document.documentElement.dataset["version"] === "newer");
  await load.waitFor({ state: "detached" });
  expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(1);
});

const version = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => document.documentElement.dataset["version"]);

async function servedFrom(folder: string, port: number): Promise<Listening> {
  const heard = await listen(serverApp({ files: builtFiles(folder), version: "1" }).fetch, port);
  if (typeof heard !== "object") throw new Error(heard);
  return heard;
}

function changed(file: string, from: string | RegExp, to: string): void {
  const before = readFileSync(file, "utf8");
  const after = before.replace(from, to);
  expect(after).not.toBe(before);
  writeFileSync(file, after);
}
