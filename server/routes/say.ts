import type { PersonId } from "../../machines/install/brief.ts";
import type { Ask, CommandSource, DeviceId } from "../../machines/install/commands.ts";
import type { Gate } from "../../machines/install/gates.ts";
import { stepOf } from "../../machines/install/job.ts";
import type { JobId, Said } from "../../machines/record/entry.ts";
import { understand } from "../../machines/speech/understand.ts";
import { answerTo } from "../../views/answer.ts";
import type { Reason } from "../../views/guide-state.ts";
import { replyTo } from "../../views/reply.ts";
import { calls } from "../../views/text/en/calls.ts";
import { edge } from "../../views/text/en/edge.ts";
import { type Desk, type Desks, personOf, requestDigest } from "../command.ts";
import { Problem } from "../edge/problem.ts";
import { type Body, readSaid, toGateUnit } from "../edge/said.ts";

/** What a command or a question is answered with. `entry` is null where nothing was recorded. */
export type Reply = {
  readonly entry: number | null;
  readonly outcome: Said["outcome"] | null;
  readonly reply: string;
  readonly reasons: readonly Reason[];
  readonly phase: string;
  readonly step: string;
};

/** One thing said to a job, from raw body to reply. The same for pages, typed words and office scripts. */
export function sayTo(desks: Desks, id: JobId, raw: unknown, from: { source: CommandSource; device: DeviceId }): Reply {
  const body = readSaid(raw);
  const request = requestDigest({ ...from, body });
  const desk = desks.load(id);
  const person = personOf(desk, body.as);
  const before = desks.repeated(id, body.key, request);
  if (before?.entry.kind === "command") return replyOf(desk, before.entry);
  const heard = "heard" in body.say ? body.say.heard : null;
  const meant = askOf(desks, id, desk, body);
  if ("answer" in meant) return { entry: null, outcome: null, reply: meant.answer, reasons: [], ...where(desk) };
  const said = desks.say(id, meant.ask, {
    key: body.key,
    seen: body.seen,
    as: person.id,
    source: heard === null ? from.source : "typed",
    device: from.device,
    heard,
    request,
  });
  if (meant.names && "did" in said.entry.outcome) desks.addNames(id, meant.names);
  return replyOf(desks.load(id), said.entry);
}

function replyOf(desk: Desk, entry: Said): Reply {
  const told = replyTo(entry, desk, (id) => desk.names[id] ?? id);
  return { entry: entry.no, outcome: entry.outcome, ...told, phase: entry.phase, step: entry.step };
}

const where = ({ job }: Desk) => ({ phase: stepOf(job)?.phase ?? "closed", step: stepOf(job)?.id ?? "closed" });

/** The command that a body asks for, or the answer to a question. */
function askOf(desks: Desks, id: JobId, desk: Desk, { say }: Body): { ask: Ask; names?: Record<PersonId, string> } | { answer: string } {
  const now = desks.now();
  const gate = stepOf(desk.job)?.gate ?? null;
  if ("heard" in say) {
    const meant = understand(say.heard, gate);
    if ("question" in meant) return { answer: answerTo(meant.question, meant.about, desk.job) };
    if ("wind" in meant) return { ask: { type: "reading", reading: { of: "wind", ...meant.wind, takenAt: now, place: "in the open" } } };
    if ("thunder" in meant) return { ask: { type: "reading", reading: { of: "thunder", takenAt: now } } };
    if ("wrongUnit" in meant) throw new Problem(422, edge.wrongUnit(meant.wrongUnit.gave, meant.wrongUnit.wants));
    if ("notUnderstood" in meant) throw new Problem(422, edge.notUnderstood(say.heard, askWords(desk, gate)));
    return { ask: meant.ask };
  }
  switch (say.type) {
    case "answer":
      return { ask: { ...say, value: toGateUnit(say.value, gate?.id === say.gate ? gate : null) } };
    case "reading":
      if (say.of === "thunder") return { ask: { type: "reading", reading: { of: "thunder", takenAt: now } } };
      return {
        ask: {
          type: "reading",
          reading: {
            of: "wind",
            mph: say.mph,
            gustMph: say.gustMph,
            takenAt: say.takenAt === null ? now : Date.parse(say.takenAt),
            place: say.place,
          },
        },
      };
    case "amend": {
      const { frozen, names } = desks.amendment(id, say.brief);
      return { ask: { type: "amend", because: say.because, to: frozen }, names };
    }
    default:
      return { ask: say };
  }
}

function askWords(desk: Desk, gate: Gate | null): string {
  const step = stepOf(desk.job);
  return (gate && step && calls[step.call]?.ask?.(step.of)) || edge.sayOrPress;
}
