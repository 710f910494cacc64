import { expect, it } from "vitest";
import type { Brief } from "../../machines/install/brief.ts";
import { freeze } from "../../machines/install/freeze.ts";
import { madeUp } from "../../machines/rehearsal/made-up-job.ts";
import { DAY, START } from "../proof/fixtures.ts";
import { ALL_PARTS, withAllParts } from "../support/all-parts.ts";
import { doesRight, play } from "./play.ts";

/** When a rehearsal is begun. */
const BEGUN = START + DAY;
/** In the middle of the wind that its job was told for. */
const BLOWN: Brief = { ...withAllParts(), forecast: { ...ALL_PARTS.forecast!, from: START, clearBy: START, to: START + 5 * DAY } };
const FROZEN = freeze(madeUp(BLOWN, { way: "lead", trouble: "some", seed: 1, from: "sheet.atHand" }, BEGUN));

it("a job with a site, its anchors, a forecast and a weather plan is rehearsed to its end by who does what is right, refused nothing", () => {
  const { said, closed } = play(FROZEN, doesRight);
  const refused = said.filter(({ outcome }) => "refused" in outcome).map(({ command, outcome }) => JSON.stringify([command.type, outcome]));
  const blamed = said.filter(({ verdict }) => verdict && verdict.is !== "safe").map(({ verdict }) => JSON.stringify(verdict));
  expect([closed, refused, blamed]).toEqual([true, [], []]);
});
