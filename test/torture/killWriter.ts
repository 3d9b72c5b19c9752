import { writeSync } from "node:fs";
import type { Fact } from "../../src/journal/facts/fact.ts";
import type { JobId, PersonId } from "../../src/journal/facts/ids.ts";
import { openToWrite } from "../../src/stores/dataFolder.ts";

/**
 * Writes until it is killed: bursts of several writes at once, each of one to five facts, and says of each which entry was
 * its last, but only once it was acknowledged.
 */
const [folder = ""] = process.argv.slice(2);
const { pen } = openToWrite(folder);
const signed = { by: "jory" as PersonId, job: "0412" as JobId, at: "2026-11-25T08:00:00Z" };

writeSync(1, "ready\n");
for (let burst = 0; ; burst++) {
  const writes = Array.from({ length: 1 + (burst % 8) }, (_, i) => {
    const size = 1 + ((burst + i) % 5);
    const facts = Array.from(
      { length: size },
      (_, k): Fact => ({ type: "NoteWritten", words: `${k + 1} of ${size} ${"x".repeat(600)}` }),
    );
    return pen.write(signed, ...facts).then((places) => writeSync(1, `${places.at(-1)}\n`));
  });
  await Promise.all(writes);
}
