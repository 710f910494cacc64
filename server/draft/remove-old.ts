import type { Instant } from "../../machines/install/ids.ts";
import { type Journal, NotWritten } from "../journal/journal.ts";

const DAY_MS = 24 * 3600 * 1000;
/** How long a draft is kept after the last thing typed in it: names and an address stand in it. */
export const DRAFT_DAYS = 30;
/** How long somebody stays on the firm's list after their last job was opened. */
const PERSON_DAYS = 730;

/** Takes out drafts and people that were kept long enough. Where the store takes nothing they go the next time. */
export async function removeOld({ drafts, firm }: Pick<Journal, "drafts" | "firm">, now: Instant): Promise<void> {
  try {
    await Promise.all([drafts.removeBefore(now - DRAFT_DAYS * DAY_MS), firm.forgetBefore(now - PERSON_DAYS * DAY_MS)]);
  } catch (error) {
    if (!(error instanceof NotWritten)) throw error;
  }
}
