import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it, vi } from "vitest";
import type { Intent } from "../../machines/install/commands.ts";
import { decide } from "../../machines/install/decide.ts";
import { freeze } from "../../machines/install/freeze.ts";
import { type Job, openJob } from "../../machines/install/job.ts";
import type * as today from "../../machines/install/limits.ts";
import { pendingReadBack } from "../../machines/install/read-back.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { weatherAt } from "../../machines/install/weather.ts";
import { replay } from "../../machines/record/replay.ts";
import { briefOf, commandOf, frozenOf, MINUTE, SECOND, SMALL, START } from "../proof/fixtures.ts";
import { GOLDEN, goldenLines } from "../support/golden-file.ts";

/** Every number of a default is another one: what is frozen must not notice. */
vi.mock("../../machines/install/limits.ts", async (original) => {
  const real = await original<typeof today>();
  return { ...real, DEFAULTS: otherwise(real.DEFAULTS), limitsFor: (brief: never) => otherwise(real.limitsFor(brief)) };
});
vi.mock("../../machines/install/published-limits.ts", async (original) => ({
  ...(await original<object>()),
  overheadClearanceFt: () => 99,
  exitsFor: () => ({ exits: 99, widthIn: 999 }),
}));

function otherwise<T>(value: T): T {
  if (typeof value === "number") return (value * 2 + 1) as T;
  if (typeof value !== "object" || value === null) return value;
  return (Array.isArray(value) ? value.map(otherwise) : Object.fromEntries(Object.entries(value).map(([k, v]) => [k, otherwise(v)]))) as T;
}

/** A job as it was frozen before the defaults were changed. */
let before: Frozen;
beforeAll(async () => {
  const { limitsFor } = await vi.importActual<typeof today>("../../machines/install/limits.ts");
  const { scriptOf } = await import("../../machines/install/script.ts");
  const changed = frozenOf(briefOf(SMALL));
  const limits = limitsFor(changed.brief);
  before = { ...changed, limits, script: scriptOf(changed.brief, changed.plan, limits) };
});

it("a job that is opened after the defaults were changed is judged by the new ones", () => {
  expect(freeze(before.brief).limits).not.toEqual(before.limits);
  expect(freeze(before.brief).script).not.toEqual(before.script);
  expect(openJob(freeze(before.brief), START).snapshot.context.limits.stopGustMph).toBe(51);
});

it("a record from before replays to the same states and outcomes to its end", () => {
  const lines = goldenLines(readFileSync(GOLDEN, "utf8"));
  const { mismatch, entries } = replay(lines);
  expect([mismatch, entries.length]).toEqual([null, lines.length]);
});

describe("a job that was opened before the defaults were changed is judged by what it was frozen with", () => {
  const jobAfter = (said: readonly [Intent, number][]): Job =>
    said.reduce((job, [ask, at], i) => decide(job, commandOf(ask, at, i + 2, 1))[0], openJob(before, START));
  const wind = (gustMph: number): [Intent, number] => [
    { type: "reading", reading: { kind: "wind", mph: 3, gustMph, takenAt: START, fromDeg: null, place: "in the open" } },
    START,
  ];
  const thunder: [Intent, number] = [{ type: "reading", reading: { kind: "thunder", takenAt: START } }, START];
  const weather = (job: Job, at: number) => weatherAt(job.snapshot.context, at);

  it.each([
    [19, "workable"],
    [20, "caution"],
    [24, "caution"],
    [25, "stop"],
  ] as const)("gusts of %i mph are %s", (gustMph, is) => expect(weather(jobAfter([wind(gustMph)]), START)).toBe(is));
  it("a wind reading is good for 30 minutes", () => {
    const job = jobAfter([wind(9)]);
    expect([weather(job, START + 30 * MINUTE), weather(job, START + 30 * MINUTE + SECOND)]).toEqual(["workable", "unknown"]);
  });
  it("thunder stops work for 30 minutes", () => {
    const job = jobAfter([thunder]);
    expect([weather(job, START + 30 * MINUTE - SECOND), weather(job, START + 30 * MINUTE)]).toEqual(["stop", "unknown"]);
  });
  it("what was read back waits 20 seconds", () => {
    const heard: Intent = {
      type: "readBack",
      intent: { type: "answer", gate: "sheet.atHand", value: { kind: "document", named: "TS-20-1" } },
    };
    const job = jobAfter([[heard, START]]);
    const waits = (seconds: number) => pendingReadBack(job, "phone of lena", START + seconds * SECOND) !== null;
    expect([waits(20), waits(21)]).toEqual([true, false]);
  });
  it("an amendment freezes the limits of the day on which it is made", () => {
    const to = freeze({ ...before.brief, title: "Harvest supper, moved" });
    const job = jobAfter([[{ type: "amend", because: "another field", to }, START]]);
    const [amended] = decide(job, commandOf({ type: "agree", target: 2 }, START, 3, 2, "competent"));
    expect(amended.snapshot.context.limits.stopGustMph).toBe(51);
  });
});

it("every limit that is frozen names its source", () => {
  for (const [name, limit] of Object.entries(before.limits))
    expect([name, limit]).toEqual([name, { is: expect.anything(), source: expect.anything() }]);
});
