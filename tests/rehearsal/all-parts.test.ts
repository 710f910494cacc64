import { expect, it } from "vitest";
import { freeze } from "../../machines/install/freeze.ts";
import { madeUp } from "../../machines/rehearsal/made-up-job.ts";
import { START } from "../proof/fixtures.ts";
import { withAllParts } from "../support/all-parts.ts";
import { doesRight, play } from "./play.ts";

/** A rehearsal of the small tent with a site, its anchors, a forecast and a weather plan, begun a day after that was told. */
const FROZEN = freeze(madeUp(withAllParts(), { way: "lead", trouble: "some", seed: 1, from: "sheet.atHand" }, START));

it("a job of which all is told is rehearsed to its end by who does what is right, refused nothing", () => {
  const { said, closed } = play(FROZEN, doesRight);
  const refused = said.filter(({ outcome }) => "refused" in outcome).map(({ command, outcome }) => JSON.stringify([command.type, outcome]));
  const blamed = said.filter(({ verdict }) => verdict && verdict.is !== "safe").map(({ verdict }) => JSON.stringify(verdict));
  expect([closed, refused, blamed]).toEqual([true, [], []]);
});
