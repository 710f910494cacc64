import type { Instant } from "../../machines/install/ids.ts";
import type { Parsed } from "../input/brief.ts";
import type { Firm } from "../journal/firm.ts";
import { NotWritten } from "../journal/journal.ts";
import type { PickedTent } from "./draft.ts";

/**
 * Keeps what a job that was opened leaves for the next one: its people and, where its tent is one of the list, the sheet of
 * that tent as it was. A rehearsal leaves nothing. The job is open all the same where there is no room for it.
 */
export async function keepForNext(firm: Firm, { frozen, names }: Parsed, tent: PickedTent | null, at: Instant): Promise<void> {
  const { crew, rehearsal, sheet } = frozen.brief;
  if (rehearsal) return;
  const people = crew.map(({ id, role }) => ({ name: names[id] ?? id, role }));
  try {
    await firm.keep({ people, sheet: tent && sheet ? { tent: tent.id, digest: tent.digest, sheet } : null, at });
  } catch (error) {
    if (!(error instanceof NotWritten)) throw error;
  }
}
