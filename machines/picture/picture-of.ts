import { finding, tileInput } from "../install/checks/any-check.ts";
import type { Check, Gate } from "../install/gates.ts";
import type { Instant } from "../install/ids.ts";
import { currentStep, type Job, questionAt, stepsIn } from "../install/job.ts";
import { isLeftOut } from "../install/neighbors.ts";
import type { Question } from "../install/script-index.ts";
import type { Step } from "../install/step.ts";
import { AGREED } from "../install/weather.ts";
import { callInWind } from "../install/windward-call.ts";
import { toBaselineFrame } from "../site/lengths.ts";
import { EDGES } from "../tent/types.ts";
import { besides } from "./families.ts";
import { keyOf, type Mark } from "./mark.ts";
import type { Picture, PlanPicture } from "./picture.ts";
import { countsPeople, dependsOnWind, placeOf, windwardIn } from "./places.ts";
import { windFacts } from "./wind-facts.ts";

/**
 * What is drawn with the call of a job at a moment: where that is which is asked, if the plan has a place for it; else where the
 * call is. A job that is closed, and a call without a place, get the tent with nothing marked.
 */
export function pictureOf(job: Job, at: Instant): Picture {
  const call = currentStep(job);
  const asked = questionAt(job, at);
  const first = asked && pictureFor(job, at, askedStep(job, asked) ?? asked);
  if (first && (first.kind !== "plan" || first.about.length > 0)) return first;
  const own = call && pictureFor(job, at, call);
  const counts = first?.kind === "plan" && first.counts;
  if (own) return own.kind === "plan" && counts ? uncountable(own) : own;
  return first ?? { kind: "plan", about: [], done: [], next: [], counts: false };
}

/** A picture with nothing in it that could be counted. */
const uncountable = ({ about, done, next }: PlanPicture): PlanPicture => {
  const kept = (marks: readonly Mark[]) => marks.filter((m) => m.is !== "poles" && m.is !== "station");
  return { kind: "plan", about: kept(about), done: kept(done), next: kept(next), counts: true };
};

/** The call whose gate is asked, where it is a call's. */
const askedStep = ({ frozen: { script } }: Job, { gate, wordsKey }: Question): Step | null => {
  const step = stepsIn(script).byId.get(gate.id);
  return step?.wordsKey === wordsKey ? step : null;
};

/** The picture of one call, or of what is asked apart from any. */
function pictureFor(job: Job, at: Instant, asked: Step | Question): Picture {
  const { gate } = asked;
  const value = gate ? job.snapshot.context.answers[gate.id]?.value : undefined;
  if (gate?.check.kind === "lengths") {
    const tile = tileInput(gate.check, value);
    if (tile.input !== "readings") throw new Error("lengths are read one by one");
    const found = value ? finding(gate.check, value, job.snapshot.context) : null;
    const { rows: lengths, next } = tile;
    return {
      kind: "square",
      want: toBaselineFrame(gate.check.want),
      lengths,
      next,
      found: found?.kind === "lengths" ? found.squared : null,
    };
  }
  if (gate && isAboutWind(gate)) return { kind: "wind", facts: windFacts(job, at, gate) };
  return planPicture(job, at, asked);
}

const isAboutWind = ({ id, check }: Gate): boolean => check.kind === "wind" || (Object.values(AGREED) as string[]).includes(id);

function planPicture(job: Job, at: Instant, asked: Step | Question): PlanPicture {
  const { frozen, snapshot } = job;
  const { plan, brief, script } = frozen;
  const { context } = snapshot;
  const brokenOff = stepsIn(script).byId.get(context.resumeAt ?? "") ?? null;
  const place = ({ wordsKey, params }: Pick<Step, "wordsKey" | "params">) => placeOf(wordsKey, { params, plan, brokenOff });
  const counts = isExactCount(asked.gate?.check) && !countsPeople(asked.wordsKey);
  if (!("phase" in asked)) return { kind: "plan", about: place(asked), done: [], next: [], counts };
  const inWind = callInWind(asked, brief, context, at);
  const about = place(inWind);
  const fromDeg = context.wind?.fromDeg ?? null;
  const wind = dependsOnWind(asked.wordsKey) && windwardIn(inWind.params) !== null && fromDeg !== null ? { windFromDeg: fromDeg } : {};
  const parts = asked.gate && byEdge(job, asked.gate, about);
  if (parts) return { kind: "plan", next: [], counts, ...parts, ...wind };
  const steps = script.steps.filter((s) => s.id === asked.id || !isLeftOut(s, context));
  const { done, next } = besides(steps, asked, place);
  // Where the wind says which edges come first, the others come after.
  const others = place(asked).filter((mark) => !about.some((here) => keyOf(here) === keyOf(mark)));
  return { kind: "plan", about, done, next: [...next, ...others], counts, ...wind };
}

/** Of a gate that is answered edge by edge: what is left to give or was out of its limits, and what was given. */
function byEdge({ snapshot: { context } }: Job, { id, check }: Gate, about: readonly Mark[]): Pick<PlanPicture, "about" | "done"> | null {
  const value = context.answers[id]?.value;
  const found = value && check.kind === "figures" && check.names.every(isEdge) ? finding(check, value, context) : null;
  if (found?.kind !== "figures") return null;
  const left: readonly string[] = [...found.missing, ...found.off.map(({ name }) => name)];
  const isLeft = (mark: Mark) => "edge" in mark && left.includes(mark.edge);
  return left.length === 0 ? null : { about: about.filter(isLeft), done: about.filter((mark) => !isLeft(mark)) };
}
const isEdge = (name: string): boolean => (EDGES as readonly string[]).includes(name);

/** Whether a check takes one number and no other: a drawing must not give it away. */
function isExactCount(check: Check | undefined): boolean {
  if (check?.kind === "count") return check.to !== null && check.from === check.to && check.to > 0;
  return (
    check?.kind === "figures" && check.unit === "count" && Object.values(check.want).some(({ from, to }) => from !== null && from === to)
  );
}
