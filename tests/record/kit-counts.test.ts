import { beforeEach, describe, expect, it } from "vitest";
import { isCounted, KIT_BACK, KIT_OUT, kitCounts } from "../../machines/record/kit-counts.ts";
import { outBack } from "../../views/text/en/truck.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

let job: OpenedJob;
beforeEach(async () => {
  job = await openedJob();
});
const rows = async () => {
  const { frozen, snapshot } = (await job.liveJobs.load(job.job)).job;
  return kitCounts(frozen.script, snapshot.context.answers);
};
const row = async (item: string) => (await rows()).find((r) => r.item === item)!;
const counts = (gate: string, n: Record<string, number>) => job.say({ type: "answer", gate, value: { kind: "counts", n } });
const page = async () => (await job.app.request(`/jobs/${job.job}/record`)).text();
const data = async () => (await (await job.app.request(`/jobs/${job.job}/record.json`)).json()) as { kit: unknown[] };
const list = async () => Object.fromEntries((await rows()).map(({ item, listed }) => [item, listed]));

describe("the kit out and back, in the record", () => {
  it("says nothing while nobody has counted", async () => {
    expect(isCounted(await rows())).toBe(false);
    expect(await page()).not.toContain(outBack.title);
    expect((await data()).kit).toEqual([]);
  });
  it("has what went out as soon as it is counted, and says that nothing is back", async () => {
    await job.to((s) => s.step === KIT_OUT);
    await counts(KIT_OUT, { stakePlate: 40 });
    expect(await row("stakePlate")).toMatchObject({ out: 40, back: null, difference: null });
    expect(await row("sidePole")).toMatchObject({ out: null, back: null, difference: null });
    expect(outBack.words(await rows())).toEqual(["Nothing has been counted back yet."]);
  });
  it("names two plates that did not come back, and one strap more than went out", async () => {
    await job.to((s) => s.step === KIT_BACK);
    const out = await list();
    await counts(KIT_BACK, { ...out, stakePlate: out.stakePlate! - 2, perimeterStrap: out.perimeterStrap! + 1 });
    expect((await row("stakePlate")).difference).toBe(-2);
    expect((await row("perimeterStrap")).difference).toBe(1);
    expect(outBack.words(await rows())).toEqual(["2 stake plates did not come back.", "1 ratchet strap more came back than went out."]);
    const html = await page();
    expect(html).toContain("2 stake plates did not come back.");
    expect((await data()).kit).toEqual(await rows());
  });
  it("holds what came back against what went out, not against the list", async () => {
    await job.to((s) => s.step === KIT_OUT);
    await counts(KIT_OUT, { ...(await list()), stakePlate: (await list()).stakePlate! + 3 });
    await job.to((s) => s.step === KIT_BACK);
    await counts(KIT_BACK, { stakePlate: (await list()).stakePlate! });
    expect((await row("stakePlate")).difference).toBe(-3);
  });
  it("names what was not counted back", async () => {
    await job.to((s) => s.step === KIT_BACK);
    const { polePlate: _, ...rest } = await list();
    await counts(KIT_BACK, rest);
    expect(outBack.words(await rows())).toEqual(["Not counted back: base plates."]);
  });
  it("says so where everything came back, also once the job is closed", async () => {
    await job.to((s) => s.closed);
    expect((await rows()).every(({ out, back, difference }) => out !== null && back === out && difference === 0)).toBe(true);
    expect(await page()).toContain("Everything that went out came back.");
  });
  it("where nobody counted it out, holds it against the list, and says that nobody did", async () => {
    await job.to((s) => s.step === KIT_OUT);
    await job.say({ type: "waive", gate: KIT_OUT, because: "loaded yesterday by the yard" });
    await job.to((s) => s.step === KIT_BACK);
    await counts(KIT_BACK, { stakePlate: (await list()).stakePlate! - 1 });
    expect(await row("stakePlate")).toMatchObject({ out: null, difference: -1 });
    expect(outBack.words(await rows())[0]).toBe("1 stake plate fewer came back than the list has; nobody counted them out.");
  });
  it("takes the count that stands: gone back over, the list is asked again and the first count is gone", async () => {
    await job.to((s) => s.step === KIT_OUT);
    await counts(KIT_OUT, await list());
    expect((await job.read()).step).not.toBe(KIT_OUT);
    await job.say({ type: "back" });
    expect(isCounted(await rows())).toBe(false);
    await counts(KIT_OUT, { sidePole: 7 });
    expect((await row("sidePole")).out).toBe(7);
    expect((await row("stakePlate")).out).toBeNull();
  });
  it("has no list for a script that has none", () =>
    expect(kitCounts({ steps: [], escapes: {} as never, conditions: [] }, {})).toEqual([]));
});
