import type { Brief } from "../../machines/install/brief.ts";
import type { Job } from "../../machines/install/job.ts";
import { stateKey } from "../../machines/install/state-key.ts";
import type { Frozen, SiteState, Step } from "../../machines/install/step.ts";
import { goodValue } from "../support/answers.ts";
import { MINUTE } from "./fixtures.ts";
import { type Row, tableFor } from "./gates.table.ts";

/** What the exploration knows of a tent without asking the chart: the table, the order of calls, what is true on the ground. */
export type Tent = {
  readonly frozen: Frozen;
  readonly rows: ReadonlyMap<string, Row>;
  readonly order: readonly string[];
  readonly place: ReadonlyMap<string, number>;
  /** By the chart's name for it. */
  readonly calls: ReadonlyMap<string, Step>;
  readonly good: ReadonlyMap<string, string>;
  readonly table: readonly (readonly Row[])[];
};

export function tentOf(frozen: Frozen): Tent {
  const all = [...frozen.script.steps, ...Object.values(frozen.script.escapes).flat()];
  const order = frozen.script.steps.map((s) => s.id);
  const rows = tableFor(frozen.brief, frozen.plan);
  const phases = [...new Set(frozen.script.steps.map((s) => s.phase))];
  return {
    frozen,
    rows,
    order,
    place: new Map(order.map((id, i) => [id, i])),
    calls: new Map(all.map((s) => [stateKey(s.id), s])),
    good: new Map(all.flatMap((s) => (s.gate ? [[s.id, JSON.stringify(goodValue(s.gate.check))] as const] : []))),
    table: phases.map((phase) => [...rows.values()].filter((r) => r.phase === phase && r.hard && !r.gate.startsWith("safe."))),
  };
}

/** The call a job stands at, read off the chart's value. */
export function callOf(tent: Tent, job: Job): Step | null {
  let value: unknown = (job.snapshot.value as { procedure: unknown }).procedure;
  while (typeof value === "object" && value !== null) value = Object.values(value)[0];
  return tent.calls.get(value as string) ?? null;
}

/** Mph in gusts from which raising and everything stop, where the sheet is silent. */
const RAISE_MPH = 20;
const STOP_MPH = 25;
const THUNDER_MIN = 30;

export const thunderNear = ({ snapshot: { context } }: Job, at: number) =>
  context.thunderAt !== null && at - context.thunderAt < THUNDER_MIN * MINUTE;

/** The last wind reading by its number and age. */
export function windIs({ snapshot: { context } }: Job, at: number): "none" | "stop" | "caution" | "calm" | "old" | "ancient" {
  const { wind } = context;
  if (!wind) return "none";
  const mph = Math.max(wind.mph, wind.gustMph ?? 0);
  if (mph >= STOP_MPH) return "stop";
  const age = (at - wind.takenAt) / MINUTE;
  if (age < 0 || at < context.lastAt || age > 30) return "ancient";
  if (mph >= RAISE_MPH) return "caution";
  return age > 10 ? "old" : "calm";
}

export const workStops = (job: Job, at: number) => thunderNear(job, at) || windIs(job, at) === "stop";

/** How a gate of the table stands, judged by the ground truth and the table and not by the chart's own rules. */
export function stands(tent: Tent, job: Job, gate: string, at: number): "good" | "open" | "bad" | "old" | "samePerson" {
  const row = tent.rows.get(gate);
  if (!row) return "good";
  const { context } = job.snapshot;
  if (row.wind) return !thunderNear(job, at) && windIs(job, at) === "calm" ? "good" : "bad";
  const answer = context.answers[gate];
  if (!answer) return "open";
  if (JSON.stringify(answer.value) !== tent.good.get(gate)) return "bad";
  const age = at - answer.at;
  if (row.goodForMin && (age < 0 || at < context.lastAt || age > row.goodForMin * MINUTE)) return "old";
  if (row.notBy && context.answers[row.notBy]?.by === answer.by) return "samePerson";
  if (row.notBy && !context.answers[row.notBy]) return "open";
  return "good";
}

/** Calls that are safer finished than left: the first pole till four stand, a line from lift to count out, lowering, getting out. */
export const COMMITTED =
  /^(raise\.[ABCD]|(lift|feet|out|lower)\..+|strike\.(people|power|out|interiorDown|sides|corners)|safe\.\w+\.(tools|cloth|rallyPoint|pole|people|power|out|restrain|clear|headcount))$/;

/** What lies or stands on the site from a call on, by the order of work. */
export function siteAt(tent: Tent, id: string): SiteState {
  const at = tent.place.get(id)!;
  const from = (first: string) => at >= tent.place.get(first)!;
  if (from("strike.stakes")) return "staked";
  if (from("strike.unlace")) return "spread";
  if (from("raise.A")) return "raised";
  if (from("damage.cloth")) return "spread";
  return from("baseline") ? "staked" : "clear";
}

/** Where work goes on after making safe: at the wind reading of the lift that was left; elsewhere at the call itself. */
export function resumesAt(tent: Tent, id: string): string {
  const line = /^(?:gust|under|lift|feet|out)\.((?:quarters|center)\..+|upright)$/.exec(id);
  if (line) return `gust.${line[1]}`;
  const at = tent.place.get(id)!;
  const between = (first: string, last: string) => at >= tent.place.get(first)! && at <= tent.place.get(last)!;
  if (between("raise.A", "sides.notTight")) return "sides.gust";
  return between("strike.people", "strike.corners") ? "strike.gust" : id;
}

/** The call where a strike begins, by what is on the site; `null` where nothing has to come down. */
export const STRIKE: Record<SiteState, string | null> = {
  raised: "strike.people",
  spread: "strike.unlace",
  staked: "strike.stakes",
  clear: null,
};

/** Every gate that the script and the table do not agree on. */
export function disagreements(frozen: Frozen, brief: Brief = frozen.brief): string[] {
  const gates = new Map(
    [...frozen.script.steps, ...Object.values(frozen.script.escapes).flat()].flatMap((s) => (s.gate ? [[s.gate.id, s] as const] : [])),
  );
  const rows = tableFor(brief, frozen.plan);
  const wrong = [...rows.values()].flatMap((r) => {
    const step = gates.get(r.gate);
    if (!step?.gate) return [`${r.gate} is not in the script`];
    if (step.phase !== r.phase) return [`${r.gate} stands in ${step.phase}, not in ${r.phase}`];
    if (step.gate.hard !== r.hard) return [`${r.gate} is ${step.gate.hard ? "hard" : "soft"}`];
    if (step.gate.secondPersonTo !== (r.notBy ?? null)) return [`${r.gate} is not checked by somebody other than ${r.notBy ?? "nobody"}`];
    return [];
  });
  return [...wrong, ...[...gates.keys()].filter((id) => !rows.has(id)).map((id) => `${id} is not in the table`)];
}
