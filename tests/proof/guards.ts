import type { Snapshot } from "../../machines/install/job.ts";
import type { Machine } from "../../machines/install/machine.ts";

/** For each guard, at which state of an exploration it first said yes and first said no. */
export type FirstSaid = Map<string, { yes?: number; no?: number }>;

type Guard = ((args: unknown, params: unknown) => boolean) & {
  /** XState's own guards are asked by this. */
  readonly check?: (snapshot: unknown, args: unknown, params: unknown) => boolean;
};
const guardsIn = (machine: Machine) => machine.implementations.guards as unknown as Readonly<Record<string, Guard>>;
const withGuards = (machine: Machine, guards: Readonly<Record<string, Guard>>): Machine =>
  machine.provide({ guards } as Parameters<Machine["provide"]>[0]) as Machine;

/** Every guard that some transition of the chart asks, by name: a call or a reading that this job has not brings its own. */
export function guardsOf(machine: Machine): string[] {
  const asked = new Set<string>();
  const walk = (node: Node): void => {
    const { states, transitions, always } = node;
    for (const { guard } of [...[...transitions.values()].flat(), ...(always ?? [])]) for (const name of namesIn(guard)) asked.add(name);
    Object.values(states).forEach(walk);
  };
  walk(machine.root as unknown as Node);
  const known = guardsIn(machine);
  // One that is put together asks others by their names.
  for (const name of asked) for (const other of namesIn(known[name])) asked.add(other);
  return Object.keys(known).filter((name) => asked.has(name));
}
type Asking = { readonly guard?: unknown };
type Node = { readonly states: Readonly<Record<string, Node>>; readonly transitions: ReadonlyMap<string, readonly Asking[]>; readonly always?: readonly Asking[] }; // biome-ignore format: one line reads best
function namesIn(guard: unknown): string[] {
  if (typeof guard === "string") return [guard];
  const { type, guards } = (guard ?? {}) as { type?: unknown; guards?: readonly unknown[] };
  return [...(typeof type === "string" ? [type] : []), ...(guards ?? []).flatMap(namesIn)];
}

/** The chart with one guard that always says the same. */
export const stuck = (machine: Machine, guard: string, says: boolean): Machine => withGuards(machine, { [guard]: () => says });

/** The chart with every guard overheard: `at` tells which state is being tried. */
export function spied(machine: Machine, firstSaid: FirstSaid, at: () => number): Machine {
  const overheard = Object.entries(guardsIn(machine)).map(([name, guard]): [string, Guard] => {
    const said: { yes?: number; no?: number } = {};
    firstSaid.set(name, said);
    const note = (says: boolean) => {
      said[says ? "yes" : "no"] ??= at();
      return says;
    };
    const { check } = guard;
    const spy = (args: unknown, params: unknown) => note(guard(args, params));
    return [name, check ? Object.assign(spy, guard, { check: (s: unknown, a: unknown) => note(check(s, a, guard)) }) : spy];
  });
  return withGuards(machine, Object.fromEntries(overheard));
}

/** Every command moves the clock first, and most that are tried on a state move it to the same moment: that step is taken once. */
export function clockOnce(machine: Machine): Machine {
  const moved = new WeakMap<Snapshot, Map<number, Snapshot>>();
  const transition = machine.transition.bind(machine);
  machine.transition = (snapshot, event, scope) => {
    if (event.type !== "clock") return transition(snapshot, event, scope);
    const known = moved.get(snapshot) ?? new Map<number, Snapshot>();
    moved.set(snapshot, known);
    const next = known.get(event.at) ?? transition(snapshot, event, scope);
    known.set(event.at, next);
    return next;
  };
  return machine;
}
