import { ESCAPES, type Frozen, type Step } from "../../machines/install/step.ts";
import { walkAmended } from "./amended.ts";
import { disagreements } from "./disagreements.ts";
import { type Explored, noticedStuck } from "./explore.ts";
import { guardsOf } from "./guards.ts";

export type Mutant = { readonly name: string; readonly caughtBy: string | null };

/** Every guard of the chart, stuck at yes and at no, in the places that the exploration of a tent reached. */
export const guardMutants = (explored: Explored): Mutant[] =>
  guardsOf(explored.machine).flatMap((name) => [guardMutant(explored, name, true), guardMutant(explored, name, false)]);

export const guardMutant = (explored: Explored, name: string, says: boolean): Mutant => ({
  name: `${name} always says ${says ? "yes" : "no"}`,
  caughtBy: noticedStuck(explored, name, says) ?? walkAmended(name, says),
});

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
  const script = {
    ...frozen.script,
    steps: swap(steps),
    escapes: { ground: swap(escapes.ground), up: swap(escapes.up), standing: swap(escapes.standing) },
  };
  const [first] = disagreements({ ...frozen, script });
  return first ? `the table: ${first}` : null;
}
