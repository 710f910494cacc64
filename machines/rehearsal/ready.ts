import type { WallTime } from "../install/ids.ts";
import type { PhaseId } from "../install/step.ts";
import type { PhaseProgress } from "./progress.ts";

const DAY_MS = 24 * 3_600_000;

/**
 * The rule of "ready to lead" on paper. All its figures are common practice, no source: the employer names a competent person, the
 * law of the place decides, and a lead rides along the first time.
 */
export const READY = {
  /** Of what is asked of each phase, this share is known today. */
  minKnown: 0.8,
  /** So many whole rehearsals that somebody led, with several troubles, each of another seed, and no unsafe moment. */
  minRehearsals: 2,
  /** Not longer ago than this, days. */
  maxDays: 30,
} as const;

/** A rehearsal as far as the rule looks at it. */
export type Led = {
  readonly way: "walk" | "lead";
  readonly trouble: "none" | "some" | "several";
  readonly seed: number;
  readonly over: { readonly at: WallTime; readonly unsafe: number; readonly whole: boolean } | null;
};

/** What is still missing: of a phase, or of rehearsals. */
export type Lacking =
  | { readonly is: "phase"; readonly phase: PhaseId; readonly known: number; readonly of: number; readonly wanted: number }
  | { readonly is: "rehearsals"; readonly led: number; readonly wanted: number };

export type Ready = { readonly ready: boolean; readonly lacking: readonly Lacking[] };

/** Where somebody stands on the rule at a moment. */
export function readyToLead(progress: readonly PhaseProgress[], rehearsals: readonly Led[], at: WallTime): Ready {
  const phases = progress.flatMap(({ phase, known, of }): Lacking[] => {
    const wanted = Math.ceil(of * READY.minKnown);
    return known >= wanted ? [] : [{ is: "phase", phase, known, of, wanted }];
  });
  const good = rehearsals.filter((one) => one.way === "lead" && one.trouble === "several" && one.over?.whole && one.over.unsafe === 0);
  const lately = good.filter(({ over }) => at - over!.at <= READY.maxDays * DAY_MS && over!.at <= at);
  const led = new Set(lately.map(({ seed }) => seed)).size;
  const lacking: Lacking[] = [...phases, ...(led >= READY.minRehearsals ? [] : [{ is: "rehearsals", led, wanted: READY.minRehearsals } as const])]; // biome-ignore format: one line reads best
  return { ready: lacking.length === 0, lacking };
}
