import { type BrowserContext, type BrowserContextOptions, chromium, type Page, type Request } from "playwright-core";
import { afterAll, expect, inject, onTestFinished } from "vitest";

/** Where the bench is served in this run. */
export const address = inject("address");

export const browser = await chromium.connect(inject("browser"));
afterAll(() => browser.close());

/** A phone held upright, and a tablet. CSS pixels. */
export const phone = { width: 360, height: 740 };
export const tablet = { width: 1280, height: 800 };

/** A page of its own, with everything it asked for and everything it complained of. */
export type OpenedPage = {
  readonly page: Page;
  readonly context: BrowserContext;
  /** The address of every request, of the page and of its workers. */
  readonly asked: readonly string[];
  /** Those of them that were answered to the end. */
  readonly came: readonly string[];
  /** Lines of the console, errors nobody caught, requests that failed. */
  readonly complaints: readonly string[];
};

/** What is said where a test wants no worker that serves without a network: that is no complaint of the page. */
const blocked = "Service Worker registration blocked by Playwright";

/** Opens a route of the bench, as "/", and waits until it is drawn. Closed when the test is over. */
export async function openedPage(route: string, options: BrowserContextOptions = {}): Promise<OpenedPage> {
  const context = await browser.newContext({ viewport: phone, ...options });
  onTestFinished(() => context.close());
  const [asked, came, complaints]: [string[], string[], string[]] = [[], [], []];
  // What the worker fetches behind the page, for when there is no network, the page did not ask for, and does not miss.
  const ofPage = (it: Request): boolean => it.serviceWorker() === null;
  context.on("request", (it) => ofPage(it) && asked.push(it.url()));
  context.on("requestfinished", (it) => ofPage(it) && came.push(it.url()));
  context.on("requestfailed", (it) => ofPage(it) && complaints.push(`${it.url()}: ${it.failure()?.errorText}`));
  context.on("response", (it) => it.status() >= 400 && complaints.push(`${it.url()}: ${it.status()}`));
  context.on("console", (it) => it.text() !== blocked && complaints.push(`${it.type()}: ${it.text()}`));
  context.on("weberror", (it) => complaints.push(String(it.error())));
  const page = await context.newPage();
  await page.goto(`${address}#${route}`);
  await page.locator("#main *").first().waitFor();
  return { page, context, asked, came, complaints };
}

/**
 * Takes the network away once what the page fetches behind its first answer has come: scripts that the page or one of its workers
 * asks for by itself, by the beginning of their names, with all that these need.
 */
export async function cutOff(opened: OpenedPage, scripts: Readonly<Record<"page" | "workers", readonly string[]>>) {
  const { page, context, asked, came } = opened;
  // When it comes to the icon is the browser's own affair.
  await context.route(/\/mark-[^/]*\.svg$/, (route) => route.fulfill({ contentType: "image/svg+xml", body: icon }));
  const fetched = async (name: string, places: readonly Pick<Page, "evaluate">[]): Promise<void> => {
    const at = () => asked.find((it) => it.includes(`/${name}-`));
    await expect.poll(at, { message: name }).toBeDefined();
    // Asked for twice it is fetched once, and is there when everything is that it needs.
    await Promise.all(places.map((it) => it.evaluate(`import(${JSON.stringify(at())}).then(() => null)`)));
  };
  for (const name of scripts.page) await fetched(name, [page]);
  for (const name of scripts.workers) await fetched(name, page.workers());
  await expect.poll(() => asked.filter((it) => !came.includes(it))).toEqual([]);
  await context.setOffline(true);
}

const icon = '<svg xmlns="http://www.w3.org/2000/svg"/>';

/** Every route that the bench itself links to, found from the first page on. */
export async function routesOf(page: Page): Promise<readonly string[]> {
  const routes = ["/"];
  for (const route of routes) {
    await page.goto(`${address}#${route}`, { waitUntil: "networkidle" });
    const links = await page.locator("a[href^='#/']").evaluateAll((all) => all.map((it) => it.getAttribute("href")));
    for (const link of links) {
      const next = link?.slice(1) ?? "/";
      if (!routes.includes(next)) routes.push(next);
    }
  }
  return routes;
}
