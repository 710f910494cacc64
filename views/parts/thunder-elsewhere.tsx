import { createContext, useContext } from "hono/jsx";
import { thundery } from "../../machines/install/weather.ts";
import type { Fold } from "../../machines/record/findings.ts";
import { wholeMinute } from "../text/whole-minute.ts";
import type { Words } from "../text/words.ts";

/** A job on which thunder stops work, and until when, on its site's clock. */
export type ThunderAt = { readonly title: string; readonly until: string };

/** Jobs on which thunder stops work, for a page that is of none. */
export const ThunderElsewhere = createContext<readonly ThunderAt[]>([]);

/** Until when thunder stops work on a job, by the wall clock; `null` where none does. */
export function thunderUntil({ glance, lastAt, lastWall }: Fold, wall: number): number | null {
  const aheadMs = lastWall - lastAt;
  const { thunderAt, limits } = glance.weather;
  if (thunderAt === null || !thundery(glance.weather, wall - aheadMs)) return null;
  return thunderAt + limits.thunderS * 1000 + aheadMs;
}

/** The same of all jobs that run, as a page says it. Thunder of a rehearsal is made up. */
export const thunderOf = (folds: readonly (Fold | null)[], wall: number, { when }: Words): ThunderAt[] =>
  folds.flatMap((fold) => {
    if (!fold || fold.rehearsal || fold.phase === "closed") return [];
    const until = thunderUntil(fold, wall);
    return until === null ? [] : [{ title: fold.title, until: when.clock(fold.zone, wholeMinute(until)) }];
  });

/** One line for each of them. */
export const ThunderLines = ({ words: { sky } }: { words: Words }) => (
  <>
    {useContext(ThunderElsewhere).map(({ title, until }) => (
      <p class="lightning elsewhere">{sky.thunderElsewhere(title, until)}</p>
    ))}
  </>
);
