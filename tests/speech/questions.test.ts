import { expect, it } from "vitest";
import { freeze } from "../../machines/install/freeze.ts";
import { allSteps } from "../../machines/install/job.ts";
import { COUNTED_AT, NONE_AT } from "../../machines/speech/en/count-at.ts";
import { LIST_AT } from "../../machines/speech/en/each.ts";
import { YES_AT } from "../../machines/speech/en/yes-no-at.ts";
import { briefOf, middleBrief, SMALL } from "../proof/fixtures.ts";

/** How a question is answered, by the key of its words, over tents that ask all there is to ask. */
const asked = new Map(
  [
    briefOf(SMALL),
    briefOf(SMALL, { sheet: { interiorTies: "afterAll" } }),
    middleBrief(),
    briefOf(SMALL, { use: { walls: true, hungLoads: false, occupants: 400 } }),
  ]
    .map((brief) => freeze(brief).script)
    .flatMap((script) => [...allSteps(script), ...script.conditions])
    .flatMap(({ wordsKey, gate }) => (gate ? [[wordsKey, gate.check.kind] as const] : [])),
);

it.each(Object.keys(YES_AT))("%s asks for yes or no", (key) => expect(asked.get(key)).toBe("yesNo"));
it.each([...new Set([...Object.keys(COUNTED_AT), ...Object.keys(NONE_AT)])])("%s asks for a count", (key) =>
  expect(["count", "sameCount"]).toContain(asked.get(key)),
);
it.each(Object.keys(LIST_AT))("%s asks for each of a list", (key) => expect(asked.get(key)).toBe("each"));
