import { type BrowserContext, type BrowserContextOptions, chromium, type Page, type Request } from "playwright-core";
import { afterAll, inject, onTestFinished } from "vitest";

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
  /** Lines of the console, errors nobody caught, requests that failed. */
  readonly complaints: readonly string[];
};

/** Opens a route of the bench, as "/", and waits until it is drawn. Closed when the test is over. */
export async function openedPage(route: string, options: BrowserContextOptions = {}): Promise<OpenedPage> {
  const context = await browser.newContext({ viewport: phone, ...options });
  onTestFinished(() => context.close());
  const [asked, complaints]: [string[], string[]] = [[], []];
  // What the worker fetches behind the page, for when there is no network, the page did not ask for, and does not miss.
  const ofPage = (it: Request): boolean => it.serviceWorker() === null;
  context.on("request", (it) => ofPage(it) && asked.push(it.url()));
  context.on("requestfailed", (it) => ofPage(it) && complaints.push(`${it.url()}: ${it.failure()?.errorText}`));
  context.on("response", (it) => it.status() >= 400 && complaints.push(`${it.url()}: ${it.status()}`));
  context.on("console", (it) => complaints.push(`${it.type()}: ${it.text()}`));
  context.on("weberror", (it) => complaints.push(String(it.error())));
  const page = await context.newPage();
  await page.goto(`${address}#${route}`);
  await page.locator("#main *").first().waitFor();
  return { page, context, asked, complaints };
}

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
