/** What a program that knows the interface and means no good might send. */
export type RandomRequest = {
  readonly method: string;
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Buffer;
};

/** What the requests are made around: a workshop that is really served. */
export type Known = {
  readonly workshop: string;
  readonly tokens: readonly string[];
  readonly devices: readonly string[];
  /** The number of the next entry of each device that writes. */
  readonly next: Map<string, number>;
};

const methods = ["GET", "POST", "PUT", "DELETE", "PATCH", "HEAD", "OPTIONS", "PROPFIND", "TRACE", "QUERY", "X"];
const paths = [
  ...["entries", "entries", "entries", "pull", "pull", "ownerCards", "heads", "jobs/0412", "devices", "pairing"],
  ...["changes", "openapi.json", "pin", "pin/proof", "pin/jory"],
];
const types = [
  "application/json",
  "application/json; charset=utf-8",
  "text/plain",
  "",
  "application/JSON;x",
  "multipart/form-data",
];
const odd = [
  "",
  "null",
  "0",
  "-1",
  "1e999",
  "[]",
  "{}",
  '"',
  "[".repeat(5000),
  '{"a":'.repeat(3000),
  "\u0000",
  "\ud800",
  "NaN",
];
const oddPaths = [
  "../",
  "..%2f",
  "%00",
  "%",
  "%ff",
  "//",
  "?a=b",
  ";",
  "\\",
  "a".repeat(3000),
  "%2e%2e/",
  "constructor",
  "é",
];
const oddText = [
  "",
  "constructor",
  "__proto__",
  "a/b",
  "x".repeat(3000),
  "\u0000",
  "😀",
  "'; drop table entry; --",
  "%s%n",
];

/** One request out of `random`, which gives numbers from 0 to 1. */
export function randomRequest(random: () => number, known: Known): RandomRequest {
  const one = <Item>(items: readonly Item[]): Item => items[Math.floor(random() * items.length)] as Item;
  const chance = (share: number): boolean => random() < share;
  const path = `${chance(0.9) ? "/api/" : "/"}${pathPart()}`;
  const method = chance(0.85) ? usual(path) : one(methods);
  const bodied = !["GET", "HEAD", "TRACE"].includes(method);
  return { method, path, headers: headers(), body: bodied ? Buffer.from(body(path)) : Buffer.alloc(0) };

  function pathPart(): string {
    if (chance(0.75)) return one(paths);
    if (chance(0.4)) return `devices/${one([known.devices.at(-1) ?? "", ...oddText.map(encodeURIComponent)])}`;
    return `${one(paths)}${one(oddPaths)}${chance(0.3) ? one(oddPaths) : ""}`;
  }

  function usual(of: string): string {
    if (of.startsWith("/api/devices/") || of.startsWith("/api/pin/")) return chance(0.5) ? "DELETE" : "GET";
    if (/entries|pull|pairing|proof/.test(of)) return "POST";
    return /ownerCards|devices|pin/.test(of) && chance(0.6) ? "POST" : "GET";
  }

  function headers(): Record<string, string> {
    const token = one(known.tokens);
    return {
      ...(chance(0.85)
        ? { authorization: `Bearer ${token}` }
        : chance(0.5)
          ? { authorization: one(odd.slice(0, 7)) }
          : {}),
      ...(chance(0.85) ? { "content-type": "application/json" } : { "content-type": one(types) }),
      ...(chance(0.04) ? { origin: one(["null", "http://evil.example", "x"]) } : {}),
      ...(chance(0.03) ? { host: one(["evil.example", "localhost:1", "[::1]"]) } : {}),
      ...(chance(0.05) ? { "accept-encoding": "br", range: "bytes=0-", "if-none-match": "*" } : {}),
      ...(chance(0.02) ? { expect: "100-continue" } : {}),
      ...(chance(0.02) ? { "x-odd": "x".repeat(9000) } : {}),
    };
  }

  function body(to: string): string | Uint8Array {
    if (chance(0.1)) return one(odd);
    if (chance(0.03)) return Uint8Array.from({ length: 200 }, () => random() * 256);
    const text = JSON.stringify(document(to));
    if (chance(0.15)) return text.slice(0, Math.floor(random() * text.length));
    if (chance(0.15)) return spoilt(text);
    return text;
  }

  /** A text of which some characters are others. */
  function spoilt(text: string): string {
    const at = Math.floor(random() * text.length);
    return text.slice(0, at) + one(['"', "{", "9", "\\u0000", "null", ",", "\u2028"]) + text.slice(at + 1);
  }

  function document(to: string): unknown {
    if (to.includes("entries")) return { entries: Array.from({ length: Math.floor(random() * 4) }, entry) };
    if (to.includes("pull"))
      return { heads: heads(), ...(chance(0.5) ? { most: one([0, 1, 50, 5000, -1, 1.5, "9"]) } : {}) };
    if (to.includes("ownerCards"))
      return {
        cards: [
          {
            owner: `o-${Math.floor(random() * 5)}`,
            name: text(),
            plates: [],
            clock: one([1, 7, 0, null]),
            device: "bench",
          },
        ],
      };
    // A PIN takes a quarter of a second to check, as it should: most of these are none.
    if (to.includes("pin"))
      return { person: one(["jory", "constructor"]), pin: chance(0.01) ? "4711" : one(["", 4711, "12"]) };
    if (to.includes("devices")) return { code: one(["000000", "12", 5]), name: text() };
    return one([{}, [], null, 0, { heads: {} }]);
  }

  function heads(): object {
    return { bench: one([0, 1, 9e15, -1, 0.5]), [chance(0.5) ? "phone" : one(oddText)]: one([0, 3, "x"]) };
  }

  /** An entry that may be taken, or one that is off in a field. */
  function entry(): unknown {
    const device = one(["bench", "phone", "constructor"]);
    const number = known.next.get(device) ?? 1;
    const right = {
      workshop: known.workshop,
      device,
      number,
      clock: number,
      at: "2026-11-25T08:00:00Z",
      by: "jory",
      job: `04${Math.floor(random() * 30)}`,
      fact: chance(0.9)
        ? { type: "NoteWritten", words: text() || "x" }
        : { type: "RuleOverridden", rule: "x", reason: "y" },
    };
    if (chance(0.4)) return right;
    const field = one(Object.keys(right));
    const wrong: Record<string, unknown> = {
      ...right,
      [field]: one([null, -1, 2 ** 60, text(), [], {}, { type: "x" }, number + 5]),
    };
    if (chance(0.1)) delete wrong[field];
    return wrong;
  }

  function text(): string {
    return chance(0.5) ? "called" : one(oddText);
  }
}
