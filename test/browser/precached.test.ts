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
async function lookedAfter(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => null));
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

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

test("a newer version is fetched behind the page, also while another one is opened, waits under the hand, and is taken over by a tap", async () => {
  const built = mkdtempSync(join(tmpdir(), "turnsleft-built-"));
  onTestFinished(() => rmSync(built, { recursive: true }));
  cpSync("dist/web", built, { recursive: true });
  const older = await servedFrom(built, 0);
  const context = await browser.newContext();
  onTestFinished(() => context.close());
  const page = await context.newPage();
  await page.goto(older.address);
  await lookedAfter(page);
  await older.close();

  changed(join(built, "index.html"), '<html lang="en">', '<html lang="en" data-version="newer">');
  changed(join(built, "sw.js"), /\\"version\\":\\"\w+\\"/, '\\"version\\":\\"newer\\"');
  let fetched = (): void => {};
  const rest = new Promise<void>((resolve) => {
    fetched = resolve;
  });
  const newer = await servedFrom(built, older.port, rest);
  onTestFinished(() => newer.close());
  await page.reload();
  await expect.poll(() => beingFetched(page)).toBe(true);
  await page.goto(`${older.address}#/standing`);
  await page.locator(".pad").waitFor();
  // The page has asked by then what is on its way; if it has not, it is told without asking, and this holds less.
  await page.waitForTimeout(500);
  fetched();
  const load = page.getByRole("button", { name: "Load it" });
  await load.waitFor();
  expect(await version(page)).toBeUndefined();
  await load.click();
  await page.waitForFunction(() => document.documentElement.dataset["version"] === "newer");
  await load.waitFor({ state: "detached" });
  expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(1);
});

const beingFetched = (page: Page): Promise<boolean> =>
  page.evaluate(async () => Boolean((await navigator.serviceWorker.getRegistration())?.installing));

const version = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => document.documentElement.dataset["version"]);

/** Serves what was built, one script that no page needs at first not before it is `asked` to. */
async function servedFrom(folder: string, port: number, asked = Promise.resolve()): Promise<Listening> {
  const app = serverApp({ files: builtFiles(folder), version: "1" });
  const answered = async (request: Request): Promise<Response> => {
    if (request.url.includes("/heldShown-")) await asked;
    return app.fetch(request);
  };
  const heard = await listen(answered, port);
  if (typeof heard !== "object") throw new Error(heard);
  return heard;
}

function changed(file: string, from: string | RegExp, to: string): void {
  const before = readFileSync(file, "utf8");
  const after = before.replace(from, to);
  expect(after).not.toBe(before);
  writeFileSync(file, after);
}
