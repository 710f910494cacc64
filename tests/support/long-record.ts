import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { brief, testApp } from "./app.ts";
import { type OpenedJob, openedJob } from "./job.ts";

/** A record of so many entries: answers good and not, refusals, notes, and calls gone over again and again. */
export async function longRecord(entries: number, world = testApp()): Promise<{ held: LiveJob; job: OpenedJob }> {
  const job = await openedJob({ ...brief(), title: `${entries} entries` }, world);
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
  for (let no = 1; no < entries; no++) await round[(no - 1) % round.length]!();
  return { held: await job.liveJobs.load(job.job), job };
}
