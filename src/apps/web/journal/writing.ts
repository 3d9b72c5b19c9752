import { entryId } from "../../../journal/entry.ts";
import { type Fact, isShopFact } from "../../../journal/facts/fact.ts";
import type { PersonId } from "../../../journal/facts/ids.ts";
import type { GateRefusal } from "../../../journal/job/gate.ts";
import { gates } from "../../../journal/job/gates.ts";
import { type ActForm, type Around, formWith, putRight, readAct } from "../../../sheets/journal/act.ts";
import { actNamed } from "../../../sheets/journal/acts.ts";
import { gateSentence } from "../../../sheets/journal/standingShown.ts";
import { namesIn } from "../../../sheets/words/journalNames.ts";
import { momentOf, today } from "../kit/clock.ts";
import type { Keeper } from "./keeper.ts";
import type { Draft, GateShut, Outcome } from "./messages.ts";

/** The form of an act as it is asked now. */
export const formOf = (keeper: Keeper, draft: Omit<Draft, "overrides">): ActForm =>
  formWith(actNamed(draft.act), draft.texts, aroundOf(keeper, draft));

/**
 * Writes a draft down, unless something in it cannot be read or a gate forbids it. Gates that are taken on oneself are written as
 * that, by name and reason, in the same breath as the fact; where the workshop is there, not before his PIN was right.
 */
export async function written(keeper: Keeper, draft: Draft): Promise<Outcome> {
  const read = readAct(actNamed(draft.act), draft.texts, aroundOf(keeper, draft));
  if (!read.ok) return { type: "problems", problems: read.problems };
  const at = new Date().toISOString();
  const [joined] = read.facts;
  const by = draft.by === "" && joined?.type === "PersonJoined" ? joined.person : draft.by;
  const signed = { by: by as PersonId, at };
  const { corrects } = draft;
  if (corrects) {
    const entries = await keeper.journal.store.ofJob(draft.job as never);
    const earlier = entries.find((it) => entryId(it) === corrects.entry)?.fact;
    const [now] = read.facts;
    const is = earlier && now && putRight(actNamed(draft.act), earlier, now, aroundOf(keeper, draft));
    const put = { type: "EntryCorrected", entry: corrects.entry, reason: corrects.reason, is } as unknown as Fact;
    await keeper.pen.write({ ...signed, job: draft.job as never }, put);
    await keeper.wrote();
    return { type: "written", job: draft.job };
  }
  const taken = (draft.overrides?.gates ?? []).map(
    ({ gate, port }) =>
      ({
        type: "RuleOverridden",
        rule: gate,
        reason: draft.overrides?.reason,
        ...(port ? { port } : {}),
      }) as unknown as Fact,
  );
  const shut = shutFor(keeper, draft, [...taken, ...read.facts], at);
  if (shut.length > 0) return { type: "shut", gates: shut };
  const pin = taken.length > 0 ? await keeper.pinFor(by) : null;
  if (pin) return { type: "pin", pin };
  const job = draft.job ?? (read.facts.some((it) => !isShopFact(it)) ? newJob(at) : null);
  const shop = read.facts.filter(isShopFact);
  if (shop.length > 0) await keeper.pen.write({ ...signed, job: null }, ...shop);
  const own = read.facts.filter((it) => !isShopFact(it));
  if (own.length > 0) await keeper.pen.write({ ...signed, job: job as never }, ...taken, ...own);
  if (read.card) await keeper.keepCard(read.card);
  await keeper.wrote();
  return { type: "written", job };
}

/** Takes an entry out of the picture; it stays in the file with the reason. */
export async function withdrawn(
  keeper: Keeper,
  {
    entry,
    job,
    by,
    reason,
  }: { readonly entry: string; readonly job: string; readonly by: string; readonly reason: string },
): Promise<Outcome> {
  const fact = { type: "EntryWithdrawn", entry, reason } as unknown as Fact;
  await keeper.pen.write({ by: by as never, job: job as never, at: new Date().toISOString() }, fact);
  await keeper.wrote();
  return { type: "written", job };
}

/** The gates that forbid these facts one after the other; those that the first ones open stand open for the next. */
function shutFor(keeper: Keeper, draft: Draft, facts: readonly Fact[], at: string): readonly GateShut[] {
  if (draft.job === null) return [];
  const sheet = keeper.reader.sheet(draft.job as never);
  const names = namesIn(keeper.reader.shop(), sheet);
  const overrides = [
    ...sheet.overrides,
    ...facts.flatMap((it) => (it.type === "RuleOverridden" ? [{ ...it, by: draft.by, at, entry: "" }] : [])),
  ];
  const shut = facts.flatMap((it) =>
    gates({ ...sheet, overrides: overrides as never }, it, { by: draft.by as never, at }),
  );
  return shut.map((it: GateRefusal) => ({
    gate: it.gate,
    port: it.port,
    sentence: gateSentence(it, names),
    mayOverride: it.override === "name and reason",
  }));
}

function aroundOf(keeper: Keeper, { job, about, by, corrects }: Omit<Draft, "overrides">): Around {
  const sheet = keeper.reader.sheet((job ?? "") as never);
  return {
    sheet,
    shop: keeper.reader.shop(),
    about,
    by: by as never,
    today: today(),
    now: new Date().toISOString(),
    moment: momentOf,
    fresh: fresh(),
    owner: keeper.ownerOf(sheet.machine),
    corrects: corrects !== null,
  };
}

/** The day, and letters that no other device draws on it. */
const newJob = (at: string): string => `${at.slice(5, 7)}${at.slice(8, 10)}-${fresh()}`;

/** Four letters and digits that are not mistaken for one another. */
function fresh(): string {
  const letters = "23456789abcdefghjkmnpqrstuvwxyz";
  return [...crypto.getRandomValues(new Uint8Array(4))].map((it) => letters[it % letters.length]).join("");
}
