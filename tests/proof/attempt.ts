import type { Command } from "../../machines/install/commands.ts";
import { decide } from "../../machines/install/decide.ts";
import type { Job } from "../../machines/install/job.ts";
import type { Machine } from "../../machines/install/machine.ts";
import type { Outcome } from "../../machines/install/refusals.ts";
import { SITE_STATES } from "../../machines/install/step.ts";
import { commandOf, SECOND } from "./fixtures.ts";
import { INVARIANTS, type Invariant, type Memory, ONE_OUTCOME, remember, type Trial } from "./invariants.ts";
import type { Node } from "./state.ts";
import { callOf, siteAt, type Tent } from "./tent.ts";
import type { Attempt } from "./tries.ts";

type Bench = {
  readonly tent: Tent;
  readonly machine: Machine;
  readonly readBack: Set<string>;
  readonly report: (invariant: Invariant, node: Node, as: string, trouble: string) => void;
};

/** Tries one command on a state and holds what comes of it against every invariant. */
export function attemptOn({ tent, machine, readBack, report }: Bench): Attempt {
  return (node, t) => {
    const { context } = node.job.snapshot;
    const seen = t.behind ? context.revision - 1 : context.revision;
    const pressed = commandOf(t.ask, context.lastAt + (t.after ?? SECOND), node.entry, seen, t.role);
    const command: Command = t.heardOn ? { ...pressed, source: "talk", device: t.heardOn } : pressed;
    let after: Job;
    let outcome: Outcome;
    try {
      [after, outcome] = decide(node.job, command);
    } catch (e) {
      report(ONE_OUTCOME, node, t.as, String(e));
      return null;
    }
    const trial: Trial = { tent, as: t.as, before: node.job, memory: node.memory, command, outcome, after, readBack };
    for (const name of NAMES) {
      const trouble = INVARIANTS[name](trial);
      if (trouble) report(name, node, t.as, trouble);
    }
    const memory = withSite(remember(trial), trial);
    return { job: { ...after, machine }, memory, entry: node.entry + 1, from: node, by: t.as };
  };
}

const NAMES = Object.keys(INVARIANTS) as (keyof typeof INVARIANTS)[];

/** What is on the site after a trial: it grows on the way up and shrinks in the strike. */
function withSite(memory: Memory, { tent, outcome, after }: Trial): Memory {
  const to = callOf(tent, after);
  const moves = "did" in outcome && [outcome.did, outcome.and].some((what) => what === "moved" || what === "standingDown");
  if (!moves || !to || !tent.place.has(to.id)) return memory;
  const there = siteAt(tent, to.id);
  const grown = SITE_STATES.indexOf(there) > SITE_STATES.indexOf(memory.site);
  return to.phase === "struck" || grown ? { ...memory, site: there } : memory;
}
