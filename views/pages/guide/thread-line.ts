import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { contextOf, replyTo } from "../../../machines/conversation/reply-to.ts";
import { SPOKEN } from "../../../machines/install/commands.ts";
import { stepsIn } from "../../../machines/install/job.ts";
import { indexOf } from "../../../machines/install/script-index.ts";
import { effectiveCommandBy } from "../../../machines/record/effective-command.ts";
import { lookupIn } from "../../../machines/record/entries.ts";
import type { CommandEntry } from "../../../machines/record/entry.ts";
import { askText, callText, sayText, shortReplyText } from "../../text/replies.ts";
import type { Words } from "../../text/words.ts";
import type { ThreadLine } from "./state.ts";

/** A job, what its people are called, and the language of a screen. */
type Told = { readonly live: LiveJob; readonly name: (id: string) => string; readonly words: Words };

/** One thing said as it stands in the thread: who, to which call, what, and what came of it, nothing of it twice. */
export function threadLine(entry: CommandEntry, { live, name, words }: Told): ThreadLine {
  const { job } = live;
  const { command, outcome } = entry;
  const step = stepsIn(job.frozen.script).byId.get(entry.step);
  const said = words.saidText(command);
  const reply = shortReplyText(replyTo(entry, contextOf(live, entry)), { name, zone: job.frozen.brief.zone }, words);
  const told = command.heard === null ? toldText(entry, live, words) : null;
  return {
    no: entry.no,
    time: words.when.clock(job.frozen.brief.zone, entry.wall),
    who: name(command.by),
    call: step ? sayText(step, words) : "",
    to: told === null ? saidTo(entry, live, words) : null,
    said: command.heard ?? told ?? said,
    spoken: (SPOKEN as readonly string[]).includes(command.source),
    reply: reply === `${said}.` ? "" : reply,
    refused: "refused" in outcome,
  };
}

/** What was asked, where it was answered; the call that was gone on from; `null` where it speaks for itself. */
function saidTo(entry: CommandEntry, { job: { frozen }, entries }: LiveJob, words: Words): string | null {
  const earlier = lookupIn(entries);
  const command = effectiveCommandBy(entry, earlier);
  const gate = command.type === "answer" || command.type === "waive" || command.type === "photo" ? command.gate : null;
  if (gate !== null) {
    const question = indexOf(frozen.script).questions.get(gate);
    return question ? [sayText(question, words), askText(question, words)].filter(Boolean).join(" ") : null;
  }
  if (command.type !== "next" && command.type !== "back") return null;
  const before = earlier(entry.no - 1);
  const step = before && stepsIn(frozen.script).byId.get(before.step);
  return step ? sayText(step, words) : null;
}

/** An answer with its call in one short sentence, where the call has one. */
function toldText({ command }: CommandEntry, { job: { frozen } }: LiveJob, words: Words): string | null {
  if (command.type !== "answer") return null;
  const question = indexOf(frozen.script).questions.get(command.gate);
  return (question && callText(question, words).told?.(question.params, words.valueText(command.value))) ?? null;
}
