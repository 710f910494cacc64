import type { WindInTheWay } from "../../../machines/conversation/reply-to.ts";
import type { NoWorkInAir } from "../../../machines/install/air.ts";
import type { Did } from "../../../machines/install/commands.ts";
import type { Check } from "../../../machines/install/gates.ts";
import type { GateId } from "../../../machines/install/ids.ts";
import type { MissingGate, Refusal, Status, UnmetStatus } from "../../../machines/install/refusals.ts";
import type { Reopened } from "../../../machines/install/state.ts";
import type { TooLong } from "../../../machines/install/time-left.ts";
import { own } from "../../../machines/lookup/own.ts";
import { fieldName } from "./changes.ts";
import { errors } from "./errors.ts";
import { factName } from "./facts.ts";
import { number } from "./names.ts";
import { unfitText } from "./photos.ts";
import { roleName } from "./roles.ts";
import { sky } from "./sky.ts";
import { aloud } from "./spoken.ts";
import { lackedText, notOutText, unknownText } from "./trouble.ts";

/** What a refusal speaks about: the question, its limit, the answer given, what to do instead. */
export type About = {
  readonly ask: string | null;
  readonly ifNot: string | null;
  readonly limit: string | null;
  readonly value: string | null;
  /** What the answer comes to, where that is more than its value. */
  readonly found: string | null;
  /** When time alone opens it, as a clock shows it. */
  readonly notBefore: string | null;
  readonly check: Check["kind"] | null;
  /** With a pole or people in hand: that is finished first. */
  readonly inHand: boolean;
  /** The wind that is in the way, and what it keeps from being done. */
  readonly wind: (WindInTheWay & { readonly gate: GateId }) | null;
  readonly name: (id: string) => string;
};

/** Why not, and what to do. */
export function refusalText(refusal: Refusal, about: About): string {
  switch (refusal.why) {
    case "gate":
      return missingText(refusal, about);
    case "outOfUse":
      return lackedText(refusal.things);
    case "tooLong":
      return tooLongText(refusal);
    case "pastHour":
      return `${about.notBefore === null ? "The agreed hour has come" : `Empty by ${about.notBefore}, as agreed`}. Everybody out, nobody in.`;
    case "tooHot":
      return `Too hot: ${airText(refusal)}. No work: shade, water. Read again when cooler.`;
    case "tooCold":
      return `Too cold: ${airText(refusal)}. No work: get warm. Read again when milder.`;
    case "noSuchThing":
      return unknownText(refusal.thing, refusal.has);
    case "notOutOfUse":
      return notOutText(refusal.thing);
    case "held":
      return `On hold, by ${refusal.by === null ? "somebody" : about.name(refusal.by)}. Lead says carry on.`;
    case "paused":
      return `Waiting: ${refusal.by === null ? "somebody" : about.name(refusal.by)} said hold. Lead says carry on.`;
    case "peopleUnder":
      return "People are under. Count them out first, or make safe.";
    case "role":
      return `Not for ${roleName(refusal.is)}. Only ${refusal.may.map(roleName).join(", ")}.`;
    case "notAskedHere":
      return "Not asked here. Answer what the call asks.";
    case "wrongKind":
      return `That doesn't answer it. ${about.ask ?? ""}`.trim();
    case "hardGate":
      return `This one can't be skipped. ${about.ask ?? ""}`.trim();
    case "movedOn":
      return "Already moved on. Read the call on the screen.";
    case "notThereYet":
      return `Screen shows entry ${refusal.seen}; the record ends at ${refusal.last}. Load the page again.`;
    case "noSuchGate":
      return `No call here asks "${refusal.gate}". Answer what the call asks.`;
    case "unbelievable":
      return errors.unbelievable(refusal.n, refusal.unit, refusal.bounds.from, refusal.bounds.to);
    case "sameDevice":
      return "Heard on the first one's phone. Second person: your own phone, or press.";
    case "ownPaper":
      return "You showed this paper. A second competent person has to look at it.";
    case "ownPhone":
      return "Shown on this phone. The second person takes their own.";
    case "datedAhead":
      return `That paper is dated ${refusal.dated}, after today. Read its date again.`;
    case "noReadBack":
      return "Nothing to confirm here. Say the answer again.";
    case "nothingBefore":
      return "Nothing to go back to.";
    case "sayWhatBecame":
      return "Somebody's hurt. Carry on, and say what became of it.";
    case "alreadyHurt":
      return `Already on hold, somebody's hurt. ${about.name(refusal.by)} told it. Your words are kept.`;
    case "notHeld":
      return "Nothing is on hold.";
    case "future":
      return "That reading is from the future. Read it again.";
    case "noThunderNear":
      return "No thunder counts right now. There's none to take back.";
    case "olderReading":
      return "There's a newer reading. That one wasn't used.";
    case "inALee":
      return "That was read in a lee: the open site gets more wind. Read it in the open, clear of trucks and trees, arm up.";
    case "looserLimit":
      if (refusal.paper === "lineOwner") return "Only the line's owner can allow less clearance. Bring their paper to that call.";
      return `${refusal.paper === "sheet" ? "Looser limits need" : "That takes"} a new ${refusal.paper} number: ${limitNames(refusal.fields)}.`;
    case "forgets":
      return `What is known stays known: ${refusal.facts.map(factName).join(", ")}.`;
    case "noPhoto":
      return unfitText(refusal.unfit);
    case "notOnlyFound":
      return "The plan changed meanwhile. Say again what you found.";
    case "siteFull":
      return `This site is full at ${refusal.most.toLocaleString("en-US")}. Flag what you found, stay off it, and have the lead take doubles off.`;
    case "noProposal":
      return "No change is waiting for that.";
    case "sameAsProposer":
      return "Somebody else has to agree to a change.";
    case "alreadyStandingDown":
      return "Already coming down. Follow the calls.";
    case "jobClosed":
      return "Job's closed. Notes and photos only.";
  }
}

/** Words of names that one sentence has room for. */
const ROOM = 9;

/** Limits by their names, without units; those that there is no room for by their number. */
function limitNames(fields: readonly string[]): string {
  const names = [...new Set(fields.map((field) => fieldName(field).split(",")[0]!.toLowerCase()))];
  const told = names.filter(
    (_, i) =>
      names
        .slice(0, i + 1)
        .join(" ")
        .split(" ").length <= ROOM || i === 0,
  );
  const more = names.length - told.length;
  return more === 0 ? told.join(", ") : `${told.join(", ")} and ${more} more`;
}

const BECAUSE: Readonly<Record<Reopened["by"], string>> = {
  amendment: "plan changed",
  back: "you went back",
  strike: "new talk for the strike",
  clearing: "everyone was out",
  rain: "it rained",
  blow: "it blew hard",
  corner: "a corner mark moved",
};
/** What asks something again. */
export const becauseText = (by: Reopened["by"]): string => BECAUSE[by];

/** The figures that were read, and what they come to. */
const airText = (air: NoWorkInAir): string =>
  air.why === "tooHot"
    ? `${number(air.airF)} °F, ${number(air.humidity)}%, ${air.sun === null ? "sun not given" : sky.sun(air.sun)}, heat index ${number(air.indexF)}`
    : `${number(air.airF)} °F, wind ${number(air.windMph)}, feels like ${number(air.chillF)} °F`;

/** What is missing: the weather says why and until when; all else is asked, with what asks it again. */
function missingText({ status, because, tooLong }: MissingGate, about: About): string {
  if (tooLong) return tooLongText(tooLong);
  const { check, notBefore, inHand } = about;
  if (check === "quiet") return `Lightning. Nobody goes on${notBefore === null ? "" : ` before ${notBefore}`}. Take shelter; make safe.`;
  if (check === "wind" && status === "outOfLimit") return about.wind === null ? `Too much wind: ${about.limit}.` : windText(about.wind);
  if (check === "wind" && inHand && status === "stale") return "Finish this pole; then the wind again.";
  const again = because === null || status !== "open" ? "" : `Asked again, ${BECAUSE[because]}. `;
  return `${again}${gateText(status, about)}`;
}

const LEFT: Readonly<Record<TooLong["because"], string>> = {
  warning: "warning in force",
  trend: "wind rising",
  forecast: "by the forecast",
};
/** Nobody is sent in to lower: how long it takes, and how long there is. */
const tooLongText = ({ needMin, leftMin, because }: TooLong): string =>
  `Lowering takes ${needMin} min, ${leftMin} left: ${LEFT[because]}. Clear it and stay out.`;

/** What each wind limit keeps from being done, by its gate. */
const IN_THIS_WIND: Readonly<Record<string, string>> = {
  "wind.cloth": "Lay no cloth.",
  "wind.lift": "Lift nothing.",
  "wind.lower": "Lower nothing.",
  "wind.use": "Let nobody in.",
};

/** What was read, what is allowed, and what to do: nothing lies on bare ground that could be made safe. */
function windText({ read, limitMph, standing, gate }: WindInTheWay & { gate: GateId }): string {
  const was = read === null ? "" : `${gustOf(read)} `;
  const what = standing ? "Make safe, then read it again." : `${own(IN_THIS_WIND, gate) ?? "Go no further."} Read again in 10 min.`;
  return `${was}Limit ${number(limitMph)}. ${what}`;
}
const gustOf = ({ mph, gustMph }: NonNullable<WindInTheWay["read"]>): string =>
  gustMph === null || gustMph < mph ? `Wind ${number(mph)}.` : `Gust ${number(gustMph)}.`;

function gateText(is: UnmetStatus, { ask, ifNot, value, limit, found, check }: About): string {
  const question = ask ?? "Answer this first.";
  if (found !== null && (is === "open" || is === "outOfLimit")) return found;
  switch (is) {
    case "open":
      return question;
    case "unknown":
      return heard(`Can't go on "don't know".`, ifNot ?? question);
    case "outOfLimit":
      // "No" alone does not say to what: a warning comes from anybody, at any call.
      if (check === "yesNo") return heard(question, `${value ?? "No"}.`, ifNot ?? "");
      return heard(value === null ? "Not good." : `${value}.`, limit === null ? "" : `Need ${limit}.`, ifNot ?? question);
    case "noGust":
      return "Gust too? Say it like: nineteen gusting twenty-six.";
    case "early":
      return heard(`${value ?? "It"} is not in force yet.`, ifNot ?? "");
    case "stale":
      return heard(
        check === "document" ? `${value ?? "It"} has expired.` : "That's too old.",
        check === "document" ? (ifNot ?? "") : question,
      );
    case "recheckDue":
      return heard("The straps have had time to stretch.", question);
    case "samePerson":
      return heard("Somebody else has to answer.", question);
    case "unseen":
      return "Shown. A second competent person has to look at it, on their own phone.";
  }
}

/** As much of a refusal as is heard over a generator. What is cut off stands in the tile. */
const MAX_WORDS = 20;
const wordsIn = (text: string) =>
  aloud(text)
    .split(/\s+/)
    .filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

/** Sentences one after the other, the first of them whatever its length, up to the one that would be too much. */
function heard(...texts: string[]): string {
  const [first = "", ...rest] = texts.filter((text) => text !== "").flatMap((text) => text.split(/(?<=[.?!]) (?=[A-Z])/));
  const last = rest.findIndex((_, i) => wordsIn([first, ...rest.slice(0, i + 1)].join(" ")) > MAX_WORDS);
  const kept = last < 0 ? rest : rest.slice(0, last);
  // "Stops hard?" is no question to the crew: without its answer it goes too.
  return [first, ...(last >= 0 && kept.at(-1)?.endsWith("?") ? kept.slice(0, -1) : kept)].join(" ");
}

const DID: Readonly<Record<Did, string>> = {
  moved: "Next.",
  wentBack: "Back one. It's asked again.",
  held: "HOLD. Nobody moves till the lead says carry on.",
  paused: "Waiting. Lead says carry on.",
  readBack: "Correct, or wrong?",
  dropped: "Scrapped. Say it again.",
  carriedOn: "Carry on.",
  tookLead: "You lead now. Every screen shows it.",
  hurt: "HOLD. Call 911 now. First aid to them. One to the road.",
  answered: "Got it.",
  seen: "Seen by two.",
  waived: "Skipped, with the reason.",
  noted: "Noted.",
  photographed: "Photo kept.",
  read: "Got it.",
  watched: "Got it, for the watch. Going in takes a wind read by the lead, the deputy or a competent person.",
  proposed: "Change is up. Somebody else has to agree.",
  amended: "Plan changed. What it touches is asked again.",
  discarded: "Change dropped.",
  makingSafe: "Making safe.",
  goingOn: "Going on.",
  standingDown: "Standing down.",
  outOfUse: "Out of use. What needs it waits.",
  backInUse: "Back in use.",
  found: "On the plan. What it touches is asked again.",
  closed: "Closed.",
};
export const didText = (did: Did): string => DID[did];
/** All stops: what is in hand first, and from lightning into the shelter. */
export const stopText = (inHand: boolean, shelter: { readonly place: string | null } | null): string =>
  [
    "STOP.",
    inHand ? "Finish or lower what's in hand." : "",
    shelter === null ? "Everyone out. Make safe." : `Everyone to shelter: ${shelter.place ?? "not known, ask the lead"}.`,
  ]
    .filter((part) => part !== "")
    .join(" ");
export const overRaiseText = (limitMph: number): string => `Got it. Gusts at ${limitMph} or over: nothing goes up.`;

/** A wind at the standing tent that is at or over what was agreed. */
export const overAgreedText = {
  evacuate: (mph: number, agreedMph: number) => `EVERYBODY OUT: ${number(mph)} mph, agreed ${number(agreedMph)}. Make safe.`,
  walls: (mph: number, agreedMph: number) => `Walls off: ${number(mph)} mph, agreed ${number(agreedMph)}.`,
} as const;

const STATUS: Readonly<Record<Status, string>> = {
  open: "not answered",
  unknown: "not known",
  outOfLimit: "not good",
  noGust: "gust missing",
  early: "not in force yet",
  stale: "too old",
  recheckDue: "due again",
  samePerson: "wants somebody else",
  unseen: "shown, not seen by a second person",
  good: "good",
  waived: "left out",
};
export const statusText = (status: Status): string => STATUS[status];

/** A lean with its way, so that a wrong one is heard. */
export const leanText = (deg: number): string =>
  deg === 0 ? "plumb" : `${Math.abs(Math.round(deg * 10) / 10)}° ${deg < 0 ? "toward the tent" : "away from the tent"}`;
export const takenText = (value: string, time: string): string => `${value}, taken at ${time}`;

/** What was heard, said back with the question it answers. Out of its limit it says so at once: the ear may be wrong, or the stake. */
export const readBackText = (value: string, ask?: string, outside?: string): string =>
  `${ask === undefined ? "" : `${ask} `}${value}${outside === undefined ? "" : `; needed: ${outside}`}. Correct, or wrong?`;
