import type { Role } from "../../install/brief.ts";
import type { Value } from "../../install/gates.ts";
import type { Frozen, PhaseId, Step } from "../../install/step.ts";
import type { Seeded } from "../seeded.ts";
import { becauseAt } from "./job-words.ts";
import { choice, type Made, type Maker, type Shown, type Skills, worded } from "./question.ts";
import { type RefusalKind, refusalKind } from "./refusal-kind.ts";
import { type Act, NOON, refusalOf, standingAt } from "./standing-at.ts";

/** What a crew takes a refusal for, whatever it was. */
const OFTEN: readonly RefusalKind[] = [
  "open",
  "held",
  "role",
  "movedOn",
  "windTooOld",
  "tooMuchWind",
  "outOfLimit",
  "samePerson",
  "hardGate",
  "thunder",
  "outOfUse",
  "peopleUnder",
];

/** What would be as true of a refusal, said in other words. */
const AS_TRUE: Readonly<Partial<Record<RefusalKind, readonly RefusalKind[]>>> = {
  tooMuchWind: ["outOfLimit"],
  outOfLimit: ["open"],
  samePerson: ["open"],
  hardGate: ["open"],
};

/** `because` names what tells the reason; without it the words of the question do. */
type Played = {
  readonly ask: string;
  /** What the words tell of: on a job where something else is in the way first, it is not asked. */
  readonly tells: RefusalKind;
  readonly step: Step;
  readonly acts: readonly Act[];
  readonly params?: Made["params"];
  readonly because?: string;
};

/** Plays it, and asks for the reason. Slips: the other reasons; none that would be as true. `null` where it was not refused. */
const played =
  (play: (frozen: Frozen, random: Seeded) => Played | null): Maker =>
  (frozen, random) => {
    const scene = play(frozen, random);
    if (!scene) return null;
    const refusal = refusalOf(standingAt(frozen, scene.step), scene.acts);
    // Refused for what the scene does not tell of: nobody could know.
    if (!refusal || refusalKind(refusal) !== scene.tells) return null;
    const shown = (why: RefusalKind): Shown => ({ is: "refusal", why });
    const made = choice(random, shown(scene.tells), random.shuffle(OFTEN).map(shown), (AS_TRUE[scene.tells] ?? []).map(shown));
    return (
      made && {
        ask: scene.ask,
        params: scene.params ?? {},
        about: worded(scene.step),
        ...made,
        because: scene.because === undefined ? null : becauseAt(frozen, scene.because),
      }
    );
  };

const NEXT = { type: "next" } as const;
const lead = (intent: Act["intent"], more: Partial<Act> = {}): Act => ({ intent, role: "lead", ...more });
const inPhase = ({ script }: Frozen, phase: PhaseId, is: (step: Step) => boolean): Step[] =>
  script.steps.filter((s) => s.phase === phase && is(s));
/** The call before the first that is work of a kind: from there "next" goes into it. */
const justBefore = ({ script }: Frozen, phase: PhaseId, is: (step: Step) => boolean): Step | null => {
  const i = script.steps.findIndex((s) => s.phase === phase && is(s));
  return script.steps[i - 1] ?? null;
};
const pickOf = (random: Seeded, steps: readonly Step[]): Step | null => (steps.length === 0 ? null : random.pick(steps));

const notDriving: Maker = played((frozen, random) => {
  const step = pickOf(
    random,
    inPhase(frozen, "utilitiesMarked", ({ gate }) => gate === null),
  );
  const role = random.pick<Role>(["crew", "competent", "trainee"]);
  return step && { ask: "refused.role", tells: "role", step, acts: [{ intent: NEXT, role }], params: { role } };
});
const onHold: Maker = played((frozen, random) => {
  const step = pickOf(
    random,
    inPhase(frozen, "anchorsSet", ({ gate }) => gate === null),
  );
  const role = random.pick<Role>(["trainee", "crew"]);
  return step && { ask: "refused.held", tells: "held", step, acts: [{ intent: { type: "hold" }, role }, lead(NEXT)], params: { role } };
});
const unanswered: Maker = played((frozen, random) => {
  const step = pickOf(
    random,
    inPhase(frozen, "utilitiesMarked", ({ gate, work }) => gate !== null && work === "outside"),
  );
  return step && { ask: "refused.open", tells: "open", step, acts: [lead(NEXT)] };
});
const overLimit: Maker = played((frozen, random) => {
  const step = pickOf(
    random,
    inPhase(frozen, "anchorsSet", ({ wordsKey }) => wordsKey === "drive.edge"),
  );
  const check = step?.gate?.check;
  if (!step || check?.kind !== "measure" || check.to === null) return null;
  const n = check.to + random.int(1, 4);
  const value: Value = { kind: "measure", unit: check.unit, n };
  return {
    ask: "refused.outOfLimit",
    tells: "outOfLimit",
    because: step.id,
    step,
    acts: [lead({ type: "answer", gate: step.id, value }), lead(NEXT)],
    params: { n },
  };
});
const skipped: Maker = played((frozen, random) => {
  const step = pickOf(
    random,
    inPhase(frozen, "anchorsSet", ({ gate }) => gate?.hard === true),
  );
  return step && { ask: "refused.waive", tells: "hardGate", step, acts: [lead({ type: "waive", gate: step.id, because: "late" })] };
});
const twoPhones: Maker = played((frozen, random) => {
  const step = pickOf(
    random,
    inPhase(frozen, "sectionsJoined", ({ wordsKey }) => wordsKey === "lay.piece"),
  );
  return step && { ask: "refused.movedOn", tells: "movedOn", step, acts: [{ intent: NEXT, role: "deputy", seen: 9 }] };
});
const torn: Maker = played((frozen) => {
  const step = justBefore(frozen, "sectionsJoined", ({ wordsKey }) => wordsKey === "lay.piece");
  const [piece] = frozen.plan.pieces;
  if (!step || !piece) return null;
  const acts = [
    ...(step.gate ? [lead({ type: "answer", gate: step.id, value: { kind: "yesNo", yes: true } })] : []),
    lead({ type: "outOfUse", thing: { is: "piece", id: piece.id }, because: "torn" }),
    lead(NEXT),
  ] as const;
  // The answer leads on by itself: the thing is taken out first.
  return {
    ask: "refused.outOfUse",
    tells: "outOfUse",
    step,
    acts: [acts.at(-2)!, ...acts.slice(0, -2), acts.at(-1)!],
    params: { piece: piece.id },
  };
});
const sameEyes: Maker = played((frozen) => {
  const step = inPhase(frozen, "sectionsJoined", ({ id }) => id === "laid.looked")[0];
  if (!step) return null;
  const yes = { kind: "yesNo", yes: true } as const;
  return {
    ask: "refused.second",
    tells: "samePerson",
    because: step.id,
    step,
    acts: [lead({ type: "answer", gate: step.id, value: yes }, { by: "first" }), lead(NEXT)],
  };
});
const oldWind: Maker = played((frozen, random) => {
  const step = justBefore(frozen, "perimeterRaised", ({ work }) => work === "lift");
  if (!step?.gate) return null;
  const minutes = random.int(Math.floor(frozen.limits.windLiftingS.is / 60) + 1, 25);
  return {
    ask: "refused.stale",
    tells: "windTooOld",
    because: "wind",
    step,
    acts: [...answered(frozen, step), lead(NEXT, { afterS: minutes * 60 })],
    params: { minutes },
  };
});
const gusty: Maker = played((frozen, random) => {
  const step = justBefore(frozen, "perimeterRaised", ({ work }) => work === "lift");
  if (!step) return null;
  const gustMph = frozen.limits.raiseGustMph.is + random.int(1, 3);
  if (gustMph >= frozen.limits.stopGustMph.is) return null;
  const wind = { kind: "wind", mph: 12, gustMph, fromDeg: null, takenAt: NOON + 60_000, place: null } as const;
  return {
    ask: "refused.gust",
    tells: "tooMuchWind",
    because: "wind",
    step,
    acts: [lead({ type: "reading", reading: wind }), ...answered(frozen, step), lead(NEXT)],
    params: { gustMph },
  };
});
const thunder: Maker = played((frozen, random) => {
  const step = inPhase(frozen, "tensioned", ({ gate }) => gate === null)[0];
  if (!step) return null;
  const minutes = random.int(5, Math.floor(frozen.limits.thunderS.is / 60) - 5);
  const heard = { kind: "thunder", takenAt: NOON + 60_000 } as const;
  const acts = [lead({ type: "reading", reading: heard }), lead(NEXT, { afterS: 60 + minutes * 60 })];
  return { ask: "refused.thunder", tells: "thunder", because: "thunder", step, acts, params: { minutes } };
});

const underneath: Maker = played((frozen, random) => {
  const step = pickOf(
    random,
    inPhase(frozen, "interiorRaised", ({ id }) => id.startsWith("lift.")),
  );
  return (
    step && { ask: "refused.under", tells: "peopleUnder", because: "under.out", step, acts: [lead({ type: "standDown", because: "late" })] }
  );
});

/** The gate of a call answered well, so that only what the test is about is in the way. */
function answered(frozen: Frozen, step: Step): Act[] {
  const check = step.gate?.check;
  if (check?.kind !== "count" || check.from === null) return [];
  return [lead({ type: "answer", gate: step.id, value: { kind: "count", n: frozen.plan.stations.length } })];
}

/** Why the guide refused: the chart itself is asked, on a made-up job. */
export const REFUSED: Skills = {
  "refused.role": ["utilitiesMarked", notDriving],
  "refused.open": ["utilitiesMarked", unanswered],
  "refused.held": ["anchorsSet", onHold],
  "refused.outOfLimit": ["anchorsSet", overLimit],
  "refused.waive": ["anchorsSet", skipped],
  "refused.movedOn": ["sectionsJoined", twoPhones],
  "refused.outOfUse": ["sectionsJoined", torn],
  "refused.second": ["sectionsJoined", sameEyes],
  "refused.stale": ["perimeterRaised", oldWind],
  "refused.gust": ["perimeterRaised", gusty],
  "refused.under": ["interiorRaised", underneath],
  "refused.thunder": ["tensioned", thunder],
};
