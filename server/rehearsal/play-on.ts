import { currentStep } from "../../machines/install/job.ts";
import type { Clocks } from "../../machines/install/moment.ts";
import type { Entries } from "../../machines/record/entries.ts";
import type { JobId } from "../../machines/record/entry.ts";
import { isPlayed, playedOn } from "../../machines/rehearsal/scene.ts";
import { NotWritten } from "../journal/journal.ts";
import type { KeptJob } from "../live-job.ts";
import { type Given, requestDigest } from "../next-entry.ts";
import { type Played, playedBefore, playedNext } from "./played.ts";

/** Whether anybody has said anything in a rehearsal who is not played. */
function isLed(entries: Entries): boolean {
  for (const { entry } of entries) if (entry.kind === "command" && !isPlayed(entry.command)) return true;
  return false;
}

type Store = {
  readonly kept: (id: JobId) => Promise<KeptJob>;
  readonly write: (live: KeptJob, given: Given) => Promise<unknown>;
  /** The clocks of a job so many seconds on. */
  readonly clocksOf: (live: KeptJob, onS: number) => Clocks;
};

/** More than anybody says in one go: against a crew that never stops talking. */
const MAX_IN_A_ROW = 20;
/** More calls than any job has before the one that a rehearsal begins at. */
const MAX_BEFORE = 5000;

/** Says what crew and site say in a rehearsal. Only in the job's turn. What could not be written is said after what is said next. */
export function createPlayOn({ kept, write, clocksOf }: Store) {
  async function playOn(id: JobId, next: typeof playedNext, most: number): Promise<void> {
    for (let n = 0; n < most; n++) {
      const live = await kept(id);
      if (!live.job.frozen.brief.practice) return;
      const played = next(live, live.from.at);
      if (!played) return;
      try {
        await write(live, givenBy(live, played));
      } catch (error) {
        if (error instanceof NotWritten) return;
        throw error;
      }
    }
  }

  function givenBy(live: KeptJob, { by, intent, afterS }: Played): Given {
    const { entry } = live.entries.at(-1)!;
    const { revision } = live.job.snapshot.context;
    return {
      intent,
      as: by.id,
      key: `played-${entry.no + 1}`,
      seen: revision,
      device: playedOn(by.id),
      request: requestDigest({ played: entry.no + 1, step: currentStep(live.job)?.id ?? null }),
      source: "press",
      heard: null,
      clocks: clocksOf(live, afterS),
      people: {},
    };
  }

  return {
    /** After something was said. */
    answer: (id: JobId) => playOn(id, playedNext, MAX_IN_A_ROW),
    /** Up to the call that the rehearsal begins at, and what the crew says there. */
    begin: async (id: JobId) => {
      // The form that opened it may come once more, after somebody has led on: nothing is said for them then.
      const { entries } = await kept(id);
      if (!isLed(entries)) await playOn(id, playedBefore, MAX_BEFORE);
      await playOn(id, playedNext, MAX_IN_A_ROW);
    },
  };
}
