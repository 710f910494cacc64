import type { Brief } from "../../machines/install/brief.ts";
import type { Check } from "../../machines/install/gates.ts";
import { currentStep, questionAt } from "../../machines/install/job.ts";
import type { Step } from "../../machines/install/step.ts";
import type { Picture } from "../../machines/picture/picture.ts";
import { pictureOf } from "../../machines/picture/picture-of.ts";
import type { TentPlan } from "../../machines/tent/types.ts";
import { readBrief } from "../../server/input/brief.ts";
import { DAY, SECOND, START } from "../proof/fixtures.ts";
import { hundred, twenty } from "../tent/tents.ts";
import { brief, briefFor, type Changes } from "./briefs.ts";
import { KeptJob } from "./kept-job.ts";

/** What is drawn while a job stands at a call, and what is asked there. */
export type Seen = {
  readonly call: Step;
  readonly asked: string | null;
  readonly checks: readonly Check[];
  readonly picture: Picture;
  readonly plan: TentPlan;
  readonly brief: Brief;
};

const IN_FORCE = { validFrom: START - DAY, validTo: START + 60 * DAY };
const demo = readBrief(brief()).frozen.brief;
const around: Changes["site"] = { baselineBearingDeg: 40, street: { edge: "CD", name: "Tansy Lane" } };

/** The jobs whose every call is looked at: the demo job, the largest tent with all that lies around it, one of one piece. */
export const JOBS = {
  "the demo job": { ...demo, ticket: { ...demo.ticket!, ...IN_FORCE } },
  "a 100 by 200": briefFor(hundred, { ticket: IN_FORCE, site: around }),
  "a 20 by 20 of one piece": briefFor(twenty, { ticket: IN_FORCE, site: { soilKnown: false }, sheet: { pullTestLbf: 900 } }),
} as const satisfies Record<string, Brief>;

/** The picture of a job as it stands. */
export const seenNow = ({ job, at }: KeptJob): Seen => {
  const asked = questionAt(job, at + SECOND);
  const call = currentStep(job)!;
  return {
    call,
    asked: asked?.gate.id ?? null,
    checks: [asked?.gate, call.gate].flatMap((gate) => (gate ? [gate.check] : [])),
    picture: pictureOf(job, at + SECOND),
    plan: job.frozen.plan,
    brief: job.frozen.brief,
  };
};

const walked = new Map<Brief, readonly Seen[]>();
/** What is drawn at every call of a job, whatever is asked there, up to its close, and on the ways out. Walked once. */
export function everyPicture(of: Brief): readonly Seen[] {
  const known = walked.get(of) ?? unlike([...upAndDown(of), ...WAYS_OUT.flatMap(([call]) => waysOut(of, call))]);
  walked.set(of, known);
  return known;
}

/** A picture that is the same at one call whatever is asked there, is looked at once. */
const unlike = (seen: readonly Seen[]): Seen[] => [
  ...new Map(seen.map((s) => [JSON.stringify([s.call.id, s.picture, s.checks]), s] as const)).values(),
];

function upAndDown(of: Brief): Seen[] {
  const kept = new KeptJob(of);
  const seen: Seen[] = [];
  for (; kept.call !== "closed"; kept.goOn()) seen.push(seenNow(kept));
  return seen;
}

/** A call from which each way of making safe is taken, and the way's name. */
export const WAYS_OUT = [
  ["groundCloth", "ground"],
  ["under.center.C1", "up"],
  ["watch", "standing"],
] as const;

/** What is drawn on the way out that is taken from a call. */
export function waysOut(of: Brief, from: string): Seen[] {
  const kept = new KeptJob(of).to(from);
  kept.say({ type: "makeSafe", because: "wind" });
  const seen: Seen[] = [];
  for (; kept.call.startsWith("safe."); kept.goOn()) seen.push(seenNow(kept));
  return seen;
}
