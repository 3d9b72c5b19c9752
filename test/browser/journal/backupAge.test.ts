import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { pairedDevice, servedWorkshop } from "./servedWorkshop.ts";

test("the wall tells how old the last backup is, which the server made by itself", async () => {
  const workshop = await servedWorkshop();
  const { page } = await pairedDevice(workshop);
  // It is made in a process of its own, a little after the start.
  await expect.poll(() => existsSync(join(workshop.folder, "lastBackup.json"))).toBe(true);
  await page.reload();
  await expect
    .poll(() => page.getByText(/last backup|no daily backup/i).textContent())
    .toBe("Last backup: less than an hour ago.");
});
