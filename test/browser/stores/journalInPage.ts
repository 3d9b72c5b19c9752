import type { Page } from "playwright-core";
import { build } from "vite";
import type { DeviceId } from "../../../src/journal/facts/ids.ts";
import type { Journal } from "../../../src/journal/ownerCards.ts";
import type { Pen } from "../../../src/journal/pen.ts";

/** A journal in the database of a page, driven from here; `end` closes it and opens what it held to others. */
export type JournalInPage = Journal & {
  readonly pen: (device: DeviceId) => Pen;
  /** Photos whose bytes are those of a text. */
  readonly photos: {
    readonly keep: (name: string, text: string) => Promise<void>;
    readonly text: (name: string) => Promise<string | null>;
    readonly toSend: () => Promise<readonly string[]>;
    readonly sent: (name: string) => Promise<void>;
    readonly drop: (name: string) => Promise<void>;
  };
};

/** The store as one script for a page: the very source, bundled as the web app's is. */
const script = bundled();

/** Gives a page the store as a script of its own origin, as the policy of the app asks. */
export async function withStore(page: Page): Promise<void> {
  const body = await script;
  await page.route("**/store-under-test.js", (route) => route.fulfill({ contentType: "text/javascript", body }));
  await page.addScriptTag({ url: "/store-under-test.js" });
  await page.evaluate(() => Object.assign(globalThis, { journals: new Map() }));
}

/** Opens `name` in the page. What goes over goes as JSON, in which every text of JavaScript can be written. */
export async function journalInPage(page: Page, name: string, workshop: string): Promise<JournalInPage> {
  const handle = await called(page, "open", [name, workshop]);
  const of =
    (part: string, method: string) =>
    (...given: readonly unknown[]) =>
      called(page, "call", [handle, part, method, given.filter((it) => it !== undefined)]) as Promise<never>;
  return {
    store: {
      add: of("store", "add"),
      ofJob: of("store", "ofJob"),
      since: of("store", "since"),
      heads: of("store", "heads"),
      close: of("store", "close"),
    },
    cards: { put: of("cards", "put"), all: of("cards", "all") },
    photos: {
      keep: (name, text) => called(page, "keepPhoto", [handle, name, text]) as Promise<never>,
      text: (name) => called(page, "photoText", [handle, name]) as Promise<never>,
      toSend: of("photos", "toSend"),
      sent: of("photos", "sent"),
      drop: of("photos", "drop"),
    },
    pen: (device) => ({
      write: (signed, ...facts) => called(page, "write", [handle, device, signed, facts]) as Promise<never>,
    }),
  };
}

type Told = { readonly done: string } | { readonly refused: string; readonly name: string; readonly trouble?: string };

async function called(page: Page, act: string, given: readonly unknown[]): Promise<unknown> {
  const told = await page.evaluate(
    async ([act, text]): Promise<Told> => {
      // biome-ignore lint/suspicious/noExplicitAny: what the page was given by `withStore`.
      const { stores, journals } = globalThis as any;
      const given = JSON.parse(text);
      const acts: Record<string, () => unknown> = {
        async open() {
          const handle = journals.size;
          journals.set(handle, await stores.idbJournal(given[0], given[1]));
          return handle;
        },
        call: () => journals.get(given[0])[given[1]][given[2]](...given[3]),
        keepPhoto: () => journals.get(given[0]).photos.keep(given[1], new TextEncoder().encode(given[2]).buffer),
        async photoText() {
          const bytes = await journals.get(given[0]).photos.bytes(given[1]);
          return bytes && new TextDecoder().decode(bytes);
        },
        write: () =>
          journals
            .get(given[0])
            .pen(given[1])
            .write(given[2], ...given[3]),
      };
      try {
        return { done: JSON.stringify((await acts[act]?.()) ?? null) };
      } catch (fault) {
        const { message, name, trouble } = fault as Error & { trouble?: string };
        return { refused: message, name, ...(trouble ? { trouble } : {}) };
      }
    },
    [act, JSON.stringify(given)] as const,
  );
  if ("done" in told) return JSON.parse(told.done);
  throw Object.assign(new Error(told.refused), { name: told.name, trouble: told.trouble });
}

async function bundled(): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: "error",
    build: {
      write: false,
      target: "es2023",
      lib: {
        entry: new URL("../../../src/stores/browser/indexedDb.ts", import.meta.url).pathname,
        formats: ["iife"],
        name: "stores",
      },
    },
  });
  const [output] = [made].flat() as { output: { type: string; code?: string }[] }[];
  const code = output?.output.find(({ type }) => type === "chunk")?.code;
  if (!code) throw new Error("the store was not bundled");
  return code;
}
