import type { Entry } from "../../../src/journal/entry.ts";
import { jobSheet } from "../../../src/journal/job/jobProjection.ts";
import { project } from "../../../src/journal/projection.ts";
import { shop } from "../../../src/journal/shop/shop.ts";
import type { About, Around } from "../../../src/sheets/journal/act.ts";

export const written = (facts: readonly object[], job: string | null) =>
  facts.map((fact, i) => ({
    workshop: "w",
    device: "phone",
    number: i + 1,
    clock: i + 1,
    at: "2026-11-25T08:00:00Z",
    by: "jory",
    job,
    fact,
  })) as unknown as Entry[];

/** What stands around as something is written about `about`, on a job on which these facts were written, in a workshop that knows these. */
export const aroundJob = (about: About, facts: readonly object[] = [], known: readonly object[] = []): Around => ({
  sheet: project(jobSheet, written(facts, "0412")),
  shop: project(shop, written(known, null)),
  about,
  by: "jory" as never,
  today: "2026-11-25",
  now: "2026-11-25T10:40:00Z",
  moment: (clock) => `${clock}:00Z`,
  fresh: "k3f7",
  owner: null,
  corrects: false,
});
