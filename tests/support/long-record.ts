import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { openedJob } from "./job.ts";

/** A record of so many entries: answers good and not, refusals, notes, and calls gone over again and again. */
export async function longRecord(entries: number): Promise<{ held: LiveJob; job: Awaited<ReturnType<typeof openedJob>> }> {
  const job = await openedJob();
  const sheet = { type: "answer", gate: "sheet.atHand" } as const;
  const round = [
    () => job.say({ type: "next" }),
    () => job.say({ ...sheet, value: { kind: "document", named: "RC-4040" } }, "Maren"),
    () => job.say({ type: "note", text: "the sheet is in the cab, not here" }, "Jory"),
    () => job.say({ ...sheet, value: { kind: "document", named: "RC-80100 rev C" } }),
    () => job.say({ type: "next" }),
    () => job.say({ type: "note", text: "all standing round the cab" }, "Pia"),
    () => job.say({ type: "back" }),
  ];
  while (job.entries().length < entries) round[(job.entries().length - 1) % round.length]!();
  return { held: job.desks.load(job.job), job };
}
