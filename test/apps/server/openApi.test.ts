import { Validator } from "@seriousme/openapi-schema-validator";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { factSchema } from "../../../src/journal/facts/fact.ts";
import { type ServedHere, servedHere } from "./servedHere.ts";

let here: ServedHere;
// biome-ignore lint/suspicious/noExplicitAny: the validator says whether it is what it should be.
let document: any;
beforeAll(async () => {
  here = await servedHere();
  ({ body: document } = await here.ask("GET", "/openapi.json"));
});
afterAll(() => here.close());

describe("the description at /api/openapi.json", () => {
  // OpenAPI Specification 3.1.0 by its own JSON Schema, as an independent validator carries it.
  test("is OpenAPI 3.1, and every reference in it leads somewhere", async () => {
    const validator = new Validator();
    const { valid, errors } = await validator.validate(structuredClone(document));
    expect(errors).toBeUndefined();
    expect([valid, validator.version]).toEqual([true, "3.1"]);
    const references = [...JSON.stringify(document).matchAll(/"\$ref":"([^"]+)"/g)].map(([, it]) => it ?? "");
    expect(references.length).toBeGreaterThan(20);
    for (const it of references) {
      const target = it
        .slice(2)
        .split("/")
        .reduce((inner, key) => inner?.[key], document);
      expect([it, typeof target]).toEqual([it, "object"]);
    }
  });

  test("is found wanting once it is broken: the validator can say no", async () => {
    const broken = structuredClone(document);
    broken.paths["/heads"].get.responses = [];
    expect((await new Validator().validate(broken)).valid).toBe(false);
  });

  test("describes what is answered: every path and method in it is there, with its refusals", async () => {
    const { token } = await here.paired();
    for (const [path, methods] of Object.entries<Record<string, { responses: object }>>(document.paths))
      for (const [method, { responses }] of Object.entries(methods)) {
        if (path === "/changes") continue;
        const { status } = await here.ask(method.toUpperCase(), path.replace(/\{\w+\}/, "nobody"), token);
        expect(Object.keys(responses), `${method} ${path}`).toContain(String(status));
        expect(status).not.toBe(405);
      }
    expect(Object.keys(document.paths).sort()).toEqual(
      expect.arrayContaining(["/changes", "/devices", "/entries", "/heads", "/jobs/{job}", "/ownerCards", "/pull"]),
    );
  });

  test("knows every fact that can be written down, from the one schema of facts", () => {
    const text = JSON.stringify(document.components.schemas.Entry);
    const facts = factSchema.def.options.map(
      (it) => (it.shape.type as { def: { values: string[] } }).def.values[0] ?? "",
    );
    expect(facts.length).toBeGreaterThan(50);
    for (const fact of facts) expect(text).toContain(`"const":"${fact}"`);
    expect(document.paths["/entries"].post.requestBody.content["application/json"].schema.$ref).toContain("Body");
  });

  test("holds no secret and nothing of this machine", () => {
    const text = JSON.stringify(document);
    for (const secret of [here.key, here.folder, here.workshop]) expect(text).not.toContain(secret);
  });
});
