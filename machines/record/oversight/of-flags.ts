import type { Command } from "../../install/commands.ts";
import type { Value } from "../../install/gates.ts";
import { everythingLooser } from "../../install/looser-site.ts";
import { indexOf } from "../../install/script-index.ts";
import { clockJump } from "../clock-jump.ts";
import { withPeople } from "../doubts/doubt.ts";
import { answerValue, effectiveCommandBy } from "../effective-command.ts";
import { frozenAfter, frozenIn } from "../in-force.ts";
import type { Finding } from "./finding.ts";
import { commonTo, type Seen, wordedIn } from "./said-then.ts";

/** What the flags of an entry come to, one finding for each thing that was done. A step back is looked at elsewhere. */
export function findingsOfFlags(seen: Seen): Finding[] {
  const { entry, flags, earlier } = seen;
  if (flags.length === 0) return [];
  const command = effectiveCommandBy(entry, earlier);
  return [
    ...(flags.includes("waived") && command.type === "waive" ? [waived(command, seen)] : []),
    ...(command.type === "answer" ? ofAnswer(command, seen) : []),
    ...(flags.includes("amended") ? amended(command, seen) : []),
    ...(flags.includes("takenBack") && command.type === "reading" && command.reading.kind === "noThunder"
      ? [{ kind: "takenBack", ...by(command, seen), asks: null, facts: { because: command.reading.because } } as const]
      : []),
    ...(flags.includes("clockJumped") ? jumped(command, seen) : []),
  ];
}

const by = ({ by }: Command, seen: Seen) => ({
  ...commonTo(seen.entry.no, seen),
  entries: [seen.entry.no],
  phase: seen.folds[0].phase,
  by: [by],
});

const waived = (command: Extract<Command, { type: "waive" }>, seen: Seen): Finding => ({
  kind: "waived",
  ...by(command, seen),
  asks: wordedIn(seen.script, command.gate),
  facts: { because: command.because },
});

function ofAnswer(command: Extract<Command, { type: "answer" }>, seen: Seen): Finding[] {
  const { flags, script, entry, earlier } = seen;
  const asks = wordedIn(script, command.gate);
  const value: Value = answerValue(entry, earlier) ?? command.value;
  const gate = indexOf(script).gates.get(command.gate);
  return [
    ...(flags.includes("outOfLimit") && gate
      ? [{ kind: "outOfLimit", ...by(command, seen), asks, facts: { value, check: gate.check, followed: null } } as const]
      : []),
    ...(flags.includes("paper") && value.kind === "paper"
      ? [{ kind: "paper", ...by(command, seen), asks, facts: { document: value.document, dated: value.dated, seen: null } } as const]
      : []),
  ];
}

/** One for a change: what it made looser is the graver thing to say of it. It is told by the entry that put it in force. */
function amended(command: Command, seen: Seen): Finding[] {
  const { entry, flags, folds, earlier } = seen;
  const proposed = command.type === "agree" ? earlier(command.target) : null;
  if (proposed?.kind !== "command" || proposed.command.type !== "amend") return [];
  const { because } = proposed.command;
  const common = {
    ...by(command, seen),
    entries: [proposed.no, entry.no],
    by: withPeople([proposed.command.by], [command.by]),
    asks: null,
  };
  if (!flags.includes("loosened")) return [{ kind: "amended", ...common, facts: { because } }];
  const [from, to] = [folds[0].frozenAt, frozenAfter(folds[0].frozenAt, entry)].map((no) => frozenIn(no, earlier));
  return [{ kind: "loosened", ...common, facts: { because, fields: everythingLooser(from!, to!).map(({ field }) => field) } }];
}

function jumped(command: Command, seen: Seen): Finding[] {
  const {
    entry,
    folds: [{ lastAt, lastWall }],
  } = seen;
  const jump = clockJump({ at: lastAt, wall: lastWall }, entry.command);
  return jump ? [{ kind: "clockJumped", ...by(command, seen), asks: null, facts: jump }] : [];
}
