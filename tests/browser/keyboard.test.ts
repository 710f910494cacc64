import { afterAll, beforeAll, expect, it } from "vitest";
import { opened, play, type World } from "../support/browser.ts";
import { PHASES } from "../support/phases.ts";

let world: World;
beforeAll(async () => {
  world = await opened();
});
afterAll(() => world.close());

it("a whole raise is played by keyboard alone, refused in every phase, and no swap loses the focus", async () => {
  const page = await world.screen("p1", { clock: true });
  await page.addInitScript(() => {
    // Once what a swap brought has been looked at by everybody.
    const look = () =>
      document.activeElement === document.body && sessionStorage.setItem("lost", document.querySelector("h1")!.textContent!);
    new MutationObserver(() => setTimeout(look)).observe(document, { subtree: true, attributes: true, attributeFilter: ["data-entry"] });
  });
  await page.reload();
  const { refused } = await play(page, world, (s) => s.phase === "standing");
  expect([...refused].sort()).toEqual(PHASES.filter((phase) => phase !== "standing" && phase !== "struck"));
  expect(await page.evaluate(() => sessionStorage.getItem("lost"))).toBeNull();
  expect(world.troubles).toEqual([]);
});
