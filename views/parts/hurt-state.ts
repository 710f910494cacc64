import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { Role } from "../../machines/install/brief.ts";
import { PRESSED } from "../../machines/install/commands.ts";
import { onSite } from "../../machines/install/crew.ts";
import { foldName } from "../../machines/install/person-name.ts";
import { wallTime } from "../../machines/install/wall-time.ts";
import { lookupIn } from "../../machines/record/entries.ts";
import type { Words } from "../text/words.ts";

/** Somebody is hurt: who told it and when, in what words where there were any, and where everything is. */
export type HurtState = {
  readonly by: string;
  readonly time: string;
  readonly said: string | null;
  readonly address: string;
  /** Who meets the ambulance; `null` where nobody is left to be named. */
  readonly meets: string | null;
  readonly firstAid: string;
  readonly rally: string;
  readonly rehearsal: boolean;
};

/** The deputy, or else whoever is least needed where the work is held; the lead stays. */
const MEETS: readonly Role[] = ["deputy", "crew", "competent", "trainee"];

/** What every page of a job shows while somebody on it is hurt; `null` where nobody is. */
export function hurtState({ job, entries, names, unrecorded }: LiveJob, words: Words): HurtState | null {
  // What could not be recorded is as true.
  const told = unrecorded?.is === "hurt" ? { by: unrecorded.by, at: job.snapshot.context.lastAt, entry: 0 } : null;
  const hurt = job.snapshot.context.hurt ?? told;
  if (!hurt) return null;
  const { brief } = job.frozen;
  const { address, firstAid, rallyPoint } = brief.site;
  const entry = lookupIn(entries)(hurt.entry);
  const command = entry?.kind === "command" && entry.command.type === "hurt" ? entry.command : null;
  const said = command && (command.heard ?? command.words) !== PRESSED ? (command.heard ?? command.words) : null;
  const name = (id: string) => names[id] ?? id;
  // Whoever told it is with them, and whoever is named may be the one.
  const free = onSite(brief.crew).filter(({ id }) => id !== hurt.by && !isNamedIn(name(id), said ?? ""));
  const meets = MEETS.flatMap((role) => free.filter((p) => p.role === role))[0];
  return {
    by: name(hurt.by),
    time: words.when.clock(brief.zone, wallTime(hurt.at, job.snapshot.context)),
    said,
    address,
    meets: meets ? name(meets.id) : null,
    firstAid: firstAid ?? words.hurt.notKnown,
    rally: rallyPoint ?? words.hurt.notKnown,
    rehearsal: brief.rehearsal === true,
  };
}

/** Whether a name, or a part of it, is among the words. */
function isNamedIn(name: string, said: string): boolean {
  const words = new Set(foldName(said).split(/[^\p{L}\p{N}-]+/u));
  return foldName(name)
    .split(" ")
    .some((part) => words.has(part));
}
