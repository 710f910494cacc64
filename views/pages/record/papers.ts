import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { indexOf } from "../../../machines/install/script-index.ts";
import { effectiveCommandBy } from "../../../machines/record/effective-command.ts";
import { lookupIn } from "../../../machines/record/entries.ts";
import { frozenAfter, frozenIn } from "../../../machines/record/in-force.ts";
import { askText, sayText } from "../../text/replies.ts";
import type { Words } from "../../text/words.ts";
import type { PaperShown } from "./state.ts";

/** Every paper that was shown in a job, with the question that it answers as it was asked then, and who else saw it. */
export function papersOf({ entries, names }: Pick<LiveJob, "entries" | "names">, words: Words): PaperShown[] {
  const earlier = lookupIn(entries);
  const papers: PaperShown[] = [];
  /** The last one shown at each gate, by its place. */
  const last = new Map<string, number>();
  let frozenAt = 1;
  for (const { entry } of entries) {
    if (entry.kind === "opening") continue;
    const { outcome, no } = entry;
    const command = effectiveCommandBy(entry, earlier);
    if ("did" in outcome && command.type === "answer" && command.value.kind === "paper") {
      const look = { no, who: names[command.by] ?? command.by };
      const at = last.get(command.gate);
      if (outcome.did === "answered") {
        const question = indexOf(frozenIn(frozenAt, earlier).script).questions.get(command.gate);
        const ask = question ? (askText(question, words) ?? sayText(question, words)) : command.gate;
        const { by, document, dated } = command.value;
        last.set(command.gate, papers.push({ ask, by, document, dated, shown: look, seen: null }) - 1);
      } else if (outcome.did === "seen" && at !== undefined) papers[at] = { ...papers[at]!, seen: look };
    }
    frozenAt = frozenAfter(frozenAt, entry);
  }
  return papers;
}
