import { gzipSync } from "node:zlib";
import type { Browser, BrowserContext, BrowserContextOptions } from "playwright-core";

/** Script that the opening of a kept port fetches, kB (1000 bytes) after gzip -9. */
export type LoadedScript = {
  /** What the page itself runs until its first figure stands. */
  readonly page_kB: number;
  /** What the worker runs that reckons that figure. */
  readonly worker_kB: number;
  /** What is fetched after it: remedies, reasons, cautions, drawings, papers. */
  readonly later_kB: number;
};

/**
 * Opens the bench with a kept port and weighs every script that comes. What a bench without a port fetches is let through, and the
 * figure has to stand with that alone; then everything is.
 *
 * @throws if no figure stands, or if the answer is whole although the rest was held back.
 */
export async function loadedScript(
  browser: Browser,
  phone: BrowserContextOptions,
  address: string,
): Promise<LoadedScript> {
  const page = await scriptsOf(browser, phone, address, { kept: false, only: null });
  const needed = await scriptsOf(browser, phone, address, { kept: true, only: [...page.keys()] });
  const all = await scriptsOf(browser, phone, address, { kept: true, only: null });
  const sum = (taken: (url: string) => boolean): number =>
    [...all].reduce((total, [url, { gz }]) => total + (taken(url) ? gz : 0), 0) / 1000;
  const inWorker = (url: string): boolean => needed.get(url)?.inWorker === true;
  return {
    page_kB: sum((url) => needed.has(url) && !inWorker(url)),
    worker_kB: sum(inWorker),
    later_kB: sum((url) => !needed.has(url)),
  };
}

/** A hurt port as the bench keeps it: what has to be said before there is a figure. */
const keptTexts = {
  "joint.kind": "gear case level",
  thread: "M20x1.5",
  "case.material": "cast aluminium",
  "asked.crack": "no",
  "asked.pressure": "none",
  "asked.reaches": "nothing",
  "asked.people": "no",
  "asked.repairedBefore": "no",
  "asked.breather": "free",
  "left.turns": "4",
  "left.condition": "good",
  "seal.kind": "bonded seal",
};

type Scripts = ReadonlyMap<string, { readonly gz: number; readonly inWorker: boolean }>;

async function scriptsOf(
  browser: Browser,
  phone: BrowserContextOptions,
  address: string,
  { kept, only }: { readonly kept: boolean; readonly only: readonly string[] | null },
): Promise<Scripts> {
  // What the worker fetches that serves without a network is no part of the opening.
  const context: BrowserContext = await browser.newContext({ ...phone, serviceWorkers: "block" });
  try {
    const page = await context.newPage();
    const port = JSON.stringify({ texts: keptTexts, open: ["left"], way: null });
    if (kept) await context.addInitScript((it) => localStorage.setItem("turnsleft.port", it), port);
    if (only)
      await context.route(/\.js$/, (route) =>
        only.includes(route.request().url()) ? route.continue() : route.abort("internetdisconnected"),
      );
    const workers: string[] = [];
    page.on("worker", (it) => workers.push(it.url()));
    const answered = new Set<string>();
    const coming: Promise<readonly [string, number]>[] = [];
    page.on("response", (it) => {
      if (!/javascript/.test(it.headers()["content-type"] ?? "")) return;
      answered.add(it.url());
      coming.push(it.body().then((body) => [it.url(), gzipSync(body, { level: 9 }).length] as const));
    });
    const ready = page.waitForEvent("worker");
    await page.goto(address, { waitUntil: "networkidle" });
    await ready;
    while (!workers.every((url) => answered.has(url))) await page.waitForTimeout(20);
    if (kept) await page.locator(".main-figure b").waitFor();
    if (only) await page.getByText("could not be fetched").first().waitFor();
    await page.waitForLoadState("networkidle");
    const scripts = await Promise.all(coming);
    return new Map(scripts.map(([url, gz]) => [url, { gz, inWorker: workers.includes(url) }]));
  } finally {
    await context.close();
  }
}
