import type { Entry } from "../journal/entry.ts";
import type { OwnerCard } from "../journal/ownerCards.ts";
import type { Heads } from "../journal/store.ts";
import { StoreTrouble } from "../journal/storeTrouble.ts";
import { remoteRefusal, type Told } from "./remoteRefusal.ts";

/** Where a workshop is served, and what shows that this device was let in. */
export type Far = {
  /** As it was printed, with or without a slash at its end. */
  readonly address: string;
  readonly token: string;
  /** What shows that persons typed their PINs on this device a moment ago, for the overrides that are sent. */
  readonly proofs?: () => readonly string[];
  readonly fetch?: typeof globalThis.fetch;
};

/** What a server of ours tells, by what was asked. Its entries were checked when they came to it. */
export type RemoteAnswer = {
  readonly heads: Heads;
  readonly entries: readonly Entry[];
  readonly more: boolean;
  readonly cards: readonly OwnerCard[];
};

/** A line that says nothing for so long is dead. Judgement. */
const DEAD_ms = 60_000;
/** How often it is waited when the server says that this is too many at once, and for how long at most. Judgement. */
const WAITS = 3;
const LONGEST_s = 10;

/**
 * Asks a server of ours. Every request may be sent twice without harm, so one whose line broke is sent once more: a line that
 * stood idle is often gone without anybody having been told.
 * @throws what the journal there refused, as the journal's own errors; StoreTrouble for everything in between
 */
export async function remoteAnswer(far: Far, method: string, path: string, body?: object): Promise<RemoteAnswer> {
  for (let waits = 0; ; waits++) {
    const answer = await sent(far, method, path, body)
      .catch(() => sent(far, method, path, body))
      .catch((cause) => {
        throw new StoreTrouble("not reachable", far.address, cause);
      });
    if (answer.status === 429 && waits < WAITS) {
      await pause(Math.min(LONGEST_s, Number(answer.headers.get("retry-after")) || 1));
      continue;
    }
    if (answer.status === 204) return {} as RemoteAnswer;
    const told = await documentOf(answer, far.address);
    if (answer.ok) return told as RemoteAnswer;
    throw remoteRefusal(far.address, answer.status, told as Told);
  }
}

const sent = ({ address, token, fetch = globalThis.fetch }: Far, method: string, path: string, body?: object) =>
  fetch(`${address.replace(/\/$/, "")}/api${path}`, {
    method,
    headers: {
      authorization: `Bearer ${token}`,
      ...(body === undefined ? {} : { "content-type": "application/json" }),
    },
    signal: AbortSignal.timeout(DEAD_ms),
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });

/** Something else may answer in the place of the server: the page of a network that wants a name first. */
async function documentOf(answer: Response, address: string): Promise<object> {
  try {
    const document: unknown = await answer.json();
    if (typeof document === "object" && document !== null) return document;
  } catch (cause) {
    throw new StoreTrouble("not reachable", address, cause);
  }
  throw new StoreTrouble("not reachable", address);
}

const pause = (seconds: number): Promise<void> => new Promise((resume) => setTimeout(resume, seconds * 1000));
