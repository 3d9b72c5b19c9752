import { readFileSync } from "node:fs";
import type { Locator } from "playwright-core";
import { afterAll, expect, test } from "vitest";
import { photoBytes } from "../../../src/stores/photoBytes.ts";
import { photosIn } from "../../../src/stores/photoCopies.ts";
import { nameOf, phonePhoto } from "../../stores/pictures.ts";
import { expectLegible } from "../legible.ts";
import { browser, phone } from "../openedPage.ts";
import { ran } from "../ran.ts";
import { form, kept, log, onJob, onWall, paired, pairedDevice, startedWorkshop, tap, write } from "./servedWorkshop.ts";

// One workshop and one telephone in it for all of these: each writes on a job of its own.
const workshop = await startedWorkshop();
const context = await browser.newContext({ viewport: phone });
const { page } = await paired(workshop, context);
afterAll(async () => {
  await context.close();
  await workshop.close();
});

/** Opens the form of an act of a port, unit or machine, from the taps in front or behind. */
async function open(called: string, act: string): Promise<void> {
  const part = page.locator("section.subject", { has: page.getByRole("heading", { name: called }) }).first();
  const shown = part.locator("> p.row").getByRole("button", { name: act, exact: true });
  const behind = (await shown.count()) === 0 && (await part.locator("details.more[open]").count()) === 0;
  if (behind) await part.locator("details.more > summary").click();
  await part.getByRole("button", { name: act, exact: true }).first().click();
  await form(page).waitFor();
}

const said = (place = 0) => log(page).nth(place).textContent();
const width = (it: Locator) => it.evaluate((img) => (img as HTMLImageElement).naturalWidth);

test("a photo taken without a network is kept with what it shows, upright and without where it was taken, and goes over by itself", async () => {
  await onJob(workshop, page, "0412");
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => null));
  await context.setOffline(true);
  await open("Drain", "Photo, what was found");
  const taken = await phonePhoto("jpeg");
  const take = form(page).locator("input[capture]");
  await take.setInputFiles({ name: "words.jpg", mimeType: "image/jpeg", buffer: Buffer.from("no picture") });
  await expect.poll(() => form(page).locator(".photo-field .mistake").textContent()).toContain("This is no picture");
  await take.setInputFiles({ name: "thread.jpg", mimeType: "image/jpeg", buffer: taken });
  await form(page).getByRole("button", { name: "Take it off" }).waitFor();
  await tap(page, "Who writes?", "Jory Anselm");
  // A photo without a word says little: one tap is wanted.
  await write(page);
  await expect.poll(() => form(page).locator(".next").textContent()).toContain("What is it?");
  // A battery that dies now takes nothing with it.
  await page.reload();
  await open("Drain", "Photo, what was found");
  expect(await form(page).locator(".photos > li").count()).toBe(1);
  await form(page).getByRole("button", { name: "thread torn" }).click();
  await tap(page, "How does it catch?", "gritty");
  await expectLegible(page);
  await write(page);
  await kept(page, /Kept on this device; 2 and 1 photo not yet at the workshop/);
  await expect.poll(async () => [await said(), await said(1)].join()).toContain("Drain: catch: gritty");
  const small = log(page).nth(1).locator("img").first();
  await log(page).nth(1).locator(".photos").scrollIntoViewIfNeeded();
  await small.waitFor();
  // Lying on its side as the telephone handed it over it is 80 wide.
  await expect.poll(() => width(small)).toBe(60);

  await context.setOffline(false);
  await kept(page, /^✓At the workshop\./);
  const there = photosIn(workshop.folder);
  const [name = ""] = there.names();
  const bytes = readFileSync(there.at(name)?.path ?? "");
  expect([nameOf(bytes), photoBytes(bytes)]).toEqual([name, { type: "jpeg", carries: [] }]);
  expect(ran("check", "--data", workshop.folder)).toContain("1 photos.");

  const other = await pairedDevice(workshop);
  await onJob(workshop, other.page, "0412");
  const seen = log(other.page)
    .nth(1)
    .getByRole("button", { name: /^Photo: Drain: found: thread torn/ });
  await seen.scrollIntoViewIfNeeded();
  await expect.poll(() => seen.locator("img").count()).toBe(1);
  await seen.click();
  const big = other.page.locator("dialog[open]");
  await big.waitFor();
  await expect.poll(() => width(big.locator("img"))).toBe(60);
  await big.getByRole("button", { name: "Close" }).click();
  await big.waitFor({ state: "detached" });
});

test("a form that is opened while another one is still written begins with nothing of it, and stays when that is done", async () => {
  await onJob(workshop, page, "0244");
  await open("Small hatchback", "Note");
  await form(page).getByRole("textbox", { name: "In your words" }).fill("she rang again");
  await tap(page, "Who writes?", "Maud Tolbeck");
  const letGo = await heldWrites();
  await write(page);
  await open("Small hatchback", "Looked again");
  const asked = form(page).getByRole("group", { name: "Which look?" });
  await expect.poll(() => asked.locator("[aria-pressed=true]").textContent()).toContain("call about Sump drain");
  await letGo();
  await expect.poll(() => said()).toContain("she rang again");
  expect(await asked.count()).toBe(1);
});

/** Holds back what the page has written down next. @returns what lets it go, once the page has heard that it is written */
async function heldWrites(): Promise<() => Promise<void>> {
  await page.evaluate(() => {
    const { postMessage } = Worker.prototype;
    Worker.prototype.postMessage = function (this: Worker, ...given: unknown[]) {
      const hand = () => Reflect.apply(postMessage, this, given);
      if ((given[0] as { readonly ask: string }).ask !== "write") return hand();
      Object.assign(globalThis, {
        letGo: () =>
          new Promise<void>((heard) => {
            this.addEventListener("message", ({ data }) => data.about === "outcome" && setTimeout(heard));
            Worker.prototype.postMessage = postMessage;
            hand();
          }),
      });
    };
  });
  return () => page.evaluate(() => (globalThis as unknown as { readonly letGo: () => Promise<void> }).letGo());
}

test("on a job that has gone its planned look stands in the form already, and two taps write what was found", async () => {
  await onJob(workshop, page, "0244");
  await open("Small hatchback", "Looked again");
  const chosen = form(page).getByRole("group", { name: "Which look?" }).locator("[aria-pressed=true]");
  expect(await chosen.textContent()).toContain("call about Sump drain");
  await tap(page, "What was found?", "dry");
  await tap(page, "Who writes?", "Maud Tolbeck");
  await expectLegible(page);
  await write(page);
  await expect.poll(() => said()).toContain("looked again: dry");
});

test("what the owner decides is the next step, and the repair stands on it", async () => {
  await onJob(workshop, page, "0412");
  expect(await page.locator(".job-head .next").textContent()).toContain("wait for the owner's word");
  await page.locator(".job-head .next").getByRole("button", { name: "Write it" }).click();
  await tap(page, "The owner", "chose");
  await tap(page, "Which way?", "A longer plug with a bonded seal");
  await form(page).getByRole("button", { name: "yes, do it" }).click();
  await tap(page, "How did he say it?", "telephone");
  await tap(page, "Who writes?", "Jory Anselm");
  await write(page);
  await expect.poll(() => said()).toContain("owner chose A longer plug with a bonded seal, by telephone, yes, do it");

  await open("Drain", "Repaired");
  const method = form(page).getByLabel("What was done?");
  expect(await method.inputValue()).toBe("longer plug, bonded seal");
  await tap(page, "Does it last?", "to last");
  await tap(page, "Chips", "none made");
  await form(page).getByRole("button", { name: "a longer plug" }).click();
  await tap(page, "Its seal", "bonded seal");
  await expectLegible(page);
  await write(page);
  await expect.poll(() => said()).toContain("A longer plug with a bonded seal, to last");
  expect(await page.locator(".job-head .next").textContent()).not.toContain("owner's word");
});

test("a call begins a job of which nothing says that it may be started; it is answered, booked in, and opened where it was promised", async () => {
  await page.goto(`${workshop.address}#/standing`);
  await page.getByRole("button", { name: "A call", exact: true }).click();
  await form(page).getByRole("button", { name: "it drips", exact: true }).click();
  await tap(page, "Who writes?", "Maud Tolbeck");
  await write(page);
  await page.waitForURL(/#\/job\//);
  await expect.poll(() => page.locator(".wall-sign").textContent()).toContain("Not here yet");
  await page.locator(".job-head .next").getByRole("button", { name: "Write it" }).click();
  await form(page).getByRole("button", { name: "do not drive: we fetch it" }).click();
  await expectLegible(page);
  await write(page);
  await expect.poll(() => said()).toContain("answered: do not drive: we fetch it");

  await open("Machine not named", "Booked in");
  await tap(page, "Which machine?", "Small hatchback");
  await form(page).getByRole("button", { name: "bay 1" }).click();
  await form(page).getByRole("button", { name: "in a week" }).click();
  await form(page).getByRole("textbox", { name: "Not before" }).fill("16:00");
  await form(page).getByRole("textbox", { name: "At the latest" }).fill("12:00");
  await write(page);
  await expect.poll(() => form(page).textContent()).toContain("accepted: a time that is not before the earliest");
  await form(page).getByRole("button", { name: "18:00", exact: true }).click();
  await expectLegible(page);
  await write(page);
  await expect.poll(() => page.locator(".promised").textContent()).toMatch(/^Promised \d{4}-\d\d-\d\d 16:00 to 18:00$/);
  expect(await said()).toMatch(/booked: Small hatchback, bay 1, promised \d{4}-\d\d-\d\d 16:00 to 18:00/);
  // What its plugs were when it was here before.
  await expect
    .poll(() => page.getByRole("region", { name: "Have it here before it comes" }).textContent())
    .toContain("Sump drain: M14x1.5");
  await expectLegible(page);
  await page.goto(`${workshop.address}#/due`);
  await expect.poll(() => page.locator("main").textContent()).toContain("Promised to be ready, and not here yet.");
  await page.goBack();
  await open("Small hatchback", "Open a job");
  await form(page).getByRole("button", { name: "drip", exact: true }).click();
  await write(page);
  await expect.poll(() => page.locator(".wall-sign").textContent()).toContain("May be started");
  expect(await page.locator(".promised").count()).toBe(1);
  expect(await page.getByRole("region", { name: "Have it here before it comes" }).count()).toBe(0);
});

test("what was bought and what a book says is asked for by its name from then on", async () => {
  await page.goto(`${workshop.address}#/standing`);
  const wall = onWall(page);
  await wall.locator("details.more > summary").click();
  await expectLegible(page);
  await wall.getByRole("button", { name: "Sealant bought" }).click();
  await form(page).getByRole("textbox", { name: "Name on it" }).fill("Silicone, red");
  await tap(page, "Who writes?", "Jory Anselm");
  await expectLegible(page);
  await write(page);
  await form(page).waitFor({ state: "detached" });

  await onJob(workshop, page, "0412");
  await open("Drain", "Figure from a book");
  await form(page).getByRole("textbox", { name: "Torque" }).fill("31");
  await form(page).getByRole("button", { name: "plate on it" }).click();
  await tap(page, "Who writes?", "Jory Anselm");
  await expectLegible(page);
  await write(page);
  await form(page).waitFor({ state: "detached" });
  await open("Drain", "Torqued");
  expect(await form(page).textContent()).toContain("31 N·m (plate on it)");
  await form(page).getByRole("button", { name: "Not now" }).click();
  await open("Drain", "Sealant closed");
  expect(await form(page).getByRole("group", { name: "Which tube?" }).textContent()).toContain("Silicone, red");
});

test("an owner's card is put right at the lift and goes over, and is erased with the ports' history left whole", async () => {
  const cards = () => Number(/(\d+) owners' cards/.exec(ran("check", "--data", workshop.folder))?.[1]);
  await onJob(workshop, page, "0412");
  const [lines, before] = [await log(page).count(), cards()];
  await open("Wood chipper", "Owner");
  await form(page).getByRole("textbox", { name: "Telephone" }).fill("0155 501");
  expect(await page.evaluate(() => JSON.stringify({ ...localStorage }))).not.toContain("0155 501");
  await tap(page, "Who writes?", "Maud Tolbeck");
  await expectLegible(page);
  await write(page);
  const owner = page.locator(".job-head .owner");
  await expect.poll(() => owner.getByRole("link").getAttribute("href")).toBe("tel:0155501");
  await open("Wood chipper", "Owner erased");
  await form(page).getByRole("button", { name: "the owner asked" }).click();
  await write(page);
  await owner.waitFor({ state: "detached" });
  await kept(page, /^✓At the workshop\./);
  expect([await log(page).count(), cards()]).toEqual([lines, before - 1]);
});

test("a port is weighed on the bench with what the journal knows of it and written to its job without a network, and the port that lay there lies there again", async () => {
  const thread = page.getByRole("textbox", { name: "Thread", exact: true });
  await page.goto(`${workshop.address}#/`);
  await thread.fill("M14x1.25");
  await onJob(workshop, page, "0412");
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => null));
  await context.setOffline(true);
  await page.getByRole("region", { name: "Drain" }).getByRole("button", { name: "Weigh it" }).click();
  const toJob = page.getByRole("region", { name: "For a job" });
  await toJob.scrollIntoViewIfNeeded();
  await expect.poll(() => toJob.textContent()).toContain("Drain, Wood chipper, job 0412");
  expect(await thread.inputValue()).toBe("M20x1.5");
  await page.getByRole("textbox", { name: "Turns, catch to seat" }).fill("2");
  await expectLegible(page);
  await toJob.getByRole("button", { name: "Jory Anselm" }).click();
  await toJob.getByRole("button", { name: "Write it to the job" }).click();
  await expect.poll(() => said()).toMatch(/Drain: \d+ ways weighed/);
  await page.goto(`${workshop.address}#/`);
  expect(await thread.inputValue()).toBe("M14x1.25");
  expect(await toJob.count()).toBe(0);
  await context.setOffline(false);
  await onJob(workshop, page, "0412");
  await kept(page, /^✓At the workshop\./);
  const entries = ran("export", "-", "--data", workshop.folder)
    .split("\n")
    .filter((it) => it.includes("OptionsWeighed"));
  const { by, job, fact } = JSON.parse(entries.at(-1) ?? "").entry;
  expect([by, job, fact.port, fact.case.left.turns, fact.engine]).toEqual([
    "jory",
    "0412",
    "chipper-drain",
    "2",
    ran("--version").trim(),
  ]);
});
