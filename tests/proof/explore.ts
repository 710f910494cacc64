/**
 * Breadth-first exploration of `decide`: every kind of command is tried on every state reached, and every trial is held
 * against `INVARIANTS`.
 *
 * Two jobs count as the same state when they agree on: the chart's value, where going on and the strike begin, what is
 * on the site, in a strike whether all lines stood, some or none, who is under, how the call's own gate stands, which gates were opened again and which of its phase are answered
 * already, the conditions of this call's work and the next one's, and wind and thunder by number and age. Left out on purpose,
 * because no rule compares them: entry numbers, keys, devices, absolute time; and conditions of other work, which are judged
 * when that work comes next.
 *
 * What keeps it small:
 * - A state is as strange as the number of things in it that are out of the ordinary: held, weather that is not fresh
 *   and calm, an answer that is not good, being on a way out. States stranger than `MAX_STRANGE` are judged when they
 *   are reached, but nothing is tried on them.
 * - On a way out only the straight path is walked for every call it was left from. All else is tried there, and its strange
 *   variants are explored, once for each phase it was left from: no rule of a way out but "going on" reads where it was left.
 * - A strange state is tried in full, for dead ends too, at one call of each kind: of those at which the chart is made the same way. At the
 *   others it is walked straight on from. States in order are tried in full at every call.
 * - Whatever goes wrong, and the passing of time, is tried on every state that is in order. Amendments are tried at the first
 *   call of a phase and with people under, and judged, not followed: amendments.test.ts walks on from one at every call.
 * - A command on a clock that ran back is judged and not followed; so is going back out of a strike, and further back than
 *   one call before what stands on the site was begun.
 *
 * A chart with one guard stuck does what the true one does until that guard first says otherwise. So the true chart's
 * exploration notes when each guard first said what, and the mutant's goes on from there.
 */
import { type Job, openJob } from "../../machines/install/job.ts";
import type { Machine } from "../../machines/install/machine.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { attemptOn } from "./attempt.ts";
import { START } from "./fixtures.ts";
import { clockOnce, type FirstSaid, spied, stuck } from "./guards.ts";
import { type Invariant, NO_DEAD_END } from "./invariants.ts";
import { type Node, stateKey, strangeness } from "./state.ts";
import { callOf, siteAt, type Tent, tentOf } from "./tent.ts";
import { type Attempt, deadEnd, settle, straightOn, tries } from "./tries.ts";

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
    memory: { site: "clear", began: tent.order[0]!, resumeAt: null, since: START, under: null },
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
  const tried = new Set<string>();
  let trials = 0;

  const report = (invariant: Invariant, node: Node, as: string, trouble: string) => {
    if (!found.has(invariant)) found.set(invariant, `${trouble}; after ${pathTo(node)}: ${as}`);
  };
  const judged = attemptOn({ tent, machine, readBack, report });
  const attempt: Attempt = (node, t) => {
    trials += 1;
    return judged(node, t);
  };

  for (let i = at; i < nodes.length && !(first && found.size > 0); i++) {
    known.push(nodes.length);
    const node = nodes[i]!;
    // Where a state like it was tried in full, it is only walked straight on from.
    const likeAnother = triedAlready(tent, node, tried);
    const trouble = likeAnother ? null : deadEnd(tent, node, attempt);
    if (trouble) report(NO_DEAD_END, node, "truthful answers", trouble);
    for (const t of likeAnother ? straightOn(tent, node) : tries(tent, node)) {
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

/** Whether a strange state was tried in full at another call of the same kind; on a way out, at this one, left from the same phase. */
function triedAlready(tent: Tent, node: Node, tried: Set<string>): boolean {
  const { resumeAt } = node.job.snapshot.context;
  if (resumeAt === null && strangeness(tent, node) === 0) return false;
  const left = resumeAt === null ? null : tent.frozen.script.steps[tent.place.get(resumeAt)!]!.phase;
  const parts = stateKey(tent, node).split(/([|=,])/);
  const key = parts.map((part) => (part === resumeAt ? left : (tent.kinds.get(part) ?? part))).join("");
  const known = tried.has(key);
  tried.add(key);
  return known;
}

/** Further back than one call before what stands on the site was begun. */
function farBack(tent: Tent, from: Node, to: Node): boolean {
  const [was, is] = [callOf(tent, from.job), callOf(tent, to.job)];
  if (to.by !== "back" || !was || !is || was === is || !tent.place.has(is.id)) return false;
  return siteAt(tent, was.id) !== from.job.snapshot.context.site;
}

function pathTo(node: Node): string {
  const names: string[] = [];
  for (let at: Node | null = node; at; at = at.from) names.unshift(at.by);
  return names.length > 12 ? `${names.length - 8} commands, ${names.slice(-8).join(", ")}` : names.join(", ");
}
