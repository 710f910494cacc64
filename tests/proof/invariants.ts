import type { Command } from "../../machines/install/commands.ts";
import { decide } from "../../machines/install/decide.ts";
import { attentionState, type Job } from "../../machines/install/job.ts";
import type { Outcome } from "../../machines/install/refusals.ts";
import type { SiteState } from "../../machines/install/step.ts";
import { PEOPLE } from "./fixtures.ts";
import { COMMITTED, callOf, resumesAt, STRIKE, stands, type Tent, workStops } from "./tent.ts";

/** What the exploration remembers by hand beside the chart. */
export type Memory = { readonly site: SiteState; readonly began: string; readonly resumeAt: string | null };

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
const refusedAs = ({ outcome }: Trial): string | null => ("refused" in outcome ? (outcome.refused[0]?.why ?? "nothing") : null);
const isHeld = (job: Job) => attentionState(job) !== "working";
const isDriver = ({ command }: Trial) => command.by === PEOPLE.lead || command.by === PEOPLE.deputy;
/** Whether work went on: to the next call, out of a way out, or to the end. */
const wentOn = (t: Trial) => t.command.type === "next" && did(t) !== null;
const gateOf = (t: Trial) => {
  const call = callOf(t.tent, t.before);
  const row = call && t.tent.rows.get(call.id);
  return row ? { row, is: stands(t.tent, t.before, row.gate, t.command.at) } : null;
};
const waivedAt = (t: Trial, gate: string) => t.before.snapshot.context.waived[gate] !== undefined;
const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);
const unless = (fine: boolean, trouble: string) => (fine ? null : trouble);

/** Each says what is wrong with one trial, or nothing. */
export const INVARIANTS = {
  "nobody goes on past a hard gate that is not good": (t) => {
    const gate = wentOn(t) ? gateOf(t) : null;
    return gate?.row.hard && gate.is !== "good" ? `${gate.row.gate} was ${gate.is}` : null;
  },
  "nobody goes on past a soft gate that is neither good nor waived": (t) => {
    const gate = wentOn(t) ? gateOf(t) : null;
    return gate && !gate.row.hard && gate.is !== "good" && !waivedAt(t, gate.row.gate) ? `${gate.row.gate} was ${gate.is}` : null;
  },
  "no milestone is reached with one of its hard gates open": (t) => {
    const to = wentOn(t) && callOf(t.tent, t.after);
    const from = callOf(t.tent, t.before);
    if (!to || !from || to.phase === from.phase || !t.tent.place.has(to.id) || !t.tent.place.has(from.id)) return null;
    const phases = [...new Set(t.tent.frozen.script.steps.map((s) => s.phase))];
    const open = t.tent.table
      .slice(0, phases.indexOf(to.phase as (typeof phases)[number]))
      .flat()
      // Those that age were judged when they were passed.
      .find((r) => !r.goodForMin && stands(t.tent, t.after, r.gate, t.command.at) !== "good");
    return open ? `${to.phase} was reached with ${open.gate} open` : null;
  },
  "a hard gate is never waived": (t) => {
    const gate = did(t) === "waived" ? gateOf(t) : null;
    return gate?.row.hard ? `${gate.row.gate} was waived` : null;
  },
  "a soft gate is waived by the lead": (t) => {
    const gate = t.as === "waive" && gateOf(t);
    return gate && !gate.row.hard && did(t) !== "waived" ? `${gate.row.gate} could not be waived` : null;
  },
  "a check by two people never opens for one": (t) => {
    const gate = wentOn(t) ? gateOf(t) : null;
    return gate && gate.is === "samePerson" ? `${gate.row.gate} was answered by one person` : null;
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
    const tried = `${callOf(t.tent, t.before)?.id} ${attentionState(t.before)} ${t.as} ${JSON.stringify(t.outcome)}`;
    if (t.readBack.has(tried)) return null;
    t.readBack.add(tried);
    const [waits, told] = decide(t.before, { ...command, type: "readBack", intent: command });
    const [, later] = decide(waits, { ...command, type: "correct", target: command.entry, entry: command.entry + 1 });
    if ("refused" in t.outcome)
      return unless(same(told, t.outcome) && waits.snapshot.context.revision === t.before.snapshot.context.revision, "not refused at once");
    const [now, then] = [waits.snapshot.context, t.before.snapshot.context];
    const unchanged = (Object.keys(then) as (keyof typeof then)[]).every((part) => part === "lastAt" || now[part] === then[part]);
    return unless(same(told, { did: "readBack" }) && unchanged && same(later, t.outcome), "it counted early, or not at all");
  },
  "anybody can begin making safe until the job is closed": (t) => {
    if (t.command.type !== "makeSafe") return null;
    const call = callOf(t.tent, t.before);
    if (!call) return unless(did(t) === null, "a closed job was made safe");
    const way = !t.tent.place.has(call.id)
      ? call.phase
      : call.phase === "standing"
        ? "standing"
        : t.memory.site === "raised"
          ? "up"
          : "ground";
    const first = { ground: "tools", up: "pole", standing: "people" }[way as "up"];
    return unless(did(t) === "makingSafe" && callOf(t.tent, t.after)?.id === `safe.${way}.${first}`, `not on the way "${way}"`);
  },
  "under a hold nothing moves": (t) =>
    unless(!isHeld(t.before) || !["next", "back", "standDown"].includes(t.command.type) || did(t) === null, "moved"),
  "work is carried on by the lead, and only after a hold": (t) =>
    t.command.type !== "carryOn" ? null : unless((did(t) === "carriedOn") === (isHeld(t.before) && isDriver(t)), "the wrong answer"),
  "under stop only a call that is safer finished moves on": (t) => {
    const call = callOf(t.tent, t.before);
    return unless(!(wentOn(t) && call && workStops(t.before, t.command.at) && !COMMITTED.test(call.id)), "work went on");
  },
  "only the lead and the deputy move the guide": (t) => {
    const theirs = ["next", "back", "carryOn", "waive", "standDown", "amend"].includes(t.command.type);
    return unless(!theirs || isDriver(t) || did(t) === null, `${t.command.role} did it`);
  },
  "nobody answers or takes a reading who is not named for it": (t) =>
    unless(!t.as.includes("not allowed") || did(t) === null, `${t.command.role} did it`),
  "a screen behind the times moves nothing": (t) => unless(t.as !== "next from an old screen" || refusedAs(t) === "movedOn", "it counted"),
  "a reading from the future is refused": (t) =>
    unless(t.as !== "reading from the future" || (refusedAs(t) === "future" && sameWeather(t)), "it counted"),
  "an older reading never takes the place of a newer one": (t) =>
    unless(t.as !== "older reading" || (refusedAs(t) === "olderReading" && sameWeather(t)), "it counted"),
  "an answer of another kind is refused": (t) => unless(t.as !== "answer of another kind" || did(t) === null, "it was recorded"),
  "a gate is answered and waived at its own call only": (t) =>
    unless(!t.as.includes("of another call") || !callOf(t.tent, t.before) || refusedAs(t) === "notAskedHere", "another reason, or none"),
  "next leads to the call that follows": (t) => {
    if (!wentOn(t) || did(t) === "goingOn") return null;
    const from = callOf(t.tent, t.before)!;
    const way = t.tent.place.has(from.id) ? t.tent.frozen.script.steps : t.tent.frozen.script.escapes[from.phase as "up"];
    return unless(callOf(t.tent, t.after) === (way[way.indexOf(from) + 1] ?? null), `from ${from.id} to ${callOf(t.tent, t.after)?.id}`);
  },
  "back leads to the call before, unanswered, and not before the beginning": (t) => {
    if (t.command.type !== "back") return null;
    const from = callOf(t.tent, t.before);
    if (!from || isHeld(t.before) || !isDriver(t)) return null;
    const way = t.tent.place.has(from.id) ? t.tent.frozen.script.steps : t.tent.frozen.script.escapes[from.phase as "up"];
    const earlier = from.id === t.memory.began ? null : way[way.indexOf(from) - 1];
    const before = from.phase === "struck" && earlier?.phase !== "struck" ? null : earlier;
    if (!before) return unless(did(t) === null, "it went back before the beginning");
    const { answers, waived } = t.after.snapshot.context;
    const open = [before.id, from.id].every((id) => !answers[id] && !waived[id]);
    return unless(did(t) === "wentBack" && callOf(t.tent, t.after)?.id === before.id && open, `it did not go back to ${before.id}`);
  },
  "going on starts again where the lift that was left began": (t) =>
    did(t) !== "goingOn" ? null : unless(callOf(t.tent, t.after)?.id === t.memory.resumeAt, `at ${callOf(t.tent, t.after)?.id}`),
  "standing down begins where what is on the site asks for": (t) => {
    if (t.command.type !== "standDown" || isHeld(t.before) || !isDriver(t)) return null;
    const from = callOf(t.tent, t.before);
    if (!from || from.phase === "struck") return unless(did(t) === null, "it began twice");
    const to = STRIKE[t.memory.site];
    return unless(did(t) !== null && (callOf(t.tent, t.after)?.id ?? null) === to, `at ${callOf(t.tent, t.after)?.id}, not at ${to}`);
  },
  "an amendment takes a second, competent person": (t) => {
    if (t.as === "agreed by another") return unless(did(t) === "amended", "not amended");
    if (t.as === "disagreed by another") return unless(did(t) === "discarded", "not discarded");
    return t.command.type === "agree" || t.command.type === "disagree" ? unless(did(t) === null, `${t.as} counted`) : null;
  },
} satisfies Record<string, (trial: Trial) => string | null>;

const sameWeather = ({ before, after }: Trial) =>
  before.snapshot.context.wind === after.snapshot.context.wind && before.snapshot.context.thunderAt === after.snapshot.context.thunderAt;

export const ONE_OUTCOME = "every command gets exactly one outcome";
export const NO_DEAD_END = "truthful answers lead on from everywhere";
export const ALL = [...(Object.keys(INVARIANTS) as (keyof typeof INVARIANTS)[]), ONE_OUTCOME, NO_DEAD_END] as const;
export type Invariant = (typeof ALL)[number];

/** What the exploration has to remember after a trial. */
export function remember(t: Trial): Memory {
  const { tent, memory } = t;
  const to = callOf(tent, t.after);
  const what = did(t);
  if (what === "makingSafe") return { ...memory, resumeAt: memory.resumeAt ?? resumesAt(tent, callOf(tent, t.before)!.id) };
  if (!to) return memory;
  if (what === "standingDown") return { site: to.site, began: to.id, resumeAt: null };
  if (what === "goingOn") return { ...memory, resumeAt: null };
  return memory;
}
