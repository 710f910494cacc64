import { without } from "../lookup/without.ts";
import type { Happening } from "./gates.ts";
import type { EntryNo, GateId } from "./ids.ts";
import { indexOf } from "./script-index.ts";
import type { JobState, Reopened } from "./state.ts";
import { type Script, SITE_STATES, type Step } from "./step.ts";

/** The state with these gates unanswered. What was answered is remembered as asked again, with what made it so. */
export function reopen(state: JobState, ids: readonly GateId[], by: Reopened["by"], entry: EntryNo): JobState {
  const open = ids.filter((id) => state.answers[id] || state.waived[id]);
  if (open.length === 0) return state;
  const because = { by, entry };
  return {
    ...state,
    answers: without(state.answers, open),
    waived: without(state.waived, open),
    reopened: { ...state.reopened, ...Object.fromEntries(open.map((id) => [id, because])) },
  };
}

/** The state after something happened that gates are reopened by. */
export function reopenFor(script: Script, state: JobState, happening: Happening, entry: EntryNo): JobState {
  const gates = [...indexOf(script).gates.values()].filter((g) => g.reopenedBy.includes(happening));
  const after = reopen(
    state,
    gates.map((g) => g.id),
    happening,
    entry,
  );
  const woken = gates.filter((g) => g.dormant).map((g) => [g.id, { by: happening, entry }]);
  return woken.length === 0 ? after : { ...after, reopened: { ...after.reopened, ...Object.fromEntries(woken) } };
}

/** The state on arriving at a call: what stands on the site grows on the way up and shrinks in a strike; a strike starts over. */
export function arrived(script: Script, state: JobState, to: Step, entry: EntryNo): JobState {
  const grown = to.phase === "struck" || SITE_STATES.indexOf(to.site) > SITE_STATES.indexOf(state.site);
  const there = grown ? { ...state, site: to.site } : state;
  if (to.begins === null) return there;
  return reopenFor(script, { ...there, startedFrom: to.begins === "strike" ? to.id : there.startedFrom }, to.begins, entry);
}
