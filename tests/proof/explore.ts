/**
 * Breadth-first exploration of `decide`: every kind of command is tried on every state reached, and every trial is held
 * against `INVARIANTS`.
 *
 * Two jobs count as the same state when they agree on: the chart's value, where going on and the strike begin, what is
 * on the site, how the call's own gate and the hard gates of its phase stand, and wind and thunder by number and age.
 * Left out on purpose, because no rule compares them: entry numbers, keys, devices, absolute time.
 *
 * What keeps it small:
 * - A state is as strange as the number of things in it that are out of the ordinary: held, weather that is not fresh
 *   and calm, an answer that is not good, being on a way out. States stranger than `strange` are judged when they are
 *   reached, but nothing is tried on them.
 * - On a way out only the straight path is walked for every call it was left from. Its strange variants are explored
 *   once for each phase it was left from: no rule of a way out but "going on" reads where it was left.
 * - Readings and the passing of time are tried on states without other strangeness than weather, as nothing that they
 *   change reads holds or answers. Amendments are tried at the first call of a phase and judged, not followed.
 * - A command on a clock that ran back is judged and not followed; so is going back out of a strike, and further back than
 *   one call before what stands on the site was begun.
 */
import type { Command, Intent, Reading } from "../../machines/install/commands.ts";
import { decide } from "../../machines/install/decide.ts";
import { attentionState, type Job, openJob } from "../../machines/install/job.ts";
import type { Machine } from "../../machines/install/machine.ts";
import type { Outcome } from "../../machines/install/refusals.ts";
import { type Frozen, SITE_STATES } from "../../machines/install/step.ts";
import { badValue, oddValue } from "../support/answers.ts";
import { commandOf, HOUR, MINUTE, PEOPLE, SECOND, START } from "./fixtures.ts";
import { INVARIANTS, type Invariant, type Memory, NO_DEAD_END, ONE_OUTCOME, remember, type Trial } from "./invariants.ts";
import { callOf, siteAt, stands, type Tent, tentOf, thunderNear, windIs } from "./tent.ts";

type Role = keyof typeof PEOPLE;
type Try = {
  readonly as: string;
  readonly ask: Intent;
  readonly role: Role;
  readonly after?: number;
  readonly behind?: true;
  readonly dropped?: true;
  /** Spoken, and heard on this device. */
  readonly heardOn?: string;
};
type Node = { readonly job: Job; readonly memory: Memory; readonly entry: number; readonly from: Node | null; readonly by: string };

export type Findings = {
  readonly states: number;
  readonly calls: number;
  readonly trials: number;
  readonly found: ReadonlyMap<Invariant, string>;
};
export type Options = {
  readonly mutate?: (machine: Machine) => Machine;
  readonly strange?: number;
  /** Ends at the first finding. */
  readonly first?: boolean;
};

export function findings(frozen: Frozen, { mutate = (m) => m, strange = 1, first = false }: Options = {}): Findings {
  const tent = tentOf(frozen);
  const honest = openJob(frozen, START);
  const machine = mutate(honest.machine);
  const start: Node = {
    // A snapshot carries its machine along, and that one's guards are asked.
    job: { ...honest, machine, snapshot: machine.resolveState({ value: honest.snapshot.value, context: honest.snapshot.context }) },
    memory: { site: "clear", began: tent.order[0]!, resumeAt: null },
    entry: 1,
    from: null,
    by: "opened",
  };
  const found = new Map<Invariant, string>();
  const seen = new Set<string>([stateKey(tent, start)]);
  const queue = [start];
  let trials = 0;

  const report = (invariant: Invariant, node: Node, as: string, trouble: string) => {
    if (!found.has(invariant)) found.set(invariant, `${trouble}; after ${pathTo(node)}: ${as}`);
  };
  const attempt = (node: Node, t: Try): Node | null => {
    trials += 1;
    const { context } = node.job.snapshot;
    const pressed = commandOf(
      t.ask,
      context.lastAt + (t.after ?? SECOND),
      node.entry,
      t.behind ? context.revision - 1 : context.revision,
      t.role,
    );
    const command: Command = t.heardOn ? { ...pressed, source: "talk", device: t.heardOn } : pressed;
    let after: Job;
    let outcome: Outcome;
    try {
      [after, outcome] = decide(node.job, command);
    } catch (e) {
      report(ONE_OUTCOME, node, t.as, String(e));
      return null;
    }
    const trial: Trial = { tent, as: t.as, before: node.job, memory: node.memory, command, outcome, after };
    for (const name of NAMES) {
      const trouble = INVARIANTS[name](trial);
      if (trouble) report(name, node, t.as, trouble);
    }
    const memory = withSite(remember(trial), trial);
    return { job: { ...after, machine }, memory, entry: node.entry + 1, from: node, by: t.as };
  };

  for (let i = 0; i < queue.length; i++) {
    const node = queue[i]!;
    const stuck = deadEnd(tent, node, attempt);
    if (stuck) report(NO_DEAD_END, node, "truthful answers", stuck);
    for (const t of tries(tent, node)) {
      const next = attempt(node, t);
      if (!next) continue;
      if (next.job.snapshot.context.proposed) settle(next, node, attempt);
      else if (!t.dropped && !farBack(tent, node, next)) {
        const key = stateKey(tent, next);
        if (seen.has(key) || strangeness(tent, next) > strange) continue;
        seen.add(key);
        queue.push(next);
      }
      if (first && found.size > 0) break;
    }
    if (first && found.size > 0) break;
  }
  const calls = new Set(queue.flatMap((n) => callOf(tent, n.job)?.id ?? [])).size;
  return { states: queue.length, calls, trials, found };
}

/** Further back than one call before what stands on the site was begun. */
function farBack(tent: Tent, from: Node, to: Node): boolean {
  const [was, is] = [callOf(tent, from.job), callOf(tent, to.job)];
  if (to.by !== "back" || !was || !is || was === is || !tent.place.has(is.id)) return false;
  return siteAt(tent, was.id) !== from.job.snapshot.context.site;
}

const NAMES = Object.keys(INVARIANTS) as (keyof typeof INVARIANTS)[];

/** What is on the site after a trial: it grows on the way up and shrinks in the strike. */
function withSite(memory: Memory, { tent, outcome, after }: Trial): Memory {
  const to = callOf(tent, after);
  if (!("did" in outcome) || !["moved", "standingDown"].includes(outcome.did) || !to || !tent.place.has(to.id)) return memory;
  const there = siteAt(tent, to.id);
  const grown = SITE_STATES.indexOf(there) > SITE_STATES.indexOf(memory.site);
  return to.phase === "struck" || grown ? { ...memory, site: there } : memory;
}

const wind = (gustMph: number, takenAt: number): Intent => ({
  type: "reading",
  reading: { kind: "wind", mph: Math.max(0, gustMph - 4), gustMph, takenAt, place: null },
});
const thunder = (takenAt: number): Intent => ({ type: "reading", reading: { kind: "thunder", takenAt } satisfies Reading });
const press = (as: string, ask: Intent, role: Role = "lead", more: Partial<Try> = {}): Try => ({ as, ask, role, ...more });

/** A truthful answer comes from the lead; where a second person is wanted, from the deputy. */
const answerer = (tent: Tent, gate: string): Role => (tent.rows.get(gate)?.notBy ? "deputy" : "lead");

const ALWAYS: readonly Try[] = [
  press("next", { type: "next" }),
  press("next from an old screen", { type: "next" }, "lead", { behind: true }),
  press("next after 11 minutes", { type: "next" }, "deputy", { after: 11 * MINUTE }),
  press("next after a day", { type: "next" }, "lead", { after: 25 * HOUR }),
  press("next on a clock that ran back", { type: "next" }, "lead", { after: -HOUR, dropped: true }),
  press("next by crew", { type: "next" }, "crew"),
  press("next by the manager", { type: "next" }, "manager"),
  press("back", { type: "back" }),
  press("back by crew", { type: "back" }, "crew"),
  press("hold by a trainee", { type: "hold" }, "trainee"),
  press("wait by a trainee", { type: "pause" }, "trainee"),
  press("carry on", { type: "carryOn" }),
  press("carry on by crew", { type: "carryOn" }, "crew"),
  press("make safe by a trainee", { type: "makeSafe", because: "a ring tore" }, "trainee"),
  press("stand down", { type: "standDown", because: "called off" }),
  press("stand down by crew", { type: "standDown", because: "called off" }, "crew"),
];

function tries(tent: Tent, { job, from }: Node): Try[] {
  const { context } = job.snapshot;
  const now = context.lastAt + SECOND;
  const call = callOf(tent, job);
  const all = [...ALWAYS];
  const gate = call?.gate ?? null;
  const id = call?.id ?? tent.order[0]!;
  const other = tent.order.find((o) => tent.rows.has(o) && o !== id)!;
  all.push(
    press("answer of another call", { type: "answer", gate: other, value: { kind: "yesNo", yes: true } }),
    press("waiver of another call", { type: "waive", gate: other, because: "late" }),
    press("waive", { type: "waive", gate: id, because: "nobody kneels" }),
    press("waive by crew", { type: "waive", gate: id, because: "nobody kneels" }, "crew"),
  );
  if (gate) {
    const value = JSON.parse(tent.good.get(id)!);
    const answer = (as: string, v: typeof value, role: Role) => all.push(press(as, { type: "answer", gate: id, value: v }, role));
    answer("good answer", value, answerer(tent, id));
    answer("good answer by the other person", value, answerer(tent, id) === "lead" ? "deputy" : "lead");
    const first = context.answers[tent.rows.get(id)?.notBy ?? ""];
    if (first)
      all.push(
        press("good answer spoken on the first one's phone, not allowed", { type: "answer", gate: id, value }, answerer(tent, id), {
          heardOn: first.device,
        }),
        press("good answer spoken on another phone", { type: "answer", gate: id, value }, answerer(tent, id), {
          heardOn: "a phone of its own",
        }),
      );
    answer("bad answer", badValue(gate.check), answerer(tent, id));
    answer("answer: not known", { kind: "unknown" }, answerer(tent, id));
    answer("answer of another kind", oddValue(gate.check), answerer(tent, id));
    answer("answer by a trainee, not allowed", value, "trainee");
    answer("answer by the manager, not allowed", value, "manager");
  }
  const held = attentionState(job) !== "working";
  const odd = held || (gate !== null && call !== null && answerIs(tent, job, call.id) === "bad");
  if (!odd) {
    all.push(
      press("calm reading", wind(8, now)),
      press("caution reading", wind(21, now)),
      press("stop reading", wind(26, now)),
      press("thunder", thunder(now)),
      press("reading from the future", wind(8, now + MINUTE)),
      press("reading by crew, not allowed", wind(8, now), "crew"),
      press("11 minutes pass", { type: "note", text: "tea" }, "trainee", { after: 11 * MINUTE }),
      press("31 minutes pass", { type: "note", text: "tea" }, "trainee", { after: 31 * MINUTE }),
      press("a day passes", { type: "note", text: "night" }, "crew", { after: 25 * HOUR }),
    );
    if (context.wind) all.push(press("older reading", wind(8, context.wind.takenAt - MINUTE)));
  }
  const firstOfPhase = call !== null && tent.frozen.script.steps.find((s) => s.phase === call.phase) === call;
  if (firstOfPhase && !held && from?.by !== "back")
    all.push(
      press("agree to nothing", { type: "agree", target: 0 }, "competent"),
      press("disagree with nothing", { type: "disagree", target: 0 }, "competent"),
      press("amend", { type: "amend", because: "sheet came", to: tent.frozen }),
      press("amend by crew", { type: "amend", because: "sheet came", to: tent.frozen }, "crew"),
    );
  return all;
}

/** Both halves of an amendment, judged and not followed. */
function settle(proposed: Node, before: Node, attempt: (node: Node, t: Try) => Node | null): void {
  const target = before.entry;
  attempt(proposed, press("agreed by the same person", { type: "agree", target }, "lead"));
  attempt(proposed, press("agreed by crew", { type: "agree", target }, "crew"));
  attempt(proposed, press("agreed to another entry", { type: "agree", target: target + 7 }, "deputy"));
  attempt(proposed, press("disagreed with another entry", { type: "disagree", target: target + 7 }, "deputy"));
  attempt(proposed, press("disagreed by crew", { type: "disagree", target }, "crew"));
  attempt(proposed, press("disagreed by another", { type: "disagree", target }, "competent"));
  attempt(proposed, press("agreed by another", { type: "agree", target }, "deputy"));
}

/** Carry on, read the wind, answer what is so, next. Says where that does not lead on. */
function deadEnd(tent: Tent, node: Node, attempt: (node: Node, t: Try) => Node | null): string | null {
  const from = callOf(tent, node.job);
  if (!from) return null;
  let at: Node | null = node;
  const then = (t: Try) => {
    at = at && attempt(at, t);
  };
  if (attentionState(node.job) !== "working") then(press("carry on", { type: "carryOn" }));
  const now = node.job.snapshot.context.lastAt + SECOND;
  if (thunderNear(node.job, now)) then(press("it stays quiet", { type: "note", text: "quiet" }, "crew", { after: 31 * MINUTE }));
  if (at && windIs(at.job, at.job.snapshot.context.lastAt + SECOND) !== "calm")
    then(press("calm reading", wind(8, at.job.snapshot.context.lastAt + SECOND), "competent"));
  if (tent.rows.has(from.id) && !tent.rows.get(from.id)!.wind && at && answerIs(tent, at.job, from.id) !== "good") {
    const { notBy } = tent.rows.get(from.id)!;
    const first = notBy ? at.job.snapshot.context.answers[notBy]?.by : undefined;
    const role = first === PEOPLE.deputy ? "lead" : answerer(tent, from.id);
    then(press("good answer", { type: "answer", gate: from.id, value: JSON.parse(tent.good.get(from.id)!) }, role));
  }
  then(press("next", { type: "next" }));
  if (!at) return `a command failed at ${from.id}`;
  return callOf(tent, (at as Node).job) === from ? `stuck at ${from.id}` : null;
}

const answerIs = (tent: Tent, job: Job, id: string) =>
  tent.rows.get(id)?.wind ? "open" : stands(tent, job, id, job.snapshot.context.lastAt + SECOND);

/** How many things in a state are out of the ordinary. */
function strangeness(tent: Tent, { job }: Node): number {
  const now = job.snapshot.context.lastAt + SECOND;
  const call = callOf(tent, job);
  if (!call) return 0;
  const held = attentionState(job) !== "working";
  const odd = ["bad", "old", "samePerson"].includes(answerIs(tent, job, call.id));
  const weather = Number(windIs(job, now) !== "calm") + Number(thunderNear(job, now));
  return Number(held) + weather + Number(odd) + Number(!tent.place.has(call.id));
}

function stateKey(tent: Tent, node: Node): string {
  const { job, memory } = node;
  const { context, value } = job.snapshot;
  const now = context.lastAt + SECOND;
  const call = callOf(tent, job);
  const { weather, attention } = value as { weather: string; attention: string };
  const straight = strangeness(tent, node) <= 1;
  const left =
    context.resumeAt === null || straight ? context.resumeAt : tent.frozen.script.steps.find((s) => s.id === context.resumeAt)!.phase;
  const remembered = memory.resumeAt === context.resumeAt && memory.site === context.site && memory.began === context.startedFrom;
  const answer = call && context.answers[call.id]?.value.kind === "unknown" ? "unknown" : "";
  const waived = call && context.waived[call.id] ? "waived" : "";
  const phase =
    call && context.resumeAt === null ? tent.frozen.script.steps.filter((s) => s.phase === call.phase && tent.rows.get(s.id)?.hard) : [];
  // Gates before this call by what is wrong with them; those after it by what is still answered.
  const here = call ? (tent.place.get(call.id) ?? 0) : 0;
  const odd = phase.flatMap((s) => {
    const is = answerIs(tent, job, s.id);
    const usual = s.id === call!.id || tent.rows.get(s.id)!.goodForMin || is === (tent.place.get(s.id)! < here ? "good" : "open");
    return usual ? [] : [`${s.id}=${is}`];
  });
  return [
    call?.id ?? "closed",
    weather,
    attention,
    left,
    context.startedFrom,
    context.site,
    call ? answerIs(tent, job, call.id) + answer + waived : "",
    windIs(job, now),
    thunderNear(job, now),
    odd.join(),
    remembered || JSON.stringify(memory),
  ].join("|");
}

function pathTo(node: Node): string {
  const names: string[] = [];
  for (let at: Node | null = node; at; at = at.from) names.unshift(at.by);
  return names.length > 12 ? `${names.length - 8} commands, ${names.slice(-8).join(", ")}` : names.join(", ");
}
