import type { Role } from "../../../machines/install/brief.ts";
import type { Unit } from "../../../machines/install/gates.ts";
import { own } from "../../../machines/lookup/own.ts";
import type { Counted } from "../../../machines/rehearsal/questions/question.ts";
import type { RefusalKind } from "../../../machines/rehearsal/questions/refusal-kind.ts";
import type { WordParams } from "../call-text.ts";
import { edgeName } from "./layout.ts";
import { pieceName, quantity, seamName } from "./names.ts";
import { phaseName, roleName } from "./roles.ts";

const LETTERS: Readonly<Record<string, string>> = { A: "Alpha", B: "Bravo", C: "Charlie", D: "Delta" };
/** A station as crews say it: CD4 is Charlie-Delta 4. */
const stationSaid = (id: string | number | undefined): string => {
  const [, letters = "", no = ""] = /^([A-D]+)(\d*)$/.exec(String(id)) ?? [];
  return `${[...letters].map((letter) => LETTERS[letter]).join("-")}${no === "" ? "" : ` ${no}`}`;
};
const stationAt = (id: string | number | undefined): string => (String(id).length === 1 ? `corner ${stationSaid(id)}` : stationSaid(id));

/** One half of a seam: S1.AB is seam 1 toward A–B. */
const halfName = (id: string | number | undefined): string => {
  const [seam = "", toward = ""] = String(id).split(".");
  return seam.startsWith("R-") ? seamName(seam) : `${seamName(seam)} toward ${toward[0]}–${toward[1]}`;
};

const THINGS: Readonly<Record<Counted, readonly [one: string, more: string]>> = {
  stakes: ["stake", "stakes"],
  plates: ["stake plate", "stake plates"],
  stations: ["mark", "marks"],
  straps: ["strap", "straps"],
  poles: ["pole", "poles"],
  sidePoles: ["pole around the edge", "poles around the edge"],
  pieces: ["piece", "pieces"],
  exits: ["exit", "exits"],
  turns: ["turn", "turns"],
  runs: ["run", "runs"],
};
const SIZE_OF: Readonly<Record<string, string>> = { stakes: "stakes around it", plates: "stake plates", sidePoles: "poles around the edge", poles: "poles inside" }; // biome-ignore format: one line reads best

/** What is asked, by its name. At most 20 words, and a call may stand beside it. */
const ASKS: Readonly<Record<string, (of: WordParams) => string>> = {
  nextPhase: ({ phase }) => `${phaseName(String(phase))} is done. What do you work toward next?`,
  nextPiece: ({ piece }) => `${sentence(pieceName(piece))} lies there. Which piece is laid next?`,
  nextHalf: ({ half }) => `${sentence(halfName(half))} is laced. Which is laced next?`,
  nextUp: () => "This one is up. Which goes up next?",
  nextDown: () => "This line is down. Which comes down next?",
  nextCall: () => "What comes right after this call?",
  order: () => "Put these in order. Press the first one first.",
  laced: ({ half }) => `At ${halfName(half)}: which piece has the loops, and which the holes?`,
  runs: () => "How many runs are laced, each half of a cross seam by itself?",
  ring: ({ half }) => `${sentence(halfName(half))}: how far from the center ring is the first quarter ring?`,
  stakes: ({ station }) => `How many stakes at ${stationAt(station)}?`,
  plates: ({ station }) => `How many stake plates at ${stationAt(station)}?`,
  stakesCorners: () => "How many stakes at all four corners together?",
  stakesAlong: ({ edge }) => `How many stakes along ${edgeSaid(edge)}, without its corners?`,
  stationsOn: ({ edge }) => `How many marks along ${edgeSaid(edge)}, both corners included?`,
  strapped: () => "How many straps hold the laid cloth down before anyone walks off?",
  around: () => "How many poles lie around the edge before the first one goes up?",
  inside: () => "How many poles go up inside?",
  stakesBack: () => "How many stakes have to come back out of the ground?",
  size: ({ widthFt, lengthFt, was, of }) =>
    `This tent takes ${was} ${own(SIZE_OF, String(of)) ?? String(of)}. How many would one of ${widthFt} by ${lengthFt} ft take?`,
  "place.corner": ({ corner }) => `Point at corner ${LETTERS[String(corner)]}.`,
  "place.station": ({ station }) => `Point at ${stationSaid(station)}.`,
  "place.piece": ({ piece }) => `Point at ${pieceName(piece)}.`,
  "limit.most": () => "What is the most that's good here?",
  "limit.least": () => "What is the least that's good here?",
  "limit.wind.cloth": () => "Cloth lies open. From what gust on is it too much?",
  "limit.wind.lift": () => "Poles go up. From what gust on is it too much?",
  "limit.wind.lower": () => "Poles come down. From what gust on does even that stop?",
  "limit.wind.use": () => "People are inside. From what gust on does nobody stay?",
  "who.next": () => "Who says next?",
  "who.hold": () => "Who may call hold?",
  "who.carryOn": () => "After a hold: who says carry on?",
  "who.answers": () => "Who may answer this?",
  "age.talk.headcount": () => "How long is a count of the crew good for?",
  "age.wind.cloth": () => "Cloth lies open. How old may a wind reading be?",
  "age.wind.lift": () => "Poles go up. How old may a wind reading be?",
  "age.warning": () => "How long is a look at the weather warnings good for?",
  "age.thunder": () => "Thunder. How long after the last of it does work stay stopped?",
  "age.watch": () => "The tent stands. How long is a walk around it good for?",
  "reopens.crew": () => "Somebody joins the crew. What is asked again?",
  "reopens.corner": () => "A corner mark has to move. What is asked again?",
  "reopens.blow": () => "It blew hard. What is asked again?",
  "reopens.rain": () => "It rained. What is asked again?",
  "reopens.strike": () => "The strike begins. What is asked again?",
  before: () => "What has to be so before this call?",
  resume: () => "You made safe at this call. Where does going on start?",
  "refused.role": ({ role }) => `At this call ${somebody(role)} says next, and it's refused. Why?`,
  "refused.open": () => "At this call the lead says next, and it's refused. Why?",
  "refused.held": ({ role }) => `${sentence(somebody(role))} shouted hold. The lead says next, and it's refused. Why?`,
  "refused.outOfLimit": ({ n }) => `The lead answers ${n} inches here. It doesn't go on. Why?`,
  "refused.waive": () => "It's late, and the lead wants to skip this. Refused. Why?",
  "refused.movedOn": () => "Lead and deputy say next at once. The second is refused. Why?",
  "refused.outOfUse": ({ piece }) => `${sentence(pieceName(piece))} is torn. The lead says next, and it's refused. Why?`,
  "refused.second": () => "Whoever laid it out answers this too. It doesn't go on. Why?",
  "refused.stale": ({ minutes }) => `The wind was read ${minutes} minutes ago. The first corner is refused. Why?`,
  "refused.gust": ({ gustMph }) => `The wind gusts ${gustMph} mph. The first corner is refused. Why?`,
  "refused.thunder": ({ minutes }) => `The last thunder was ${minutes} minutes ago. The lead says next: refused. Why?`,
  "refused.under": () => "Two are under. The lead wants to stand the job down. Refused. Why?",
};
const somebody = (role: string | number | undefined): string => (role === "crew" ? "one of the crew" : `a ${roleName(role as Role)}`);
const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const edgeSaid = (edge: string | number | undefined): string => edgeName(String(edge) as "AB");
/** Why it is so, where no call says it. */
const REASONS: Readonly<Record<string, string>> = {
  nextPhase: "Each phase stands on the one before it: nothing goes up before what holds it.",
  "who.next": "One voice moves the job on. The deputy has it while the lead can't.",
  "who.hold": "Whoever sees it first stops it. Nobody is asked who they are.",
  "who.carryOn": "Whoever lets go of a hold has to have looked at why it was called.",
  "who.answers": "What a life can hang on takes somebody competent. The rest is for the whole crew.",
  "refused.role": "One voice moves the job on. Everybody may hold.",
  "refused.open": "A call that asks something stays until it's answered well.",
  "refused.held": "A hold stays until the lead has looked and says carry on.",
  "refused.waive": "A hard gate is one that somebody gets hurt without. Nobody waives it.",
  "refused.movedOn": "The second phone still showed the call before. Read the screen, then say it.",
  "refused.outOfUse": "Nothing is begun that can't be finished. Mend it or swap it, then say it's back.",
};

const REFUSALS: Readonly<Partial<Record<RefusalKind, string>>> = {
  open: "What this call asks isn't answered.",
  held: "It's on hold until the lead says carry on.",
  role: "Only the lead or the deputy moves it on.",
  movedOn: "It had already moved on.",
  windTooOld: "The wind reading is too old.",
  tooMuchWind: "It's too much wind for that.",
  outOfLimit: "The answer is out of its limit.",
  samePerson: "It takes a second person's eyes.",
  hardGate: "It can't be skipped, by anybody.",
  thunder: "It hasn't been quiet for long enough.",
  outOfUse: "Something it needs is out of use.",
  peopleUnder: "People are under, and not counted out.",
};

const hours = (s: number): string => (s % 3600 === 0 && s >= 3600 ? count(s / 3600, "hour") : count(s / 60, "minute"));
const count = (n: number, one: string): string => `${n} ${one}${n === 1 ? "" : "s"}`;

/** Questions that come from a plan and its calls. */
export const questions = {
  ask: (name: string, of: WordParams): string => own(ASKS, name)?.(of) ?? name,
  reason: (name: string): string => own(REASONS, name) ?? "",
  /** The call that a question is about. */
  about: (say: string): string => `“${say}”`,
  count: (n: number, of: Counted): string => `${n} ${THINGS[of][n === 1 ? 0 : 1]}`,
  figure: (n: number, unit: Unit): string => quantity(n, unit),
  time: hours,
  laced: (lace: string, eyelet: string): string => `Loops: ${pieceName(lace)}. Holes: ${pieceName(eyelet)}.`,
  half: (id: string): string => sentence(halfName(id)),
  wind: (belowMph: number): string => `A fresh wind reading, gusts under ${belowMph} mph.`,
  refusal: (why: RefusalKind): string => own(REFUSALS, why) ?? why,
  roles: (roles: readonly Role[], all: boolean): string => (all ? "Anybody" : sentence(listed(roles.map(roleName)))),
  place: (no: number): string => `Place ${no}`,
} as const;

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} or ${names.at(-1)}`;
