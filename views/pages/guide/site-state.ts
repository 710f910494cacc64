import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import type { Way } from "../../../machines/install/practice.ts";
import { rightMove } from "../../../machines/rehearsal/right-move.ts";
import { lookAt, signsAt } from "../../../machines/rehearsal/signs.ts";
import { standOf } from "../../../machines/rehearsal/site.ts";
import type { Words } from "../../text/words.ts";

/** What a rehearsal shows of its made-up site. */
export type SiteState = {
  readonly way: Way;
  readonly seed: number;
  /** What is to be seen and heard. */
  readonly signs: readonly string[];
  /** What is to be seen where something is asked. */
  readonly look: string | null;
  /** What is right here; `null` where nobody helps. */
  readonly right: string | null;
};

/** What is to be seen on the site of a rehearsal, in words; `null` where it is none that answers back. */
export function siteState({ job, entries, names, now }: LiveJob, { rehearsal }: Words): SiteState | null {
  const { practice } = job.frozen.brief;
  const stand = practice && standOf(job, entries);
  if (!practice || !stand) return null;
  const look = lookAt(stand, now.at);
  const right = practice.way === "walk" ? rightMove(stand, now.at) : null;
  return {
    way: practice.way,
    seed: practice.seed,
    signs: signsAt(stand, now.at).map((sign) => rehearsal.sign(sign, (id) => names[id] ?? id)),
    // What is right there says what is to be seen already.
    look: right?.type === "answer" ? null : look && ("wind" in look ? rehearsal.meter(look.wind) : rehearsal.look(look.value)),
    right: right && rehearsal.move(right),
  };
}
