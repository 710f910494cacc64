import { JUMP_MS, type Moment } from "../install/moment.ts";
import type { Entries } from "./entries.ts";
import type { Entry } from "./entry.ts";

/** The wall clock between two entries: set so far back or ahead; or back at least so far while nobody counted how long it was. */
export type ClockJump = { readonly is: "back" | "ahead" | "backUncounted"; readonly ms: number };

type Clocked = Pick<Moment, "at" | "wall">;

/** Whether the wall clock was set between an entry and a moment; `null` where both agree on what passed. */
export function clockJump(before: Clocked, { at, wall, doubtMs }: Moment): ClockJump | null {
  const ahead = wall - before.wall - (at - before.at - doubtMs);
  if (ahead < 0 && doubtMs > 0) return { is: "backUncounted", ms: -ahead };
  if (Math.abs(ahead) <= JUMP_MS) return null;
  return { is: ahead < 0 ? "back" : "ahead", ms: Math.abs(ahead) };
}

/** The jump that a screen has to tell of: since the last entry, or the one that entry came with. */
export function jumpToTell(entries: Entries, now: Moment): ClockJump | null {
  const [before, last] = [entries.at(-2)?.entry, entries.at(-1)!.entry];
  return clockJump(last, now) ?? (before ? jumpAt(before, last) : null);
}

/** The jump that an entry came with. */
export const jumpAt = (before: Clocked, entry: Entry): ClockJump | null =>
  entry.kind === "command" ? clockJump(before, entry.command) : null;
