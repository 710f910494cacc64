import type { Brief } from "../../machines/install/brief.ts";
import type { Job } from "../../machines/install/job.ts";
import { stateKey } from "../../machines/install/state-key.ts";
import { type Frozen, PHASES, type SiteState, type Step, type Work } from "../../machines/install/step.ts";
import { goodValue, PAPER } from "../support/answers.ts";
import { MINUTE, PEOPLE } from "./fixtures.ts";
import { CONDITIONS, type ConditionRow, conditionsFor, type Row, tableFor, WORK } from "./gates.table.ts";

/** What the exploration knows of a tent without asking the chart: the tables, the order of calls, what is true on the ground. */
export type Tent = {
  readonly frozen: Frozen;
  readonly rows: ReadonlyMap<string, Row>;
  readonly order: readonly string[];
  readonly place: ReadonlyMap<string, number>;
  /** By the chart's name for it. */
  readonly calls: ReadonlyMap<string, Step>;
  /** The good answer to each gate and condition, as JSON. */
  readonly good: ReadonlyMap<string, string>;
  /** The gates that take a paper instead. */
  readonly papers: ReadonlySet<string>;
  /** The gates of the way down the calls, with their place. */
  readonly gates: readonly GateAt[];
  readonly gatesIn: ReadonlyMap<string, readonly GateAt[]>;
  /** Calls that are each other's like: the chart is made the same way at them. */
  readonly kinds: ReadonlyMap<string, string>;
  readonly work: ReadonlyMap<string, Work | null>;
  /** Of each call's work, as far as they were asked for. */
  readonly conditions: Map<string, readonly ConditionRow[]>;
  /** Gates that are asked again some time after another. */
  readonly recheck: readonly string[];
  /** For each call under a load: the count in that it belongs to. */
  readonly block: ReadonlyMap<string, string>;
};

/** A gate, and the place of its call among the calls. */
export type GateAt = { readonly gate: string; readonly at: number };

export function tentOf(frozen: Frozen): Tent {
  const all = [...frozen.script.steps, ...Object.values(frozen.script.escapes).flat()];
  const order = frozen.script.steps.map((s) => s.id);
  const rows = tableFor(frozen.brief, frozen.plan);
  const gates = order.flatMap((gate, at) => (rows.has(gate) ? [{ gate, at }] : []));
  const asking = [...all.flatMap((s) => (s.gate ? [s.gate] : [])), ...frozen.script.conditions.map((c) => c.gate)];
  return {
    frozen,
    rows,
    order,
    place: new Map(order.map((id, i) => [id, i])),
    calls: new Map(all.map((s) => [stateKey(s.id), s])),
    good: new Map(asking.map((gate) => [gate.id, JSON.stringify(goodValue(gate.check))] as const)),
    papers: new Set(asking.flatMap(({ id, paper }) => (paper === null ? [] : [id]))),
    gates,
    gatesIn: new Map(PHASES.map((phase) => [phase, gates.filter(({ gate }) => rows.get(gate)!.phase === phase)])),
    kinds: new Map(frozen.script.steps.map((step, i, steps) => [step.id, likeOf(step, steps[i + 1])])),
    work: new Map(all.map(({ id }) => [id, workByHand(id)])),
    conditions: new Map(),
    recheck: [...rows.values()].flatMap((row) => (row.recheck ? [row.gate] : [])),
    block: new Map(order.flatMap((id) => (blockOf(id, frozen.brief) ? [[id, blockOf(id, frozen.brief)!] as const] : []))),
  };
}

/** What the chart makes of a call: what it asks, of whom, how hard, for what work, and what work comes next. */
const likeOf = ({ gate, work }: Step, next: Step | undefined) =>
  `${gate?.check.kind} ${gate?.hard} ${gate?.secondPersonTo !== null} ${gate?.roles} ${work} ${next?.work}`;

export const workByHand = (id: string): Work | null => WORK.find(([pattern]) => pattern.test(id))?.[1] ?? null;

/** The count in that a lift or a lowering begins with. */
function blockOf(id: string, { sheet }: Brief): string | null {
  if (/^(?:under|out)\.ties$/.test(id)) return "under.ties";
  const up = /^(under|lift|tied|out)\.((?:quarters|center)\..+)$/.exec(id);
  if (up) return up[1] === "tied" && sheet?.interiorTies === "afterAll" ? "under.ties" : `under.${up[2]}`;
  const down = /^(?:strike\.under|lower)\.((?:quarters|center)\..+)$/.exec(id);
  return down ? `strike.under.${down[1]}` : null;
}

/** A line that nobody ever went under for does not stand, and is not lowered. */
export function leftOut(id: string, { snapshot: { context } }: Job): boolean {
  const line = /^(?:strike\.under|lower)\.(.+)$/.exec(id)?.[1];
  return line !== undefined && !context.answers[`under.${line}`] && !context.reopened[`under.${line}`];
}

/** The count out of a block. */
export const outOf = (into: string): string =>
  into.startsWith("strike.") ? into.replace("strike.under", "lower") : into.replace("under", "out");

/** The call a job stands at, read off the chart's value. */
export function callOf(tent: Tent, job: Job): Step | null {
  let value: unknown = (job.snapshot.value as { procedure: unknown }).procedure;
  while (typeof value === "object" && value !== null) value = Object.values(value)[0];
  return tent.calls.get(value as string) ?? null;
}

/** Mph in gusts from which raising and everything stop, where the sheet is silent; peak gust over mean after Durst. */
const RAISE_MPH = 20;
const STOP_MPH = 25;
const DURST = 1.52;
const THUNDER_MIN = 30;
const SESSION_MIN = 120;

export const thunderNear = ({ snapshot: { context } }: Job, at: number) =>
  context.thunderAt !== null && at - context.thunderAt < THUNDER_MIN * MINUTE;

const worst = ({ mph, gustMph }: { mph: number; gustMph: number | null }) => (gustMph === null ? mph * DURST : gustMph);

/** The last wind reading by its number and age. */
export function windIs({ snapshot: { context } }: Job, at: number): "none" | "stop" | "caution" | "noGust" | "calm" | "old" | "ancient" {
  const { wind } = context;
  if (!wind) return "none";
  if (worst(wind) >= STOP_MPH) return "stop";
  const age = (at - wind.takenAt) / MINUTE;
  if (age < 0 || at < context.lastAt || age > 30) return "ancient";
  if (worst(wind) >= RAISE_MPH) return "caution";
  if (wind.gustMph === null) return "noGust";
  return age > 10 ? "old" : "calm";
}

export const warned = ({ snapshot: { context } }: Job) => {
  const value = context.answers.warning?.value;
  return value?.kind === "yesNo" && !value.yes;
};
export const workStops = (job: Job, at: number) => thunderNear(job, at) || warned(job) || windIs(job, at) === "stop";

export type Stands = "good" | "open" | "bad" | "old" | "samePerson" | "unseen" | "partial";

const texts = new WeakMap<object, string>();
/** A value as JSON: the same one is asked about at every command. */
function written(value: object): string {
  const known = texts.get(value);
  if (known !== undefined) return known;
  const text = JSON.stringify(value);
  texts.set(value, text);
  return text;
}

const PAPER_TEXT = JSON.stringify(PAPER);
const MAY_LOOK: ReadonlySet<string> = new Set([PEOPLE.lead, PEOPLE.deputy, PEOPLE.competent]);
/** Whether two competent people had a paper before them, each on a phone of their own. */
const seenByTwo = ({ by, device, seen }: Job["snapshot"]["context"]["answers"][string]): boolean =>
  seen !== undefined && seen.by !== by && seen.device !== device && MAY_LOOK.has(by) && MAY_LOOK.has(seen.by);

/** How a gate of the table stands apart from its age, by the ground truth and not by the chart's own rules. */
export function answered(tent: Tent, job: Job, gate: string): Stands {
  const row = tent.rows.get(gate);
  const { answers } = job.snapshot.context;
  const answer = answers[gate];
  if (!answer) return "open";
  const is = written(answer.value);
  const paper = is === PAPER_TEXT && tent.papers.has(gate);
  if (is !== tent.good.get(gate) && !paper) return "bad";
  if (paper && !seenByTwo(answer)) return "unseen";
  if (row?.notBy && answers[row.notBy]?.by === answer.by) return "samePerson";
  return row?.notBy && !answers[row.notBy] ? "open" : "good";
}

type Answers = Job["snapshot"]["context"]["answers"];
type Unsettled = GateAt & { readonly is: Stands };
const unsettledBy = new WeakMap<Tent, WeakMap<Answers, readonly Unsettled[]>>();
/** The gates on the way down the calls that are not answered well, conditions aside. Kept, as most commands change no answer. */
export function unsettled(tent: Tent, job: Job): readonly Unsettled[] {
  const { answers } = job.snapshot.context;
  const byAnswers = unsettledBy.get(tent) ?? new WeakMap<Answers, readonly Unsettled[]>();
  unsettledBy.set(tent, byAnswers);
  const known = byAnswers.get(answers);
  if (known) return known;
  const all = tent.gates.flatMap(({ gate, at }): Unsettled[] => {
    const is = CONDITION.has(gate) ? "good" : answered(tent, job, gate);
    return is === "good" ? [] : [{ gate, at, is }];
  });
  byAnswers.set(answers, all);
  return all;
}

/** How a gate stands, its age too; `since` is when this session began. */
export function stands(tent: Tent, job: Job, gate: string, at: number, since = 0): Stands {
  const is = answered(tent, job, gate);
  if (is !== "good") return is;
  const { answers, lastAt } = job.snapshot.context;
  const condition = CONDITION.get(gate);
  const minutes = tent.rows.get(gate)?.goodForMin ?? condition?.goodForMin;
  const answer = answers[gate]!;
  if (minutes && (at < answer.at || at < lastAt || at - answer.at > minutes * MINUTE)) return "old";
  if (isRecheckDue(tent, job, gate, at)) return "old";
  return condition?.session && answer.at < since ? "old" : "good";
}
const CONDITION: ReadonlyMap<string, ConditionRow> = new Map(CONDITIONS.map((c) => [c.gate, c]));

/** Whether a gate was answered early, and the time after which it is asked again is up. */
export function isRecheckDue(tent: Tent, job: Job, gate: string, at: number): boolean {
  const { answers } = job.snapshot.context;
  const recheck = tent.rows.get(gate)?.recheck;
  const [answer, after] = [answers[gate], answers[recheck?.after ?? ""]];
  if (!recheck || !answer || !after) return false;
  const dueAt = after.at + recheck.min * MINUTE;
  return answer.at < dueAt && at >= dueAt;
}

/** When this session began, as at a moment. */
export const sessionAt = (since: number, lastAt: number, at: number): number => (at - lastAt > SESSION_MIN * MINUTE ? at : since);

/** Whether what a kind of work needs is there. */
export function conditionIs(
  tent: Tent,
  job: Job,
  { gate, below, goodForMin, agreed, dormant }: ConditionRow,
  at: number,
  since: number,
): "good" | "bad" {
  if (dormant && answered(tent, job, gate) === "open" && !job.snapshot.context.reopened[gate]) return "good";
  if (gate === "thunder") return thunderNear(job, at) ? "bad" : "good";
  if (below === undefined) return stands(tent, job, gate, at, since) === "good" ? "good" : "bad";
  const { answers, wind, lastAt } = job.snapshot.context;
  const told = answers[agreed ?? ""]?.value;
  const limit = Math.min(below, told?.kind === "measure" ? told.n : below);
  if (!wind || wind.gustMph === null || worst(wind) >= limit || at < lastAt) return "bad";
  const age = at - wind.takenAt;
  return age >= 0 && age <= (goodForMin ?? 0) * MINUTE ? "good" : "bad";
}

/** Stands for a thing that is out of use, where a gate would be named. */
export const TORN = "torn";

/** The first thing that a call cannot be entered without: a whole cloth, then the conditions of its work. */
export function lacking(tent: Tent, job: Job, id: string, at: number, since: number): string | null {
  if (pieceKey(tent) in job.snapshot.context.outOfUse && needsPiece(tent, id)) return TORN;
  return conditionsAt(tent, id).find((c) => conditionIs(tent, job, c, at, since) === "bad")?.gate ?? null;
}

/** The conditions of a call's work. */
export function conditionsAt(tent: Tent, id: string): readonly ConditionRow[] {
  const known = tent.conditions.get(id);
  if (known) return known;
  const work = tent.work.get(id) ?? null;
  const rows = conditionsFor(tent.frozen.brief).filter(
    ({ over, notIn }) => work !== null && over.includes(work) && !(notIn && isStrike(tent, id)),
  );
  tent.conditions.set(id, rows);
  return rows;
}
const isStrike = (tent: Tent, id: string) => (tent.place.get(id) ?? -1) >= tent.place.get("strike.people")!;

/** The piece that is torn in the exploration. */
export const pieceOf = ({ frozen }: Tent): string => frozen.plan.pieces[0]!.id;
const pieceKey = (tent: Tent) => `piece.${pieceOf(tent)}`;

/** Laying it, joining its seams, and whatever goes up or under need every piece whole. By hand. */
function needsPiece(tent: Tent, id: string): boolean {
  const piece = pieceOf(tent);
  if (id === `lay.${piece}` || /^(?:raise\.|under\.ties$|(?:under|lift)\.(?:quarters|center)\.)/.test(id)) return true;
  const half = /^(?:lace|tied|looked)\.((?:R-|S\d).+)$/.exec(id)?.[1];
  return tent.frozen.plan.seams
    .flatMap((seam) => seam.halves)
    .some((h) => h.id === half && (h.lacePiece === piece || h.eyeletPiece === piece));
}

/** What lies or stands on the site from a call on, by the order of work. */
export function siteAt(tent: Tent, id: string): SiteState {
  const at = tent.place.get(id)!;
  const from = (first: string) => at >= tent.place.get(first)!;
  if (from("strike.stakes")) return "staked";
  if (from("strike.unlace")) return "spread";
  if (from("raise.A")) return "raised";
  if (from("groundCloth")) return "spread";
  return from("baseline") ? "staked" : "clear";
}

/** Whether side poles stand that are not fastened yet. */
export function sidesLoose(tent: Tent, id: string): boolean {
  const at = tent.place.get(id) ?? Number.NaN;
  return at >= tent.place.get("raise.A")! && at <= tent.place.get("straps.locked")!;
}

/** Where work goes on after making safe: at the count in of the lift that was left; elsewhere at the call itself. */
export function resumesAt(tent: Tent, id: string): string {
  const block = tent.block.get(id);
  if (block) return block;
  if (id === "watch.end") return "watch";
  const at = tent.place.get(id)!;
  const between = (first: string, last: string) => at >= tent.place.get(first)! && at <= tent.place.get(last)!;
  return between("raise.A", "sides.notTight") ? "sides.laid" : id;
}

/** The call where a strike begins, by what is on the site; `null` where nothing has to come down. */
export const STRIKE: Record<SiteState, string | null> = {
  raised: "strike.people",
  spread: "strike.unlace",
  staked: "strike.stakes",
  clear: null,
};
