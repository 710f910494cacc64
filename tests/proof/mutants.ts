import type { Machine } from "../../machines/install/machine.ts";
import { ESCAPES, type Frozen, type Step } from "../../machines/install/step.ts";
import { findings } from "./explore.ts";
import { disagreements } from "./tent.ts";

export type Mutant = { readonly name: string; readonly caughtBy: string | null };

/** Every guard of the chart. A new one that is missing here fails the test that compares the two. */
export const guardsOf = (machine: Machine): string[] => Object.keys(machine.implementations.guards);

/** The chart with one guard that always says the same. */
const withGuard = (name: string, says: boolean) => (machine: Machine) =>
  machine.provide({ guards: { [name]: () => says } } as Parameters<Machine["provide"]>[0]) as Machine;

export function guardMutant(frozen: Frozen, name: string, says: boolean): Mutant {
  const { found } = findings(frozen, { mutate: withGuard(name, says), strange: 1, first: true });
  return { name: `${name} always says ${says ? "yes" : "no"}`, caughtBy: [...found.keys()][0] ?? null };
}

/** Every gate of the script taken away, and every hard one made soft, held against the table. */
export function gateMutants(frozen: Frozen): Mutant[] {
  const gates = [...frozen.script.steps, ...ESCAPES.flatMap((r) => frozen.script.escapes[r])].filter((s) => s.gate);
  return gates.flatMap((s) => [
    { name: `${s.id} taken away`, caughtBy: byTable(frozen, s, { ...s, gate: null }) },
    {
      name: `${s.id} made ${s.gate!.hard ? "soft" : "hard"}`,
      caughtBy: byTable(frozen, s, { ...s, gate: { ...s.gate!, hard: !s.gate!.hard } }),
    },
  ]);
}

function byTable(frozen: Frozen, old: Step, step: Step): string | null {
  const swap = (steps: readonly Step[]) => steps.map((s) => (s === old ? step : s));
  const { steps, escapes } = frozen.script;
  const script = { steps: swap(steps), escapes: { ground: swap(escapes.ground), up: swap(escapes.up), standing: swap(escapes.standing) } };
  const [first] = disagreements({ ...frozen, script });
  return first ? `the table: ${first}` : null;
}
