import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { axeFindings } from "./axe.ts";
import { openedPage, phone, tablet } from "./openedPage.ts";
import { type Started, started } from "./startedTurnsleft.ts";

const folder = mkdtempSync(join(tmpdir(), "turnsleft-"));
let run: Started;
let trust: { readonly sha256: string; readonly words: readonly string[] };
let address: string;
beforeAll(async () => {
  const serve = ["dist/src/apps/cli/main.js", "start", "--port", "0", "--lan", "--json", "--data", folder];
  run = await started(process.execPath, serve, /\}\n$/);
  const { lan } = JSON.parse(run.printed);
  trust = lan.trust;
  // As a telephone types it that knows nothing yet: no name, no HTTPS.
  address = `http://127.0.0.1:${lan.port}/`;
});
afterAll(async () => {
  run.process.kill("SIGTERM");
  await run.ended;
  rmSync(folder, { recursive: true });
});

test.each([
  ["light, on a phone", "light", phone],
  ["dark, on a phone", "dark", phone],
  ["light, on a tablet", "light", tablet],
] as const)("whoever comes plainly is told how to trust this server: %s", async (_, colorScheme, viewport) => {
  const { page, context } = await openedPage("/", { colorScheme, viewport });
  const complaints: string[] = [];
  context.on("console", (it) => complaints.push(it.text()));
  await page.goto(address);
  expect(page.url()).toBe(`${address}trust`);
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe("Trust this workshop's computer");
  expect(await page.locator(".figures").textContent()).toBe(trust.sha256);
  expect(await page.locator("strong").textContent()).toBe(trust.words.join(" "));
  expect(await axeFindings(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
  expect(complaints).toEqual([]);
});

test("its certificate is one tap away, as a file", async () => {
  const { page } = await openedPage("/");
  await page.goto(`${address}trust`);
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("link", { name: "The workshop's certificate" }).click(),
  ]);
  expect(file.suggestedFilename()).toBe("turnsleft-authority.crt");
});
