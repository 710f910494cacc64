import { afterAll, beforeAll, expect, it } from "vitest";
import { demoBrief } from "../../server/demo.ts";
import { opened, play, type World } from "../support/browser.ts";
import { PHASES } from "../support/phases.ts";

let world: World;
beforeAll(async () => {
  world = await opened();
});
afterAll(() => world.close());

/** The smallest tent there is: a raise of it has every phase in fewer calls. */
const SMALL = { widthFt: 20, lengthFt: 20, midsFt: [], onePiece: true, splitEnds: false, quarterRings: 0, centerPoleFt: 13 };
const DAY_MS = 24 * 3600 * 1000;
async function openedSmall(): Promise<string> {
  const dayAfter = (days: number) => new Date(Date.now() + days * DAY_MS).toISOString().slice(0, 10);
  const demo = demoBrief(dayAfter(-1), dayAfter(14));
  const told = await fetch(`${world.url}jobs`, {
    method: "POST",
    headers: { "content-type": "application/json", origin: world.url.slice(0, -1) },
    body: JSON.stringify({ key: "small-by-keyboard", brief: { ...demo, tent: { ...demo.tent, ...SMALL } } }),
  });
  return ((await told.json()) as { job: string }).job;
}

it("a whole raise is played by keyboard alone, refused in every phase, and no swap loses the focus", async () => {
  const job = world.on(await openedSmall());
  const page = await job.screen("p1", { clock: true });
  await page.addInitScript(() => {
    // Once what a swap brought has been looked at by everybody.
    const look = () =>
      document.activeElement === document.body && sessionStorage.setItem("lost", document.querySelector("h1")!.textContent!);
    new MutationObserver(() => setTimeout(look)).observe(document, { subtree: true, attributes: true, attributeFilter: ["data-entry"] });
  });
  await page.reload();
  const { refused } = await play(page, job, (s) => s.phase === "standing");
  expect([...refused].sort()).toEqual(PHASES.filter((phase) => phase !== "standing" && phase !== "struck"));
  expect(await page.evaluate(() => sessionStorage.getItem("lost"))).toBeNull();
  expect(world.troubles).toEqual([]);
});
