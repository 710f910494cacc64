import type { Value } from "../../install/gates.ts";
import type { EntryNo, GateId, Instant, PersonId } from "../../install/ids.ts";
import { indexOf } from "../../install/script-index.ts";
import type { Frozen } from "../../install/step.ts";
import { worstMph } from "../../install/weather.ts";
import { isSure, phaseOf } from "./course.ts";
import { type Doubt, seconds, withPeople } from "./doubt.ts";
import type { Said } from "./said.ts";
import { changeOf } from "./value-change.ts";
import type { Found, Watch } from "./watch.ts";

/**
 * Soonest that a bad answer can have become a good one, in milliseconds: 15 s. Whatever was wrong is walked to, put right and
 * looked at or read again; a stake alone takes longer. Common practice, no source.
 */
export const MIN_PUT_RIGHT_MS = 15_000;

/** What was out of limit: an answer, or a wind in mph with all gates that it was too much for. */
type Bad = {
  readonly gates: readonly GateId[];
  readonly value: Value | null;
  readonly mph: number | null;
  readonly no: EntryNo;
  readonly said: Instant;
  readonly by: PersonId;
  readonly phase: string;
};
type State = Found & { readonly bad: Bad | null };

/** An answer out of its limit, and a good one to the same gate right after it, with nothing done between them. */
export const outOfLimitThen: Watch<State> = {
  kind: "outOfLimitThen",
  open: { found: [], bad: null },
  add: (state, said) => {
    // Refused, or read back: nothing was done by it yet.
    if (said.did.length === 0 || said.did.includes("readBack") || said.did.includes("dropped")) return state;
    const doubt = state.bad && doubtIn(state.bad, said);
    return { found: doubt ? [...state.found, doubt] : state.found, bad: badIn(said) };
  },
  doubts: ({ found }) => found,
};

function badIn({ answered, command, entry, before, after, frozen, did }: Said): Bad | null {
  const phase = phaseOf(before, frozen);
  if (answered?.is === "out") {
    const { no, said, by } = answered.first;
    return { gates: [answered.gate.id], value: answered.value, mph: null, no, said, by, phase };
  }
  if (command.type !== "reading" || command.reading.kind !== "wind" || !did.includes("read")) return null;
  const mph = worstMph(command.reading);
  const gates = tooMuchFor(mph, frozen);
  return gates.length === 0 ? null : { gates, value: null, mph, no: entry.no, said: after.at, by: command.by, phase };
}

/** Gates that so much wind keeps shut. */
const tooMuchFor = (mph: number, { script }: Frozen): GateId[] =>
  script.conditions.flatMap(({ gate: { id, check } }) => (check.kind === "wind" && mph >= check.belowMph ? [id] : []));

function doubtIn(bad: Bad, said: Said): Doubt | null {
  const { after, entry, command } = said;
  const ms = after.at - bad.said;
  const facts = ms < MIN_PUT_RIGHT_MS && isSure(after, bad) ? goodNow(bad, said) : null;
  if (!facts) return null;
  const put = { seconds: seconds(ms), minSeconds: seconds(MIN_PUT_RIGHT_MS) };
  return {
    kind: "outOfLimitThen",
    entries: [bad.no, entry.no],
    phase: bad.phase,
    by: withPeople([bad.by], [command.by]),
    facts: { ...facts, ...put },
  };
}

/** What is good now that was not, with both values; `null` where nothing is. */
function goodNow({ gates, value, mph }: Bad, { answered, command, frozen, did }: Said): Doubt["facts"] | null {
  if (value !== null) {
    const gate = answered?.is === "good" && answered.gate.id === gates[0] ? indexOf(frozen.script).gates.get(answered.gate.id) : undefined;
    return gate && answered ? { gate: gate.id, ...changeOf(gate.check, value, answered.value) } : null;
  }
  if (mph === null || command.type !== "reading" || command.reading.kind !== "wind" || !did.includes("read")) return null;
  const now = worstMph(command.reading);
  const still = tooMuchFor(now, frozen);
  const gate = gates.find((id) => !still.includes(id));
  return gate === undefined ? null : { gate, was: toTenth(mph), is: toTenth(now), unit: "mph" };
}

const toTenth = (n: number): number => Math.round(n * 10) / 10;
