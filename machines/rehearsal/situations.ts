import type { Gate } from "../install/gates.ts";
import type { PersonId } from "../install/ids.ts";
import { indexOf } from "../install/script-index.ts";
import type { Frozen, Step, Work } from "../install/step.ts";
import type { LoadItem } from "../tent/load.ts";
import { amiss } from "./amiss.ts";
import type { Brings, Scene, SituationId } from "./scene.ts";
import type { Seeded } from "./seeded.ts";

/** A scene before it has a place and a name. */
export type Made = Pick<Scene, "params" | "brings">;
type Situation = {
  /** Whether it can begin at a call; `next` is the call after it. */
  readonly fits: (step: Step, next: Step | undefined) => boolean;
  /** What it brings there. `null` where this job has not what it takes. */
  readonly make: (frozen: Frozen, step: Step, random: Seeded) => Made | null;
};

const MINUTE = 60;
const worksIn =
  (...works: readonly Work[]) =>
  ({ work }: Step) =>
    work !== null && works.includes(work);
const OUTDOORS = worksIn("driving", "openCloth", "lift", "outside");
const HANDS_BUSY = worksIn("driving", "openCloth", "lift", "lower");

/** Something wrong at a call's own gate: what is to be seen follows from its check. */
const look = (of: (step: Step) => boolean): Situation => ({
  fits: (step) => step.gate !== null && of(step),
  make: (frozen, { gate }, random) => seen(frozen, gate!, random),
});

function seen(frozen: Frozen, gate: Gate, random: Seeded): Made | null {
  const value = amiss(gate, random);
  return value && { params: { place: stationOn(frozen, gate.id, random) }, brings: { kind: "look", gate: gate.id, looks: [value] } };
}

/** Something wrong with what some work needs, begun before that is asked for the first time: later, no screen asks for it. */
const condition = (id: string): Situation => ({
  fits: (step) => step.gate?.id !== id,
  make: (frozen, step, random) => {
    const { conditions, steps } = frozen.script;
    const needed = conditions.find(({ gate }) => gate.id === id);
    const first = needed && steps.find(({ work, phase }) => work !== null && needed.over.includes(work) && phase !== needed.notIn);
    if (!first || step.phase !== first.phase || steps.indexOf(step) >= steps.indexOf(first)) return null;
    return seen(frozen, needed.gate, random);
  },
});

const wind = (
  fits: Situation["fits"],
  gustOf: (limits: { raise: number; stop: number }, random: Seeded) => number | null,
  lostS = 0,
): Situation => ({
  fits,
  make: ({ limits, plan }, _, random) => {
    const gustMph = gustOf({ raise: limits.raiseGustMph.is, stop: limits.stopGustMph.is }, random);
    if (gustMph === null) return null;
    const blowing = { mph: Math.round(gustMph * 0.7), gustMph, fromDeg: random.int(0, 35) * 10 };
    const forS = lostS + random.int(12, 25) * MINUTE;
    return { params: { place: random.pick(plan.stations).id }, brings: { kind: "wind", wind: blowing, forS, lostS } };
  },
});

/** From somebody of the crew, for something of which there are so many in the words. */
const byCrew = (fits: Situation["fits"], brings: (by: PersonId, random: Seeded) => Brings): Situation => ({
  fits,
  make: ({ brief }, { work }, random) => {
    const crew = brief.crew.filter(({ role }) => role === "crew");
    if (crew.length === 0) return null;
    const by = random.pick(crew).id;
    return { params: { by, work: work ?? "", cause: random.int(0, CAUSES - 1) }, brings: brings(by, random) };
  },
});
/** So many things a hold is called for at a kind of work, and a hand is hurt by, in the words. */
export const CAUSES = 4;

const said = (fits: Situation["fits"], brings: (random: Seeded) => Brings): Situation => ({
  fits,
  make: (_, __, random) => ({ params: { cause: random.int(0, CAUSES - 1) }, brings: brings(random) }),
});

/** All that can happen, and where it can. What is right at each is in none of them: it follows from the chart. */
export const MAKES: { readonly [S in SituationId]: Situation } = {
  windUp: wind(worksIn("openCloth", "lift"), ({ raise, stop }, random) => (raise < stop ? random.int(raise, stop - 1) : null)),
  squall: wind(
    ({ wordsKey }) => wordsKey === "lift.center",
    ({ stop }, random) => stop + random.int(2, 15),
  ),
  breeze: wind(worksIn("openCloth", "lift"), ({ raise, stop }) => Math.max(1, Math.min(raise, stop) - 2)),
  phoneDies: wind(worksIn("openCloth", "outside"), ({ raise, stop }, random) => Math.min(raise, stop) + random.int(0, 3), 40 * MINUTE),
  thunder: said(OUTDOORS, () => ({ kind: "thunder" })),
  warning: said(OUTDOORS, (random) => ({ kind: "warning", forS: random.int(10, 30) * MINUTE })),
  rain: said(OUTDOORS, () => ({ kind: "rain" })),
  holdCalled: byCrew(HANDS_BUSY, (by, random) => ({ kind: "hold", by, forS: random.int(2, 6) * MINUTE })),
  hurt: byCrew(HANDS_BUSY, (by, random) => ({ kind: "hurt", by, forS: random.int(8, 15) * MINUTE })),
  rock: look(({ wordsKey }) => wordsKey === "drive.edge"),
  softGround: look(({ id, gate }) => id.startsWith("pull.") && gate!.check.kind === "measure"),
  nearLine: look(({ id }) => id.startsWith("nearest.")),
  bentStakes: look(({ id }) => id === "stakes.bent"),
  leaning: look(({ id }) => id === "lean.inward"),
  tapeMisread: look(({ id }) => id === "squared"),
  otherSheet: look(({ id }) => id === "sheet.atHand"),
  handMissing: look(({ id }) => id === "talk.headcount"),
  stillUnder: {
    fits: ({ wordsKey, gate }) => wordsKey === "under.out" && gate?.check.kind === "sameCount",
    make: (_, { gate }) => ({ params: {}, brings: { kind: "look", gate: gate!.id, looks: "oneShort" } }),
  },
  panelWrong: look(({ id }) => id === "laid.order"),
  torn: look(({ id }) => id === "damage"),
  strapOpen: look(({ id }) => id === "straps.locked" || id === "handles.locked" || id === "straps.choked"),
  noHat: condition("hats"),
  markGone: condition("paint"),
  short: {
    fits: (step, next) => step.phase !== "struck" && next !== undefined && kitNeeded(next).length > 0,
    make: ({ script }, step, random) => {
      const next = script.steps[indexOf(script).at.get(step.id)! + 1]!;
      const item = random.pick(kitNeeded(next));
      const brings: Brings = { kind: "short", thing: { is: "kit", item, short: random.int(1, 2) }, forS: random.int(5, 15) * MINUTE };
      return { params: { item }, brings };
    },
  },
  tooFast: {
    fits: ({ gate }) => gate !== null && gate.secondPersonTo !== null && gate.check.kind !== "sameCount",
    make: (_, { gate }, random) => {
      const value = amiss(gate!, random);
      return value && { params: {}, brings: { kind: "tooFast", gate: gate!.id, looks: [value] } };
    },
  },
};

const KIT = "kit.";
const kitNeeded = ({ needs }: Step): LoadItem[] => needs.flatMap((key) => (key.startsWith(KIT) ? [key.slice(KIT.length) as LoadItem] : []));

/** A station along the edge that a gate is about, or anywhere. */
function stationOn({ plan }: Frozen, gate: string, random: Seeded): string {
  const edge = plan.edges.find(({ name }) => gate.endsWith(`.${name}`));
  const along = plan.stations.filter((station) => edge === undefined || station.edge === edge.name);
  return random.pick(along.length > 0 ? along : plan.stations).id;
}
