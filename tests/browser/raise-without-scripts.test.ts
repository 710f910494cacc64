import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, play, type World } from "../support/browser.ts";
import { PHASES } from "../support/phases.ts";

describe("the demo job with scripts off", () => {
  let world: World;
  beforeAll(async () => {
    world = await opened();
  });
  afterAll(() => world.close());

  it("goes up and comes down by plain forms", async () => {
    const page = await world.screen("p1", { scripts: false });
    const { state, refused } = await play(page, world, () => false);
    expect(state.closed).toBe(true);
    expect([...refused].sort()).toEqual(PHASES);
  });
});
