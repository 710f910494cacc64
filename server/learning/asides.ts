import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { PersonId } from "../../machines/install/ids.ts";
import { asideAt } from "../../machines/rehearsal/aside.ts";
import { questionTexts } from "../../views/pages/learn/shown.ts";
import type { AsideState } from "../../views/pages/learn/state.ts";
import type { Words } from "../../views/text/words.ts";
import { shownAs } from "./study.ts";

/** So many answers are remembered, over all jobs. */
const MAX_KEPT = 500;

/**
 * Questions beside the guide, for trainees alone, and who has answered which: that one is shown no more. It is remembered for as
 * long as the program runs; whoever answers once more after that is told the same, and it counts once.
 */
export function createAsides() {
  const answered = new Set<string>();
  return {
    answered: (id: string, me: PersonId): void => {
      answered.add(`${id} ${me}`);
      if (answered.size > MAX_KEPT) answered.delete(answered.values().next().value!);
    },
    for: ({ job, entries, now }: LiveJob, me: PersonId | null, words: Words): AsideState | null => {
      if (!job.frozen.brief.crew.some(({ id, role }) => id === me && role === "trainee")) return null;
      const aside = asideAt(job, entries, now.at);
      if (!aside || answered.has(`${aside.id} ${me}`)) return null;
      return { id: aside.id, shown: shownAs(aside.question), texts: questionTexts(aside.question, words) };
    },
  };
}
export type Asides = ReturnType<typeof createAsides>;
