import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

// As text: the policy lets no script of ours in, and what a debugger evaluates is not held by it.
const source = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Rules that are off until asked for: contrast of 7:1 (WCAG 2.2, 1.4.6) and targets of 24 px (2.5.8). */
const more = { "color-contrast-enhanced": { enabled: true }, "target-size": { enabled: true } };

/** What axe finds against the page as it stands: one line for each rule, with the first places. */
export async function axeFindings(page: Page): Promise<readonly string[]> {
  if (await page.evaluate(() => !("axe" in globalThis))) await page.evaluate(source);
  const violations = await page.evaluate(async (rules) => {
    const { axe } = globalThis as unknown as { readonly axe: typeof import("axe-core") };
    return (await axe.run(document, { rules, resultTypes: ["violations"] })).violations;
  }, more);
  return violations.map(({ id, help, nodes }) => {
    const places = nodes
      .slice(0, 4)
      .map((it) => `${it.target.join(" ")} [${it.failureSummary?.split("\n")[1]?.trim()}]`);
    return `${id}: ${help}; ${nodes.length}: ${places.join(", ")}`;
  });
}
