import { expect, test } from "vitest";
import { openToRead } from "../../../src/stores/dataFolder.ts";
import { ran } from "../ran.ts";
import {
  at,
  type Device,
  form,
  kept,
  log,
  onWall,
  pairedDevice,
  servedWorkshop,
  tap,
  write,
} from "./servedWorkshop.ts";

/** Two hubs of one machine, one hand at each, as in the field without a network, on job 0299 of the invented workshop. */
test("two devices that were apart, one draining and one tightening, show both once they meet again", async () => {
  const workshop = await servedWorkshop();
  const [jory, sefa] = [await pairedDevice(workshop), await pairedDevice(workshop)];

  await onWall(jory.page).getByRole("button", { name: "Open a job", exact: true }).click();
  await tap(jory.page, "Which machine?", "Combine");
  await form(jory.page).getByRole("textbox", { name: "Came for" }).fill("both front hubs");
  await tap(jory.page, "Who writes?", "Jory Anselm");
  await write(jory.page);
  await jory.page.waitForURL(/#\/job\//);
  const route = new URL(jory.page.url()).hash;
  const left = (page: Device["page"]) => at(page, "Plug at 3 o'clock").first();
  await left(jory.page).getByRole("button", { name: "Broken loose" }).click();
  await tap(jory.page, "How hard?", "normal");
  await write(jory.page);
  await expect.poll(() => log(jory.page).first().textContent()).toContain("broken loose, normal");
  await kept(jory.page, /^✓At the workshop\./);

  // What one wrote is on the other without anybody asking: the workshop tells of it.
  await sefa.page.goto(`${workshop.address}${route}`);
  await expect.poll(() => log(sefa.page).first().textContent()).toContain("broken loose, normal");
  await Promise.all([jory, sefa].map(({ page }) => page.evaluate(() => navigator.serviceWorker.ready)));

  await jory.context.setOffline(true);
  await sefa.context.setOffline(true);

  await at(jory.page, "Front hub reduction, left").getByRole("button", { name: "Drained" }).click();
  await form(jory.page).getByRole("textbox", { name: "Came out" }).fill("3,9");
  await tap(jory.page, "Measured by", "jug");
  await write(jory.page);
  await kept(jory.page, /Kept on this device; 1 not yet at the workshop\. The workshop is out of reach\./);

  const right = at(sefa.page, "Plug at 3 o'clock").last();
  await right.locator("summary", { hasText: "More" }).click();
  await right.getByRole("button", { name: "Torqued" }).click();
  await form(sefa.page).getByRole("textbox", { name: "Set on the wrench" }).fill("70");
  await tap(sefa.page, "Which wrench?", /^TW-2/);
  await tap(sefa.page, "Did it click, or show it?", "yes");
  await tap(sefa.page, "Who pulled?", "Sefa Oyelund");
  await tap(sefa.page, "Who writes?", "Sefa Oyelund");
  await write(sefa.page);
  await kept(sefa.page, /Kept on this device; 1 not yet at the workshop/);

  const drained = /Front hub reduction, left: drained, 3,9 L out, by jug/;
  const torqued = /Plug at 3 o'clock: torqued, set 70 N·m, TW-2, clicked, pulled by Sefa Oyelund/;
  const said = async ({ page }: Device) => (await log(page).allTextContents()).join("\n");
  await expect.poll(() => said(jory)).toMatch(drained);
  expect(await said(jory)).not.toMatch(torqued);
  await expect.poll(() => said(sefa)).toMatch(torqued);
  expect(await said(sefa)).not.toMatch(drained);

  // A battery that died in between changes nothing: the page opens again without a network, and holds what it held.
  await sefa.page.reload();
  await kept(sefa.page, /Kept on this device; 1 not yet at the workshop/);
  await expect.poll(() => said(sefa)).toMatch(torqued);

  await jory.context.setOffline(false);
  await sefa.context.setOffline(false);
  for (const device of [jory, sefa]) {
    await kept(device.page, /^✓At the workshop\./);
    await expect.poll(() => said(device)).toMatch(drained);
    await expect.poll(() => said(device)).toMatch(torqued);
  }
  await expect.poll(async () => (await said(jory)) === (await said(sefa))).toBe(true);

  const { store, close } = openToRead(workshop.folder);
  const job = route.slice("#/job/".length);
  const kinds = (await store.ofJob(job as never)).map(({ device, fact }) => [device, fact.type]);
  await close();
  const own = (type: string) => kinds.filter(([, it]) => it === type).map(([device]) => device);
  expect(own("UnitDrained")).toHaveLength(1);
  expect(own("PortTorqued")).toHaveLength(1);
  expect(own("UnitDrained")).not.toEqual(own("PortTorqued"));
  expect(ran("standing", "--data", workshop.folder)).toMatch(/Front hub reduction, left: EMPTY/);
});
