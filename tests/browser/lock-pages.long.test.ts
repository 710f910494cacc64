import { afterAll, beforeAll, describe, it } from "vitest";
import { opened, type World } from "../support/browser.ts";
import { lockedOn } from "../support/lock.ts";

let world: World;
beforeAll(async () => {
  world = await opened("corner.first");
});
afterAll(() => world.close());

describe("locked for the pocket", () => {
  it.each(["trouble", "words", "wind", "people"])("only Hold and Unlock are left of /%s, and it is unlocked there", (path) =>
    lockedOn(world, path),
  );
});
