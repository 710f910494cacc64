import type { ReadOnly } from "../../../machines/conversation/live-job.ts";
import { WIND_BOUNDS } from "../../../machines/install/bounds.ts";
import type { Failure, Loss, LowSpace } from "../../../machines/record/storage.ts";
import { MAX_LENGTH_FT, MAX_WIDTH_FT, MIN_WIDTH_FT } from "../../../machines/tent/spec-size.ts";
import type { SpecProblem } from "../../../machines/tent/types.ts";
import { AIR_BOUNDS, HUMIDITY_BOUNDS } from "../../../machines/weather/air.ts";

const nearest = (p: SpecProblem) =>
  p.nearest === null
    ? ""
    : ` Nearest that works: ${Array.isArray(p.nearest) ? p.nearest.join(p.field === "midsFt" ? " + " : ", ") : p.nearest}.`;

/** Text from outside as a sentence can hold it: what nobody would see is written out. */
const visible = (text: string) =>
  [...text.slice(0, 40)]
    .map((c) =>
      /[\p{C}\p{Default_Ignorable_Code_Point}\p{Zl}\p{Zp}]/u.test(c)
        ? `U+${c.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}`
        : c,
    )
    .join("");

/** A share in percent, to a ten-thousandth; what is too large for that as it is. */
const percent = (share: number) => (Math.abs(share) < 1e9 ? Math.round(share * 1e6) / 1e4 : `${share} × 100`);

const UNIT = { count: "", in: " in", ft: " ft", m: " m", mm: " mm", deg: " degrees", lbf: " lb", turns: " turns", mph: " mph" } as const;

/** Fields that are counted, not measured. */
const COUNTED = /^(?:anchors|rings|ridge\.count)/;

const TENT: Record<SpecProblem["code"], (p: SpecProblem) => string> = {
  notANumber: (p) =>
    p.value === ""
      ? "Nothing is given here. It takes a number."
      : `"${p.value}" is not a number. ${COUNTED.test(p.field) ? "Count them." : "Give a number of feet."}`,
  widthOutOfRange: (p) => `${p.value} ft wide is outside ${MIN_WIDTH_FT} to ${MAX_WIDTH_FT} ft.`,
  lengthOutOfRange: (p) => `${p.value} ft long is outside ${MIN_WIDTH_FT} to ${MAX_LENGTH_FT} ft.`,
  lengthUnderWidth: (p) => `${p.value} ft long is less than the width. The long side goes in as the length.`,
  midsDoNotAddUp: (p) => `Mids of ${p.value} ft do not fill the length less the two ends.`,
  midNotPositive: (p) => `A mid of ${p.value} ft cannot be laid.`,
  onePieceWithMids: () => "A one-piece top has no mids. Leave them out or say it is sectional.",
  onePieceSplit: () => "A one-piece top has no split ends.",
  spacingNotPositive: (p) => `A pole spacing of ${p.value} ft is not possible.`,
  spacingTooWide: (p) => `A pole spacing of ${p.value} ft is too wide.`,
  ringsNotKnown: (p) =>
    p.value === "" ? "The sheet says 0, 1 or 2. Look it up." : `${p.value} rings of quarter poles: the sheet says 0, 1 or 2. Look it up.`,
  ridgeOutside: (p) =>
    p.field === "ridge"
      ? `"${p.value}" is not a way to set the poles under the ridge of this top.`
      : p.field === "ridge.count"
        ? `${p.value} poles do not stand under this ridge, at least 1 ft apart.`
        : `A ridge pole at ${p.value} ft is not under the ridge.`,
  poleUnknown: (p) =>
    p.field.startsWith("add") ? `"${p.value}" is not a kind of pole that can be added.` : `There is no pole "${p.value}" to leave out.`,
  poleOutside: (p) => `A pole at ${p.value} is outside the tent.`,
  poleLength: (p) => `A pole ${p.value} ft long cannot be right. Read it off the sheet.`,
  setback: (p) => `A stake line ${p.value} ft out cannot be right.`,
  noCenterPole: (p) =>
    p.field === "leaveOut"
      ? "Nothing holds up the ridge: every center pole was left out."
      : "No place is given for a pole under the ridge.",
  notYesOrNo: (p) => `"${p.value}" is neither true nor false.`,
  poleTwice: (p) =>
    p.field.startsWith("add")
      ? `Another pole stands within 1 ft of ${p.value} ft.`
      : `Poles at ${p.value} ft: two stand within 1 ft of each other.`,
  ringCount: (p) => `${p.value} rings along ${p.field.split(".")[1]}: bays are 1 to 20 ft, and corners and seam ends have one each.`,
  cornerShift: (p) => `A corner ${p.value} ft out of its place is more than cloth gives: at most 2 ft.`,
  anchorCount: (p) => `${p.value} is not a number of plates or stakes. Use whole numbers from the sheet.`,
};

/** Bytes as kB of 1,024, or MB; never less than they are. */
const size = (bytes: number): string =>
  bytes < 1024 ** 2 ? `${Math.ceil(bytes / 1024)} kB` : `${Math.ceil((bytes / 1024 ** 2) * 10) / 10} MB`;
const tooMuch = (bytes: number | null, most: number): string =>
  `That is too much at once: ${bytes === null ? "" : `${size(bytes)} came, `}${size(most)} is the limit`;

/** What is wrong with a request, and what to do. */
export const errors = {
  empty: "Empty. Fill it in.",
  tooLong: (most: number) => `Too long. Keep it under ${most} characters.`,
  tooMany: (most: number) => `Too many. At most ${most}.`,
  notNumber: (text: string) => `"${text.slice(0, 40)}" is not a number. Give one, like 8 or 5 1/2.`,
  notANumber: "Not a number. Give a number in the unit named.",
  outside: (n: number, from: number, to: number) => `${n} is out of range. From ${from} to ${to}.`,
  overCap: (mph: number, cap: number) => `${mph} mph is over the guide's own cap of ${cap}, whatever the sheet allows. Enter ${cap}.`,
  underLeast: (inches: number, least: number) =>
    `${inches} in is under the guide's own least of ${least}, whatever the law allows. Enter ${least}.`,
  spareNotNumber: (value: unknown) => `"${String(value).slice(0, 40)}" is not a number. Give the spares in percent, like 5.`,
  spare: (share: unknown) => `Spares of ${percent(Number(share))}% are outside 0 to 100%.`,
  weightNotNumber: (value: unknown) => `"${String(value).slice(0, 40)}" is not a weight. Give what one weighs in lb, or leave it empty.`,
  weight: (from: number, to: number, lb: unknown) => `${String(lb)} lb is outside ${from} to ${to} lb for one of them.`,
  from: (from: number, to: number) => `Out of range. From ${from} to ${to}.`,
  whole: "Give a whole number.",
  yesOrNo: "Say true or false.",
  markedOrNot: 'Say true, false, or "unanswered".',
  order: "The first figure is larger than the second.",
  zone: (zone: string) => `"${zone.slice(0, 40)}" is not a time zone. Write it like America/Chicago.`,
  oneOf: (names: readonly string[]) => `Not one of: ${names.join(", ")}.`,
  noUtilities: "No utility on the ticket. List each one that answered.",
  utilityTwice: "One utility is listed twice.",
  crewOfTwo: "A crew of at least two. Somebody else has to look.",
  noLead: "Nobody is the lead. Name one.",
  secondCompetent: "Only one person may answer for wind, anchors and who is under. Name a deputy or a competent person too.",
  sameName: "Two people have the same name. Add a letter.",
  notOneOf: (value: unknown, names: readonly string[]) => `"${String(value).slice(0, 40)}" is not one of: ${names.join(", ")}.`,
  missing: "Nothing is given here, and it is needed.",
  wrongKind: (value: unknown) => `${JSON.stringify(value)?.slice(0, 40)} is not what belongs here.`,
  date: (text: string) => `"${text}" is not a date. Write it like 2026-06-01 or 2026-06-01T07:00.`,
  endsBefore: "The ticket ends before it starts.",
  noShelter: (place: string) => `${place} is no storm shelter. Name a building or a hard-topped vehicle.`,
  deeperThanStake: (deep: number, long: number) => `${deep} in of embedment is more than the ${long} in stake.`,
  raiseOverStop: (raise: number, stop: number) =>
    `Raising stops at ${raise} mph, which is over the ${stop} mph where everything stops. Enter ${stop} or less.`,
  usualOverStop: (usual: number, stop: number) =>
    `Left empty, raising stops at ${usual} mph: over the ${stop} mph where everything stops. Enter ${stop} or less.`,
  briefRefused: "This brief can't be opened yet. Fix these:",
  tent: (p: SpecProblem) => `${TENT[p.code](p)}${nearest(p)}`,
  noJob: (id: string) => `There is no job ${id.slice(0, 40)}. Look at the list of jobs.`,
  noTent: (id: string) => `There is no tent ${id.slice(0, 40)}. Look at the list of tents.`,
  tentRefused: "This tent can't be saved yet. Fix these:",
  tentUnreadable: "This tent cannot be read any more. Take it out of the list, and add it again.",
  tentChanged: "Somebody else changed this tent while you were typing. Nothing was saved, and what you typed is still here.",
  tentChangedSince: "Somebody else changed this tent, or took it out, since you looked. Nothing was done: look at it again first.",
  tentGone: "Somebody else took this tent out of the list while you were typing. What you typed is still here: save it to add it again.",
  exampleStays: "An example cannot be changed or taken out. Copy it, and change the copy.",
  notKnown: (field: string, nearest: string | null, known: readonly string[]) => {
    const what = `"${visible(field)}" is not known`;
    return nearest === null ? `${what}. Known here: ${known.join(", ")}.` : `${what}; did you mean ${nearest}?`;
  },
  unbelievable: (n: number, unit: keyof typeof UNIT, from: number, to: number) =>
    `${n} is out of range. From ${from} to ${to}${UNIT[unit]}.`,
  gustUnderMean: (gust: number, mean: number) => `A gust of ${gust} mph is under its mean wind of ${mean} mph. Read it again.`,
  gustUnderLook: (gust: number, look: string, mean: number) =>
    `A gust of ${gust} mph is under ${look}, which counts as ${mean} mph. Read it again.`,
  notATime: (text: string) => `"${text.slice(0, 40)}" is not a time. Write it like 2026-06-01T07:00:00Z.`,
  unseenLetter: (name: string) => `"${visible(name)}" has a letter that nobody sees. Type the name again.`,
  noLetter: (name: string) => `"${visible(name)}" has no letter in it. Give a name.`,
  likeAnId: (name: string) => `"${visible(name)}" is how the record numbers people. Give the name itself.`,
  paperNumber: "That is no number of a paper. At least 4 letters or digits, and a digit among them.",
  notADay: (text: string) => `"${visible(text)}" is not a date. Write it like 2026-06-01.`,
  ownPaper: (name: string) => `${name} is on this crew. The paper has to come from somebody else.`,
  noTentGiven: 'There is no tent in it. Give one as {"name": "…", "spec": {…}}, as the list gives it.',
  pastedNotJson: (text: string) =>
    text === "" ? "Nothing was pasted in." : `"${text.slice(0, 40)}" is not the beginning of whole JSON. Paste all of it, from { to }.`,
  noName: "The tent has no name. Give it one.",
  nameNotText: (name: unknown) => `${JSON.stringify(name)?.slice(0, 40)} is not a name. Give one line of text.`,
  nameTooLong: (long: number, most: number) => `The name has ${long} letters. Keep it to ${most}.`,
  nameTaken: (name: string) => `Another tent in the list is called "${name}". Give this one another name.`,
  nameOfExample: (name: string) => `"${name}" is the name of an example. Give this one another name.`,
  versionShape: "The version is the whole number that the tent had when it was read.",
  noPage: (path: string) => `There is no page ${path.slice(0, 80)}.`,
  notJson: "The body is not JSON. Send one JSON object.",
  notAForm: "Send JSON, or a form from the page.",
  brokenForm: "The form did not come whole. Go back and send it again. Nothing was recorded.",
  low: ({ place, freeBytes }: LowSpace) =>
    `Only ${Math.floor(freeBytes / 1024 / 1024)} MB are free on the disk with ${place}; make room on it while everything still gets recorded.`,
  otherSite: "That came from another site. Nothing was recorded. Open the page here and press again.",
  tooLarge: (bytes: number | null, most: number) => `${tooMuch(bytes, most)}. Nothing was recorded.`,
  tooManyValues: (most: number) => `That is more than ${most.toLocaleString("en-US")} values at once. Nothing was recorded. Send less.`,
  briefTooLarge: (bytes: number | null, most: number, stretches: number) =>
    `${tooMuch(bytes, most)}, and ${stretches.toLocaleString("en-US")} stretches for a site. Nothing was recorded.`,
  bodyShape: "Something here can't be right. Fix these:",
  keyShape: "The key is 8 to 80 letters, digits, dots, dashes or underscores.",
  keyUsed: (key: string) => `The key ${key} was used for something else. Nothing was recorded; send it with a new key.`,
  who: (name: string, known: string) => `"${name.slice(0, 60)}" is not on this job. On it: ${known}.`,
  notUnderstood: (heard: string, ask: string) => `Didn't catch "${heard.slice(0, 60)}". ${ask}`,
  wrongUnit: (gave: string, wants: string) => `That is in ${gave}; this asks for ${wants}. Say it again.`,
  sayOrPress: "Say next, hold, back or make safe, or press.",
  heardOrType: "Send one of: what was heard, a recognizer's alternatives, or a type.",
  noSuchWind: `That's not a wind. From ${WIND_BOUNDS.from} to ${WIND_BOUNDS.to} mph, and the gust is at least the wind. Say it again.`,
  noSuchAir: `That's no heat. Air is from ${AIR_BOUNDS.from} to ${AIR_BOUNDS.to} °F, humidity from ${HUMIDITY_BOUNDS.from} to ${HUMIDITY_BOUNDS.to}%. Say it again.`,
  nothingHeard: "Heard nothing. Say it again.",
  ambiguous: (values: string) => `${values}? Say it again, with its unit, or press it.`,
  elsewhere: (heard: string, ask: string) => `"${heard.slice(0, 60)}" is somewhere else. ${ask}`,
  notTaken: (why: string) => `${why} Nothing was recorded.`,
  noOpening: (id: string) =>
    `The record of job ${id} cannot be read: its first entry is not as it was written. Nothing was changed. Put your last copy of the data file in its place.`,
  oops: "Something went wrong here. Nothing was recorded; try again.",
} as const;

const READ_ONLY: Readonly<Record<Exclude<ReadOnly["why"], "lost">, (no: number) => string>> = {
  replay: (no) => `Entry ${no} of this job does not replay as it was recorded. The job is open for reading only.`,
  chain: (no) => `Entry ${no} of this job does not fit the chain. The job is open for reading only.`,
  changed: (no) => `Entry ${no} in the data file is no longer as it was written.`,
};
/** Why a job can be read and not driven. */
const LOST: Readonly<Record<Loss, string>> = {
  deleted: "was deleted",
  replaced: "was replaced by another",
  cutShort: "was cut short",
};

/** Why nothing more is recorded, or a job can only be read, and what to do. */
export function notRecordedText(because: Failure | ReadOnly): string {
  switch (because.why) {
    case "lost":
      return `The data file ${because.place} ${LOST[because.how]} while in use, so nothing more is recorded; export this record, put your last copy of the file back, and start again.`;
    case "full":
      return `The disk with the data file ${because.place} is full, so nothing more is recorded; make room on it.`;
    case "failed":
      return `The disk with the data file ${because.place} took nothing (${because.said}), so nothing more is recorded; look after it.`;
    default:
      return READ_ONLY[because.why](because.no);
  }
}
