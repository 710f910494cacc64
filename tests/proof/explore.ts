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
 *   and calm, an answer that is not good, being on a way out. States stranger than `MAX_STRANGE` are judged when they
 *   are reached, but nothing is tried on them.
 * - On a way out only the straight path is walked for every call it was left from. Its strange variants are explored
 *   once for each phase it was left from: no rule of a way out but "going on" reads where it was left.
 * - Readings and the passing of time are tried on states without other strangeness than weather, as nothing that they
 *   change reads holds or answers. Amendments are tried at the first call of a phase and judged, not followed.
 * - A command on a clock that ran back is judged and not followed; so is going back out of a strike, and further back than
 *   one call before what stands on the site was begun.
 *
 * A chart with one guard stuck does what the true one does until that guard first says otherwise. So the true chart's
 * exploration notes when each guard first said what, and the mutant's goes on from there.
 */
import type { Command } from "../../machines/install/commands.ts";
import { decide } from "../../machines/install/decide.ts";
import { type Job, openJob } from "../../machines/install/job.ts";
import type { Machine } from "../../machines/install/machine.ts";
import type { Outcome } from "../../machines/install/refusals.ts";
import { type Frozen, SITE_STATES } from "../../machines/install/step.ts";
import { commandOf, SECOND, START } from "./fixtures.ts";
import { clockOnce, type FirstSaid, spied, stuck } from "./guards.ts";
import { INVARIANTS, type Invariant, type Memory, NO_DEAD_END, ONE_OUTCOME, remember, type Trial } from "./invariants.ts";
import { type Node, stateKey, strangeness } from "./state.ts";
import { callOf, siteAt, type Tent, tentOf } from "./tent.ts";
import { type Attempt, deadEnd, settle, tries } from "./tries.ts";

const MAX_STRANGE = 1;

export type Explored = {
  readonly tent: Tent;
  readonly machine: Machine;
  readonly nodes: readonly Node[];
  /** How many states were known when each was begun. */
  readonly known: readonly number[];
  readonly firstSaid: FirstSaid;
  /** Ids of the calls that were reached. */
  readonly calls: ReadonlySet<string>;
  readonly trials: number;
  readonly found: ReadonlyMap<Invariant, string>;
};

/** The whole exploration of a tent's own chart. */
export function explore(frozen: Frozen): Explored {
  const honest = openJob(frozen, START);
  const firstSaid: FirstSaid = new Map();
  const known: number[] = [];
  const machine = clockOnce(spied(honest.machine, firstSaid, () => known.length - 1));
  const tent = tentOf(frozen);
  const start: Node = {
    job: onMachine(honest, machine),
    memory: { site: "clear", began: tent.order[0]!, resumeAt: null },
    entry: 1,
    from: null,
    by: "opened",
  };
  return { ...search(tent, machine, [start], 0, known, false), tent, machine: honest.machine, known, firstSaid };
}

/** What first notices that one guard always says the same, or null: where it never said otherwise, there is nothing to notice. */
export function noticedStuck(honest: Explored, guard: string, says: boolean): Invariant | null {
  const at = honest.firstSaid.get(guard)?.[says ? "no" : "yes"];
  if (at === undefined) return null;
  const machine = clockOnce(stuck(honest.machine, guard, says));
  const nodes = honest.nodes.slice(0, honest.known[at]).map((n, i) => (i < at ? n : { ...n, job: onMachine(n.job, machine) }));
  return [...search(honest.tent, machine, nodes, at, [], true).found.keys()][0] ?? null;
}

/** A snapshot carries its machine along, and that one's guards are asked. */
const onMachine = (job: Job, machine: Machine): Job => ({
  ...job,
  machine,
  snapshot: machine.resolveState({ value: job.snapshot.value, context: job.snapshot.context }),
});

/** Tries everything on each of `nodes` from the place `at` on, and on what that leads to; to the end, or to the first finding. */
function search(tent: Tent, machine: Machine, nodes: Node[], at: number, known: number[], first: boolean) {
  const found = new Map<Invariant, string>();
  const seen = new Set(nodes.map((node) => stateKey(tent, node)));
  const readBack = new Set<string>();
  let trials = 0;

  const report = (invariant: Invariant, node: Node, as: string, trouble: string) => {
    if (!found.has(invariant)) found.set(invariant, `${trouble}; after ${pathTo(node)}: ${as}`);
  };
  const attempt: Attempt = (node, t) => {
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
    const trial: Trial = { tent, as: t.as, before: node.job, memory: node.memory, command, outcome, after, readBack };
    for (const name of NAMES) {
      const trouble = INVARIANTS[name](trial);
      if (trouble) report(name, node, t.as, trouble);
    }
    const memory = withSite(remember(trial), trial);
    return { job: { ...after, machine }, memory, entry: node.entry + 1, from: node, by: t.as };
  };

  for (let i = at; i < nodes.length && !(first && found.size > 0); i++) {
    known.push(nodes.length);
    const node = nodes[i]!;
    const trouble = deadEnd(tent, node, attempt);
    if (trouble) report(NO_DEAD_END, node, "truthful answers", trouble);
    for (const t of tries(tent, node)) {
      const next = attempt(node, t);
      if (!next) continue;
      if (next.job.snapshot.context.proposed) settle(next, node, attempt);
      else if (!t.dropped && !farBack(tent, node, next)) {
        const key = stateKey(tent, next);
        if (seen.has(key) || strangeness(tent, next) > MAX_STRANGE) continue;
        seen.add(key);
        nodes.push(next);
      }
      if (first && found.size > 0) break;
    }
  }
  return { nodes, calls: new Set(nodes.flatMap((n) => callOf(tent, n.job)?.id ?? [])), trials, found };
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

function pathTo(node: Node): string {
  const names: string[] = [];
  for (let at: Node | null = node; at; at = at.from) names.unshift(at.by);
  return names.length > 12 ? `${names.length - 8} commands, ${names.slice(-8).join(", ")}` : names.join(", ");
}
