import { expect, it } from "vitest";
import { freeze } from "../../machines/install/freeze.ts";
import { openJob } from "../../machines/install/job.ts";
import { briefFor } from "../support/briefs.ts";
import { twenty } from "../tent/tents.ts";

const brief = briefFor(twenty);
const titled = (title: string) => ({ ...brief, title });

it("the same brief soon again is frozen to the same, with one chart for all its jobs", () => {
  const [first, again] = [freeze(brief), freeze(structuredClone(brief))];
  expect(again).toBe(first);
  expect(openJob(again, 0).machine).toBe(openJob(first, 0).machine);
});

it("a brief that differs in one word is frozen for itself", () => {
  const other = freeze(titled("Another (invented)"));
  expect(other).not.toBe(freeze(brief));
  expect(other.brief.title).toBe("Another (invented)");
});

it("of many briefs only the last few are kept", () => {
  const first = freeze(titled("The first (invented)"));
  for (const title of ["b", "c", "d", "e"]) freeze(titled(title));
  expect(freeze(titled("The first (invented)"))).not.toBe(first);
});
