import { shownLetters } from "../../../machines/digest/letters.ts";
import { DIGEST_LETTERS, shownDigest } from "../../../machines/digest/short-digest.ts";
import type { Compared, Stands } from "../../../machines/record/compare-digest.ts";
import type { FollowUpsVerdict } from "../../../machines/record/follow-up.ts";
import type { HouseMismatch } from "../../../machines/record/house.ts";
import type { BesideProblem, BesideVerdict } from "../../../machines/record/verify-beside.ts";
import type { HouseProblem, HouseVerdict } from "../../../machines/record/verify-house.ts";
import type { Verdict } from "../../../machines/record/verify-job.ts";

/** What is wrong with an entry, after "entry 4". */
export const WHY: Readonly<Record<NonNullable<Verdict["mismatch"]>["why"], string>> = {
  hash: "is not as it was written",
  notJson: "is not an entry",
  prev: "does not follow the one before it",
  gap: "is missing, or stands in the wrong place",
  job: "is of another job",
  filed: "is filed otherwise than it was written",
  replay: "does not replay to what was recorded",
  opening: "does not open a job",
};

type Told = { readonly job: string; readonly verdict: Verdict; readonly beside: BesideVerdict | null; readonly said?: string };

function besideText(problem: BesideProblem): string {
  switch (problem.is) {
    case "nameChanged":
      return `the name of ${problem.person} is not the one that was written`;
    case "stranger":
      return `${oneLine(problem.person)} has a name and is in no entry`;
    case "photoMissing":
      return `the photo of entry ${problem.no} is missing`;
    case "photoChanged":
      return `the photo of entry ${problem.no} is not the one that was taken`;
    case "marks":
      return `the marks of entry ${problem.no} are not what it comes to`;
    case "findings":
      return "the findings are not what the entries come to";
    case "kit":
      return "the kit is not what was counted";
  }
}

/** The same of an entry of the house stream. */
export const HOUSE_WHY: Readonly<Record<HouseMismatch, string>> = {
  hash: WHY.hash,
  notJson: WHY.notJson,
  prev: WHY.prev,
  gap: WHY.gap,
  filed: WHY.filed,
  count: "does not come to as many jobs as it says",
};

const entriesText = (n: number) => (n === 1 ? "1 entry" : `${n} entries`);
const NO_SUCH_LETTERS = "no 0 O 1 I L";
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

const problemsOf = (problems: readonly HouseProblem[], titleOf: (job: string) => string | null): string =>
  problems.map((problem) => ` ${oneLine(titleOf(problem.job) ?? `Job ${problem.job}`)}: ${houseProblemText(problem)}.`).join("");

/** What is wrong with a job by the house stream, without its name and full stop. */
export function houseProblemText({ is, said: { no, day }, has, agrees }: HouseProblem): string {
  const upTo = agrees === null ? "" : `; up to entry ${agrees.no}, of ${agrees.day}, it is as it was`;
  switch (is) {
    case "cutOff":
      return `its end is missing. On ${day} it had ${entriesText(no)}, and ${has} are left${upTo}`;
    case "rewritten":
      return `it was rewritten. Its entry ${no} is not the one of ${day}${upTo}`;
    case "gone":
      return `it is gone. On ${day} it had ${entriesText(no)}`;
  }
}

function standsText(stands: Stands): string {
  if (stands.of === "house") return `the house stream up to ${stands.day}${stands.isLast ? ", its last day" : ""}`;
  return `${oneLine(stands.title ?? "a job")} at entry ${stands.no}${stands.isLast ? ", its last" : ""}`;
}

/** What `npm run verify` says: a line for each job, or one sentence why nothing could be read. */
export const verify = {
  usage:
    'Name one file: npm run verify -- FILE (a data file, or a record.json that was exported). A digest from paper can come after it: --digest "ABC-DEF-GHJ-KMN-PQR".',
  missing: (file: string, why: string) => `${file} cannot be read (${why}); check the path.`,
  notAFile: (file: string) => `${file} is not a file; name a data file, or a record.json that was exported.`,
  empty: (file: string) => `${file} is empty; take another copy.`,
  inUse: (file: string) => `${file} is in use; stop the server that holds it, or verify a copy or an export.`,
  neither: (file: string) => `${file} is neither a data file nor a record that was exported; name one of those.`,
  noRecord: (file: string) => `${file} is JSON, but not a record that was exported: it has no job with a list of entries.`,
  noJobs: (file: string) => `${file} holds no job yet.`,
  job({ job, verdict: { title, entries, tip, mismatch }, beside, said }: Told): string {
    const what = `${oneLine(title ?? `Job ${job}`)}: ${entries === 1 ? "1 entry" : `${entries} entries`}`;
    const { problems = [], erased = 0 } = beside ?? {};
    const names = erased === 0 ? "" : ` (${erased === 1 ? "1 name" : `${erased} names`} erased)`;
    if (problems.length > 0) return `${what}, last hash ${tip}, does not hold: ${problems.map(besideText).join("; ")}.`;
    if (mismatch === null && said !== undefined)
      return `${what}, last hash ${tip}, does not hold: it was exported from a job of which it says: ${oneLine(said)}`;
    if (mismatch === null) return `${what}, last hash ${tip}, holds${names}.`;
    const good = tip === null ? "no entry before it" : `last hash before it ${tip}`;
    return `${what}, does not hold: entry ${mismatch.no} ${WHY[mismatch.why]} (${good}).`;
  },
  house({ entries, last, broken, problems, removed }: HouseVerdict, titleOf: (job: string) => string | null): string {
    if (broken) return `House stream: does not hold: its entry ${broken.no} ${HOUSE_WHY[broken.why]}.${problemsOf(problems, titleOf)}`;
    if (last === null) return "House stream: none yet. The server makes an entry each day it runs, with the last entry of every job.";
    const what = `House stream: ${entriesText(entries)}, the last of ${last.day}, digest ${shownDigest(last.hash)}`;
    const away =
      removed.length === 0 ? "" : ` ${removed.length === 1 ? "1 job" : `${removed.length} jobs`} taken away on purpose, as it says.`;
    return problems.length > 0
      ? `${what}, does not hold.${problemsOf(problems, titleOf)}${away}`
      : `${what}, holds: no job is shorter or other than it says.${away}`;
  },
  followUps({ entries, tip, mismatch }: FollowUpsVerdict): string {
    const what = `Follow-ups: ${entriesText(entries)}`;
    if (mismatch === null) return `${what}, last hash ${tip}, holds.`;
    return `${what}, does not hold: entry ${mismatch.no} ${WHY[mismatch.why]} (${tip === null ? "no entry before it" : `last hash before it ${tip}`}).`;
  },
  cannotShow: (day: string | null): string =>
    `What no file can show by itself: ${
      day === null
        ? "entries cut off at the end of a job leave no trace here."
        : `what was recorded after the house stream's last entry, of ${day}, could be missing at its end without a trace here.`
    } A later digest on paper, or a copy kept elsewhere, shows it.`,
  digest(found: Compared): string {
    switch (found.is) {
      case "same":
        return `That is ${standsText(found.stands)}: everything up to there is as it was when the digest was written down.`;
      case "near":
        return `Nothing comes to exactly that digest. ${capital(standsText(found.stands))} comes to ${shownLetters(found.digest)}: that differs at letter ${found.off.join(" and ")}. Read the paper again. If it says what was typed, this is not what it was written from.`;
      case "none":
        return `Nothing in this file comes to that digest. Read the paper again, letter by letter: there is ${NO_SUCH_LETTERS} in it. If it is read right, what it was written from has been changed or cut off since, or is not in this file.`;
      case "unreadable":
        return found.typed.strange.length > 0
          ? `No digest has these in it: ${found.typed.strange.toSorted().join(", ").slice(0, 40)}. There is ${NO_SUCH_LETTERS} in it. Read the paper again.`
          : `That is ${found.typed.letters.length} letters long, and a digest has ${DIGEST_LETTERS}. Read the paper again.`;
    }
  },
} as const;

/** A title is a person's words: no line breaks, and nothing that moves a terminal's cursor. */
const oneLine = (text: string) => text.replaceAll(/[\p{Cc}\p{Cf}\s]+/gu, " ").trim();
