import { describe, expect, it } from "vitest";
import { workOf } from "../../machines/install/quantities.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { estimate } from "../../machines/time/estimate.ts";
import { TIMED_PHASES } from "../../machines/time/rates.ts";
import { sharesOf } from "../../machines/time/shares.ts";
import { DAY, MINUTE, people } from "../proof/fixtures.ts";
import { briefFor } from "../support/briefs.ts";
import { Crew } from "../support/crew.ts";
import { eighty, hundred } from "../tent/tents.ts";

/** What the forecast gives each call, in minutes. */
function minutesByCall(frozen: Frozen): ReadonlyMap<string, number> {
  const { quantities, people: hands } = workOf(frozen)!;
  return new Map(
    TIMED_PHASES.flatMap((phase) => {
      const time = estimate(phase, quantities, hands);
      if (time.is === "tooFew") throw new Error(`${phase} takes ${time.minPeople}`);
      const steps = frozen.script.steps.filter((s) => s.phase === phase);
      return sharesOf(steps, time).map((share, i): [string, number] => [steps[i]!.id, share * time.minutes]);
    }),
  );
}

/** A raise and a strike three days later, said by voice by a truthful crew at the forecast's pace. */
function playedThrough(crew: Crew) {
  const minutes = minutesByCall(crew.job.frozen);
  const said = { answers: 0, winds: 0, nexts: 0 };
  let here = "";
  while (crew.call !== "closed") {
    if (crew.call !== here) {
      here = crew.call;
      crew.at += (minutes.get(here) ?? 0) * MINUTE;
      if (here === "watch.end") crew.at += 3 * DAY;
    }
    const { missing } = crew;
    const outcome = crew.oneMore();
    if ("refused" in outcome) throw new Error(`${here}: ${JSON.stringify(outcome)}`);
    if (missing === null) said.nexts++;
    else if (crew.gate(missing).check.kind === "wind") said.winds++;
    // Read back, and confirmed.
    else said.answers += 2;
  }
  const all = said.answers + said.winds + said.nexts;
  return { all, calls: crew.job.frozen.script.steps.length };
}

/** Six as on the demo job, and the ten that a 100×200 takes. */
const crewOf = (hands: number) =>
  [...people, ...["noor", "pia", "ravi", "sol", "tess"].map((id) => ({ id, role: "crew" as const }))].slice(0, people.length + hands - 5);

/**
 * A truthful crew that has to talk too much stops being truthful. The goals are 165 calls and 330 utterances for the 80×100, and
 * 240 calls for the 100×200. Utterances exceed theirs by readings and warnings that fall due, and by counts of people under the
 * cloth. Common practice, no source.
 */
describe("a raise and a strike, said by voice at the forecast's pace", () => {
  it.each([
    { size: "80×100", tent: eighty, hands: 6, calls: 165, utterances: 358 },
    { size: "100×200", tent: hundred, hands: 10, calls: 241, utterances: 526 },
  ])("of the $size take at most $calls calls and $utterances utterances", ({ tent, hands, calls, utterances }) => {
    const played = playedThrough(new Crew(briefFor(tent, { crew: crewOf(hands) })));
    expect(played.calls).toBeLessThanOrEqual(calls);
    expect(played.all).toBeLessThanOrEqual(utterances);
  });
});
