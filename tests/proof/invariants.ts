import type { Command } from "../../machines/install/commands.ts";
import { decide } from "../../machines/install/decide.ts";
import { attentionState, type Job } from "../../machines/install/job.ts";
import type { Outcome } from "../../machines/install/refusals.ts";
import type { SiteState } from "../../machines/install/step.ts";
import { PEOPLE } from "./fixtures.ts";
import { firstOpen, missingByHand, nextCall, underAfter } from "./missing.ts";
import {
  callOf,
  lacking,
  leftOut,
  outOf,
  resumesAt,
  STRIKE,
  sessionAt,
  sidesLoose,
  stands,
  type Tent,
  TORN,
  thunderNear,
  warned,
  windIs,
  workStops,
} from "./tent.ts";

/** What the exploration remembers by hand beside the chart: `since` is when the session began, `under` the count in of who is under. */
export type Memory = {
  readonly site: SiteState;
  readonly began: string;
  readonly resumeAt: string | null;
  readonly since: number;
  readonly under: string | null;
};

/** One command tried: what it was tried on, what came back. `as` is the command's name in the exploration. */
export type Trial = {
  readonly tent: Tent;
  readonly as: string;
  readonly before: Job;
  readonly memory: Memory;
  readonly command: Command;
  readonly outcome: Outcome;
  readonly after: Job;
  /** What was tried read back in this exploration: once for each call, command and outcome, as nothing else bears on it. */
  readonly readBack: Set<string>;
};

const did = ({ outcome }: Trial): string | null => ("did" in outcome ? outcome.did : null);
const then = ({ outcome }: Trial): string | null => ("did" in outcome ? (outcome.and ?? null) : null);
const refusal = ({ outcome }: Trial) => ("refused" in outcome ? (outcome.refused[0] ?? null) : null);
const refusedAs = (t: Trial): string | null => refusal(t)?.why ?? null;
const refusedGate = (t: Trial): string | null => {
  const found = refusal(t);
  return found?.why === "outOfUse" ? TORN : found?.why === "gate" ? found.gate : null;
};
const isHeld = (job: Job) => attentionState(job) !== "working";
const isDriver = ({ command }: Trial) => command.by === PEOPLE.lead || command.by === PEOPLE.deputy;
/** Whether work went on: to the next call, out of a way out, or to the end; by "next" or by an answer. */
const wentOn = (t: Trial) => (t.command.type === "next" && did(t) !== null) || then(t) !== null;
const from = (t: Trial) => callOf(t.tent, t.before);
const to = (t: Trial) => callOf(t.tent, t.after);
const at = (t: Trial) => t.command.at;
/** A call that asks nothing is done when somebody says so; the daily walk is not the end; what ends a stop starts nothing. */
const staysPut = (t: Trial) =>
  !t.tent.rows.has(from(t)?.id ?? "") || from(t)?.id === "watch" || (workStops(t.before, at(t)) && !workStops(t.after, at(t)));
/** The same clock as the chart's: the session is judged when the command comes. */
const now = (t: Trial): Memory => ({ ...t.memory, since: sessionAt(t.memory.since, t.before.snapshot.context.lastAt, at(t)) });
const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);
const unless = (fine: boolean, trouble: string) => (fine ? null : trouble);

/** Each says what is wrong with one trial, or nothing. */
export const INVARIANTS = {
  "nobody goes on past a gate that is neither good nor waived": (t) => {
    const row = wentOn(t) ? t.tent.rows.get(from(t)?.id ?? "") : undefined;
    if (!row || (!row.hard && t.after.snapshot.context.waived[row.gate] !== undefined)) return null;
    const is = stands(t.tent, t.after, row.gate, at(t), now(t).since);
    return unless(is === "good", `${row.gate} was ${is}`);
  },
  "with nobody under and no load up, nobody goes on while something earlier is open again": (t) => {
    const left = from(t);
    if (!wentOn(t) || !left || !t.tent.place.has(left.id) || remember(t).under !== null || sidesLoose(t.tent, left.id)) return null;
    const open = firstOpen(t.tent, t.after, t.memory, left.id);
    return unless(open === null || to(t)?.begins === "strike", `${open} was open`);
  },
  "no work is entered, in whatever way, without what it needs": (t) => {
    const entered = to(t);
    if (did(t) === null || !entered || entered === from(t)) return null;
    const lacks = lacking(t.tent, t.after, entered.id, at(t), now(t).since);
    return unless(lacks === null, `${entered.id} was entered without ${lacks}`);
  },
  "under stop nobody lifts, lowers, ties or goes under anything new, and nobody is let in": (t) => {
    const entered = to(t);
    const aloft = ["lift", "under", "ease", "lower", "use"].includes(t.tent.work.get(entered?.id ?? "") ?? "");
    return unless(!(entered && entered !== from(t) && aloft && workStops(t.after, at(t))), `${entered?.id} was begun`);
  },
  "the strip says what the weather allows": (t) => {
    const { weather } = t.after.snapshot.value as { weather: string };
    const wind = windIs(t.after, at(t));
    if (at(t) < t.before.snapshot.context.lastAt) return null;
    const workable = wind === "calm" || wind === "old" || wind === "noGust";
    const wanted = workStops(t.after, at(t)) ? "stop" : workable ? "workable" : wind === "caution" ? "caution" : "unknown";
    return unless(t.command.type === "answer" || weather === wanted, `${weather}, not ${wanted}`);
  },
  "next asks for the first thing that is missing": (t) => {
    if (t.command.type !== "next" || !isDriver(t) || isHeld(t.before) || refusedAs(t) === "movedOn" || !from(t)) return null;
    const missing = missingByHand(t.tent, t.before, now(t), Math.max(at(t), 0));
    if (at(t) < t.before.snapshot.context.lastAt) return null;
    return unless(refusedGate(t) === missing && (missing !== null || did(t) !== null), `asked ${refusedGate(t)}, wanted ${missing}`);
  },
  "a good answer to what was asked goes on, and nothing else does": (t) => {
    const { command } = t;
    if (command.type !== "answer" && command.type !== "reading") return unless(then(t) === null, "it went on");
    if (did(t) === null) return null;
    const asked = missingByHand(t.tent, t.before, now(t), at(t));
    const answers =
      command.type === "answer" ? command.gate === asked : (asked ?? "").startsWith("wind.") && command.reading.kind === "wind";
    if (then(t) !== null) {
      return unless(answers && isDriver(t) && !isHeld(t.before) && !staysPut(t), `${asked} was asked`);
    }
    if (!answers || !isDriver(t) || isHeld(t.before) || staysPut(t)) return null;
    return unless(missingByHand(t.tent, t.after, remember(t), at(t)) !== null, "it stayed");
  },
  "a screen is out of date once the question has changed": (t) => {
    if (did(t) === null || at(t) < t.before.snapshot.context.lastAt || t.command.type === "makeSafe" || did(t) === "amended") return null;
    const changed = missingByHand(t.tent, t.before, now(t), at(t)) !== missingByHand(t.tent, t.after, remember(t), at(t));
    return unless(!changed || t.after.snapshot.context.revision === t.command.entry, "an old screen would count");
  },
  "nobody is under, uncounted": (t) => {
    const { under } = remember(t);
    const call = to(t);
    return unless(under === null || t.tent.block.get(call?.id ?? "") === under, `${under} was counted in, and the guide is at ${call?.id}`);
  },
  "a hard gate is never waived": (t) => {
    const row = did(t) === "waived" && t.command.type === "waive" ? t.tent.rows.get(t.command.gate) : undefined;
    return unless(did(t) !== "waived" || row?.hard === false, `${row?.gate} was waived`);
  },
  "a soft gate is waived by the lead": (t) => {
    const row = t.as === "waive" ? t.tent.rows.get(from(t)?.id ?? "") : undefined;
    return row && !row.hard && did(t) !== "waived" ? `${row.gate} could not be waived` : null;
  },
  "anybody can hold, always": (t) =>
    unless(t.command.type !== "hold" || (did(t) === "held" && attentionState(t.after) === "held"), "not held"),
  "a hold word inside a sentence makes the work wait, and lets go of no hold": (t) =>
    unless(
      t.command.type !== "pause" || attentionState(t.after) === (attentionState(t.before) === "held" ? "held" : "paused"),
      "it went on",
    ),
  "what is read back counts for nothing until it is confirmed, and then as if it had been pressed": (t) => {
    const { command } = t;
    if (command.type !== "answer" && command.type !== "waive" && command.type !== "standDown" && command.type !== "reading") return null;
    const id = from(t)?.id ?? "";
    // Once for each kind of call: what it is worth hangs on no name.
    // A chart that is broken may refuse for no reason at all.
    const came = "refused" in t.outcome ? t.outcome.refused.map((refusal: { why: string } | undefined) => refusal?.why) : t.outcome;
    const tried = `${t.tent.kinds.get(id) ?? id} ${attentionState(t.before)} ${t.as} ${JSON.stringify(came)}`;
    if (t.readBack.has(tried)) return null;
    t.readBack.add(tried);
    const [waits, told] = decide(t.before, { ...command, type: "readBack", intent: command });
    const [, later] = decide(waits, { ...command, type: "correct", target: command.entry, entry: command.entry + 1 });
    if ("refused" in t.outcome)
      return unless(same(told, t.outcome) && waits.snapshot.context.revision === t.before.snapshot.context.revision, "not refused at once");
    const [nowIs, was] = [waits.snapshot.context, t.before.snapshot.context];
    const parts = Object.keys(was) as (keyof typeof was)[];
    const unchanged = parts.every((part) => part === "lastAt" || part === "sessionAt" || nowIs[part] === was[part]);
    return unless("did" in told && told.did === "readBack" && unchanged && same(later, t.outcome), "it counted early, or not at all");
  },
  "anybody can begin making safe until the job is closed": (t) => {
    if (t.command.type !== "makeSafe") return null;
    const call = from(t);
    if (!call) return unless(did(t) === null, "a closed job was made safe");
    const up = t.memory.site === "raised" ? "up" : "ground";
    const way = !t.tent.place.has(call.id) ? call.phase : call.phase === "standing" ? "standing" : up;
    const first = { ground: "tools", up: "pole", standing: "people" }[way as "up"];
    return unless(did(t) === "makingSafe" && to(t)?.id === `safe.${way}.${first}`, `not on the way "${way}"`);
  },
  "under a hold nothing moves": (t) =>
    unless(
      !isHeld(t.before) || (then(t) === null && (!["next", "back", "standDown"].includes(t.command.type) || did(t) === null)),
      "moved",
    ),
  "work is carried on by the lead, only after a hold, and after somebody was hurt with what became of it": (t) => {
    if (t.command.type !== "carryOn") return null;
    const told = t.before.snapshot.context.hurt === null || t.command.became !== null;
    return unless((did(t) === "carriedOn") === (isHeld(t.before) && isDriver(t) && told), "the wrong answer");
  },
  "somebody hurt holds the work, once": (t) => {
    if (t.command.type !== "hurt") return null;
    const known = t.before.snapshot.context.hurt !== null;
    return unless(known ? refusedAs(t) === "alreadyHurt" : did(t) === "hurt" && attentionState(t.after) === "held", "it went on");
  },
  "only the lead and the deputy move the guide": (t) => {
    const theirs = ["next", "back", "carryOn", "waive", "standDown", "amend"].includes(t.command.type);
    return unless((!theirs || isDriver(t) || did(t) === null) && (isDriver(t) || then(t) === null), `${t.command.role} did it`);
  },
  "nobody answers or takes a reading who is not named for it": (t) =>
    unless(!t.as.includes("not allowed") || did(t) === null, `${t.command.role} did it`),
  "what can only stop is taken from anybody, whatever its time says": (t) =>
    unless(
      !t.as.includes("only stop") || (did(t) !== null && (!t.as.includes("stop for all") || workStops(t.after, at(t)))),
      "it was refused",
    ),
  "a second competent person's look at a paper counts": (t) =>
    unless(!["paper seen by another", "paper seen by a competent person"].includes(t.as) || did(t) === "seen", "it was one more showing"),
  "a screen behind the times moves nothing": (t) => unless(t.as !== "next from an old screen" || refusedAs(t) === "movedOn", "it counted"),
  "a calm reading from the future is refused": (t) =>
    unless(t.as !== "calm reading from the future" || (refusedAs(t) === "future" && sameWeather(t)), "it counted"),
  "a calm reading in a lee clears nothing": (t) =>
    unless(t.as !== "calm reading in a lee" || windIs(t.after, at(t)) !== "calm" || windIs(t.before, at(t)) === "calm", "it counted"),
  "a calm wind of whoever the plan has watch counts for the watch, and clears nothing; of anybody else it is refused": (t) => {
    if (t.as !== "calm reading by the watcher") return null;
    const watches = t.before.frozen.brief.weatherPlan?.watchedBy === "watcher";
    return unless(did(t) === (watches ? "watched" : null) && sameWeather(t), watches ? "it did not" : "it counted");
  },
  "an older calm reading never takes the place of a newer one": (t) =>
    unless(t.as !== "older calm reading" || (refusedAs(t) === "olderReading" && sameWeather(t)), "it counted"),
  "thunder is taken back by one who may, and only while it stops work; the one before it counts again": (t) => {
    if (!t.as.startsWith("thunder taken back")) return null;
    const { thunderAt, thunderBefore = [] } = t.before.snapshot.context;
    const stops = thunderNear(t.before, at(t));
    if (t.command.role !== "competent" || !stops) return unless(did(t) === null && sameWeather(t), "it was taken back");
    const now = t.after.snapshot.context;
    const left = thunderBefore.at(-1) ?? null;
    return unless(did(t) === "read" && thunderAt !== null && now.thunderAt === left && !warnedLess(t), "it was not, or more was");
  },
  "an answer of another kind is refused": (t) => unless(t.as !== "answer of another kind" || did(t) === null, "it was recorded"),
  "what is torn is out of use whoever says it, and back when one who may says so": (t) => {
    const { command } = t;
    if (command.type !== "outOfUse" && command.type !== "backInUse") return null;
    const key = "id" in command.thing ? `piece.${command.thing.id}` : "";
    const [was, is] = [key in t.before.snapshot.context.outOfUse, key in t.after.snapshot.context.outOfUse];
    if (!from(t)) return unless(did(t) === null, "a closed job took it");
    if (command.type === "outOfUse") return unless(did(t) === "outOfUse" && is, "it was still used");
    const may = ["lead", "deputy", "competent"].includes(command.role) && was && refusedAs(t) !== "movedOn";
    return unless((did(t) === "backInUse") === may && is === (was && !may), "the wrong answer");
  },
  "a gate is answered and waived where it is asked only": (t) =>
    unless(!t.as.includes("of another call") || !from(t) || refusedAs(t) === "notAskedHere", "another reason, or none"),
  "a condition is answered at any call": (t) => unless(!t.as.includes("at any call") || !from(t) || did(t) !== null, "it was refused"),
  "next leads to the call that follows": (t) => {
    if (!wentOn(t)) return null;
    const wanted = nextCall(t.tent, t.before, t.memory);
    return unless((to(t)?.id ?? null) === wanted, `from ${from(t)?.id} to ${to(t)?.id}`);
  },
  "back leads to the call before, or to where a finished lift began, unanswered, and not before the beginning": (t) => {
    if (t.command.type !== "back" || at(t) < t.before.snapshot.context.lastAt) return null;
    const left = from(t);
    if (!left || isHeld(t.before) || !isDriver(t)) return null;
    const before = callBefore(t);
    if (!before) return unless(did(t) === null, "it went back before the beginning");
    const counted = t.memory.under !== null && (left.id === t.memory.under || before === t.memory.under);
    if (counted) return unless(refusedAs(t) === "peopleUnder", "people were left under");
    const lacks = lacking(t.tent, t.before, before, at(t), now(t).since);
    if (lacks !== null) return unless(refusedGate(t) === lacks, `it went back without ${lacks}`);
    const { answers, waived } = t.after.snapshot.context;
    const open = [before, left.id].every((id) => !answers[id] && !waived[id]);
    return unless(did(t) === "wentBack" && to(t)?.id === before && open, `it did not go back to ${before}`);
  },
  "standing down begins where what is on the site asks for, and never with people under": (t) => {
    if (t.command.type !== "standDown" || isHeld(t.before) || !isDriver(t)) return null;
    const left = from(t);
    if (!left || left.phase === "struck") return unless(did(t) === null, "it began twice");
    if (t.memory.under !== null) return unless(refusedAs(t) === "peopleUnder", "people were left under");
    const counted = `safe.${left.phase}.headcount`;
    if (!t.tent.place.has(left.id) && stands(t.tent, t.before, counted, at(t)) !== "good")
      return unless(refusedGate(t) === counted, "nobody was counted out");
    const begins = STRIKE[t.memory.site];
    const lacks = begins === null ? null : lacking(t.tent, t.before, begins, at(t), now(t).since);
    if (lacks !== null) return unless(refusedGate(t) === lacks, `it began without ${lacks}`);
    return unless(did(t) !== null && (to(t)?.id ?? null) === begins, `at ${to(t)?.id}, not at ${begins}`);
  },
  "an amendment takes a second, competent person, moves nobody, and waits for who is under": (t) => {
    if (t.as === "agreed by another" && t.memory.under !== null) return unless(refusedAs(t) === "peopleUnder", "it did not wait");
    if (t.as === "agreed by another") return unless(did(t) === "amended" && to(t)?.id === from(t)?.id, "not amended, or moved");
    if (t.as === "disagreed by another") return unless(did(t) === "discarded", "not discarded");
    return t.command.type === "agree" || t.command.type === "disagree" ? unless(did(t) === null, `${t.as} counted`) : null;
  },
} satisfies Record<string, (trial: Trial) => string | null>;

/** The call before, or the count in of the lift that was finished there. */
function callBefore(t: Trial): string | null {
  const left = from(t)!;
  if (left.id === t.memory.began) return null;
  const way = t.tent.place.has(left.id) ? t.tent.frozen.script.steps : t.tent.frozen.script.escapes[left.phase as "up"];
  const before = way.slice(0, way.indexOf(left)).findLast((s) => !leftOut(s.id, t.before));
  if (!before || (left.phase === "struck" && before.phase !== "struck")) return null;
  const block = t.tent.block.get(before.id);
  return block !== undefined && outOf(block) === before.id ? block : before.id;
}

/** Whether a warning or too much wind stopped work, and does not anymore. */
const warnedLess = ({ before, after }: Trial) =>
  warned(before) !== warned(after) || before.snapshot.context.wind !== after.snapshot.context.wind;
const sameWeather = ({ before, after }: Trial) =>
  before.snapshot.context.wind === after.snapshot.context.wind && before.snapshot.context.thunderAt === after.snapshot.context.thunderAt;

export const ONE_OUTCOME = "every command gets exactly one outcome";
export const NO_DEAD_END = "truthful answers lead on from everywhere";
export const ALL = [...(Object.keys(INVARIANTS) as (keyof typeof INVARIANTS)[]), ONE_OUTCOME, NO_DEAD_END] as const;
export type Invariant = (typeof ALL)[number];

const remembered = new WeakMap<Trial, Memory>();
/** What the exploration has to remember after a trial. */
export function remember(t: Trial): Memory {
  const known = remembered.get(t);
  if (known) return known;
  const memory = rememberOf(t);
  remembered.set(t, memory);
  return memory;
}

function rememberOf(t: Trial): Memory {
  const { tent } = t;
  const memory = now(t);
  const what = did(t);
  const call = to(t);
  if (what === "makingSafe") return { ...memory, under: null, resumeAt: memory.resumeAt ?? resumesAt(tent, from(t)!.id) };
  if (!call) return memory;
  if (what === "standingDown") return { ...memory, site: call.site, began: call.id, resumeAt: null };
  const began = wentOn(t) && call.id === "strike.people" ? call.id : memory.began;
  const resumeAt = what === "goingOn" || then(t) === "goingOn" ? null : memory.resumeAt;
  return { ...memory, began, resumeAt, under: resumeAt === null ? underAfter(tent, t.after, memory.under) : null };
}
