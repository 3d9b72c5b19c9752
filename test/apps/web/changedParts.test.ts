import { expect, test } from "vitest";
import { changedParts } from "../../../src/apps/web/engine/changedParts.ts";

type Parts = {
  readonly figure: string | null;
  readonly rows: readonly { readonly text: string }[];
  readonly open: boolean;
};
const before: Parts = { figure: "12", rows: [{ text: "a" }], open: false };

test("only what is another is handed over, whatever it is made of", () => {
  expect(changedParts(before, { figure: "12", rows: [{ text: "a" }], open: false })).toEqual({});
  expect(changedParts(before, { ...before, rows: [{ text: "b" }] })).toEqual({ rows: [{ text: "b" }] });
  expect(changedParts(before, { ...before, open: true })).toEqual({ open: true });
});

test("what is gone is handed over as gone", () => {
  expect(changedParts(before, { ...before, figure: null })).toEqual({ figure: null });
});

test("with nothing before it an answer is handed over whole", () => {
  expect(changedParts(null, before)).toEqual(before);
});

test("laid over the one before, the parts are the answer now", () => {
  const now: Parts = { figure: null, rows: [], open: true };
  expect({ ...before, ...changedParts(before, now) }).toEqual(now);
});
