import { afterAll, beforeAll, expect, it } from "vitest";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { opened, play, type World } from "../support/browser.ts";
import { goodAnswer, walk } from "../support/crew-lead.ts";
import { PHASES } from "../support/phases.ts";
import { isOpen, Sorts } from "../support/sorts.ts";

let world: World;
beforeAll(async () => {
  world = await opened();
});
afterAll(() => world.close());

const LEAD = "p1";
const isUp = (state: GuideState) => state.phase === "standing";

/** Whether somebody else is asked: it is keyed in on their screen, a whole page each time, the first of each sort. */
function asksSomebodyElse({ gate, ...state }: GuideState): boolean {
  const answer = isOpen(gate) ? goodAnswer(gate, { ...state, gate }) : null;
  return answer !== null && "as" in answer && answer.as !== LEAD;
}

it("a whole raise is played by keyboard alone, refused in every phase, and no swap loses the focus", async () => {
  const page = await world.screen(LEAD, { clock: true });
  await page.addInitScript(() => {
    // Once what a swap brought has been looked at by everybody.
    const look = () =>
      document.activeElement === document.body && sessionStorage.setItem("lost", document.querySelector("h1")!.textContent!);
    new MutationObserver(() => setTimeout(look)).observe(document, { subtree: true, attributes: true, attributeFilter: ["data-entry"] });
  });
  await page.reload();
  const keyed = new Sorts();
  const refused = new Set<string>();
  /** What somebody else answers on a phone of their own, as one of its sort was keyed in before: the lead's screen follows. */
  const isTheirs = (state: GuideState) => asksSomebodyElse(state) && !keyed.isNew(state) && refused.has(state.phase);
  for (let state = await world.state(); !isUp(state); state = await world.state()) {
    if (isTheirs(state)) {
      const { entry } = await walk(world.state, world.say, (s) => !isTheirs(s));
      // A key that is pressed while the screen follows does nothing, and nothing says so.
      await page.locator(`article.call[data-entry="${entry}"]`).waitFor({ state: "attached" });
    } else
      await play(
        page,
        world,
        (s) => {
          if (isUp(s) || isTheirs(s)) return true;
          if (asksSomebodyElse(s)) keyed.add(s);
          return false;
        },
        refused,
      );
  }
  expect([...refused].sort()).toEqual(PHASES.filter((phase) => phase !== "standing" && phase !== "struck"));
  expect(await page.evaluate(() => sessionStorage.getItem("lost"))).toBeNull();
  expect(world.troubles).toEqual([]);
});
