import type { HouseMismatch } from "../../../machines/record/house.ts";
import type { SaidOf } from "../../../machines/record/verify-house.ts";
import type { CheckName } from "../../pages/proof/state.ts";
import { HOUSE_WHY, houseProblemText, WHY } from "./verify.ts";

const entries = (n: number) => (n === 1 ? "1 entry" : `${n} entries`);
const upTo = (n: number) => (n === 1 ? "Entry 1" : `Entries 1 to ${n}`);
const names = (n: number) => (n === 1 ? "1 name" : `${n} names`);
const photos = (n: number) => (n === 1 ? "1 photo" : `${n} photos`);

const CHECKS: Readonly<Record<CheckName, string>> = {
  hash: "Each entry is as it was written",
  chain: "Each follows the one before it, none missing in between",
  replay: "Played again, they come to what was recorded",
  names: "Names are those that were written",
  photos: "Photos are those that were taken",
  house: "The house stream hangs together",
  houseJob: "This job is as the house stream has it",
};

/** Digests that are written by hand, what proves a record and what does not, in plain words. */
export const proof = {
  // Digests, on screen and on paper.
  soFar: (no: number) => `Record so far: entry ${no}, digest`,
  houseSoFar: (day: string) => `House stream up to ${day}, digest`,
  writeDown: "Write it in the site book; later anybody can check that nothing was changed since.",
  house: "The house stream",
  houseTold:
    "Once a day, and when it stops, the server notes where every job stands, in a chain of its own. Its digest stands for all jobs at once.",
  noHouse: "The house stream has no entry yet.",
  command: 'npm run verify -- FILE --digest "…" finds the day again.',

  // What holds.
  link: "What proves it",
  title: "What proves this record",
  holds: (n: number) => `Everything that can be checked here holds: ${entries(n)}.`,
  broken: "Something here does not hold. Read below what, and what to do.",
  checked: "What was checked just now",
  is: { holds: "Holds", broken: "DOES NOT HOLD", none: "Nothing to check", unchecked: "Not checked" },
  check: (name: CheckName) => CHECKS[name],
  upTo: (n: number) => (n === 0 ? "None." : `${upTo(n)}.`),
  brokenAt: (no: number, why: keyof typeof WHY) => `Entry ${no} ${WHY[why]}. Nobody can vouch for it, nor for what follows.`,
  notReached: "An entry before it does not hold.",
  noNames: "From before names were bound to entries.",
  allNames: (n: number) => `${names(n)} of this job.`,
  erased: (n: number) => `${names(n)} erased since, on purpose: the entries stay whole without.`,
  nameChanged: (person: string) => `The name of ${person} is not the one that was written.`,
  stranger: (person: string) => `${person} has a name, and no entry knows them.`,
  noPhotos: "No photo was taken.",
  allPhotos: (n: number) => `${photos(n)}, each by its hash.`,
  photoMissing: (no: number) => `The photo of entry ${no} is missing.`,
  photoChanged: (no: number) => `The photo of entry ${no} is another one than was taken.`,
  houseEntries: (n: number, day: string) => `${entries(n)}, the last of ${day}.`,
  houseBroken: (no: number, why: HouseMismatch) => `Its entry ${no} ${HOUSE_WHY[why]}.`,
  houseAgrees: ({ no, day }: SaidOf) => `On ${day} it stood at entry ${no}, and up to there it still is the same.`,
  houseNotYet: "The house stream has not noted this job yet. It does on the next day, or when the server stops.",
  houseProblem: (problem: Parameters<typeof houseProblemText>[0]) => `${sentence(houseProblemText(problem))}.`,

  cannot: "What this does not show",
  noEnd: ({ no, day }: SaidOf, last: number) =>
    no === last
      ? `Whether more was recorded after entry ${last} and cut off at the end. The house stream, of ${day}, knows of no more.`
      : `What came after the house stream's last look, on ${day}: if entries after ${no} were cut off at the end, nothing in this file shows it.`,
  noEndAtAll: (last: number) => `The end: if entries after ${last} were cut off, nothing in this file shows it.`,
  onlyPaper:
    "Whoever has the file and knows how it is made can rebuild all of it, house stream included. A digest on paper, or a copy kept elsewhere, shows that.",
  notTrue: "That what people said was true. It shows what was said, on whose phone, and when.",
  notClock: "That the clock was right. Times are the server's. Where its clock was set, the record says so.",

  ifNot: "If something does not hold",
  steps: [
    "Don't go on writing. Stop the server. On site go on by voice and on paper, and make safe.",
    "Copy the data file as it is, with a -wal file beside it if there is one. Keep that copy as evidence.",
    "Check the copy: npm run verify -- FILE. It names the first entry that does not fit.",
    "Compare with a backup, an exported record, or a digest on paper. They show up to where it is as it was.",
    "Put the last backup that holds in its place: npm run restore -- BACKUP.",
  ],

  // A digest from paper.
  checkTitle: "Check a digest from paper",
  checkTold: "Type the digest that stands on a report, on a loading list or in the site book.",
  digest: "Digest",
  checkIt: "Check it",
  same: (no: number, time: string) =>
    `It stands for entry ${no} of this record, of ${time}. Everything up to there is as it was when the digest was written down.`,
  since: (n: number) => (n === 0 ? "It is the last entry: nothing came after it." : `${entries(n)} came after it.`),
  sameHouse: (day: string) => `It is the house stream's, of ${day}: every job as it stood then.`,
  sameHouseJob: ({ no, day }: SaidOf) => `This job stood at entry ${no} on ${day}, and up to there it is as it was.`,
  sameHouseNotJob: "The house stream said nothing of this job up to then.",
  near: (digest: string, off: readonly number[]) =>
    `No entry of this record comes to exactly that. One comes to ${digest}: it differs at letter ${off.join(" and ")}. Read the paper again. If the paper does say what was typed, this is not the record that it was written from.`,
  none: "No entry of this record comes to it. Misread? Compare letter by letter: no 0 O 1 I L in it. If it is read right, this is not the record that it was written from, or it was changed or cut off since.",
  strange: (letters: readonly string[]) => `No digest has ${letters.join(" or ").slice(0, 60)} in it: no 0 O 1 I L. Read the paper again.`,
  wrongLength: (has: number, wanted: number) => `That has ${has} letters, and a digest has ${wanted}. Read the paper again.`,
  notWhole: (no: number) => `Only entries 1 to ${no} of this record hold. Nothing after them was compared.`,
} as const;

const sentence = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
