import type { OwnerCards } from "../../../journal/ownerCards.ts";
import type { JournalStore } from "../../../journal/store.ts";
import { StoreTrouble } from "../../../journal/storeTrouble.ts";
import type { Pairing } from "../../../stores/browser/pairing.ts";
import { remoteCards, remoteStore } from "../../../stores/remote.ts";
import type { Changes } from "./exchange.ts";

/** The workshop says something every 15 s; after three times that its line is dead. Judgement. */
const SILENT_ms = 45_000;

/** The workshop's own server, which this page came from. */
export type Workshop = {
  readonly store: JournalStore;
  readonly cards: OwnerCards;
  readonly changes: Changes;
  /** @throws StoreTrouble, Refused */
  readonly putPhoto: (name: string, bytes: ArrayBuffer) => Promise<void>;
  /** Null where the workshop does not have it, or is out of reach. */
  readonly photo: (name: string) => Promise<Blob | null>;
};

/** The journal and the cards of the workshop, overrides in it with the proofs of their PINs, and the line on which it tells of changes. */
export function workshopAt({ token }: Pairing, proofs: () => readonly string[]): Workshop {
  const far = { address: self.location.origin, token, proofs };
  const authorization = `Bearer ${token}`;
  return {
    store: remoteStore(far),
    cards: remoteCards(far),
    async changes(changed, until) {
      const answer = await asked("/api/changes", { headers: { authorization }, signal: until });
      const reader = answer.body?.pipeThrough(new TextDecoderStream()).getReader();
      if (!reader) return;
      let rest = "";
      for (;;) {
        // A device that slept, or a network that went, leaves a line on which nothing ever comes.
        const dead = setTimeout(() => reader.cancel().catch(() => {}), SILENT_ms);
        const { done, value } = await reader.read();
        clearTimeout(dead);
        if (done) return;
        // Events end with an empty line; whatever stands in one, it says that something came.
        const events = (rest + value).split(/\r?\n\r?\n/);
        rest = events.pop() ?? "";
        if (events.some((it) => /^event: *heads/m.test(it))) changed();
      }
    },
    async putPhoto(name, bytes) {
      const headers = { authorization, "content-type": "image/jpeg" };
      await asked(`/api/photos/${name}`, { method: "PUT", headers, body: bytes });
    },
    photo: (name) =>
      asked(`/api/photos/${name}`, { headers: { authorization } }).then(
        (answer) => answer.blob(),
        () => null,
      ),
  };
}

/** An answer of the workshop. @throws StoreTrouble where it is out of reach, or what it says where it refuses */
export async function asked(path: string, request: RequestInit): Promise<Response> {
  const answer = await fetch(path, request).catch((cause: unknown) => {
    throw new StoreTrouble("not reachable", self.location.host, cause);
  });
  if (answer.ok) return answer;
  throw new Refused(answer.status, await sentenceOf(answer));
}

/** The workshop heard and refused; its sentence is for people. */
export class Refused extends Error {
  override readonly name = "Refused";
  readonly status: number;
  constructor(status: number, sentence: string) {
    super(sentence);
    this.status = status;
  }
}

async function sentenceOf(answer: Response): Promise<string> {
  try {
    return String(((await answer.json()) as { sentence?: unknown }).sentence ?? answer.statusText);
  } catch {
    return `The workshop answered ${answer.status}.`;
  }
}
