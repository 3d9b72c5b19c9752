import { gzipSync } from "node:zlib";
import type { Page } from "playwright-core";

/** Script that the first opening fetches, kB (1000 bytes) after gzip -9: what the page runs, and what its worker runs. */
export type LoadedScript = { readonly page_kB: number; readonly worker_kB: number };

/** Opens the address in a fresh page and weighs every script that comes. */
export async function loadedScript(page: Page, address: string): Promise<LoadedScript> {
  const scripts: { readonly url: string; readonly gz: number }[] = [];
  const coming: Promise<unknown>[] = [];
  page.on("response", (it) => {
    if (!/javascript/.test(it.headers()["content-type"] ?? "")) return;
    coming.push(it.body().then((body) => scripts.push({ url: it.url(), gz: gzipSync(body, { level: 9 }).length })));
  });
  const workers: string[] = [];
  page.on("worker", (it) => workers.push(it.url()));
  await page.goto(address, { waitUntil: "networkidle" });
  await Promise.all(coming);
  const sum = (own: boolean): number =>
    scripts.filter(({ url }) => workers.includes(url) === own).reduce((all, { gz }) => all + gz, 0) / 1000;
  return { page_kB: sum(false), worker_kB: sum(true) };
}
