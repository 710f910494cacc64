import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { planTent } from "../../machines/tent/plan.ts";
import { rectangle, TAPING } from "../support/marks.ts";
import { eighty, specOf } from "../tent/tents.ts";

const spec = specOf(eighty);
/** Arguments that an example may use by name, next to the exports of its own file. */
const FIXTURES = { spec, plan: planTent(spec), want: rectangle(60, 120), taping: TAPING };

const examples = readdirSync("machines", { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .map((file) => join("machines", file))
  .flatMap((file) =>
    [...readFileSync(file, "utf8").matchAll(/@example\b *(.*?) *(?:\*\/)?$/gm)].map(([, text]) => ({ file, text: text! })),
  );

/** The value of an expression that may use the names in `scope`. */
const evaluate = (expression: string, scope: object): unknown =>
  new Function(...Object.keys(scope), `"use strict"; return (${expression});`)(...Object.values(scope));

describe("the examples in comments", () => {
  it("are found", () => {
    expect(examples.length).toBeGreaterThan(40);
  });

  it.each(examples)("$file: $text", async ({ file, text }) => {
    const [, call, result] = /^(.+?) \/\/ (.+)$/.exec(text) ?? [];
    expect(result, "an example is one line: call(arguments) // result").toBeDefined();
    const own: object = await import(resolve(file));
    expect(evaluate(call!, { ...FIXTURES, ...own })).toEqual(evaluate(result!, {}));
  });
});
