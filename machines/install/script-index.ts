import type { Gate } from "./gates.ts";
import type { GateId, StepId } from "./ids.ts";
import type { Condition, Script, Step, Work } from "./step.ts";

/** A gate as it is asked in words: those of the call whose gate it is, or of the condition. */
export type Question = Pick<Step, "wordsKey" | "params"> & { readonly gate: Gate };

/** What is known of a script beside its calls. Made once a script. */
type Index = {
  readonly at: ReadonlyMap<StepId, number>;
  readonly gates: ReadonlyMap<GateId, Gate>;
  readonly questions: ReadonlyMap<GateId, Question>;
  readonly over: ReadonlyMap<Work, readonly Condition[]>;
  readonly conditions: ReadonlySet<GateId>;
  /** Gates that two people answer, by each other. */
  readonly pairs: ReadonlyMap<GateId, readonly GateId[]>;
  /** Gates that are asked again some time after another. */
  readonly recheck: readonly Gate[];
  /** Counts of who went under, with the count of who came out. */
  readonly under: readonly { readonly into: GateId; readonly out: Gate }[];
};
const indexes = new WeakMap<Script, Index>();

export function indexOf(script: Script): Index {
  const known = indexes.get(script);
  if (known) return known;
  const all = [...script.steps, ...Object.values(script.escapes).flat()];
  const asking = all.flatMap((step) => (step.gate ? [{ gate: step.gate, step }] : []));
  const gates = new Map([...script.conditions.map((c) => c.gate), ...asking.map(({ gate }) => gate)].map((g) => [g.id, g]));
  const over = new Map<Work, Condition[]>();
  for (const condition of script.conditions) for (const work of condition.over) over.set(work, [...(over.get(work) ?? []), condition]);
  const pairs = new Map<GateId, GateId[]>();
  const pair = (a: GateId, b: GateId) => pairs.set(a, [...(pairs.get(a) ?? []), b]);
  for (const { id, secondPersonTo } of gates.values())
    if (secondPersonTo !== null) {
      pair(id, secondPersonTo);
      pair(secondPersonTo, id);
    }
  const index: Index = {
    at: new Map(script.steps.map((s, i) => [s.id, i])),
    gates,
    questions: new Map<GateId, Question>([
      ...script.conditions.map((c) => [c.gate.id, c] as const),
      ...asking.map(({ gate, step: { wordsKey, params } }) => [gate.id, { wordsKey, params, gate }] as const),
    ]),
    over,
    conditions: new Set(script.conditions.map((c) => c.gate.id)),
    pairs,
    recheck: script.steps.flatMap(({ gate }) => (gate?.recheck ? [gate] : [])),
    under: [...gates.values()].flatMap((out) => (out.check.kind === "sameCount" ? [{ into: out.check.as, out }] : [])),
  };
  indexes.set(script, index);
  return index;
}
