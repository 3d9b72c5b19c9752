import { expect, test } from "vitest";
import { address, openedPage, routesOf } from "./openedPage.ts";

test("the page runs under the strict policy without a word in the console, and asks nobody but its own server", async () => {
  const { page, asked, complaints } = await openedPage("/");
  const routes = await routesOf(page);
  for (const route of routes) expect(await page.title(), route).toMatch(/Turnsleft/);
  expect(complaints).toEqual([]);
  expect(asked.length).toBeGreaterThan(2);
  expect(asked.filter((it) => !it.startsWith(address) && !it.startsWith("data:") && !it.startsWith("blob:"))).toEqual(
    [],
  );
});

test("the policy is in force: what the page must not do is refused and complained of", async () => {
  const { page, complaints } = await openedPage("/");
  const told = await page.evaluate(async () => {
    const script = document.createElement("script");
    script.textContent = "window.inline = true";
    document.head.append(script);
    const elsewhere = await fetch("http://192.0.2.1/").then(
      () => "reached",
      () => "refused",
    );
    // A timer, because what this very call evaluates is let through for the test's sake.
    const evaluated = await new Promise((resolve) => {
      setTimeout(() => {
        try {
          resolve(new Function("return 'ran'")());
        } catch {
          resolve("refused");
        }
      });
    });
    return { inline: "inline" in window, elsewhere, evaluated };
  });
  expect(told).toEqual({ inline: false, elsewhere: "refused", evaluated: "refused" });
  await expect.poll(() => complaints.join("\n")).toMatch(/Content Security Policy/);
});
