import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { serverApp } from "../../src/apps/server/app.ts";
import { listen } from "../../src/apps/server/listen.ts";
import { announcedIn } from "../../src/apps/server/runningServer.ts";
import { servedFolder } from "../../src/apps/server/servedFolder.ts";

/**
 * A served workshop in a process of its own that tells what memory it holds when it is asked. Nobody is made to wait in it: what
 * is asked goes as deep as it can.
 */
const folder = mkdtempSync(join(tmpdir(), "turnsleft-fuzz-"));
const endless = { atOnce: Number.MAX_SAFE_INTEGER, perSecond: 1 };
const served = servedFolder(folder, { device: endless, stranger: endless });
const heard = await listen(serverApp({ files: new Map(), version: "1" }, served.api).fetch, 0);
if (typeof heard !== "object") throw new Error(heard);
served.announce(heard.address);

const end = (): never => {
  rmSync(folder, { recursive: true });
  process.exit();
};
process.on("disconnect", end);
process.on("message", (asked) => {
  if (asked === "memory") {
    for (let i = 0; i < 3; i++) globalThis.gc?.();
    const { rss, heapUsed, external } = process.memoryUsage();
    process.send?.({ rss, held: heapUsed + external });
  } else end();
});
process.send?.({ folder, port: heard.port, workshop: served.workshop, key: announcedIn(folder)?.key });
