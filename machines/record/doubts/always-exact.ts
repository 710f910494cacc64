import type { FigureLimit } from "../../install/checks/figures.ts";
import type { Unit } from "../../install/checks/units.ts";
import type { GateId } from "../../install/ids.ts";
import { LENGTHS, lengthFt } from "../../site/lengths.ts";
import type { Answered } from "./answered.ts";
import { phaseOf } from "./course.ts";
import { NO_PLACES, type Places, withPlace } from "./doubt.ts";
import type { Watch } from "./watch.ts";

/**
 * Fewest gates whose measurements are all exactly the figure that was wanted: 10. Suppose that every second true measurement
 * comes out exactly on it (crews round to whole inches, and drive until it is enough): ten in a row do so less than once in a
 * thousand jobs (1 in 2 to the 10th = 1,024). A true one does it less often, so this is generous. Common practice, no source.
 */
export const MIN_EXACT_GATES = 10;

/** Half of the finest mark on a crew's tape, 1/16 in, in feet: nearer than that is exactly it. Common practice, no source. */
export const EXACT_WITHIN_FT = 1 / 32 / 12;

/** Units in which something is measured. A gust is agreed on, turns are counted, and a pull ends at its figure by design. */
const MEASURED: readonly (Unit | "count")[] = ["in", "ft", "deg"];
/** A good stake measures just what its sheet says. */
const AS_MADE: readonly GateId[] = ["stakes.size"];

type Exact = { readonly phase: string; readonly gates: readonly GateId[]; readonly places: Places; readonly isBroken: boolean };

/** A crew whose measurements are always exactly what was wanted. One that is not, good or bad, and there is no doubt left. */
export const alwaysExact: Watch<Exact> = {
  kind: "alwaysExact",
  open: { phase: "", gates: [], places: NO_PLACES, isBroken: false },
  add: (state, { answered, before, frozen }) => {
    const isExact = answered && !state.isBroken ? exactness(answered) : null;
    if (!answered || isExact === null || (isExact && state.gates.includes(answered.gate.id))) return state;
    // Nothing that came before matters any more.
    if (!isExact) return { ...alwaysExact.open, isBroken: true };
    const { no, by } = answered.first;
    return {
      ...state,
      phase: state.phase || phaseOf(before, frozen),
      gates: [...state.gates, answered.gate.id],
      places: withPlace(state.places, no, by),
    };
  },
  doubts: ({ phase, gates, places: { entries, by } }) =>
    gates.length < MIN_EXACT_GATES ? [] : [{ kind: "alwaysExact", entries, phase, by, facts: { count: gates.length } }],
};

/** Whether a measured answer is exactly what was wanted, in every figure; `null` where nothing was measured, or not all yet. */
function exactness({ gate: { id, check }, value, is }: Answered): boolean | null {
  if ((is !== "good" && is !== "out") || AS_MADE.includes(id)) return null;
  if (check.kind === "measure" && value.kind === "measure") return MEASURED.includes(check.unit) ? isAt(check, value.n) : null;
  if (check.kind === "figures" && value.kind === "figures")
    return MEASURED.includes(check.unit) ? check.names.every((name) => isAt(check.want[name]!, value.n[name])) : null;
  if (check.kind !== "lengths" || value.kind !== "lengths") return null;
  return LENGTHS.every((name) => value.ft[name] === undefined || Math.abs(value.ft[name] - lengthFt(check.want, name)) <= EXACT_WITHIN_FT);
}

const isAt = ({ from, to }: FigureLimit, n: number | undefined): boolean => n !== undefined && (n === from || n === to);
