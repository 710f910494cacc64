import { answerTo } from "../../machines/conversation/answer-to.ts";
import { type Interpretation, interpret } from "../../machines/conversation/interpret.ts";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { contextOf, replyTo } from "../../machines/conversation/reply-to.ts";
import type { CommandSource, Intent } from "../../machines/install/commands.ts";
import type { DeviceId, EntryNo, PersonId } from "../../machines/install/ids.ts";
import { currentStep, questionAt } from "../../machines/install/job.ts";
import type { CommandEntry, JobId } from "../../machines/record/entry.ts";
import { spokenOn } from "../../machines/speech/languages.ts";
import type { Reason } from "../../views/pages/guide/state.ts";
import { misunderstandingText, reasonText, replyText } from "../../views/text/replies.ts";
import type { Words } from "../../views/text/words.ts";
import type { Says } from "../access/visitor.ts";
import { handOverIntent } from "../input/hand-over.ts";
import { readIntent } from "../input/intent.ts";
import { Problem, type Sentence } from "../input/problem.ts";
import { readSay } from "../input/say.ts";
import type { LiveJobs, Unrecorded } from "../jobs.ts";
import { type Asked, requestDigest } from "../next-entry.ts";

/** How a command or a question went: what a screen buzzes and speaks by. */
export type Went = "done" | "refused" | "readBack" | "question" | "leftAlone" | "notUnderstood";

/** What a command or a question is answered with. `entry` is null where nothing was recorded; `heard` is what was taken from speech. */
export type Told = {
  readonly entry: EntryNo | null;
  readonly outcome: CommandEntry["outcome"] | null;
  readonly went: Went;
  readonly heard: string | null;
  readonly reply: string;
  readonly reasons: readonly Reason[];
  readonly phase: string;
  readonly step: string;
};

/** What somebody may say as a person of a job. */
export type Speaks = (live: LiveJob, person: PersonId) => Says;
type From = { readonly source: CommandSource; readonly device: DeviceId; readonly speaks: Speaks };
type NothingRecorded = Exclude<Interpretation, { is: "command" | "handOver" }>;

/**
 * One thing said to a job, from raw body to reply, with the job as it stands then. The same for pages, speech, typed words and
 * office scripts.
 */
export async function sayTo(jobs: LiveJobs, id: JobId, raw: unknown, from: From, words: Words): Promise<{ live: LiveJob; reply: Told }> {
  const body = readSay(raw);
  const { key, seen, as, said } = body;
  const { source: sentBy, device } = from;
  let may: Says = "nothing";
  const admit = (live: LiveJob, person: PersonId) => {
    may = saysOn(live, person, from);
  };
  const envelope = { key, seen, as, device, request: requestDigest({ source: sentBy, device, body }), admit };
  const screen = { device, wakeWord: jobs.wakeWord, language: spokenOn(words.lang) };
  const done = await jobs.say<NothingRecorded>(id, envelope, (live) => {
    const { at } = live.now;
    const pressed = said.by === "press" ? readIntent(said.press, live, words) : null;
    const meant = interpret(live.job, screen, pressed ?? (said as Exclude<typeof said, { by: "press" }>), at);
    if (meant.is !== "command" && meant.is !== "handOver") return { tell: meant };
    const { heard, spoken } = meant;
    const intent = "handOver" in meant ? handOverIntent(live, meant.handOver, words) : meant.intent;
    const source = spoken ?? (heard === null ? sentBy : "typed");
    if (may === "onlyStops" && !onlyStops(intent)) throw new Problem(403, (w) => w.join.onlyStops);
    return { intent, heard, source, ...(pressed?.names ? { names: pressed.names } : {}) };
  });
  const { live } = done;
  if ("tell" in done) return { live, reply: toldOnly(live, done.tell, { wakeWord: jobs.wakeWord, typed: said.by === "typing", words }) };
  return { live, reply: "entry" in done ? told(live, done.entry, words) : unrecorded(live, done, words) };
}

/** Something that is asked of a job and was read elsewhere; `request` is what it was read from, to tell a repeat by. */
type Known = Omit<Asked, "source" | "heard"> & {
  readonly as: string;
  readonly key: string;
  readonly seen: EntryNo;
  readonly request: unknown;
};

/** The same for what is no stop, and was read before it comes here. */
export async function askOf(jobs: LiveJobs, id: JobId, known: Known, from: From & { readonly words: Words }) {
  const { as, key, seen, request, ...asked } = known;
  const { source, device, words } = from;
  const admit = (live: LiveJob, person: PersonId) => {
    if (saysOn(live, person, from) === "onlyStops") throw new Problem(403, (w) => w.join.onlyStops);
  };
  const envelope = { as, key, seen, device, request: requestDigest({ source, device, body: request }), admit };
  const said = await jobs.say<never>(id, envelope, () => ({ ...asked, source, heard: null }));
  if (!("entry" in said)) throw new Error(`"${asked.intent.type}" was neither recorded nor refused; only a hold is taken all the same`);
  return { live: said.live, reply: told(said.live, said.entry, words) };
}

/** What the sender may say as somebody. Throws a Problem where that is nothing. */
function saysOn(live: LiveJob, person: PersonId, { speaks }: Pick<From, "speaks">): Says {
  const may = speaks(live, person);
  if (may === "nothing") throw new Problem(403, (w) => w.join.notAs(live.names[person] ?? person));
  return may;
}

/** What a pass that ran out still lets through: what stops the work or calls for help. */
const onlyStops = (intent: Intent): boolean =>
  ["hold", "pause", "hurt"].includes(intent.type) ||
  (intent.type === "reading" && ["thunder", "warning", "rain"].includes(intent.reading.kind));

/** A hold that could not be written holds, and says so. */
function unrecorded(live: LiveJob, { unrecorded: hold, heard }: Unrecorded, words: Words): Told {
  const { address, firstAid } = live.job.frozen.brief.site;
  const holds = hold.is === "hurt" ? words.hurt.reply(address, firstAid) : words.didText(hold.is);
  const reply = `${holds} ${words.guide.unrecorded(words.notRecordedText(hold.why))}`;
  return { entry: null, outcome: { did: hold.is }, went: "done", heard, reply, reasons: [], ...whereIn(live) };
}

type Telling = { readonly wakeWord: string; readonly typed: boolean; readonly words: Words };

/** What is said back where nothing was recorded. Typed words that mean nothing are a mistake in the request. */
function toldOnly(live: LiveJob, meant: NothingRecorded, { wakeWord, typed, words }: Telling): Told {
  const nothing = { entry: null, outcome: null, heard: meant.heard, reasons: [], ...whereIn(live) };
  switch (meant.is) {
    case "question":
      return {
        ...nothing,
        went: "question",
        reply: words.answerText(answerTo(meant.question, live.job, live.now.at), {
          name: (id) => live.names[id] ?? id,
          zone: live.job.frozen.brief.zone,
        }),
      };
    case "leftAlone":
      return { ...nothing, went: "leftAlone", reply: meant.because === "wakeWord" ? words.voice.sayFirst(wakeWord) : "" };
    case "notUnderstood": {
      const sentence: Sentence = (w) => misunderstandingText(meant.because, questionAt(live.job, live.now.at), w);
      if (typed) throw new Problem(422, (w) => w.errors.notTaken(sentence(w)));
      return { ...nothing, went: "notUnderstood", reply: sentence(words) };
    }
  }
}

/** What is said back to an entry. Told from the entry, so that a repeated key is answered alike. */
function told(live: LiveJob, entry: CommandEntry, words: Words): Told {
  const { outcome, command, no, phase, step } = entry;
  const name = (id: string) => live.names[id] ?? id;
  const { zone } = live.job.frozen.brief;
  const reply = replyTo(entry, contextOf(live, entry));
  const reasons = reply.is === "refused" ? reply.reasons : [];
  return {
    entry: no,
    outcome,
    went: reply.is === "refused" ? "refused" : reply.is === "readBack" ? "readBack" : "done",
    heard: command.heard,
    reply: replyText(reply, { name, zone }, words),
    reasons: reasons.map((reason) => ({
      ...("gate" in reason.refusal ? { gate: reason.refusal.gate } : {}),
      ...("status" in reason.refusal ? { status: reason.refusal.status } : {}),
      why: reason.refusal.why,
      text: reasonText(reason, { name, zone }, words),
    })),
    phase,
    step,
  };
}

const whereIn = ({ job }: LiveJob) => ({ phase: currentStep(job)?.phase ?? "closed", step: currentStep(job)?.id ?? "closed" });
