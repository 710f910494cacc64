import type { Bounds } from "../../../machines/install/bounds.ts";
import type { Trouble, Way } from "../../../machines/install/practice.ts";
import type { Move } from "../../../machines/rehearsal/right-move.ts";
import type { SituationId } from "../../../machines/rehearsal/scene.ts";
import { saidText } from "./said.ts";
import { lookText, meterText, seenText, signText } from "./site-signs.ts";

const minutes = (n: number): string => (n === 1 ? "1 minute" : `${n} minutes`);

const WAYS: { readonly [W in Way]: { readonly name: string; readonly text: string } } = {
  walk: { name: "Walk it", text: "Why, how, and what goes wrong stand open at each call. The clock waits for you." },
  lead: { name: "Lead it", text: "No help. The clock runs. What counts is what was safe, not how fast." },
};
const TROUBLES: { readonly [T in Trouble]: string } = {
  none: "Nothing goes wrong",
  some: "One thing after another",
  several: "Several at once",
};

/** What happened, as a heading. */
const SITUATIONS: { readonly [S in SituationId]: string } = {
  windUp: "The wind got up",
  squall: "A squall in the middle of it",
  breeze: "A breeze under the limit",
  phoneDies: "The phone died",
  thunder: "Thunder",
  warning: "A weather warning",
  rain: "Hard rain",
  holdCalled: "Somebody called hold",
  hurt: "Somebody got hurt",
  rock: "A stake hit rock",
  softGround: "Soft ground",
  nearLine: "A stake too near a line",
  bentStakes: "Bent stakes",
  leaning: "Stakes leaning in",
  tapeMisread: "A tape misread",
  otherSheet: "Another tent's sheet",
  handMissing: "A hand missing from the count",
  stillUnder: "Somebody still under",
  panelWrong: "A panel wrong way round",
  torn: "Torn cloth",
  strapOpen: "A handle left open",
  noHat: "No hat",
  markGone: "Marks gone",
  short: "Short on the pile",
  tooFast: "A yes too fast",
};

/** What it would have cost, where no call says so. */
const COSTS: { readonly [S in SituationId]: string } = {
  windUp: "Cloth takes a gust like a sail. Whoever holds a pole goes with it.",
  squall: "A pole half up under a pumping top comes down on whoever is at its foot.",
  breeze: "Nothing: it stayed under the limit.",
  phoneDies: "An old reading lets a lift begin in a wind that nobody measured.",
  thunder: "A wet crew on metal poles is the tallest thing in the field.",
  warning: "The gust front comes before the rain, with the top half up.",
  rain: "Wet ground lets go of stakes that held an hour ago.",
  holdCalled: "Whoever called it saw what you didn't. The load moves with somebody in the way.",
  hurt: "Work goes on around somebody who can't get out of its way.",
  rock: "A stake that stands high pulls out first, and the next one after it.",
  softGround: "It creeps under the first gust, and the whole edge goes slack.",
  nearLine: "A stake through gas, or through somebody's power.",
  bentStakes: "It folds at the bend when the strap comes tight.",
  leaning: "It slides up and out along the pull.",
  tapeMisread: "The whole tent is laid a foot off, and pulls crooked all day.",
  otherSheet: "Everything after it is held against another tent's figures.",
  handMissing: "The one who wasn't counted is the one under the cloth.",
  stillUnder: "The next line goes up over somebody you counted out.",
  panelWrong: "The last seam has nothing to lace to. All of it comes out again.",
  torn: "It lets go at the hole, with a pole in it.",
  strapOpen: "The strap runs out through an open handle, all at once.",
  noHat: "A ratchet or a pin drops from twelve feet.",
  markGone: "Stakes go in where nobody knows what lies under.",
  short: "It's begun, can't be finished, and hangs there while somebody drives.",
  tooFast: "One missed loop opens the seam, loop by loop.",
};

/** What is right, as somebody would tell a trainee. */
function moveText(move: Move): string {
  switch (move.type) {
    case "wait":
      return `Wait: let ${minutes(Math.ceil(move.seconds / 60))} go by.`;
    case "next":
      return "Go on: next.";
    case "back":
      return "Go back one, and have it looked at again.";
    case "hold":
      return "Hold. It isn't settled yet.";
    case "carryOn":
      return "It's settled. Carry on.";
    case "makeSafe":
      return "Make safe: everybody out.";
    case "hurt":
      return "Say somebody's hurt. Work stops.";
    case "answer":
      return `Answer what you see: ${seenText(move.value)}.`;
    case "reading":
      return `Tell it: ${saidText(move)}.`;
    case "outOfUse":
      return `Say what's short: ${saidText({ ...move, because: "" })}.`;
    case "backInUse":
      return "It came. Say it's here.";
    default:
      return `${saidText(move)}.`;
  }
}

/** A rehearsal that answers back: its choice, what stands on its guide, and how it is gone over. */
export const rehearsal = {
  sign: signText,
  look: lookText,
  meter: meterText,
  move: moveText,
  situation: (is: SituationId): string => SITUATIONS[is],
  cost: (is: SituationId): string => COSTS[is],
  /** Of the made-up crew, the lead first. */
  names: ["You", "Dell", "Marsh", "Birch", "Flint", "Wren", "Teal", "Moss", "Reed"],

  title: "Rehearse",
  intro: "The same calls on this tent, with a made-up crew on a made-up day. Nothing is at stake, and none of it counts.",
  caution: "A rehearsal teaches the order and the looks. The sheet, the maker's manual and your lead come first.",
  ways: WAYS,
  trouble: "What goes wrong",
  troubles: TROUBLES,
  from: "Begin at",
  seed: "Seed",
  seedHint: "Leave it empty for a new day. The same number is the same day again.",
  site: "On the site",
  right: "Right here",
  timeGoesBy: (n: number): string => `${minutes(n)} go by`,
  wait: (n: number): string => `Wait ${n} min`,
  lookBack: "Go over it",

  gone: {
    title: "Gone over",
    end: "End it and go over it",
    goOn: "Not over yet: every moment so far would show. End it, then look.",
    day: (seed: number): string => `Day ${seed}`,
    score: (safe: number, of: number): string => (of === 0 ? "Nothing happened." : `${safe} of ${of} went safely.`),
    unsafe: (n: number): string => (n === 1 ? "1 unsafe move" : `${n} unsafe moves`),
    untrue: (n: number): string => (n === 1 ? "1 answer other than what was there" : `${n} answers other than what was there`),
    caught: (n: number): string => (n === 1 ? "1 the guide caught" : `${n} the guide caught`),
    notSpeed: "How long it took counts for nothing.",
    went: {
      well: "Safe",
      cautious: "Safe, and not what was there",
      caught: "Caught by the guide",
      untrue: "Not what was there",
      unsafe: "Unsafe",
      left: "Still open at the end",
    },
    seen: "To be seen",
    said: "You said",
    nothing: "You had nothing to say here.",
    should: "Right",
    cost: "What it would have cost",
    why: "The guide, had it known",
    refused: "The guide",
    besides: "In between",
    again: "The same day again",
    other: "Another day",
  },

  over: "This rehearsal is over. Go over it, or start another one.",
  otherPhone: "This rehearsal runs on another phone. Start one of your own.",
  playsThemselves: (name: string): string => `${name} is played by the program here. Speak as the lead.`,
  planFixed: "A rehearsal keeps its plan. Change the real job, then rehearse that.",
  noSuch: (text: string, among: readonly string[]): string => `"${text}" is none of these: ${among.join(", ")}. Pick one.`,
  noSeed: (text: string, { from, to }: Bounds): string => `"${text}" is no seed. Type a whole number, ${from} to ${to}, or leave it empty.`,
  noMinutes: (text: string, { from, to }: Bounds): string => `"${text}" is no wait. Type whole minutes, ${from} to ${to}.`,
  notOne: "This is a real job. Time isn't made up here.",
  tooMany: (n: number): string => `${n} rehearsals in a day is enough. Finish one, and begin the next tomorrow.`,
  jobGone: "The job this was made from is gone. The rehearsal stays.",
  unknownYet: (facts: string): string => `Not known yet on this job: ${facts}. Begin at the first call, or fill it in.`,
} as const;
