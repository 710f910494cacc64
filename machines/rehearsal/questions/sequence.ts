import { type Frozen, PHASES, type PhaseId, type Step } from "../../install/step.ts";
import type { Seeded } from "../seeded.ts";
import { choice, inOrder, type Made, type Maker, type Shown, type Skills, worded } from "./question.ts";

/** One after another: what follows one of them. Slips: the one before, the one after next, others of the same kind. */
function following<T extends object | string>(
  random: Seeded,
  list: readonly T[],
  shown: (is: T) => Shown,
): { readonly at: T; readonly made: ReturnType<typeof choice> } | null {
  if (list.length < 2) return null;
  const i = random.int(0, list.length - 2);
  const near = [list[i + 2], list[i - 1]].filter((is) => is !== undefined);
  const rest = random.shuffle(list.filter((is) => is !== list[i] && is !== list[i + 1] && !near.includes(is)));
  return { at: list[i]!, made: choice(random, shown(list[i + 1]!), [...near, ...rest].map(shown), [shown(list[i]!)]) };
}

const piece: Maker = ({ plan, script }, random) => {
  const next = following(random, plan.pieces, ({ id }) => ({ is: "piece", id }));
  const because = script.steps.find((s) => s.wordsKey === "lay.piece");
  return next?.made ? { ask: "nextPiece", params: { piece: next.at.id }, ...next.made, because: because ? worded(because) : null } : null;
};

const half: Maker = ({ plan, script }, random) => {
  const next = following(random, plan.seams.flatMap((s) => s.halves), ({ id }) => ({ is: "half", id })); // biome-ignore format: one line reads best
  const because = next && script.steps.find((s) => s.id === `lace.${next.at.id}`);
  return next?.made ? { ask: "nextHalf", params: { half: next.at.id }, ...next.made, because: because ? worded(because) : null } : null;
};

/** Calls of a phase that are worded alike, in their order. */
const alike =
  (phase: PhaseId, wordsKeys: readonly string[], ask: string): Maker =>
  ({ script }, random) => {
    const calls = script.steps.filter((s) => s.phase === phase && wordsKeys.includes(s.wordsKey));
    const next = following(random, calls, (s) => ({ is: "call", ...worded(s) }));
    return next?.made ? { ask, about: worded(next.at), ...next.made, because: worded(next.at) } : null;
  };

const phase: Maker = (_, random) => {
  const next = following(random, PHASES, (id) => ({ is: "phase", id }));
  return next?.made ? { ask: "nextPhase", params: { phase: next.at }, ...next.made, because: null } : null;
};

/** The calls of a phase that are worded each in its own way: no two sound alike. */
const told = ({ script }: Frozen, phase: PhaseId): Step[] => {
  const calls = script.steps.filter((s) => s.phase === phase);
  return calls.filter((s) => calls.filter((other) => other.wordsKey === s.wordsKey).length === 1);
};

/** The call that comes right after another one of its phase. */
const call =
  (of: PhaseId): Maker =>
  (frozen, random) => {
    const { steps } = frozen.script;
    const calls = told(frozen, of);
    const pairs = calls.flatMap((s) => {
      const after = steps[steps.indexOf(s) + 1];
      return after && calls.includes(after) ? [[s, after] as const] : [];
    });
    if (pairs.length === 0) return null;
    const [at, next] = random.pick(pairs);
    const i = calls.indexOf(next);
    const near = [calls[i + 1], calls[i - 2], calls[i + 2]].filter((s) => s !== undefined);
    const others = [...near, ...random.shuffle(calls.filter((s) => s !== at))];
    const made = choice(random, { is: "call", ...worded(next) }, others.map((s) => ({ is: "call", ...worded(s) }))); // biome-ignore format: one line reads best
    return made && { ask: "nextCall", about: worded(at), ...made, because: worded(next) };
  };

/** So many calls are put in order. */
const ORDERED = 4;
const order =
  (of: PhaseId): Maker =>
  (frozen, random): Made | null => {
    const calls = told(frozen, of);
    if (calls.length < ORDERED - 1) return null;
    const from = random.int(0, Math.max(0, calls.length - ORDERED));
    const right = calls.slice(from, from + ORDERED).map((s): Shown => ({ is: "call", ...worded(s) }));
    return { ask: "order", ...inOrder(random, right), because: worded(calls[from]!) };
  };

/** What comes after what: from the script and the plan. */
export const NEXT: Skills = {
  "next.phase": ["utilitiesMarked", phase],
  "next.piece": ["sectionsJoined", piece],
  "next.half": ["sectionsJoined", half],
  "next.corner": ["perimeterRaised", alike("perimeterRaised", ["raise.firstCorner", "raise.corner"], "nextUp")],
  "next.line": ["interiorRaised", alike("interiorRaised", ["under.in"], "nextUp")],
  "next.down": ["struck", alike("struck", ["under.in"], "nextDown")],
  "next.call.utilitiesMarked": ["utilitiesMarked", call("utilitiesMarked")],
  "next.call.tensioned": ["tensioned", call("tensioned")],
  "next.call.inspected": ["inspected", call("inspected")],
};

export const ORDERS: Skills = Object.fromEntries(PHASES.map((of) => [`order.${of}`, [of, order(of)] as const]));
