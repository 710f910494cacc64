import { readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { expect, it } from "vitest";

/** The files whose values, and not only types, a file imports. */
const valuesOf = (file: string): string[] =>
  [...readFileSync(file, "utf8").matchAll(/^(?:import|export) (?!type)[^;]*?from "(\.[^"]+)"/gms)].map((m) =>
    normalize(join(dirname(file), m[1]!)),
  );

function reachedFrom(file: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const next of valuesOf(file)) reachedFrom(next, seen);
  return seen;
}

it("nothing that replays a record can reach a default of today: what it judges by is frozen", () => {
  const reached = reachedFrom("machines/record/replay.ts");
  expect(reached).toContain("machines/install/weather.ts");
  expect(reached).toContain("machines/site/squaring.ts");
  for (const file of ["limits", "published-limits", "freeze", "script"]) expect(reached).not.toContain(`machines/install/${file}.ts`);
});
