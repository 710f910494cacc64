/** What is tried on every state: who says what, how long after, and in which way. */
import type { Intent, Reading } from "../../machines/install/commands.ts";
import { attentionState } from "../../machines/install/job.ts";
import { badValue, oddValue } from "../support/answers.ts";
import { HOUR, MINUTE, PEOPLE, SECOND } from "./fixtures.ts";
import { answerIs, type Node } from "./state.ts";
import { callOf, type Tent, thunderNear, windIs } from "./tent.ts";

type Role = keyof typeof PEOPLE;
export type Try = {
  readonly as: string;
  readonly ask: Intent;
  readonly role: Role;
  readonly after?: number;
  readonly behind?: true;
  readonly dropped?: true;
  /** Spoken, and heard on this device. */
  readonly heardOn?: string;
};
/** Tries one thing on a state and judges it. `null` where the command failed. */
export type Attempt = (node: Node, t: Try) => Node | null;

const wind = (gustMph: number, takenAt: number): Intent => ({
  type: "reading",
  reading: { kind: "wind", mph: Math.max(0, gustMph - 4), gustMph, takenAt, place: null },
});
const thunder = (takenAt: number): Intent => ({ type: "reading", reading: { kind: "thunder", takenAt } satisfies Reading });
const press = (as: string, ask: Intent, role: Role = "lead", more: Partial<Try> = {}): Try => ({ as, ask, role, ...more });

/** A truthful answer comes from the lead; where a second person is wanted, from the deputy. */
const answerer = (tent: Tent, gate: string): Role => (tent.rows.get(gate)?.notBy ? "deputy" : "lead");

const ALWAYS: readonly Try[] = [
  press("next", { type: "next" }),
  press("next from an old screen", { type: "next" }, "lead", { behind: true }),
  press("next after 11 minutes", { type: "next" }, "deputy", { after: 11 * MINUTE }),
  press("next after a day", { type: "next" }, "lead", { after: 25 * HOUR }),
  press("next on a clock that ran back", { type: "next" }, "lead", { after: -HOUR, dropped: true }),
  press("next by crew", { type: "next" }, "crew"),
  press("next by the manager", { type: "next" }, "manager"),
  press("back", { type: "back" }),
  press("back by crew", { type: "back" }, "crew"),
  press("hold by a trainee", { type: "hold" }, "trainee"),
  press("wait by a trainee", { type: "pause" }, "trainee"),
  press("carry on", { type: "carryOn" }),
  press("carry on by crew", { type: "carryOn" }, "crew"),
  press("make safe by a trainee", { type: "makeSafe", because: "a ring tore" }, "trainee"),
  press("stand down", { type: "standDown", because: "called off" }),
  press("stand down by crew", { type: "standDown", because: "called off" }, "crew"),
];

export function tries(tent: Tent, { job, from }: Node): Try[] {
  const { context } = job.snapshot;
  const now = context.lastAt + SECOND;
  const call = callOf(tent, job);
  const all = [...ALWAYS];
  const gate = call?.gate ?? null;
  const id = call?.id ?? tent.order[0]!;
  const other = tent.order.find((o) => tent.rows.has(o) && o !== id)!;
  all.push(
    press("answer of another call", { type: "answer", gate: other, value: { kind: "yesNo", yes: true } }),
    press("waiver of another call", { type: "waive", gate: other, because: "late" }),
    press("waive", { type: "waive", gate: id, because: "nobody kneels" }),
    press("waive by crew", { type: "waive", gate: id, because: "nobody kneels" }, "crew"),
  );
  if (gate) {
    const value = JSON.parse(tent.good.get(id)!);
    const answer = (as: string, v: typeof value, role: Role) => all.push(press(as, { type: "answer", gate: id, value: v }, role));
    answer("good answer", value, answerer(tent, id));
    answer("good answer by the other person", value, answerer(tent, id) === "lead" ? "deputy" : "lead");
    const first = context.answers[tent.rows.get(id)?.notBy ?? ""];
    if (first)
      all.push(
        press("good answer spoken on the first one's phone, not allowed", { type: "answer", gate: id, value }, answerer(tent, id), {
          heardOn: first.device,
        }),
        press("good answer spoken on another phone", { type: "answer", gate: id, value }, answerer(tent, id), {
          heardOn: "a phone of its own",
        }),
      );
    answer("bad answer", badValue(gate.check), answerer(tent, id));
    answer("answer: not known", { kind: "unknown" }, answerer(tent, id));
    answer("answer of another kind", oddValue(gate.check), answerer(tent, id));
    answer("answer by a trainee, not allowed", value, "trainee");
    answer("answer by the manager, not allowed", value, "manager");
  }
  const held = attentionState(job) !== "working";
  const odd = held || (gate !== null && call !== null && answerIs(tent, job, call.id) === "bad");
  if (!odd) {
    all.push(
      press("calm reading", wind(8, now)),
      press("caution reading", wind(21, now)),
      press("stop reading", wind(26, now)),
      press("thunder", thunder(now)),
      press("reading from the future", wind(8, now + MINUTE)),
      press("reading by crew, not allowed", wind(8, now), "crew"),
      press("11 minutes pass", { type: "note", text: "tea" }, "trainee", { after: 11 * MINUTE }),
      press("31 minutes pass", { type: "note", text: "tea" }, "trainee", { after: 31 * MINUTE }),
      press("a day passes", { type: "note", text: "night" }, "crew", { after: 25 * HOUR }),
    );
    if (context.wind) all.push(press("older reading", wind(8, context.wind.takenAt - MINUTE)));
  }
  const firstOfPhase = call !== null && tent.frozen.script.steps.find((s) => s.phase === call.phase) === call;
  if (firstOfPhase && !held && from?.by !== "back")
    all.push(
      press("agree to nothing", { type: "agree", target: 0 }, "competent"),
      press("disagree with nothing", { type: "disagree", target: 0 }, "competent"),
      press("amend", { type: "amend", because: "sheet came", to: tent.frozen }),
      press("amend by crew", { type: "amend", because: "sheet came", to: tent.frozen }, "crew"),
    );
  return all;
}

/** Both halves of an amendment, judged and not followed. */
export function settle(proposed: Node, before: Node, attempt: Attempt): void {
  const target = before.entry;
  attempt(proposed, press("agreed by the same person", { type: "agree", target }, "lead"));
  attempt(proposed, press("agreed by crew", { type: "agree", target }, "crew"));
  attempt(proposed, press("agreed to another entry", { type: "agree", target: target + 7 }, "deputy"));
  attempt(proposed, press("disagreed with another entry", { type: "disagree", target: target + 7 }, "deputy"));
  attempt(proposed, press("disagreed by crew", { type: "disagree", target }, "crew"));
  attempt(proposed, press("disagreed by another", { type: "disagree", target }, "competent"));
  attempt(proposed, press("agreed by another", { type: "agree", target }, "deputy"));
}

/** Carry on, read the wind, answer what is so, next. Says where that does not lead on. */
export function deadEnd(tent: Tent, node: Node, attempt: Attempt): string | null {
  const from = callOf(tent, node.job);
  if (!from) return null;
  let at: Node | null = node;
  const then = (t: Try) => {
    at = at && attempt(at, t);
  };
  if (attentionState(node.job) !== "working") then(press("carry on", { type: "carryOn" }));
  const now = node.job.snapshot.context.lastAt + SECOND;
  if (thunderNear(node.job, now)) then(press("it stays quiet", { type: "note", text: "quiet" }, "crew", { after: 31 * MINUTE }));
  if (at && windIs(at.job, at.job.snapshot.context.lastAt + SECOND) !== "calm")
    then(press("calm reading", wind(8, at.job.snapshot.context.lastAt + SECOND), "competent"));
  if (tent.rows.has(from.id) && !tent.rows.get(from.id)!.wind && at && answerIs(tent, at.job, from.id) !== "good") {
    const { notBy } = tent.rows.get(from.id)!;
    const first = notBy ? at.job.snapshot.context.answers[notBy]?.by : undefined;
    const role = first === PEOPLE.deputy ? "lead" : answerer(tent, from.id);
    then(press("good answer", { type: "answer", gate: from.id, value: JSON.parse(tent.good.get(from.id)!) }, role));
  }
  then(press("next", { type: "next" }));
  if (!at) return `a command failed at ${from.id}`;
  return callOf(tent, (at as Node).job) === from ? `stuck at ${from.id}` : null;
}
