import { expect, it } from "vitest";
import { foundIn } from "../../machines/install/found-in.ts";
import { yieldTurn } from "../../server/routes/stream.ts";
import { brief } from "../support/app.ts";
import { openedJob } from "../support/job.ts";

const told = (alongFt: number, offFt: number) => ({ alongFt, offFt });
/** So many gas lines side by side that no tent stands between them. */
const everywhere = Array.from({ length: 60 }, (_, i) => {
  const alongFt = i * 8 - 240;
  return { id: `gas ${i}`, kind: "gas", told: "ticket", points: [told(alongFt, -300), told(alongFt, 400)] };
});
const opened = () => openedJob({ ...brief(), siteModel: { buried: everywhere } });
type There = Awaited<ReturnType<typeof opened>>;
const look = async ({ app, job }: There, fields: Record<string, string>) => {
  const headers = { origin: "http://localhost", cookie: `device=phone-of-p1; as-${job}=p1` };
  return app.request(`/jobs/${job}/site/place`, { method: "POST", body: new URLSearchParams(fields), headers });
};

it("where no place is free the least bad one is shown with what to do about each stake, never a stake in dug ground, and is taken", async () => {
  const there = await opened();
  const shown = await (await look(there, { go: "find" })).text();
  expect(shown).toContain("No place is free. This is the least bad one:");
  expect(shown).toMatch(/by hand, then an anchor that an engineer names. No stake in dug ground./);
  const by = /name="by" value="([\da-f]+)"/.exec(shown)![1]!;
  expect((await look(there, { go: "take", by, key: "place-0001" })).status).toBe(303);
  const { proposed } = (await there.liveJobs.load(there.job)).job.snapshot.context;
  await there.say({ type: "agree", target: proposed!.entry }, "p3");
  expect((await there.liveJobs.load(there.job)).job.frozen.brief.siteModel!.fixes!.length).toBeGreaterThan(0);
});

it("what is found on the site while a place is looked for is not taken off it: the place is looked at again", async () => {
  const before = await opened();
  const by = /name="by" value="([\da-f]+)"/.exec(await (await look(before, { go: "find" })).text())![1]!;
  // Started again, the place is looked for once more.
  const there = await opened();
  const taking = look(there, { go: "take", by, key: "place-0001" });
  await yieldTurn();
  const what = { is: "buried", line: { id: "water 1", kind: "water", told: "found", widthIn: null, toleranceIn: null, errorFt: 0, points: [{ xFt: 1, yFt: 1 }, { xFt: 9, yFt: 9 }] } } as const; // biome-ignore format: one line reads best
  await there.say({ type: "found", what, to: foundIn((await there.liveJobs.load(there.job)).job.frozen, what) }, "p4");
  expect((await taking).status).toBe(409);
  expect((await there.liveJobs.load(there.job)).job.snapshot.context.proposed).toBeNull();
});

it("while a place is looked for a hold goes through", async () => {
  const there = await opened();
  let isOver = false;
  const looking = look(there, { go: "find" }).finally(() => {
    isOver = true;
  });
  await yieldTurn();
  await there.say({ type: "hold" }, "p4");
  expect(isOver).toBe(false);
  await looking;
});
