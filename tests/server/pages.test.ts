import { describe, expect, it } from "vitest";
import { readBrief } from "../../server/input/brief.ts";
import { briefFromForm } from "../../server/input/brief-from-form.ts";
import { brief, testApp } from "../support/app.ts";
import { filled } from "../support/filled.ts";

describe("pages", () => {
  it("the way to a new job leads to its first step, with the tent that was asked for", async () => {
    const { app } = testApp();
    const to = async (path: string) => (await app.request(path)).headers.get("location");
    expect(await to("/jobs/new")).toBe("/drafts/new");
    expect(await to("/jobs/new?tent=t-1&width=40")).toBe("/drafts/new?tent=t-1");
  });

  it("a form with something wrong comes back with all that was typed, and the reason beside the field", async () => {
    const { app, journal } = testApp();
    const body = new URLSearchParams({
      key: "form-0001",
      title: "A field (invented)",
      "tent.widthFt": "80",
      "tent.lengthFt": "60",
      "tent.spacingFt": "ten",
    });
    const r = await app.request("/jobs", { method: "POST", body, headers: { "sec-fetch-site": "same-origin" } });
    const html = await r.text();
    expect(r.status).toBe(422);
    expect(html).toContain("A field (invented)");
    expect(html).toContain("60 ft long is less than the width");
    expect(await journal.jobs()).toHaveLength(0);
  });

  it("a page of another site cannot press for you, and says so in a sentence", async () => {
    const { app } = testApp();
    const r = await app.request("/jobs", {
      method: "POST",
      body: new URLSearchParams({ title: "x" }),
      headers: { origin: "http://elsewhere.example" },
    });
    expect([r.status, (await r.text()).includes("That came from another site.")]).toEqual([403, true]);
  });

  it("the page for a change, sent back as it came, changes nothing of the brief, whatever the brief says", async () => {
    const { app, post, liveJobs } = testApp();
    const full = {
      ...brief(),
      title: 'The "old" barn & yard',
      site: { ...brief().site, overheadKv: [null, 115], baselineBearingDeg: 12, street: { edge: "BC", name: "Mill's Lane" } },
      tent: { ...brief().tent, leaveOut: ["Q2"], add: [{ kind: "quarter", xFt: 31, yFt: 43 }], rings: { AB: 12 } },
      sheet: { ...brief().sheet, stakeLeanDeg: { from: 2, to: 8 } },
      kit: { midPiece: { unitLb: 240 } },
    };
    const { job } = (await (await post("/jobs", { key: "open-0001", brief: full })).json()) as { job: string };
    const page = await (await app.request(`/jobs/${job}/amend`)).text();
    expect(readBrief(briefFromForm(filled(page))).frozen.brief).toStrictEqual((await liveJobs.load(job)).job.frozen.brief);
  });

  it("plan, guide and record stand as JSON beside their pages", async () => {
    const { app, post } = testApp();
    const { job } = (await (await post("/jobs", { key: "open-0001", brief: brief() })).json()) as { job: string };
    const read = async (path: string) => (await app.request(path)).json() as Promise<Record<string, unknown>>;
    expect((await read(`/jobs/${job}/plan.json`)).plan).toMatchObject({ widthFt: 80, lengthFt: 100 });
    expect(await read(`/jobs/${job}.json`)).toMatchObject({ phase: "utilitiesMarked", step: "sheet.atHand" });
    expect((await read(`/jobs/${job}/record.json`)).entries).toHaveLength(1);
    expect((await app.request(`/jobs/${job}/plan`)).status).toBe(200);
    expect((await app.request("/")).status).toBe(200);
  });
});
