import type { Did } from "../../../machines/install/commands.ts";
import type { Refusal, Status, UnmetStatus } from "../../../machines/install/refusals.ts";
import { errors } from "./errors.ts";
import { roleName } from "./roles.ts";

/** What a refusal speaks about: the question, its limit, the answer given, what to do instead. */
export type About = {
  readonly ask: string | null;
  readonly ifNot: string | null;
  readonly limit: string | null;
  readonly value: string | null;
  /** What the answer comes to, where that is more than its value. */
  readonly found: string | null;
  readonly name: (id: string) => string;
};

/** Why not, and what to do. */
export function refusalText(refusal: Refusal, about: About): string {
  switch (refusal.why) {
    case "gate":
      return gateText(refusal.status, about);
    case "held":
      return `Held by ${refusal.by === null ? "somebody" : about.name(refusal.by)}. The lead says carry on first.`;
    case "paused":
      return `Waiting: ${refusal.by === null ? "somebody" : about.name(refusal.by)} said to. The lead says carry on.`;
    case "stop":
      return "The weather says stop. Make safe; no going on until a new reading allows it.";
    case "role":
      return `A ${roleName(refusal.is)} does not say that here. It takes: ${refusal.may.map(roleName).join(", ")}.`;
    case "notAskedHere":
      return "That is not asked here. Answer what the call asks.";
    case "wrongKind":
      return `That does not answer this. ${about.ask ?? ""} Wanted: ${about.limit ?? "another kind of answer"}.`;
    case "hardGate":
      return `This one cannot be left out. ${about.ask ?? ""}`.trim();
    case "movedOn":
      return "Already moved on. Read the call that is showing now.";
    case "notThereYet":
      return `The screen said that it showed entry ${refusal.seen}, and the record ends with ${refusal.last}. Load the page again.`;
    case "noSuchGate":
      return `No call of this job asks "${refusal.gate}". Answer what the call asks.`;
    case "unbelievable":
      return errors.unbelievable(refusal.n, refusal.unit, refusal.bounds.from, refusal.bounds.to);
    case "sameDevice":
      return "Spoken on the phone of the first one. The second one speaks on their own, or presses.";
    case "noReadBack":
      return "Nothing waits to be confirmed here. Say the answer again.";
    case "nothingBefore":
      return "Nothing to go back to from here.";
    case "notHeld":
      return "Nothing is held.";
    case "future":
      return "That reading is from later than now. Take it again.";
    case "olderReading":
      return "There is a newer reading. This one was not used.";
    case "noProposal":
      return "No change to the plan is waiting for that.";
    case "sameAsProposer":
      return "Somebody else has to agree to a change of the plan.";
    case "alreadyStandingDown":
      return "It is coming down already. Follow the calls.";
    case "jobClosed":
      return "This job is closed. Only notes can be added.";
  }
}

function gateText(is: UnmetStatus, { ask, ifNot, limit, value, found }: About): string {
  const question = ask ?? "This has to be answered first.";
  if (found !== null && (is === "open" || is === "outOfLimit")) return found;
  switch (is) {
    case "open":
      return `Not yet. ${question}`;
    case "unknown":
      return `Not known is not good enough. ${question} ${ifNot ?? ""}`.trim();
    case "outOfLimit":
      return `${value === null ? "Not good" : `${value} is not good`}${limit === null ? "" : `: wanted ${limit}`}. ${ifNot ?? question}`;
    case "early":
      return `${value ?? "It"} is not in force yet. ${ifNot ?? ""}`.trim();
    case "stale":
      return `Too old to count. ${question}`;
    case "samePerson":
      return `Somebody else has to answer this one. ${question}`;
  }
}

const DID: Readonly<Record<Did, string>> = {
  moved: "Next.",
  wentBack: "Back one. What was answered there is asked again.",
  held: "HELD. Nobody goes on until the lead says carry on.",
  paused: "Waiting. The lead says carry on.",
  readBack: "Correct, or wrong?",
  dropped: "Dropped. Say it again.",
  carriedOn: "Carry on.",
  answered: "Taken down.",
  waived: "Left out, with the reason taken down.",
  noted: "Noted.",
  read: "Reading taken down.",
  proposed: "Change put forward. Somebody else has to agree.",
  amended: "Plan changed. What it touches is asked again.",
  discarded: "Change dropped.",
  makingSafe: "Making safe.",
  goingOn: "Going on.",
  standingDown: "Standing down.",
  closed: "Closed.",
};
export const didText = (did: Did): string => DID[did];

const STATUS: Readonly<Record<Status, string>> = {
  open: "not answered",
  unknown: "not known",
  outOfLimit: "not good",
  early: "not in force yet",
  stale: "too old",
  samePerson: "wants somebody else",
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
  `${ask === undefined ? "" : `${ask} `}${value}${outside === undefined ? "" : `; wanted: ${outside}`}. Correct, or wrong?`;
