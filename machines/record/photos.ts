import type { Hash } from "../digest/digest.ts";
import type { Command } from "../install/commands.ts";
import type { EntryNo } from "../install/ids.ts";
import type { Entries } from "./entries.ts";
import type { CommandEntry, Entry } from "./entry.ts";

export type PhotoCommand = Extract<Command, { type: "photo" }>;
/** An entry that names a photo which was kept. */
export type PhotoEntry = CommandEntry & { readonly command: PhotoCommand };

/** Whether an entry names a photo that was kept: one that was refused is nowhere. */
export const isPhoto = (entry: Entry): entry is PhotoEntry =>
  entry.kind === "command" && entry.command.type === "photo" && "did" in entry.outcome;

/** The entries of a job that name photos, in the order of its record. */
export const photoEntries = (entries: Entries): readonly PhotoEntry[] => [...entries].map(({ entry }) => entry).filter(isPhoto);

/** A photo as it lies in a store: what its bytes hash to, and of which kind it is said to be. */
export type LyingPhoto = { readonly hash: Hash; readonly mime: string };
export type PhotoProblem = { readonly is: "photoMissing" | "photoChanged"; readonly no: EntryNo };

/** Entries whose photo is not in a store, or is another one there. `lying` is what lies under each hash. What no entry names is harmless. */
export function photoProblems(entries: Entries, lying: ReadonlyMap<Hash, LyingPhoto>): PhotoProblem[] {
  return photoEntries(entries).flatMap(({ no, command }): PhotoProblem[] => {
    const found = lying.get(command.hash);
    if (!found) return [{ is: "photoMissing", no }];
    return found.hash === command.hash && found.mime === command.mime ? [] : [{ is: "photoChanged", no }];
  });
}
