import { describe, expect, it } from "vitest";
import { METERS_PER_FOOT } from "../../machines/install/checks/units.ts";
import { workOf } from "../../machines/install/quantities.ts";
import { MIN_EXACT_GATES } from "../../machines/record/doubts/always-exact.ts";
import { drivingMs, MIN_PERSON_SECONDS, phaseMs } from "../../machines/record/doubts/fastest.ts";
import { MIN_SECOND_LOOK_MS } from "../../machines/record/doubts/quick-second.ts";
import { MAX_WORDS_A_MINUTE, MIN_READING_MS } from "../../machines/record/doubts/too-fast-reading.ts";
import { MAX_WALK_FT_PER_S, MAX_WALK_MPS, walkMs } from "../../machines/record/doubts/too-fast-walk.ts";
import { estimate } from "../../machines/time/estimate.ts";
import { RATES, TIMED_PHASES } from "../../machines/time/rates.ts";
import { en } from "../../views/text/en/en.ts";
import { frozenFor } from "../support/briefs.ts";
import { frozenWith } from "../support/time.ts";
import { eighty, forty, hundred, sixty, twenty } from "../tent/tents.ts";

const words = (text: string): number => text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

describe("how fast somebody can walk", () => {
  // Bohannon 1997, Age and Ageing 26:15-19, as its abstract prints it: the fastest and the slowest group told to hurry, and the fastest that was not.
  const MAXIMUM_CM_PER_S = { menInTheirTwenties: 253.3, womenInTheirSeventies: 174.9 };
  const COMFORTABLE_CM_PER_S = 146.2;
  it("is the maximum of the fastest group", () => expect(MAX_WALK_MPS * 100).toBeCloseTo(MAXIMUM_CM_PER_S.menInTheirTwenties, 6));
  it("is faster than any other group's", () => {
    expect(MAX_WALK_MPS * 100).toBeGreaterThan(MAXIMUM_CM_PER_S.womenInTheirSeventies);
    expect(MAX_WALK_MPS * 100).toBeGreaterThan(1.7 * COMFORTABLE_CM_PER_S);
  });
  it("is more than twice the pace that crossings are timed by, 3.5 ft/s (MUTCD 2009, section 4E.06)", () =>
    expect(MAX_WALK_FT_PER_S).toBeGreaterThan(2 * 3.5));
  it("takes 43 s around a tent of 80 by 100 feet", () => {
    expect(MAX_WALK_FT_PER_S).toBeCloseTo(2.533 / METERS_PER_FOOT, 9);
    expect(walkMs(360) / 1000).toBeCloseTo(43.3, 1);
  });
});

describe("how fast a call can be read", () => {
  // Brysbaert 2019, Journal of Memory and Language 109:104047, as its abstract prints it: most adults, in words a minute.
  const MOST_ADULTS = { fiction: [200, 320], other: [175, 300], aloud: 183 } as const;
  it("is the top of what most adults read", () => expect(MAX_WORDS_A_MINUTE).toBe(Math.max(...MOST_ADULTS.fiction, ...MOST_ADULTS.other)));
  it("is sooner than the shortest call there is, at that speed", () => {
    const calls = [twenty, forty, sixty, eighty, hundred].flatMap((tent) => frozenFor(tent).script.steps);
    const shortest = Math.min(...calls.map(({ wordsKey, params }) => words(en.calls[wordsKey]!.say(params))));
    expect(shortest).toBeGreaterThanOrEqual(4);
    const text = calls.map(({ wordsKey, params, gate }) =>
      words(`${en.calls[wordsKey]!.say(params)} ${gate ? en.calls[wordsKey]!.ask!(params) : ""}`),
    );
    expect((Math.min(...text) / MAX_WORDS_A_MINUTE) * 60_000).toBeGreaterThan(MIN_READING_MS);
  });
  it("leaves a second look three seconds, once ten words are read at 300 a minute", () =>
    expect(MIN_SECOND_LOOK_MS - (10 / MOST_ADULTS.other[1]) * 60_000).toBe(3000));
});

describe("how fast work is believed to go", () => {
  it("is a stake every twenty seconds for each driver with two people on it: six times the planning rate", () => {
    const driving = RATES.anchorsSet.parts.find(({ key }) => key === "driving");
    expect(driving).toMatchObject({ per: "stakes", personMinutes: 4 });
    expect(drivingMs(1, 2)).toBe((4 * 60_000) / 2 / 6);
    expect(drivingMs(90, 6)).toBe(10 * 60_000);
  });
  it("has a figure for each phase that is planned", () => expect(Object.keys(MIN_PERSON_SECONDS)).toEqual(TIMED_PHASES));
  it.each([
    ["20 × 20", twenty, [4, 5, 8]],
    ["40 × 80", forty, [4, 6, 10]],
    ["60 × 120", sixty, [5, 8, 12]],
    ["80 × 100", eighty, [5, 6, 12]],
    ["100 × 200", hundred, [5, 10, 16]],
  ] as const)("is ten times what is planned for a phase of a %s ft tent, or faster", (_size, tent, crews) => {
    for (const people of crews) {
      const work = workOf(frozenWith(people, tent))!;
      for (const phase of TIMED_PHASES) {
        const planned = estimate(phase, work.quantities, people);
        if (planned.is === "tooFew") continue;
        expect.soft(phaseMs(phase, work), `${phase} with ${people}`).toBeLessThanOrEqual((planned.minutes * 60_000) / 10);
      }
    }
  });
});

it("so many exact measurements in a row come less than once in a thousand jobs, if every second true one were exact", () =>
  expect(0.5 ** MIN_EXACT_GATES).toBeLessThan(1 / 1000));
