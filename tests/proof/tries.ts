/** What is tried on every state: who says what, how long after, and in which way. */
import type { Intent, Reading } from "../../machines/install/commands.ts";
import type { Gate } from "../../machines/install/gates.ts";
import { attentionState } from "../../machines/install/job.ts";
import { indexOf } from "../../machines/install/script-index.ts";
import { badValue, oddValue, PAPER } from "../support/answers.ts";
import { HOUR, MINUTE, PEOPLE, SECOND } from "./fixtures.ts";
import { missingByHand } from "./missing.ts";
import { papersTo, shownAt } from "./papers.ts";
import { conditionsHere, type Node, strangeness } from "./state.ts";
import { callOf, pieceOf, type Tent, TORN, thunderNear } from "./tent.ts";

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

const wind = (gustMph: number | null, takenAt: number): Intent => ({
  type: "reading",
  reading: { kind: "wind", mph: Math.max(0, (gustMph ?? 10) - 4), gustMph, takenAt, fromDeg: null, place: null },
});
const inALee = (takenAt: number): Intent => ({
  type: "reading",
  reading: { kind: "wind", mph: 4, gustMph: 8, takenAt, fromDeg: null, place: null, exposure: "lee" },
});
const told = (kind: "thunder" | "warning" | "rain", takenAt: number): Intent => ({
  type: "reading",
  reading: { kind, takenAt } satisfies Reading,
});
const noThunder = (takenAt: number): Intent => ({ type: "reading", reading: { kind: "noThunder", takenAt, because: "a truck" } });
const torn = (tent: Tent, type: "outOfUse" | "backInUse"): Intent => ({
  type,
  thing: { is: "piece", id: pieceOf(tent) },
  because: type === "outOfUse" ? "torn at a ring" : "mended",
});
const press = (as: string, ask: Intent, role: Role = "lead", more: Partial<Try> = {}): Try => ({ as, ask, role, ...more });

/** A truthful answer comes from the lead; where a second person is wanted, from the deputy. */
const answerer = (tent: Tent, gate: string): Role => (tent.rows.get(gate)?.notBy ? "deputy" : "lead");

const ALWAYS: readonly Try[] = [
  press("next", { type: "next" }),
  press("next after 11 minutes", { type: "next" }, "deputy", { after: 11 * MINUTE }),
  press("next after a day", { type: "next" }, "lead", { after: 25 * HOUR }),
  press("back", { type: "back" }),
  press("hold by a trainee", { type: "hold" }, "trainee"),
  press("wait by a trainee", { type: "pause" }, "trainee"),
  press("carry on", { type: "carryOn", became: null }),
  press("make safe by a trainee", { type: "makeSafe", because: "a ring tore" }, "trainee"),
  press("stand down", { type: "standDown", because: "called off" }),
];

/** Refused wherever the job stands, for who says it or for when: by guards that come first and read nothing that makes a state strange. */
const NEVER: readonly Try[] = [
  press("next from an old screen", { type: "next" }, "lead", { behind: true }),
  press("next on a clock that ran back", { type: "next" }, "lead", { after: -HOUR, dropped: true }),
  press("next by crew", { type: "next" }, "crew"),
  press("back by crew", { type: "back" }, "crew"),
  press("carry on by crew", { type: "carryOn", became: null }, "crew"),
  press("stand down by crew", { type: "standDown", because: "called off" }, "crew"),
];

/** What leads along a way out, from whichever call it was left. */
export function straightOn(tent: Tent, { job, memory }: Node): Try[] {
  const asked = missingByHand(tent, job, memory, job.snapshot.context.lastAt + SECOND);
  const gate = asked === null ? undefined : indexOf(tent.frozen.script).gates.get(asked);
  return [
    press("next", { type: "next" }),
    press("back", { type: "back" }),
    ...(gate && tent.good.has(gate.id) && gate.check.kind !== "wind" ? shortAnswersTo(tent, gate) : []),
  ];
}

export function tries(tent: Tent, node: Node): Try[] {
  const { job, memory, from } = node;
  const { context } = job.snapshot;
  const now = context.lastAt + SECOND;
  const call = callOf(tent, job);
  const inOrder = strangeness(tent, node) === 0;
  const all = inOrder ? [...ALWAYS, ...NEVER] : [...ALWAYS];
  const asked = missingByHand(tent, job, memory, now);
  const id = call?.id ?? tent.order[0]!;
  const other = tent.gates.find(({ gate }) => gate !== id && gate !== asked && !isCondition(tent, gate))!.gate;
  const waive: Intent = { type: "waive", gate: call?.gate?.id ?? asked ?? other, because: "nobody kneels" };
  all.push(
    press("waive", waive),
    press("warning: none, at any call", { type: "answer", gate: "warning", value: { kind: "yesNo", yes: true } }, "competent"),
  );
  if (inOrder)
    all.push(
      press("answer of another call", { type: "answer", gate: other, value: { kind: "yesNo", yes: true } }),
      press("waiver of another call", { type: "waive", gate: other, because: "late" }),
      press("waive by crew", waive, "crew"),
      ...disturbed(tent, node),
    );
  const { gates } = indexOf(tent.frozen.script);
  const own = call?.gate ?? null;
  if (own) all.push(...answersTo(tent, node, own), ...(inOrder ? notAnswersTo(tent, own) : []));
  const missing = asked === null || asked === own?.id ? undefined : gates.get(asked);
  if (missing && missing.check.kind !== "wind" && missing.check.kind !== "quiet") all.push(...shortAnswersTo(tent, missing));
  const held = attentionState(job) !== "working";
  if (!held && strangeness(tent, node) <= 1) all.push(press("calm reading", wind(8, now)));
  if (inOrder)
    all.push(
      press("calm reading from the future", wind(8, now + MINUTE)),
      press("calm reading by crew, not allowed", wind(8, now), "crew"),
      press("calm reading in a lee", inALee(now)),
    );
  if (inOrder && context.answers.handover) all.push(press("calm reading by the watcher", wind(8, now), "watcher"));
  if (Object.keys(context.outOfUse).length > 0)
    all.push(
      press("the piece is mended", torn(tent, "backInUse"), "competent"),
      press("the piece is mended, by crew, not allowed", torn(tent, "backInUse"), "crew"),
    );
  if (context.hurt)
    all.push(
      press("carry on, and what became of it", { type: "carryOn", became: "with the medics" }),
      press("somebody else is hurt", { type: "hurt", words: "his hand" }, "crew"),
    );
  if (context.wind && !held) all.push(press("older calm reading", wind(8, context.wind.takenAt - MINUTE)));
  const firstOfPhase = call !== null && tent.frozen.script.steps.find((s) => s.phase === call.phase) === call;
  if ((firstOfPhase || memory.under !== null) && !held && from?.by !== "back")
    all.push(
      press("agree to nothing", { type: "agree", target: 0 }, "competent"),
      press("disagree with nothing", { type: "disagree", target: 0 }, "competent"),
      press("amend", { type: "amend", because: "sheet came", to: tent.frozen }),
      press("amend by crew", { type: "amend", because: "sheet came", to: tent.frozen }, "crew"),
    );
  return all;
}

const isCondition = (tent: Tent, gate: string) => indexOf(tent.frozen.script).conditions.has(gate);
const goodOf = (tent: Tent, gate: string) => JSON.parse(tent.good.get(gate)!);

function answersTo(tent: Tent, { job }: Node, gate: Gate): Try[] {
  const { id } = gate;
  const by = answerer(tent, id);
  const answer = (as: string, value: unknown, role: Role, more: Partial<Try> = {}) =>
    press(as, { type: "answer", gate: id, value: value as never }, role, more);
  const good = goodOf(tent, id);
  const first = job.snapshot.context.answers[tent.rows.get(id)?.notBy ?? ""];
  const spoken = first
    ? [
        answer("good answer spoken on the first one's phone, not allowed", good, by, { heardOn: first.device }),
        answer("good answer spoken on another phone", good, by, { heardOn: "a phone of its own" }),
      ]
    : [];
  return [
    answer("good answer", good, by),
    answer("good answer by the other person", good, by === "lead" ? "deputy" : "lead"),
    ...spoken,
    ...papersTo(tent, id, { shown: shownAt(job, id), by }).map(({ as, role, ...more }) => answer(as, PAPER, role, more)),
    answer("bad answer", badValue(gate.check), by),
    answer("answer: not known", { kind: "unknown" }, by),
  ];
}

/** Refused at any time. */
const notAnswersTo = (tent: Tent, { id, check }: Gate): Try[] => [
  press("answer of another kind", { type: "answer", gate: id, value: oddValue(check) as never }, answerer(tent, id)),
  press("answer by a trainee, not allowed", { type: "answer", gate: id, value: goodOf(tent, id) }, "trainee"),
  press("answer by the manager, not allowed", { type: "answer", gate: id, value: goodOf(tent, id) }, "manager"),
];

/** What was opened again, or what the next work needs. */
const shortAnswersTo = (tent: Tent, { id, check }: Gate): Try[] => [
  press("good answer to what is asked", { type: "answer", gate: id, value: goodOf(tent, id) }, answerer(tent, id)),
  press(
    "good answer to what is asked, by the other person",
    { type: "answer", gate: id, value: goodOf(tent, id) },
    answerer(tent, id) === "lead" ? "deputy" : "lead",
  ),
  press("bad answer to what is asked", { type: "answer", gate: id, value: badValue(check) }, answerer(tent, id)),
  press("good answer to what is asked by a trainee, not allowed", { type: "answer", gate: id, value: goodOf(tent, id) }, "trainee"),
];

/** One thing goes wrong, or time passes. */
export function disturbed(tent: Tent, node: Node): Try[] {
  const now = node.job.snapshot.context.lastAt + SECOND;
  const { gates } = indexOf(tent.frozen.script);
  const bad = conditionsHere(tent, node).flatMap(({ gate, below }) => {
    const { check } = gates.get(gate)!;
    if (below !== undefined || check.kind !== "yesNo") return [];
    return [press(`${gate}: no, by a trainee: it can only stop`, { type: "answer", gate, value: badValue(check) }, "trainee")];
  });
  const passes = (as: string, after: number) => press(as, { type: "note", text: "tea" }, "crew", { after });
  return [
    ...bad,
    press("caution reading", wind(21, now)),
    press("reading without a gust", wind(null, now)),
    press("stop reading by crew, can only stop for all", wind(26, now), "crew"),
    press("stop reading from the future by a watcher, can only stop for all", wind(60, now + HOUR), "watcher"),
    press("thunder by a watcher, can only stop for all", told("thunder", now), "watcher"),
    press("thunder taken back by crew", noThunder(now), "crew"),
    press("thunder taken back by a competent person", noThunder(now), "competent"),
    press("warning by a trainee, can only stop for all", told("warning", now - HOUR), "trainee"),
    ...(node.job.snapshot.context.hurt
      ? []
      : [press("somebody is hurt, by a trainee, can only stop", { type: "hurt", words: "man down" }, "trainee")]),
    press("a piece is torn, by a trainee", torn(tent, "outOfUse"), "trainee"),
    press("a piece is back that was never out", torn(tent, "backInUse"), "competent"),
    press("rain by a trainee", told("rain", now), "trainee"),
    passes("11 minutes pass", 11 * MINUTE),
    passes("31 minutes pass", 31 * MINUTE),
    passes("61 minutes pass", 61 * MINUTE),
    passes("over two hours pass", 2 * HOUR + MINUTE),
    passes("a day passes", 25 * HOUR),
  ];
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

/** The truthful thing to say next: what is asked, answered well, or "next". */
export function truthful(tent: Tent, { job, memory }: Node): Try {
  const { context } = job.snapshot;
  const now = context.lastAt + SECOND;
  if (attentionState(job) !== "working") return press("carry on", { type: "carryOn", became: context.hurt ? "with the medics" : null });
  const asked = missingByHand(tent, job, memory, now);
  if (asked === null) return press("next", { type: "next" });
  if (asked === "thunder" || thunderNear(job, now))
    return press("it stays quiet", { type: "note", text: "quiet" }, "crew", { after: 31 * MINUTE });
  if (asked === TORN) return press("the piece is mended", torn(tent, "backInUse"), "competent");
  if (asked.startsWith("wind.")) return press("calm reading", wind(8, now), "lead");
  const first = (shownAt(job, asked) ?? context.answers[tent.rows.get(asked)?.notBy ?? ""])?.by;
  return press("good answer", { type: "answer", gate: asked, value: goodOf(tent, asked) }, first === PEOPLE.lead ? "deputy" : "lead");
}

/** More questions in a row than any call has behind it. */
const MAX_ASKED = 24;

/** Carries on, answers truthfully what is asked, and says next, until it leads on. Says where it does not. */
export function deadEnd(tent: Tent, node: Node, attempt: Attempt): string | null {
  const from = callOf(tent, node.job);
  if (!from) return null;
  let at: Node | null = node;
  for (let n = 0; at && n < MAX_ASKED; n++) {
    if (attentionState(at.job) === "working" && callOf(tent, at.job) !== from) return null;
    at = attempt(at, truthful(tent, at));
  }
  if (!at) return `a command failed at ${from.id}`;
  return callOf(tent, at.job) === from ? `stuck at ${from.id}` : null;
}
