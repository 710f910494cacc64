import { expect, it } from "vitest";
import { freeze } from "../../machines/install/freeze.ts";
import { allSteps } from "../../machines/install/job.ts";
import { GATE_WORDS } from "../../machines/speech/en/gate-words.ts";
import { briefOf, middleBrief, SMALL } from "../proof/fixtures.ts";
import { HELD_BY_PULLS, SHORT_BY_PULLS, screenedBrief } from "../support/anchorages.ts";
import { OFF_THE_BASELINE, WITH_AN_ANCHOR } from "../support/site-briefs.ts";
import { FORECAST, WEATHER_PLAN, withWeather } from "../support/weather-plan.ts";

/** How a question is answered, by the key of its words, over tents that ask all there is to ask. */
const asked = new Map(
  [
    briefOf(SMALL),
    briefOf(SMALL, { sheet: { interiorTies: "afterAll" } }),
    screenedBrief(SHORT_BY_PULLS),
    screenedBrief(HELD_BY_PULLS),
    WITH_AN_ANCHOR,
    OFF_THE_BASELINE,
    withWeather({ weatherPlan: WEATHER_PLAN, forecast: { ...FORECAST, gustMph: 60, clearBy: FORECAST.from } }),
    middleBrief(),
    briefOf(SMALL, { use: { walls: true, hungLoads: false, occupants: 400, fabricCertificate: "unknown" }, site: { overheadKv: [] } }),
  ]
    .map((brief) => freeze(brief).script)
    .flatMap((script) => [...allSteps(script), ...script.conditions])
    .flatMap(({ wordsKey, gate }) => (gate ? [[wordsKey, gate.check.kind] as const] : [])),
);

it.each(Object.keys(GATE_WORDS))("%s is asked by some gate", (key) => expect([...asked.keys()]).toContain(key));
it.each([...asked].filter(([, kind]) => ["yesNo", "count", "sameCount", "measure"].includes(kind)))("%s has words of its own", (key) =>
  expect(Object.keys(GATE_WORDS)).toContain(key),
);
