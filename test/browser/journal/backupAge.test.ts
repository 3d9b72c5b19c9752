import { expect, test } from "vitest";
import { pairedDevice, servedWorkshop } from "./servedWorkshop.ts";

test("the wall tells how old the last backup is, which the server made by itself", async () => {
  const { page } = await pairedDevice(await servedWorkshop());
  // It is made in a process of its own, a little after the start.
  await expect
    .poll(async () => {
      await page.reload();
      return page.getByText(/last backup|no daily backup/i).textContent();
    })
    .toBe("Last backup: less than an hour ago.");
});
