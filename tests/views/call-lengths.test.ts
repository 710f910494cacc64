import { describe, expect, it } from "vitest";
import { freeze } from "../../machines/install/freeze.ts";
import type { Gate } from "../../machines/install/gates.ts";
import { allSteps } from "../../machines/install/job.ts";
import type { Script } from "../../machines/install/step.ts";
import { readBrief } from "../../server/input/brief.ts";
import { calls } from "../../views/text/en/calls.ts";
import { aloud } from "../../views/text/en/spoken.ts";
import { briefOf, middleBrief, SMALL } from "../proof/fixtures.ts";
import { HELD_BY_PULLS, SHORT_BY_PULLS, screenedBrief, WINDY } from "../support/anchorages.ts";
import { brief, briefFor } from "../support/briefs.ts";
import { exact, says } from "../support/given-away.ts";
import { longNames } from "../support/long-names.ts";
import { OFF_THE_BASELINE, TOO_NEAR, WITH_AN_ANCHOR } from "../support/site-briefs.ts";
import { FORECAST, WEATHER_PLAN, withWeather } from "../support/weather-plan.ts";
import { hundred } from "../tent/tents.ts";

/** The most words that a crew hears over a generator. */
const MOST = { say: 14, ask: 9, why: 20, ifNot: 20 } as const;

const jobs: Readonly<Record<string, Script>> = {
  "the demo job": readBrief(brief()).frozen.script,
  "a small tent": freeze(briefOf(SMALL)).script,
  "a middle tent": freeze(middleBrief()).script,
  "a small tent with a weather plan and a forecast over its limit": freeze(
    withWeather({ weatherPlan: WEATHER_PLAN, forecast: { ...FORECAST, clearBy: FORECAST.from } }),
  ).script,
  "a small tent with a forecast over what it is raised in": freeze(withWeather({ forecast: { ...FORECAST, gustMph: 22 } })).script,
  "a small tent too near to all that there is": freeze(TOO_NEAR).script,
  "a small tent off its site's baseline": freeze(OFF_THE_BASELINE).script,
  "a small tent with an engineer's anchor": freeze(WITH_AN_ANCHOR).script,
  "a small tent whose anchors are short by pulls": freeze(screenedBrief(SHORT_BY_PULLS)).script,
  "a small tent whose anchors are held by earlier pulls": freeze(screenedBrief(HELD_BY_PULLS)).script,
  "a small tent whose anchors are short of an unknown load": freeze(screenedBrief({ ...SHORT_BY_PULLS, gustMph: null })).script,
  "a small tent with bare stakes in sand": freeze(screenedBrief({ ...WINDY, soil: "sandLoose" })).script,
  "a small tent of whose ground nothing is told": freeze(screenedBrief(WINDY)).script,
  "a 100 by 200": freeze(briefFor(hundred)).script,
  "a 100 by 200 with all that can be told, under long names": freeze(longNames(true)).script,
  "the same with nothing in its way": freeze(longNames(false)).script,
};

type Said = {
  readonly id: string;
  readonly wordsKey: string;
  readonly params: Readonly<Record<string, string | number>>;
  readonly gate: Gate | null;
};
/** Every call, way out and condition, by what it says. */
const everything = (script: Script): Said[] => [
  ...allSteps(script),
  ...script.conditions.map(({ gate, wordsKey, params }) => ({ id: gate.id, wordsKey, params, gate })),
];
/** A number with its fraction, and words with a hyphen, count as one each. */
const wordsIn = (text: string): number =>
  aloud(text)
    .replaceAll(/\d+ and (?:a half|(?:a|one|three|five|seven|\d+) (?:quarters?|eighths?|sixteenths?))/g, "1")
    .split(/\s+/)
    .filter((word) => /[\p{L}\d]/u.test(word)).length;

describe.each(Object.entries(jobs))("in %s", (_job, script) => {
  const spoken = everything(script).flatMap(({ id, wordsKey, params }) => {
    const text = calls[wordsKey];
    if (text === undefined) return [{ id, part: "say" as const, text: "" }];
    return [
      { id, part: "say" as const, text: text.say(params) },
      // With the wind at a corner, two edges are named.
      { id, part: "say" as const, text: text.say({ ...params, windward: "AB BC" }) },
      { id, part: "ask" as const, text: text.ask?.(params) ?? "" },
      { id, part: "why" as const, text: text.why },
      { id, part: "ifNot" as const, text: text.ifNot ?? "" },
    ];
  });

  it.each(Object.entries(MOST))("%s takes at most %i words, said aloud", (part, most) => {
    const long = spoken
      .filter((said) => said.part === part && wordsIn(said.text) > most)
      .map(({ id, text }) => `${id}: ${wordsIn(text)} words: ${aloud(text)}`);
    expect(long).toEqual([]);
  });

  it("every call, way out and condition has words of its own", () =>
    expect(everything(script).filter(({ wordsKey }) => calls[wordsKey] === undefined)).toEqual([]));

  it("no call gives away the number that it asks for", () => {
    const given = everything(script).flatMap(({ id, wordsKey, params, gate }) => {
      const { say, ask } = calls[wordsKey]!;
      const text = `${say(params)} ${ask?.(params) ?? ""}`;
      return exact(gate?.check)
        .filter((n) => says(text, n))
        .map((n) => `${id} wants ${n}: ${text}`);
    });
    expect(given).toEqual([]);
  });
});
