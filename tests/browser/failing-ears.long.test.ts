import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { en } from "../../views/text/en/en.ts";
import { opened, type World } from "../support/browser.ts";
import { letsDown } from "../support/failing-ear.ts";
import type { EarMode } from "../support/scripted-ear.ts";

let world: World;
beforeAll(async () => {
  world = await opened("drive.AB");
});
afterAll(() => world.close());

describe("an ear that lets people down: one clear line, and the buttons go on working", () => {
  it.each<[EarMode, keyof typeof en.client.status]>([
    ["noMicrophone", "noMicrophone"],
    ["silent", "silent"],
    ["stops", "keepsStopping"],
  ])("%s", (mode, line) => letsDown(world, mode, line));

  it("nothing went wrong in any page", () => {
    expect(world.troubles).toEqual([]);
  });
});
