import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { type ReplyContext, replyTo } from "../../../machines/conversation/reply-to.ts";
import type { Answer } from "../../../machines/install/gates.ts";
import type { GateId, StepId } from "../../../machines/install/ids.ts";
import { stepsIn } from "../../../machines/install/job.ts";
import { indexOf } from "../../../machines/install/script-index.ts";
import type { Frozen } from "../../../machines/install/step.ts";
import { answerValue, effectiveCommandBy } from "../../../machines/record/effective-command.ts";
import { type EntryLookup, lookupIn } from "../../../machines/record/entries.ts";
import type { CommandEntry, Entry } from "../../../machines/record/entry.ts";
import { type Flag, MAKING_SAFE, phaseAfter } from "../../../machines/record/findings.ts";
import { frozenAfter, frozenIn } from "../../../machines/record/in-force.ts";
import { isPhoto } from "../../../machines/record/photos.ts";
import { replyText, sayText } from "../../text/replies.ts";
import type { Words } from "../../text/words.ts";
import type { CallRun, Moment, PhaseRun, Phone, RecordLine } from "./state.ts";

/** The name of where a fold says that the guide stood. */
export const placeName = (phase: string, { phaseName }: Words): string => phaseName(phase === MAKING_SAFE ? "up" : phase);

/**
 * Every entry under the call that it was said to, the calls in the order they were stood at. One pass: each entry is put
 * into words with the script that was in force and the answers that had been given then. `each` are the marks, entry by entry.
 */
export function runsOf({ job, entries, names }: LiveJob, each: readonly (readonly Flag[])[], local: (at: number) => Moment, words: Words) {
  const earlier = lookupIn(entries);
  const name = (id: string) => names[id] ?? id;
  const { context: state } = job.snapshot;
  const answers: Record<GateId, Answer> = {};
  const phones = new Map<string, Phone>();
  const phases: (Omit<PhaseRun, "calls"> & { calls: CallRun[] })[] = [];
  let frozenAt = 1;
  let lines: RecordLine[] = [];

  const arrive = (entry: Entry) => {
    const frozen = frozenIn(frozenAt, earlier);
    const phase = phaseAfter(entry, frozen);
    if (phases.at(-1)?.phase !== phase) phases.push({ phase, name: placeName(phase, words), calls: [] });
    lines = [];
    phases.at(-1)!.calls.push({ step: entry.step, say: sayOf(frozen, entry.step, words), lines });
  };
  const phoneOf = ({ command }: CommandEntry): Phone => {
    const known = phones.get(command.device);
    if (known) return known;
    const count = [...phones.keys()].filter((d) => d !== OFFICE).length;
    const phone = { label: command.device === OFFICE ? words.record.office : words.record.phone(count + 1), firstBy: name(command.by) };
    phones.set(command.device, phone);
    return phone;
  };
  let wind: ReplyContext["wind"] = null;
  const lineOf = (entry: CommandEntry, hash: string): RecordLine => {
    const { command, no } = entry;
    const counted = effectiveCommandBy(entry, earlier);
    const frozen = frozenIn(frozenAt, earlier);
    const reply = replyText(
      replyTo(entry, { script: frozen.script, answers, state, earlier, wind }),
      { name, zone: job.frozen.brief.zone },
      words,
    );
    if (counted.type === "reading" && counted.reading.kind === "wind" && "did" in entry.outcome) wind = counted.reading;
    if (counted.type === "answer" && "did" in entry.outcome && entry.outcome.did === "answered") {
      const { gate, by, device, at } = counted;
      const value = answerValue(entry, earlier) ?? counted.value;
      answers[gate] = { gate, value, by, device, at, entry: no };
    }
    return {
      no,
      time: local(entry.wall),
      who: name(command.by),
      roleName: words.roleName(command.role),
      phone: phoneOf(entry),
      source: command.source,
      heard: command.heard,
      taken: takenAs(entry, earlier, words),
      reply,
      photo: photoOf(entry, frozen, words),
      holdsPlan: command.type === "amend" || command.type === "found",
      flags: each[no - 1] ?? [],
      hash,
    };
  };

  for (const { entry, hash } of entries) {
    if (entry.kind === "opening") {
      arrive(entry);
      lines.push(openedLine(entry.no, local(entry.wall), hash, words));
      continue;
    }
    const before = earlier(entry.no - 1)!.step;
    lines.push(lineOf(entry, hash));
    const script = frozenAfter(frozenAt, entry);
    if (script === frozenAt && before === entry.step) continue;
    frozenAt = script;
    arrive(entry);
  }
  return { phases: phases as readonly PhaseRun[], phones: [...phones.values()] };
}

/** What a request without a screen of its own comes from. */
const OFFICE = "office";

const openedLine = (no: number, time: Moment, hash: string, { record }: Words): RecordLine => ({
  no,
  time,
  who: null,
  roleName: null,
  phone: null,
  source: null,
  heard: null,
  taken: record.openedLine,
  reply: "",
  photo: null,
  holdsPlan: true,
  flags: [],
  hash,
});

/** What an entry was taken as, so that it can be read on its own. */
function takenAs({ command }: CommandEntry, earlier: EntryLookup, { intentText, record, saidText }: Words): string {
  switch (command.type) {
    case "correct": {
      const heard = earlier(command.target);
      const asked = heard?.kind === "command" && heard.command.type === "readBack" ? intentText(heard.command.intent) : saidText(command);
      return record.confirms(command.target, asked);
    }
    case "wrong":
      return record.drops(command.target);
    case "readBack":
      return record.readBack(intentText(command.intent));
    case "agree":
      return record.agrees(command.target);
    case "disagree":
      return record.disagrees(command.target);
    case "makeSafe":
      return command.because === null ? saidText(command) : record.because(saidText(command), command.because);
    default:
      return saidText(command);
  }
}

function photoOf(entry: CommandEntry, { script }: Frozen, words: Words): RecordLine["photo"] {
  if (!isPhoto(entry)) return null;
  const { gate, hash, mime, bytes, widthPx, heightPx } = entry.command;
  const question = gate === null ? undefined : indexOf(script).questions.get(gate);
  return { hash, mime, bytes, widthPx, heightPx, of: question ? sayText(question, words) : null };
}

function sayOf({ script }: Frozen, id: StepId, words: Words): string {
  if (id === "closed") return words.record.closedCall;
  const step = stepsIn(script).byId.get(id);
  return step ? sayText(step, words) : id;
}
