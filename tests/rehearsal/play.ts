import type { Command, Intent } from "../../machines/install/commands.ts";
import { decide } from "../../machines/install/decide.ts";
import { freeze } from "../../machines/install/freeze.ts";
import { openJob } from "../../machines/install/job.ts";
import type { Practice } from "../../machines/install/practice.ts";
import type { Outcome } from "../../machines/install/refusals.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { crewMove } from "../../machines/rehearsal/crew-move.ts";
import { judgeMove, type Verdict } from "../../machines/rehearsal/judge-move.ts";
import { madeUp } from "../../machines/rehearsal/made-up-job.ts";
import { callOf, type Move, rightMove } from "../../machines/rehearsal/right-move.ts";
import { playedOn } from "../../machines/rehearsal/scene.ts";
import type { Stand } from "../../machines/rehearsal/stand.ts";
import { storyOf } from "../../machines/rehearsal/story.ts";
import { UNTOUCHED, worldAfter } from "../../machines/rehearsal/world.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import { briefFor } from "../support/briefs.ts";

const START = Date.UTC(2026, 5, 2, 12);
const SECOND = 1000;
/** Every press takes so long on a made-up site. */
const STEP_S = 45;

export type Said = { readonly command: Command; readonly outcome: Outcome; readonly verdict: Verdict | null; readonly before: Stand };
/** What a player does where a rehearsal stands: what is right is handed to them. */
export type Player = (right: Move, stand: Stand, at: number) => Move;

export const doesRight: Player = (right) => right;

const plans = new Map<SpecInput, Frozen>();
/** The first of a tent, whose chart is that of all others. */
const firsts = new WeakMap<Frozen, Frozen>();
/** A rehearsal of a tent, opened and not begun. All of one tent have its calls, and one chart, between them. */
export const practiceOf = (tent: SpecInput, given: Partial<Practice> = {}): Frozen => {
  const practice: Practice = { way: "lead", trouble: "some", seed: 1, from: "sheet.atHand", ...given };
  const known = plans.get(tent) ?? freeze(madeUp(briefFor(tent), practice, START));
  plans.set(tent, known);
  const made = { ...known, brief: { ...known.brief, practice } };
  firsts.set(made, known);
  return made;
};

/** Plays a rehearsal to its end, or to where nothing has gone on for long: all that was said, in order. */
export function play(frozen: Frozen, player: Player, most = 1500) {
  const lead = frozen.brief.crew.find(({ role }) => role === "lead")!;
  const scenes = storyOf(frozen);
  const said: Said[] = [];
  let at = START;
  let entry = 1;
  let stand: Stand = {
    job: { ...openJob(firsts.get(frozen) ?? frozen, START), frozen },
    world: UNTOUCHED,
    scenes,
    seed: frozen.brief.practice!.seed,
  };
  stand = { ...stand, world: worldAfter(stand.world, scenes, { command: null, outcome: null, step: callOf(stand), at }) };

  function say(intent: Intent, by: (typeof frozen.brief.crew)[number], isPlayer: boolean) {
    entry++;
    const { revision } = stand.job.snapshot.context;
    const how = {
      key: `k${entry}`,
      seen: revision,
      source: "press",
      heard: null,
      device: isPlayer ? "the player's phone" : playedOn(by.id),
    } as const;
    const command: Command = { ...intent, ...how, by: by.id, role: by.role, at, wall: at, doubtMs: 0, entry };
    const [job, outcome] = decide(stand.job, command);
    const verdict = isPlayer ? judgeMove(stand, command, outcome) : null;
    said.push({ command, outcome, verdict, before: stand });
    const world = worldAfter(stand.world, scenes, { command, outcome, step: callOf({ job }), at });
    stand = { ...stand, job, world };
  }

  while (said.length < most) {
    const crew = crewMove(stand, at);
    if (crew) {
      at += crew.afterS * SECOND;
      say(crew.intent, crew.by, false);
      continue;
    }
    const right = rightMove(stand, at + STEP_S * SECOND);
    if (!right) break;
    at += STEP_S * SECOND;
    const move = player(right, stand, at);
    if (move.type === "wait") {
      at += move.seconds * SECOND;
      say({ type: "note", text: "time goes by" }, lead, true);
    } else say(move, lead, true);
  }
  return { said, stand, closed: callOf(stand) === "closed" };
}
