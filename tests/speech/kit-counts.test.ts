import { describe, expect, it } from "vitest";
import { parseKitCounts } from "../../machines/speech/en/kit-counts.ts";
import type { Asked } from "../../machines/speech/listening.ts";
import { isTentPart, ORDER_ON_SITE } from "../../machines/tent/load.ts";
import { kitName } from "../../views/text/en/names.ts";
import { frozenFor } from "../support/briefs.ts";
import { eighty, hundred } from "../tent/tents.ts";

const callOf = (tent: typeof eighty) => frozenFor(tent).script.steps.find((s) => s.id === "kit.loaded") as Asked;
const listOf = (tent: typeof eighty) => {
  const { check } = callOf(tent).gate;
  if (check.kind !== "counts") throw new Error("the truck is counted");
  return Object.keys(check.want);
};
const [call, list] = [callOf(eighty), listOf(eighty)];
const hear = (said: string, items = list) => parseKitCounts(said, { expects: "counts", items }, call);
const counted = (item: string, n: number) => ({ kind: "counts", n: { [item]: n } });

describe("things on the truck, as they are said", () => {
  it.each([eighty, hundred].flatMap(listOf).filter((item, i, all) => all.indexOf(item) === i))("%s by the name on the list", (item) => {
    const items = listOf(item === "tape300" ? hundred : eighty);
    expect(hear(`twelve ${kitName(item)}`, items)).toEqual(counted(item, 12));
    expect(hear(`${kitName(item)} 12`, items)).toEqual(counted(item, 12));
  });
  it.each([
    ["eight hats", "hardHat", 8],
    ["two cans of paint", "whitePaint", 2],
    ["one horn", "horn", 1],
    ["two drivers", "stakeDriver", 2],
    ["one puller", "stakePuller", 1],
    ["a hundred and five caps", "stakeCap", 105],
    ["five tarps", "groundCloth", 5],
    ["eight safety glasses", "goggles", 8],
    ["four ropes", "footRope", 4],
    ["three signs", "exitSign", 3],
    ["no extinguishers", "extinguisher", 0],
    ["one plumb bob", "plumbBob", 1],
    ["one lean gauge", "leanGauge", 1],
    ["one step ladder", "ladder", 1],
  ] as const)("%s", (said, item, n) => expect(hear(said)).toEqual(counted(item, n)));
  it("tapes alone are not told apart where there are two lengths", () => {
    expect(hear("one tape")).toEqual({ notUnderstood: true });
    expect(hear("one short tape")).toEqual(counted("tape100", 1));
    expect(hear("one long tape")).toEqual(counted("tape200", 1));
  });
});

it("every thing on a truck has a name that one of it loses an s of", () => {
  for (const item of ORDER_ON_SITE) expect([item, kitName(item)]).toEqual([item, expect.stringMatching(/^[a-z0-9].*s$/)]);
  expect(ORDER_ON_SITE.filter((item) => !isTentPart(item)).every((item) => kitName(item) !== item)).toBe(true);
});
