import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import type { Frozen } from "../../machines/install/step.ts";
import { foldAll } from "../../machines/record/findings.ts";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { forecast } from "../../machines/time/forecast.ts";
import { factorsFrom } from "../../machines/time/learning.ts";

const folder = new URL("../golden/", import.meta.url);

it.each(readdirSync(folder))("the record %s has a forecast at every entry", (name) => {
  const lines = readFileSync(new URL(name, folder), "utf8")
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line) as { no: number; hash: string; bytes: string })
    .map((line) => ({ ...line, bytes: new TextEncoder().encode(line.bytes) }));
  const { entries } = verifyChain(lines);
  const none = factorsFrom([], null);
  const frozenAt = (no: number): Frozen => {
    const { entry } = entries[no - 1]!;
    if (entry.kind === "opening") return entry.opened;
    if (entry.command.type === "amend") return entry.command.to;
    throw new Error(`entry ${no} froze no script`);
  };
  for (let n = 1; n <= entries.length; n += 7) {
    const { fold } = foldAll(entries.slice(0, n));
    const f = forecast(frozenAt(fold.frozenAt), fold, none, fold.lastAt, 12)!;
    expect(f.tooFew).toEqual([]);
    expect(f.left !== null, `entry ${n}`).toBe(f.covers !== null);
    if (f.left) expect(f.left.low > 0 && Number.isFinite(f.left.high)).toBe(true);
  }
  expect(foldAll(entries).fold).toMatchObject({ phase: "closed" });
});
