import { afterAll, beforeAll, expect, it } from "vitest";
import { ASLEEP, opened, play, type World } from "../support/browser.ts";
import { drive } from "../support/crew-lead.ts";
import { PHASES } from "../support/phases.ts";
import { isOpen, Sorts } from "../support/sorts.ts";
import type { Stand } from "../support/stand.ts";

let world: World;
beforeAll(async () => {
  world = await opened();
});
afterAll(() => world.close());

it("a raise is played by keyboard alone at each sort of call, refused in every phase, and no swap loses the focus", async () => {
  const page = await world.screen("p1", { clock: true });
  await page.addInitScript(() => {
    // Once what a swap brought has been looked at by everybody.
    const look = () =>
      document.activeElement === document.body && sessionStorage.setItem("lost", document.querySelector("h1")!.textContent!);
    new MutationObserver(() => setTimeout(look)).observe(document, { subtree: true, attributes: true, attributeFilter: ["data-entry"] });
  });
  const guide = page.url();
  const sorts = new Sorts();
  const refused = new Set<string>();
  const isStanding = (s: Stand) => s.phase === "standing";
  const toPlay = (s: Stand) => isStanding(s) || sorts.isNew(s) || (isOpen(s.gate) && !refused.has(s.phase));
  for (;;) {
    const { state: stand } = await drive(world.state, world.say, toPlay);
    if (isStanding(stand)) break;
    sorts.add(stand);
    await page.goto(guide);
    await play(page, world, (s) => s.step !== stand.step, refused);
    await page.goto(ASLEEP);
  }
  expect(sorts.size).toBeGreaterThan(10);
  expect([...refused].sort()).toEqual(PHASES.filter((phase) => phase !== "standing" && phase !== "struck"));
  await page.goto(guide);
  expect(await page.evaluate(() => sessionStorage.getItem("lost"))).toBeNull();
  expect(world.troubles).toEqual([]);
});
