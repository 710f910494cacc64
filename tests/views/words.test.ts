import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Did } from "../../machines/install/commands.ts";
import type { Gate } from "../../machines/install/gates.ts";
import { allSteps } from "../../machines/install/job.ts";
import type { Refusal, Status, UnmetStatus } from "../../machines/install/refusals.ts";
import { ESCAPES, PHASES, type Script } from "../../machines/install/step.ts";
import { readBrief } from "../../server/input/brief.ts";
import { calls } from "../../views/text/en/calls.ts";
import { limitText, sourceText, valueText } from "../../views/text/en/limits.ts";
import { feetInches, inches } from "../../views/text/en/names.ts";
import { type About, didText, refusalText, statusText } from "../../views/text/en/refusals.ts";
import { phaseName } from "../../views/text/en/roles.ts";
import { brief } from "../support/app.ts";
import { frozenFor } from "../support/briefs.ts";
import { eighty, forty, hundred, sixty, twenty } from "../tent/tents.ts";

const NONSENSE = /undefined|NaN|null|\[object/;
const jobs = {
  "the demo": readBrief(brief()).frozen,
  "a one-piece 20 by 20, few people, nothing wanted": frozenFor(twenty, {
    use: { occupants: 20, permit: "notRequired", fabricCertificate: "notRequired", walls: false },
  }),
  "a 20 by 20 on unknown soil without a figure": frozenFor(twenty, { site: { soilKnown: false } }),
  "a 40 by 80 on unknown soil with a figure, loads hung": frozenFor(forty, {
    site: { soilKnown: false },
    sheet: { pullTestLbf: 900, stakeLeanDeg: { from: 3, to: 8 } },
    use: { hungLoads: true },
  }),
  "a 60 by 120 with centers first": frozenFor(sixty, { sheet: { interiorOrder: "centersFirst", embedmentIn: null } }),
  "an 80 by 100": frozenFor(eighty),
  "a 100 by 200 with everything unknown": frozenFor(hundred, {
    site: { soilKnown: false, overheadKv: [null, 115, 1500] },
    use: { occupants: null, permit: "unknown", fabricCertificate: "unknown", walls: false, hungLoads: true },
  }),
  "a 100 by 200 with more people than the table": frozenFor(hundred, { use: { occupants: 1500 } }),
};

describe.each(Object.entries(jobs))("every call of %s", (_name, { script }) => {
  const steps = allSteps(script);
  const gated = steps.flatMap((step) => (step.gate ? [{ step, gate: step.gate }] : []));

  it("has words short enough to hear, and a reason", () => {
    for (const step of steps) {
      expect(calls[step.wordsKey], step.wordsKey).toBeDefined();
      for (const text of [calls[step.wordsKey]!.say(step.params), calls[step.wordsKey]!.why]) {
        expect(text, step.id).toMatch(/^[A-Z0-9]/);
        expect(text, step.id).not.toMatch(NONSENSE);
        expect(text.length, step.id).toBeLessThan(200);
      }
    }
  });

  it("has for its gate a question, a limit and what to do instead", () => {
    for (const { step, gate } of gated) {
      const { ask, ifNot } = calls[step.wordsKey]!;
      for (const text of [ask?.(step.params) ?? "", ifNot ?? "", limitText(gate), sourceText(gate.source)]) {
        expect(text, step.id).toMatch(/\S/);
        expect(text, step.id).not.toMatch(NONSENSE);
      }
    }
  });

  it("speaks of the paper where one is taken, asks for it where nothing else will do, and of none elsewhere", () => {
    for (const { step, gate } of gated) {
      const { ask, ifNot } = calls[step.wordsKey]!;
      if (gate.check.kind === "paperOnly") expect(ask!(step.params), step.id).toMatch(/paper/);
      else if (gate.paper) expect(ifNot, step.id).toMatch(/paper/);
      else expect(ifNot, step.id).not.toMatch(/\bpaper\b/);
    }
  });

  it("has an id of its own and at most one gate, named like it", () => {
    expect(new Set(steps.map((s) => s.id)).size).toBe(steps.length);
    for (const { step, gate } of gated) expect(gate.id).toBe(step.id);
  });
});

/** What each golden record was opened with. */
function earlierScripts(): Script[] {
  const folder = new URL("../golden/", import.meta.url);
  return readdirSync(folder).map((file) => {
    const [first = ""] = readFileSync(new URL(file, folder), "utf8").split("\n");
    return (JSON.parse((JSON.parse(first) as { bytes: string }).bytes) as { opened: { script: Script } }).opened.script;
  });
}

it("no words are left over that no job says", () => {
  // Jobs that were opened under an earlier procedure go on with its calls.
  const scripts = [...Object.values(jobs).map(({ script }) => script), ...earlierScripts()];
  const said = new Set(scripts.flatMap((script) => allSteps(script).map((s) => s.wordsKey)));
  expect(Object.keys(calls).filter((call) => !said.has(call))).toEqual([]);
});

describe("what a trainee reads beside a call", () => {
  const all = Object.entries(calls);
  const shared = (texts: readonly string[]) => texts.filter((text, i) => texts.indexOf(text) !== i);

  it.each(all)("%s tells what goes wrong and how it is done well, in a line or two", (_call, { wrong, well }) => {
    for (const text of [wrong, well]) {
      expect(text).toMatch(/^[A-Z].*[.?]$/);
      expect(text.length).toBeGreaterThanOrEqual(20);
      expect(text.length).toBeLessThanOrEqual(150);
    }
  });

  it.each(all)("%s gives no figure there: figures stand in its limit, with their source", (_call, { wrong, well }) =>
    expect(`${wrong} ${well}`).not.toMatch(/\d/),
  );

  it.each(all)("%s says something else each time: why, what goes wrong, how it is done well, what to do instead", (_call, words) => {
    const texts = [words.why, words.wrong, words.well, ...(words.ifNot === undefined ? [] : [words.ifNot])];
    expect(shared(texts)).toEqual([]);
  });

  it("no two calls go wrong in the same words", () => expect(shared(all.map(([, { wrong }]) => wrong))).toEqual([]));

  it("no two calls are done well in the same words", () => expect(shared(all.map(([, { well }]) => well))).toEqual([]));
});

it("a seam is called in one short line: seam, half, place", () => {
  const { steps } = jobs["an 80 by 100"].script;
  const ring = steps.find((s) => s.wordsKey === "lace.ring" && s.params.seam === "S1")!;
  expect(calls["lace.ring"]!.say(ring.params)).toMatch(
    /^Seam 1, (AB|CD) half: lace out to the quarter ring, .*long loop two feet above it\.$/,
  );
  for (const s of steps.filter((step) => step.wordsKey.startsWith("lace."))) {
    expect(calls[s.wordsKey]!.say(s.params), s.id).toMatch(/^(Seam \d|Ridge seam at (DA|BC))[,:]/);
    expect(calls[s.wordsKey]!.say(s.params).length, s.id).toBeLessThan(120);
  }
});

describe("refusals", () => {
  const missing: Record<UnmetStatus, true> = { open: true, unknown: true, outOfLimit: true, early: true, stale: true, samePerson: true };
  const others: { readonly [W in Exclude<Refusal["why"], "gate">]: Extract<Refusal, { why: W }> } = {
    held: { why: "held", by: "lena" },
    paused: { why: "paused", by: "lena" },
    sameDevice: { why: "sameDevice" },
    noReadBack: { why: "noReadBack" },
    stop: { why: "stop" },
    role: { why: "role", is: "trainee", may: ["lead", "competent"] },
    notAskedHere: { why: "notAskedHere", gate: "g" },
    wrongKind: { why: "wrongKind", gate: "g" },
    hardGate: { why: "hardGate", gate: "g" },
    movedOn: { why: "movedOn", revision: 4 },
    notThereYet: { why: "notThereYet", seen: 9, last: 4 },
    noSuchGate: { why: "noSuchGate", gate: "g" },
    unbelievable: { why: "unbelievable", gate: "g", n: 1e9, unit: "ft", bounds: { from: 0, to: 10_000 } },
    nothingBefore: { why: "nothingBefore" },
    notHeld: { why: "notHeld" },
    future: { why: "future" },
    olderReading: { why: "olderReading" },
    noProposal: { why: "noProposal" },
    sameAsProposer: { why: "sameAsProposer" },
    alreadyStandingDown: { why: "alreadyStandingDown" },
    jobClosed: { why: "jobClosed" },
  };
  const gates = (Object.keys(missing) as UnmetStatus[]).map((status): Refusal => ({ why: "gate", gate: "g", status }));
  const nothing: About = { ask: null, ifNot: null, limit: null, value: null, found: null, name: (id) => id };
  const all: About = { ...nothing, ask: "How much is showing?", ifNot: "Drive it down.", limit: "0 in to 6 in", value: "8 in" };

  it.each([...gates, ...Object.values(others), { why: "held", by: null } as const])(
    "%o says why, with all known and with nothing",
    (refusal) => {
      for (const about of [all, nothing]) {
        expect(refusalText(refusal, about)).toMatch(/^[A-Z0-9].*[.?]$/);
        expect(refusalText(refusal, about)).not.toMatch(NONSENSE);
      }
    },
  );

  it("out of its limit: the value, what is wanted, and what to do", () =>
    expect(refusalText({ why: "gate", gate: "g", status: "outOfLimit" }, all)).toBe(
      "8 in is not good: wanted 0 in to 6 in. Drive it down.",
    ));

  it("every reply and every standing has words", () => {
    const did: Record<Did, true> = {
      moved: true,
      wentBack: true,
      held: true,
      paused: true,
      readBack: true,
      dropped: true,
      carriedOn: true,
      answered: true,
      waived: true,
      noted: true,
      read: true,
      proposed: true,
      amended: true,
      discarded: true,
      makingSafe: true,
      goingOn: true,
      standingDown: true,
      closed: true,
    };
    const statuses: Record<Status, true> = { ...missing, good: true, waived: true };
    for (const d of Object.keys(did) as Did[]) expect(didText(d), d).toMatch(/\S/);
    for (const s of Object.keys(statuses) as Status[]) expect(statusText(s), s).toMatch(/\S/);
    for (const phase of [...PHASES, ...ESCAPES]) expect(phaseName(phase), phase).toMatch(/^[A-Z][a-z]+( [a-z]+)?$/);
  });
});

describe("limits", () => {
  const limit = (unit: "deg" | "in" | "ft", from: number | null, to: number | null) =>
    limitText({ check: { kind: "measure", unit, from, to, noneIsGood: false } } as Gate);
  it.each([
    [limit("deg", 0, 10), "no more than 10° and not toward the tent"],
    [limit("deg", 3, 8), "3° to 8° away from the tent"],
    [limit("deg", -1, 1), "within 1° of plumb"],
    [limit("in", 24, null), "24 in or more"],
    [limit("ft", 0, 75), "at most 75 ft"],
    [limitText({ check: { kind: "count", from: 11, to: 11 } } as Gate), "exactly 11"],
    [valueText({ kind: "measure", n: 5.5, unit: "in" }), "5 1/2 in"],
    [valueText({ kind: "unknown" }), "Don't know"],
  ])("%s", (is, wanted) => expect(is).toBe(wanted));
});

it.each([
  [89 + 5.3125 / 12, "89 ft 5 5/16 in"],
  [100, "100 ft"],
  [0, "0 in"],
  [0.5, "6 in"],
])("%d ft reads %s on a tape", (ft, text) => expect(feetInches(ft)).toBe(text));

it("a fraction of an inch is read off in sixteenths, shortened", () =>
  expect([inches(5.5), inches(1.625), inches(0.25), inches(-0.5)]).toEqual(["5 1/2 in", "1 5/8 in", "1/4 in", "-1/2 in"]));
