import type { Hash } from "../digest/digest.ts";
import type { EntryNo, PersonId } from "../install/ids.ts";
import { foldAll } from "./findings.ts";
import { isCounted, kitCounts } from "./kit-counts.ts";
import { compareNames, type People } from "./people.ts";
import { type LyingPhoto, type PhotoProblem, photoProblems } from "./photos.ts";
import { replay } from "./replay.ts";
import type { Line } from "./verify-job.ts";

/** What stands beside the entries of a record: in a data file its people and photos, in an export also what was derived from the entries. */
export type Beside = {
  readonly people?: unknown;
  /** What lies under the hash of each photo. */
  readonly photos?: ReadonlyMap<Hash, LyingPhoto>;
  /** The marks of each entry, in order. */
  readonly marks?: readonly unknown[];
  readonly findings?: unknown;
  readonly kit?: unknown;
};
/** Something beside the entries that they do not bear out. */
export type BesideProblem =
  | { readonly is: "nameChanged" | "stranger"; readonly person: PersonId }
  | PhotoProblem
  | { readonly is: "marks"; readonly no: EntryNo }
  | { readonly is: "findings" | "kit" };
export type BesideVerdict = { readonly problems: readonly BesideProblem[]; readonly erased: number };

/** Compares what stands beside the lines of a job with what they say; what is not there claims nothing. The lines have to hold themselves. */
export function verifyBeside(lines: readonly Line[], { people, photos, marks, findings, kit }: Beside): BesideVerdict {
  const { job, entries } = replay(lines);
  const names = compareNames(entries, peopleIn(people));
  const { fold, each } = foldAll(entries);
  const answers = Object.entries(job.snapshot.context.answers).filter(([, { entry }]) => entry <= entries.length);
  const counted = kitCounts(job.frozen.script, Object.fromEntries(answers));
  const spoiled = (marks ?? []).findIndex((given, i) => given !== undefined && !same(given, each[i]));
  return {
    erased: people === undefined ? 0 : names.erased.length,
    problems: [
      ...names.changed.map((person) => ({ is: "nameChanged" as const, person })),
      ...names.strangers.map((person) => ({ is: "stranger" as const, person })),
      ...(photos ? photoProblems(entries, photos) : []),
      ...(spoiled < 0 ? [] : [{ is: "marks" as const, no: spoiled + 1 }]),
      ...(findings === undefined || same(findings, fold.counts) ? [] : [{ is: "findings" as const }]),
      ...(kit === undefined || same(kit, isCounted(counted) ? counted : []) ? [] : [{ is: "kit" as const }]),
    ],
  };
}

/** What has no name and salt in text is nobody's name: it then fits nothing that was committed to. */
function peopleIn(given: unknown): People {
  if (typeof given !== "object" || given === null) return {};
  return Object.fromEntries(
    Object.entries(given).map(([person, named]) => {
      const { name, salt } = Object(named) as { name?: unknown; salt?: unknown };
      return [person, { name: String(name), salt: String(salt) }];
    }),
  );
}

/** Whether two values are the same JSON, in whatever order their fields stand. */
function same(a: unknown, b: unknown): boolean {
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return a === b;
  const [ofA, ofB] = [Object.keys(a), Object.keys(b)];
  const at = (of: object, name: string) => (of as Record<string, unknown>)[name];
  return ofA.length === ofB.length && ofA.every((name) => Object.hasOwn(b, name) && same(at(a, name), at(b, name)));
}
