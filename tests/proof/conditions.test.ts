import { describe, expect, it } from "vitest";
import { indexOf } from "../../machines/install/script-index.ts";
import type { Frozen, Work } from "../../machines/install/step.ts";
import { badValue } from "../support/answers.ts";
import { Crew } from "../support/crew.ts";
import { WEATHER_PLAN, withWeather } from "../support/weather-plan.ts";
import { frozenOf } from "./fixtures.ts";
import { CONDITIONS, type ConditionRow } from "./gates.table.ts";
import { workByHand } from "./tent.ts";

/** With a weather plan, as some conditions are those of a tent that has one. */
const brief = withWeather({ weatherPlan: WEATHER_PLAN });
const honest = frozenOf(brief);
const order = honest.script.steps.map((s) => s.id);

/** The call before the first one that is this kind of work and does not stand behind the gate of the condition itself. */
const beforeWork = (work: Work, { gate }: ConditionRow): string =>
  order.find((id, i) => workByHand(order[i + 1] ?? "") === work && id !== gate)!;
const { gates } = indexOf(honest.script);

/** Jobs at those calls with everything there that the work needs, driven once. */
const ready = new Map<string, Crew>();
function readyFor(call: string, frozen: Frozen): Crew {
  const known = ready.get(call) ?? new Crew(brief).goTo(call).ready();
  ready.set(call, known);
  const crew = new Crew(brief);
  Object.assign(crew, { job: known.job, at: known.at, entry: known.entry });
  if (frozen !== honest) crew.onScript(frozen.script);
  return crew;
}

/** Takes one condition away from a job that has all of them. */
function take(crew: Crew, { gate, below, agreed }: ConditionRow) {
  if (gate === "thunder") crew.thunder("watcher");
  // What was agreed is lower, and stops less than everything.
  else if (agreed !== undefined) crew.gust(below! - 1);
  else if (below !== undefined) crew.gust(below);
  else crew.say({ type: "answer", gate, value: badValue(gates.get(gate)!.check) }, "lead");
}

/** What a script does not notice of a condition over a kind of work: `null` where it shuts the way, and only for that. */
function unnoticed(frozen: Frozen, row: ConditionRow, work: Work): string | null {
  const crew = readyFor(beforeWork(work, row), frozen);
  const here = crew.call;
  take(crew, row);
  const outcome = crew.next();
  if ("did" in outcome || crew.call !== here) return `${crew.call} was entered`;
  const [why] = outcome.refused;
  return why?.why === "gate" && why.gate === row.gate ? null : `refused for ${JSON.stringify(why)}`;
}

const pairs = CONDITIONS.flatMap((row) => row.over.map((work) => [row.gate, work, row] as const));

describe("each condition, walked up to", () => {
  it.each(pairs)("%s shuts the way to %s", (_, work, row) => {
    expect(unnoticed(honest, row, work)).toBeNull();
  });

  it.each(pairs)("that %s is gone from the script is noticed at %s", (gate, work, row) => {
    const conditions = honest.script.conditions.filter((c) => c.gate.id !== gate);
    expect(unnoticed({ ...honest, script: { ...honest.script, conditions } }, row, work)).not.toBeNull();
  });

  it("is asked of every kind of work of this tent", () => {
    expect([...new Set(pairs.map(([, work]) => work))].every((work) => order.some((id) => workByHand(id) === work))).toBe(true);
  });
});
