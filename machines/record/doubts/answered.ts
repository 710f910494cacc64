import { comparesWith, isComplete, meetsLimit } from "../../install/checks/any-check.ts";
import type { Command } from "../../install/commands.ts";
import type { Gate, Value } from "../../install/gates.ts";
import type { DeviceId, EntryNo, GateId, Instant, PersonId } from "../../install/ids.ts";
import { indexOf } from "../../install/script-index.ts";
import type { Script } from "../../install/step.ts";
import { answerValue } from "../effective-command.ts";
import type { EntryLookup } from "../entries.ts";
import type { CommandEntry } from "../entry.ts";

/** Who answered, and when it was first spoken: somebody else's answer is held against it. */
export type First = { readonly no: EntryNo; readonly said: Instant; readonly by: PersonId; readonly device: DeviceId };

/** An answer that was taken, with what its gate's answer came to, and how that stands as far as the record tells. */
export type Answered = {
  readonly gate: Gate;
  readonly value: Value;
  readonly is: "good" | "out" | "part" | "unknown" | "paper";
  readonly first: First;
};

/** Latest answers that another gate is held against. */
export type Counted = Readonly<Record<GateId, { readonly value: Value }>>;

type Where = { readonly script: Script; readonly counted: Counted; readonly earlier: EntryLookup };

/** The answer that an entry gave, by its command as it counts; `null` where it gave none, or was refused. */
export function answerIn({ entry, command }: { entry: CommandEntry; command: Command }, where: Where): Answered | null {
  const { outcome, no } = entry;
  if (!("did" in outcome) || outcome.did !== "answered" || command.type !== "answer") return null;
  const gate = indexOf(where.script).gates.get(command.gate);
  if (!gate) return null;
  const value = answerValue(entry, where.earlier) ?? command.value;
  const first = { no, said: saidAt(entry, where.earlier), by: command.by, device: command.device };
  const is = standing(gate, value, where.counted);
  // What went on was good, whatever it was held against.
  return { gate, value, is: outcome.and !== undefined && is !== "paper" ? "good" : is, first };
}

/** When it was spoken: what was read back was said before it was confirmed. */
export function saidAt({ command, at }: CommandEntry, earlier: EntryLookup): Instant {
  return command.type === "correct" ? (earlier(command.target)?.at ?? at) : at;
}

function standing(gate: Gate, value: Value, counted: Counted): Answered["is"] {
  if (value.kind === "unknown" || value.kind === "paper") return value.kind;
  const given = { answers: counted };
  if (!isComplete(gate.check, value, given)) return "part";
  return meetsLimit(gate.check, value, given) ? "good" : "out";
}

const compared = new WeakMap<Script, ReadonlySet<GateId>>();
/** Gates whose answers another gate is held against. Made once a script. */
export function comparedIn(script: Script): ReadonlySet<GateId> {
  const known = compared.get(script);
  if (known) return known;
  const made = new Set([...indexOf(script).gates.values()].flatMap(({ check }) => comparesWith(check) ?? []));
  compared.set(script, made);
  return made;
}
