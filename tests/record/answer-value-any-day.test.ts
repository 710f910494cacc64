import fc from "fast-check";
import { expect, it } from "vitest";
import { isCumulative } from "../../machines/install/checks/any-check.ts";
import type { Intent } from "../../machines/install/commands.ts";
import type { Check, Value } from "../../machines/install/gates.ts";
import { missingNow, questionAt } from "../../machines/install/job.ts";
import { indexOf } from "../../machines/install/script-index.ts";
import { answerValue, effectiveCommandBy } from "../../machines/record/effective-command.ts";
import type { CommandEntry } from "../../machines/record/entry.ts";
import { briefOf, frozenOf, SECOND } from "../proof/fixtures.ts";
import { goodValue } from "../support/answers.ts";
import { KeptJob } from "../support/kept-job.ts";
import { forty } from "../tent/tents.ts";

const brief = briefOf(forty);
const gateOf = (job: KeptJob, id: string) => indexOf(job.job.frozen.script).gates.get(id)!;
const gateIn = (entry: CommandEntry, job: KeptJob) => (effectiveCommandBy(entry, job.earlier) as { gate: string }).gate;
/** The record's answer by an entry, as a reader of the record works it out. */
const read = (job: KeptJob, entry: CommandEntry) => answerValue(entry, job.earlier);

/** What a day can bring between two parts of an answer. */
const things = fc.constantFrom(
  "part",
  "part",
  "part",
  "part",
  "wrongPart",
  "goOn",
  "goOn",
  "next",
  "back",
  "back",
  "rain",
  "blow",
  "calm",
  "makeSafe",
  "standDown",
  "unknown",
  "waive",
  "ring",
  "stakes",
  "crew",
  "readBack",
);
const starts = fc.constantFrom(
  "kit.loaded",
  "locate.answers",
  "private.lines",
  "squared",
  "marked",
  "stakes.size",
  "lean.outward",
  "rings",
  "plumb",
  "walked",
  "handover",
  "back.kit",
);

const parts = (check: Check, pick: number): Value => {
  const whole = goodValue(check) as never as Record<string, Record<string, unknown>>;
  const field = ["n", "ft", "yes"].find((f) => f in whole)!;
  const names = Object.keys(whole[field]!);
  const name = names[pick % names.length]!;
  return { ...whole, [field]: { [name]: whole[field]![name] } } as never;
};

const reached = new Map<string, KeptJob>();
/** A job that stands at a call, to go on from: driven there once. */
function at(id: string): KeptJob {
  const known = reached.get(id) ?? new KeptJob(brief).to(id);
  reached.set(id, known);
  const { job, at: when, entries } = known;
  const copy = new KeptJob(brief);
  Object.assign(copy, { job, at: when });
  copy.entries.splice(0, 1, ...entries);
  return copy;
}

function amend(job: KeptJob, what: string, pick: number) {
  const change = {
    ring: () => briefOf({ ...forty, rings: { AB: 7 + (pick % 3) } }),
    stakes: () => briefOf({ ...forty, anchors: { corner: { plates: 3, stakes: 6 + (pick % 2) * 3 }, seamEnd: null, side: null } } as never),
    crew: () => ({ ...brief, crew: brief.crew.slice(0, 6 + (pick % 2)) }),
  }[what]!;
  const { no } = job.say({ type: "amend", because: "found on the site", to: frozenOf(change()) });
  job.say({ type: "agree", target: no }, "deputy");
}

function happen(job: KeptJob, thing: string, pick: number) {
  const asked = missingNow(job.job, job.at + SECOND) && questionAt(job.job, job.at + SECOND)!.gate;
  const say = (ask: Intent) => job.say(ask);
  const cumulative = asked && isCumulative(asked.check) ? asked : null;
  const role = asked?.secondPersonTo ? "deputy" : "lead";
  const own = cumulative && parts(cumulative.check, pick);
  if (thing === "part" && cumulative) return job.answer(cumulative.id, own!, role);
  if (thing === "wrongPart" && cumulative && own!.kind === "figures")
    return job.answer(cumulative.id, { ...own!, n: Object.fromEntries(Object.entries(own!.n).map(([k, v]) => [k, v + 1])) }, role);
  if (thing === "unknown" && asked) return job.answer(asked.id, { kind: "unknown" }, role);
  if (thing === "waive" && asked) return say({ type: "waive", gate: asked.id, because: "seen before" });
  if (thing === "readBack" && cumulative) {
    const heard = say({ type: "readBack", intent: { type: "answer", gate: cumulative.id, value: own! } });
    return say({ type: "correct", target: heard.no });
  }
  if (thing === "rain") return say({ type: "reading", reading: { kind: "rain", takenAt: job.at } });
  if (thing === "blow") return job.wind(60);
  if (thing === "calm") return job.wind(6);
  if (thing === "makeSafe") return say({ type: "makeSafe", because: null });
  if (thing === "standDown" && pick % 4 === 0) return say({ type: "standDown", because: "called off" });
  if (["ring", "stakes", "crew"].includes(thing)) return amend(job, thing, pick);
  if (thing === "back") return say({ type: "back" });
  return thing === "next" ? say({ type: "next" }) : job.call === "closed" ? undefined : job.goOn();
}

it("whatever happens between, the record's answer is the one that the state has", () => {
  let compared = 0;
  fc.assert(
    fc.property(starts, fc.array(fc.tuple(things, fc.nat(40)), { minLength: 5, maxLength: 40 }), (start, day) => {
      const job = at(start);
      for (const [thing, pick] of day) {
        const from = job.entries.length;
        happen(job, thing, pick);
        for (const entry of job.entries.slice(from) as CommandEntry[]) {
          if (!("did" in entry.outcome) || entry.outcome.did !== "answered") continue;
          const gate = gateIn(entry, job);
          const held = job.answers[gate];
          if (held?.entry !== entry.no || !isCumulative(gateOf(job, gate).check)) continue;
          compared++;
          expect(read(job, entry), `${thing} at ${job.call}, entry ${entry.no}`).toEqual(held.value);
        }
      }
    }),
    { numRuns: 60 },
  );
  expect(compared).toBeGreaterThan(40);
});
