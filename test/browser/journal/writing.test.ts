import type { Page } from "playwright-core";
import { afterAll, describe, expect, test } from "vitest";
import { address, openedPage } from "../openedPage.ts";
import { ran } from "../ran.ts";
import {
  at,
  form,
  kept,
  log,
  onJob,
  onWall,
  pairedDevice,
  type ServedWorkshop,
  servedWorkshop,
  startedWorkshop,
  tap,
  write,
} from "./servedWorkshop.ts";

// For all that leaves the others alone; who sets a PIN or shuts a device out has a workshop of its own.
const shared = await startedWorkshop();
afterAll(shared.close);

async function deviceOnJob(workshop: ServedWorkshop, job: string) {
  const device = await pairedDevice(workshop);
  await onJob(workshop, device.page, job);
  return device;
}

const first = (page: Page) => log(page).first();

describe("a shut gate", () => {
  test("says why, keeps what was typed, and no name opens the release of a machine with a plug by hand", async () => {
    const workshop = shared;
    const { page } = await deviceOnJob(workshop, "0413");
    const before = await log(page).count();
    await at(page, "Family car").getByRole("button", { name: "Released" }).click();
    await form(page).getByRole("textbox", { name: "In your words" }).fill("he waits outside");
    await tap(page, "Who writes?", "Sefa Oyelund");
    await write(page);
    const shut = form(page).getByRole("alert");
    await expect.poll(() => shut.textContent()).toContain("Sump drain: not tightened");
    expect(await shut.textContent()).toContain("No name opens this.");
    expect(await form(page).getByRole("textbox", { name: "In your words" }).inputValue()).toBe("he waits outside");
    await page.reload();
    await at(page, "Family car").getByRole("button", { name: "Released" }).click();
    await expect
      .poll(() => form(page).getByRole("textbox", { name: "In your words" }).inputValue())
      .toBe("he waits outside");
    expect(await log(page).count()).toBe(before);
  });

  test("opens by name and reason where it may: both are written in one breath", async () => {
    const workshop = shared;
    const { page } = await deviceOnJob(workshop, "0413");
    await at(page, "Sump drain").getByRole("button", { name: "Torqued" }).click();
    await form(page).getByRole("textbox", { name: "Set on the wrench" }).fill("34");
    await tap(page, "Which wrench?", /^TW-2/);
    await tap(page, "Did it click, or show it?", "yes");
    await tap(page, "Who pulled?", "Sefa Oyelund");
    await tap(page, "Who writes?", "Jory Anselm");
    await form(page).locator("summary", { hasText: "Seldom needed" }).click();
    await tap(page, "Was this a second pull to check the click?", "no");
    await write(page);
    await expect.poll(() => form(page).getByRole("alert").textContent()).toContain("only the one who pulled");
    await form(page).locator("summary", { hasText: "Take it on myself" }).click();
    await form(page).getByRole("button", { name: "Take it on myself, and write it" }).click();
    await expect.poll(() => form(page).locator("#field-override-reason-problem").textContent()).toContain("a reason");
    await form(page).getByRole("textbox", { name: "Why", exact: true }).fill("her hands are full of oil");
    await form(page).getByRole("button", { name: "Take it on myself, and write it" }).click();
    await expect.poll(() => first(page).textContent()).toContain("torqued, set 34 N·m, TW-2, clicked, pulled by Sefa");
    expect(await log(page).nth(1).textContent()).toContain(
      "TOOK ON HIMSELF: pulled by another; her hands are full of oil",
    );
    await kept(page, /^✓At the workshop\./);
    expect(ran("standing", "--data", workshop.folder)).toMatch(/Sump drain: torqued/);
  });
});

describe("what was written is put right, and never taken out", () => {
  test("a correction takes the place of an entry, a withdrawal takes it out of the picture; both stay in the log", async () => {
    const workshop = shared;
    const { page } = await deviceOnJob(workshop, "0412");
    await page.getByRole("button", { name: "Put an entry right" }).click();
    const torqued = log(page).filter({ hasText: "torqued, set 46 N·m" });
    await torqued.getByRole("button", { name: /^Put right/ }).click();
    await torqued.getByRole("button", { name: "Correct it" }).click();
    await expect.poll(() => torqued.locator(".mistake").first().textContent()).toContain("a reason");
    await torqued.getByRole("textbox", { name: "Why" }).fill("read the wrong mark");
    await torqued.getByRole("button", { name: "Jory Anselm" }).click();
    await torqued.getByRole("button", { name: "Correct it" }).click();
    const set = form(page).getByRole("textbox", { name: "Set on the wrench" });
    expect(await set.inputValue()).toBe("46");
    await set.fill("44");
    await write(page);
    await expect.poll(() => first(page).textContent()).toContain("put an entry right: read the wrong mark");
    expect(await torqued.last().textContent()).toContain("put right by Jory Anselm, torqued, set 44 N·m");

    const gouged = log(page).filter({ hasText: "Drain: seat gouged" });
    await gouged.getByRole("button", { name: /^Put right/ }).click();
    await gouged.getByRole("textbox", { name: "Why" }).fill("it was dirt");
    await gouged.getByRole("button", { name: "Withdraw it" }).click();
    await expect.poll(() => first(page).textContent()).toContain("withdrew an entry: it was dirt");
    expect(await gouged.getAttribute("data-struck")).toBe("");
    await page.goto(`${workshop.address}#/port/chipper-level`);
    await expect.poll(() => page.locator(".due").textContent()).toContain("torqued to 44 N·m");
  });
});

test("opened again after a dead battery, the same job stands there with the state of the machine on top", async () => {
  const workshop = shared;
  const { page, context } = await deviceOnJob(workshop, "0413");
  await page.close();
  const again = await context.newPage();
  await again.goto(workshop.address);
  await expect.poll(() => again.locator(".wall-sign").textContent()).toMatch(/Do not start/);
  expect(await again.locator("#job").textContent()).toContain("Family car");
});

test("two tabs of one device write one after the other, and each shows what the other wrote", async () => {
  const workshop = shared;
  const { page, context } = await deviceOnJob(workshop, "0413");
  const other = await context.newPage();
  await other.goto(page.url());
  for (const [tab, words] of [
    [page, "first tab"],
    [other, "second tab"],
  ] as const) {
    await at(tab, "Family car").getByRole("button", { name: "Note" }).click();
    await form(tab).getByRole("textbox", { name: "In your words" }).fill(words);
    await tap(tab, "Who writes?", "Sefa Oyelund");
  }
  await Promise.all([write(page), write(other)]);
  for (const tab of [page, other])
    for (const words of ["first tab", "second tab"])
      await expect.poll(async () => (await log(tab).allTextContents()).join("\n")).toContain(words);
  await kept(page, /^✓At the workshop\./);
});

describe("a PIN", () => {
  test("is asked of who takes something on himself before it is written, or, written away, before it goes over", async () => {
    const workshop = await servedWorkshop();
    const { page, context } = await pairedDevice(workshop);
    const digits = async (pin: string) => {
      for (const it of pin)
        await page.locator(".pad:visible").first().getByRole("button", { name: it, exact: true }).click();
    };
    await page.locator("summary", { hasText: "Set a PIN" }).click();
    await page.getByRole("button", { name: "Maud Tolbeck" }).click();
    await digits("8046");
    await page.getByRole("button", { name: "Set a PIN" }).click();
    await page.getByText("The PIN is set.").waitFor();

    const takeOn = async (reason: string): Promise<void> => {
      await write(page);
      await form(page).locator("summary", { hasText: "Take it on myself" }).click();
      await form(page).getByRole("textbox", { name: "Why", exact: true }).fill(reason);
      await form(page).getByRole("button", { name: "Take it on myself, and write it" }).click();
    };
    const wrongThenRight = async (): Promise<void> => {
      await digits("1111");
      await page.getByRole("button", { name: "Give the PIN" }).click();
      await page.locator(".mistake", { hasText: "not the PIN" }).waitFor();
      await digits("8046");
      await page.getByRole("button", { name: "Give the PIN" }).click();
    };

    // Away from the workshop nobody can tell whether it is right: it is written, and waits.
    await page.goto(`${workshop.address}#/job/0413`);
    await page.reload();
    await at(page, "Sump drain").getByRole("button", { name: "Torqued" }).click();
    await form(page).getByRole("textbox", { name: "Set on the wrench" }).fill("34");
    await tap(page, "Which wrench?", /^TW-2/);
    await tap(page, "Did it click, or show it?", "yes");
    await tap(page, "Who pulled?", "Sefa Oyelund");
    await tap(page, "Who writes?", "Maud Tolbeck");
    await context.setOffline(true);
    await takeOn("she was called away");
    await kept(page, /2 not yet at the workshop\. The workshop is out of reach/);
    await context.setOffline(false);
    await kept(page, /2 not yet at the workshop\. An override waits for a PIN/);
    await wrongThenRight();
    await kept(page, /^✓At the workshop\./);

    // Who typed it a moment ago need not type it again; whoever opens the page anew does.
    await page.goto(`${workshop.address}#/standing`);
    await page.reload();
    await kept(page, /^✓At the workshop\./);
    await onWall(page).getByRole("button", { name: "Open a job", exact: true }).click();
    await tap(page, "Which machine?", "Combine");
    await form(page).getByRole("textbox", { name: "Came for" }).fill("left front hub");
    await write(page);
    await page.waitForURL(/#\/job\//);
    await at(page, "Front hub reduction, left").getByRole("button", { name: "Drained" }).click();
    await form(page).getByRole("textbox", { name: "Came out" }).fill("3,9");
    await tap(page, "Measured by", "jug");
    await takeOn("its fill was out yesterday");
    await form(page).getByText("it is written once the PIN is right").waitFor();
    await expect.poll(() => page.evaluate(() => document.activeElement?.closest(".pad") !== null)).toBe(true);
    const before = await log(page).count();
    expect((await log(page).allTextContents()).join()).not.toContain("TOOK ON HIMSELF");
    await wrongThenRight();
    await expect.poll(() => log(page).count()).toBe(before + 2);
    expect(await log(page).nth(1).textContent()).toContain("TOOK ON HIMSELF");
    await kept(page, /^✓At the workshop\./);
  });
});

describe("pairing", () => {
  test("wrong digits are refused in the workshop's own words, and the keys of a keyboard serve as well", async () => {
    const workshop = await servedWorkshop();
    const { page } = await openedPage("/standing");
    expect(address).not.toBe(workshop.address);
    await page.goto(`${workshop.address}#/standing`);
    const code = workshop.code();
    const wrong = code === "111111" ? "222222" : "111111";
    await page.getByRole("button", { name: "Pair this device" }).click();
    await expect.poll(() => page.locator(".mistake").last().textContent()).toContain("Tap what this device is");
    await page.getByRole("button", { name: "tablet" }).click();
    await page.getByRole("button", { name: "1", exact: true }).focus();
    await page.keyboard.type(wrong);
    await page.getByRole("button", { name: "Pair this device" }).click();
    await expect.poll(() => page.locator(".mistake").last().textContent()).toContain("That is not the code");
    await page.getByRole("button", { name: "1", exact: true }).focus();
    await page.keyboard.type(`${code}9`);
    await page.keyboard.press("Tab");
    await page.getByRole("button", { name: "Pair this device" }).focus();
    await page.keyboard.press("Enter");
    await kept(page, /^✓At the workshop\. Hollin Reach Workshop, tablet/);
  });

  test("a device that was shut out keeps what it writes, and says that it is not let in", async () => {
    const workshop = await servedWorkshop();
    const { page } = await deviceOnJob(workshop, "0413");
    const [device] = JSON.parse(ran("pair", "--data", workshop.folder, "--list", "--json")).devices;
    ran("pair", "--data", workshop.folder, "--revoke", device.device);
    await at(page, "Family car").getByRole("button", { name: "Note" }).click();
    await form(page).getByRole("textbox", { name: "In your words" }).fill("written after");
    await tap(page, "Who writes?", "Sefa Oyelund");
    await write(page);
    await expect.poll(() => first(page).textContent()).toContain("written after");
    await kept(page, /1 not yet at the workshop\. The workshop does not let this device in any more/);

    // A new code lets it in as another device, and what waited goes over.
    await page.getByRole("button", { name: "phone" }).click();
    for (const digit of workshop.code()) await page.getByRole("button", { name: digit, exact: true }).click();
    await page.getByRole("button", { name: "Pair this device" }).click();
    await kept(page, /^✓At the workshop\./);
    expect(await first(page).textContent()).toContain("written after");
  });
});
