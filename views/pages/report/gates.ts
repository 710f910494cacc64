import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { isComplete } from "../../../machines/install/checks/any-check.ts";
import { kindOf } from "../../../machines/install/checks/registry.ts";
import type { Command } from "../../../machines/install/commands.ts";
import type { Value } from "../../../machines/install/gates.ts";
import type { GateId } from "../../../machines/install/ids.ts";
import { indexOf, type Question } from "../../../machines/install/script-index.ts";
import { type Frozen, PHASES, type Script } from "../../../machines/install/step.ts";
import { answerValue, effectiveCommandBy } from "../../../machines/record/effective-command.ts";
import { lookupIn } from "../../../machines/record/entries.ts";
import type { CommandEntry } from "../../../machines/record/entry.ts";
import { type Flag, MAKING_SAFE } from "../../../machines/record/findings.ts";
import { frozenAfter, frozenBefore, frozenIn } from "../../../machines/record/in-force.ts";
import { askText, sayText } from "../../text/replies.ts";
import type { Words } from "../../text/words.ts";
import { placeName } from "../record/lines.ts";
import type { AnswerShown, GateGroup, GateShown, Word } from "./state.ts";

/** All that was said at one gate, with its question as it was last asked. */
type Said = { readonly question: Question; readonly answers: readonly (AnswerShown & { readonly isWhole: boolean })[] };
const PLAIN = { isWhole: true, seen: null, outOfLimit: false, paper: false } as const;
export type Telling = { readonly live: LiveJob; readonly words: Words; readonly wordOf: (entry: CommandEntry) => Word };

/**
 * Every gate of a job in the order of its calls, with all that was answered to it; then what the work needed, the ways out, and
 * what only an earlier plan asked. `each` are the marks, entry by entry; `reached` the phases that the job has come to.
 */
export function gatesOf(telling: Telling, each: readonly (readonly Flag[])[], reached: ReadonlySet<string>): GateGroup[] {
  const { live, words } = telling;
  const said = saidAt(telling, each);
  const { script } = inForce(live);
  const listed = new Set<GateId>();
  const shownOf = (questions: readonly Question[], unanswered: boolean): GateShown[] =>
    questions.flatMap((question) => {
      const { id, check } = question.gate;
      if (listed.has(id) || kindOf(check).answeredBy !== "person") return [];
      const found = said.get(id);
      if (!found && !unanswered) return [];
      listed.add(id);
      return [shown(question, found, words)];
    });
  const phases = PHASES.map(
    (phase): GateGroup => ({
      name: placeName(phase, words),
      gates: shownOf(asking(script, phase), reached.has(phase)),
    }),
  );
  const escapes = Object.values(script.escapes).flatMap((steps) =>
    steps.flatMap((step) => (step.gate ? [{ ...step, gate: step.gate }] : [])),
  );
  const groups = [
    ...phases,
    { name: words.report.conditions, gates: shownOf(script.conditions, false) },
    { name: placeName(MAKING_SAFE, words), gates: shownOf(escapes, false) },
  ];
  const earlier = [...said].filter(([id]) => !listed.has(id)).map(([, found]) => shown(found.question, found, words));
  return [...groups, { name: words.report.earlierPlan, gates: earlier }].filter(({ gates }) => gates.length > 0);
}

const asking = (script: Script, phase: string): Question[] =>
  script.steps.flatMap((step) => (step.gate && step.phase === phase ? [{ ...step, gate: step.gate }] : []));

/** What was in force after the last entry that is vouched for. */
export const inForce = ({ entries }: Pick<LiveJob, "entries">): Frozen => frozenBefore(entries.length + 1, lookupIn(entries));

/** What was said at each gate, each question as it was asked then. */
function saidAt(telling: Telling, each: readonly (readonly Flag[])[]): ReadonlyMap<GateId, Said> {
  const { entries } = telling.live;
  const earlier = lookupIn(entries);
  const all = new Map<GateId, Said>();
  const given: Record<GateId, { readonly value: Value }> = {};
  let frozenAt = 1;
  for (const { entry } of entries) {
    if (entry.kind === "opening") continue;
    const command = effectiveCommandBy(entry, earlier);
    const asked = "gate" in command && command.gate !== null ? command.gate : null;
    const question = asked === null ? undefined : indexOf(frozenIn(frozenAt, earlier).script).questions.get(asked);
    frozenAt = frozenAfter(frozenAt, entry);
    if (!question || "refused" in entry.outcome) continue;
    const before = all.get(question.gate.id)?.answers ?? [];
    const value = command.type === "answer" ? (answerValue(entry, earlier) ?? command.value) : null;
    const answers = answersAfter(before, { entry, command, value, question, given, flags: each[entry.no - 1] ?? [] }, telling);
    if (entry.outcome.did === "answered" && value) given[question.gate.id] = { value };
    if (answers !== before) all.set(question.gate.id, { question, answers });
  }
  return all;
}

type Now = {
  readonly entry: CommandEntry;
  readonly command: Command;
  readonly value: Value | null;
  readonly question: Question;
  readonly given: Readonly<Record<GateId, { readonly value: Value }>>;
  readonly flags: readonly Flag[];
};

/** What was said at a gate with one thing more. An answer in parts counts as the last of them, until it is whole. */
function answersAfter(before: Said["answers"], now: Now, { wordOf, words }: Telling): Said["answers"] {
  const { entry, command, value, question, given, flags } = now;
  const did = "did" in entry.outcome ? entry.outcome.did : null;
  const last = before.at(-1);
  if (did === "waived" && command.type === "waive")
    return [...before, { ...wordOf(entry), ...PLAIN, text: words.report.waived(command.because) }];
  if (did === "seen" && last) return [...before.slice(0, -1), { ...last, seen: wordOf(entry) }];
  if (did !== "answered" || value === null) return before;
  const answer = {
    ...wordOf(entry),
    text: value.kind === "counts" ? words.report.kitCounted(Object.keys(value.n).length) : words.valueText(value),
    isWhole: isComplete(question.gate.check, value, { answers: given }),
    seen: null,
    outOfLimit: flags.includes("outOfLimit"),
    paper: flags.includes("paper"),
  };
  return [...(last?.isWhole === false ? before.slice(0, -1) : before), answer];
}

function shown(question: Question, said: Said | undefined, words: Words): GateShown {
  const { id, hard, secondPersonTo, check } = question.gate;
  return {
    id,
    say: sayText(question, words),
    ask: askText(question, words) ?? null,
    good: check.kind === "counts" ? words.report.asListed : words.limitText(question.gate),
    hard,
    second: secondPersonTo !== null,
    answers: (said?.answers ?? []).map(({ isWhole: _, ...answer }) => answer),
  };
}
