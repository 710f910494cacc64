import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { contextOf, replyTo } from "../../machines/conversation/reply-to.ts";
import type { Brief, Role } from "../../machines/install/brief.ts";
import { tileInput } from "../../machines/install/checks/any-check.ts";
import { freeze } from "../../machines/install/freeze.ts";
import type { Gate, Value } from "../../machines/install/gates.ts";
import { currentStep, jobAt, missingNow, questionAt } from "../../machines/install/job.ts";
import type { Frozen } from "../../machines/install/step.ts";
import type { Entries } from "../../machines/record/entries.ts";
import type { CommandEntry, Entry, Sealed } from "../../machines/record/entry.ts";
import { drawnOf } from "../../views/drawing/call/drawn.ts";
import { askedNow, pickIt, pickNone, pickOf, takesNone } from "../../views/pages/guide/asked.ts";
import { buildGuideState } from "../../views/pages/guide/build-state.ts";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { GuidePage } from "../../views/pages/guide/view.tsx";
import { en } from "../../views/text/en/en.ts";
import { replyText } from "../../views/text/replies.ts";
import { briefOf, PEOPLE, SECOND, SMALL } from "../proof/fixtures.ts";
import { LEADS_SCREEN } from "./access.ts";
import { badValue, goodValue } from "./answers.ts";
import { KeptJob } from "./kept-job.ts";

/** As long as names of people on a site are. */
const NAMES: Readonly<Record<string, string>> = {
  [PEOPLE.lead]: "Ines Albrechtsen",
  [PEOPLE.deputy]: "Tobias Underhill",
  [PEOPLE.competent]: "Maren Lindqvist",
  [PEOPLE.crew]: "Jory Castellano",
};
/** A call of a job in one state, as a phone shows it. */
export type Look = { readonly call: string; readonly state: string; readonly html: string };

/** A job as the server would hand it on to a page. */
export function liveOf(kept: KeptJob): LiveJob {
  const now = { at: kept.at + SECOND, wall: kept.at + SECOND, doubtMs: 0 };
  const lineOf = (entry: Entry | undefined) => entry && ({ entry } as Sealed);
  const entries: Entries = {
    length: kept.entries.length,
    at: (n) => lineOf(kept.entries.at(n)),
    // What was said before the last is scrolled up to.
    slice: () => [lineOf(kept.entries.at(-1))!],
    [Symbol.iterator]: () => kept.entries.map((entry) => lineOf(entry)!)[Symbol.iterator](),
  };
  return { job: jobAt(kept.job, now), now, jump: null, entries, names: NAMES, readOnly: null, warning: null, unrecorded: null };
}

/** It takes what room there is, whatever is on it: none has any other, and nothing is left on it. */
const quickDrawing = drawnOf(liveOf(new KeptJob(briefOf(SMALL))), 0);
let keys = 0;
/** Whose phone it is, and what was asked for there to be answered. */
type On = { readonly me?: string | null; readonly pick?: (guide: GuideState) => string };
/** The guide of a job as a phone shows it, with the reply to the last entry unless another page was looked at since. */
async function look(kept: KeptJob, state: string, entry?: CommandEntry | null, { me = PEOPLE.lead, pick }: On = {}): Promise<Look> {
  const live = liveOf(kept);
  const { zone } = live.job.frozen.brief;
  const notice = entry ? replyText(replyTo(entry, contextOf(live, entry)), { name: (id) => NAMES[id] ?? id, zone }, en) : null;
  const device = entry && "did" in entry.outcome && entry.outcome.did === "readBack" ? entry.command.device : null;
  const guide = buildGuideState(live, device, en);
  const screen = {
    guide,
    drawn: quickDrawing,
    me,
    access: LEADS_SCREEN,
    newKey: () => `key-${++keys}`,
    words: en,
    pick: pick?.(guide) ?? null,
  };
  const page = await (<GuidePage {...screen} notice={notice} />).toString();
  return { call: kept.call, state, html: /<body>(.*)<\/body>/s.exec(page)![1]!.replaceAll(NO_ROOM, "$1$2$3$4") };
}

/** What takes no room on a phone: what is on the drawing, and what only a desk shows. */
const NO_ROOM =
  /(<svg id="picture".*?<\/title>).*?(<\/svg>)|<header class="page-header">.*?<\/header>|(<section id="desk"[^>]*>).*?(<\/section>)/gs;

/** A list is said a few lines at a time. */
const inOneBreath = (value: Value): Value =>
  value.kind === "counts" ? { ...value, n: Object.fromEntries(Object.entries(value.n).slice(0, 4)) } : value;

/** Everything but the last, of what is answered bit by bit and is out of its limit as it is. */
function allButOne(value: Value): Value | null {
  const most = <T,>(of: Readonly<Record<string, T>>) => Object.fromEntries(Object.entries(of).slice(0, -1));
  switch (value.kind) {
    case "lengths":
      return { ...value, ft: most(value.ft) };
    case "figures":
      return Object.keys(value.n).length > 1 ? { ...value, n: most(value.n) } : null;
    case "each":
      return Object.keys(value.yes).length > 1 ? { ...value, yes: most(value.yes) } : null;
    default:
      return null;
  }
}

/** An item of a list, or the gate itself, that is put in again after it was refused. */
function pickedAgain(kept: KeptJob, say: (fork: KeptJob) => CommandEntry): Promise<Look> {
  const fork = kept.fork();
  say(fork);
  const again = ({ gate }: GuideState) => {
    const { item } = askedNow(gate!, null, en);
    return item ? pickOf(gate!, item.name) : pickIt(gate!);
  };
  return look(fork, "picked again", null, { pick: again });
}

/** The same job with another place for first aid. */
const changed = memoized(
  ({ brief }: Frozen): Frozen => freeze({ ...brief, site: { ...brief.site, firstAid: "green box behind the seat of the second truck" } }),
);
function memoized<K extends object, V>(make: (of: K) => V): (of: K) => V {
  const made = new WeakMap<K, V>();
  return (of) => {
    if (!made.has(of)) made.set(of, make(of));
    return made.get(of)!;
  };
}

/** Thunder, and a wind that stops the work besides. */
function stopAll(fork: KeptJob): CommandEntry {
  fork.say({ type: "reading", reading: { kind: "thunder", takenAt: fork.at, seconds: 63 } });
  return fork.say({ type: "reading", reading: { kind: "wind", mph: 31, gustMph: 44, takenAt: fork.at, fromDeg: 225, place: null } });
}

/** Heat in which the published schedule gives no work. */
const tooHot = (fork: KeptJob): CommandEntry =>
  fork.say({ type: "reading", reading: { kind: "heat", airF: 112, humidity: 45, sun: "full", takenAt: fork.at } });

/**
 * A call in every state that it can be in on a screen: open, refused, not good, read back, held, stopped, somebody hurt. The rest,
 * where only a name in the words differs, once for calls in the same words.
 */
async function* looksAt(kept: KeptJob, ways: Set<string>): AsyncGenerator<Look> {
  yield look(kept, "open");
  const question = questionAt(kept.job, kept.at + SECOND);
  const asked = question?.gate;
  const missing = missingNow(kept.job, kept.at + SECOND);
  const isFirst = (way: string) => {
    const known = ways.has(way);
    ways.add(way);
    return !known;
  };
  const asks = `${asked?.check.kind} ${missing?.why === "gate" && missing.asked}`;
  // Where only the answers differ, once for each way to answer.
  const isNewWay = isFirst(asks);
  const isNewInWords = isFirst(`${currentStep(kept.job)!.wordsKey} ${question?.wordsKey} ${asks}`);
  const after = (state: string, say: (fork: KeptJob) => CommandEntry) => {
    const fork = kept.fork();
    const entry = say(fork);
    return look(fork, state, entry);
  };
  if (missing) yield after("refused", (fork) => fork.say({ type: "next" }));
  if (asked && missing?.why === "gate") {
    const { id, check } = asked;
    const role: Role = asked.secondPersonTo ? "deputy" : "lead";
    if (check.kind === "wind") yield after("too much wind", (fork) => fork.wind(22));
    else if (check.kind !== "quiet") {
      yield after("not good", (fork) => fork.answer(id, badValue(check), role));
      yield after("read back", (fork) =>
        fork.say({ type: "readBack", intent: { type: "answer", gate: id, value: inOneBreath(goodValue(check)) } }),
      );
      if (isNewInWords) yield* answeredAgain(kept, asked, role);
    }
  }
  if (isNewWay) yield* amended(kept);
  if (isNewInWords && asked && takesNone(tileInput(asked.check, undefined)))
    yield look(kept, "none", null, { pick: ({ gate }) => (gate ? pickNone(gate) : "") });
  yield after("held", (fork) => fork.say({ type: "hold" }, "crew"));
  yield after("stop", stopAll);
  if (isNewInWords) yield after("hot", tooHot);
  const stopped = kept.fork();
  stopAll(stopped);
  if (isNewInWords) yield look(stopped, "stop, answering", null, { pick: ({ gate }) => (gate ? pickIt(gate) : "") });
  if (isNewWay) yield look(stopped, "stop, on nobody's phone", null, { me: null });
  yield after("hurt", (fork) => fork.say({ type: "hurt", words: "he came off the ladder, it's his leg" }, "crew"));
}

/** Said not to be known, and put in again after it was refused, whole or all but the last of it. */
async function* answeredAgain(kept: KeptJob, { id, check }: Gate, role: Role): AsyncGenerator<Look> {
  const fork = kept.fork();
  const unknown = fork.answer(id, { kind: "unknown" }, role);
  yield look(fork, "unknown", unknown);
  for (const value of [badValue(check), allButOne(badValue(check))])
    if (value) yield pickedAgain(kept, (again) => again.answer(id, value, role));
}

/** A changed plan, proposed and asked to be agreed to. */
async function* amended(kept: KeptJob): AsyncGenerator<Look> {
  const proposing = kept.fork();
  const proposed = proposing.say({ type: "amend", because: "The box was moved.", to: changed(kept.job.frozen) });
  if (!("did" in proposed.outcome)) return;
  yield look(proposing, "proposed", proposed);
  yield look(proposing, "proposed, and waiting");
  yield look(proposing, "asked to agree", null, { me: PEOPLE.deputy });
}

/** Every call of a job, each way out besides, in every state. */
export async function looksOf(brief: Brief): Promise<Look[]> {
  const looks: Look[] = [];
  for await (const look of everyCall(brief)) looks.push(look);
  return looks;
}

async function* everyCall(brief: Brief): AsyncGenerator<Look> {
  const ways = new Set<string>();
  const kept = new KeptJob(brief);
  const waysOut = new Set<string>();
  while (currentStep(kept.job) !== null) {
    yield* looksAt(kept, ways);
    const out = kept.fork();
    out.say({ type: "makeSafe", because: null });
    const isNew = out.job.snapshot.context.resumeAt !== null && !waysOut.has(out.call);
    waysOut.add(out.call);
    for (; isNew && out.job.snapshot.context.resumeAt !== null; out.goOn()) yield* looksAt(out, ways);
    kept.goOn();
  }
  yield look(kept, "closed");
}
