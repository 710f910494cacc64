import { beforeEach, describe, expect, it } from "vitest";
import { readBrief } from "../../server/input/brief.ts";
import { briefToForm } from "../../server/input/brief-to-form.ts";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { en } from "../../views/text/en/en.ts";
import { brief, testApp } from "../support/app.ts";
import { drive } from "../support/crew-lead.ts";

async function opened() {
  const { app, post } = testApp();
  const { job } = (await (await post("/jobs", { key: "open-0001", brief: brief() })).json()) as { job: string };
  const state = async (id: string) => (await (await app.request(`/jobs/${id}.json`)).json()) as GuideState;
  const html = async (path: string) => (await (await app.request(path)).text()).replaceAll("&#39;", "'");
  const rehearse = async (id: string) => {
    const response = await app.request(`/jobs/${id}/rehearse`, {
      method: "POST",
      headers: { "content-type": "application/x-www-form-urlencoded", origin: "http://localhost" },
      body: "key=rehearse-0001",
    });
    return response.headers.get("location")!.split(/[/?]/)[2]!;
  };
  return { app, post, job, state, html, rehearse };
}
let site: Awaited<ReturnType<typeof opened>>;
beforeEach(async () => {
  site = await opened();
});

describe("a job rehearsed", () => {
  it("is a job of its own with the same calls, opened once for one press", async () => {
    const id = await site.rehearse(site.job);
    expect(id).not.toBe(site.job);
    expect(await site.rehearse(site.job)).toBe(id);
    const [real, rehearsed] = [await site.state(site.job), await site.state(id)];
    expect(rehearsed).toMatchObject({ rehearsal: true, title: real.title, progress: real.progress, call: real.call });
    expect(real.rehearsal).toBe(false);
  });
  it("has a crew that is made up: nobody of the real one is named in it", async () => {
    const [real, rehearsed] = [await site.state(site.job), await site.state(await site.rehearse(site.job))];
    const names = (of: GuideState) => of.people.map(({ name }) => name);
    expect(names(rehearsed).filter((name) => names(real).includes(name))).toEqual([]);
    expect(names(rehearsed)[0]).toBe("You");
  });
  it("is marked on every page, and the real one is not", async () => {
    const id = await site.rehearse(site.job);
    for (const page of ["", "/more", "/plan", "/amend"]) {
      expect(await site.html(`/jobs/${id}${page}`), page).toContain('class="rehearsal"');
      expect(await site.html(`/jobs/${site.job}${page}`), page).not.toContain('class="rehearsal"');
    }
    expect(await site.html("/")).toContain('class="rehearsal"');
  });
  it("shows unfolded at each call why it is done, what goes wrong, and how it is done well", async () => {
    const id = await site.rehearse(site.job);
    const { call } = await site.state(id);
    const page = await site.html(`/jobs/${id}?as=p1`);
    for (const text of [call!.why, call!.wrong, call!.well]) expect(page).toContain(`<dd>${text}</dd>`);
    expect(page).not.toContain('<details class="why">');
    expect(await site.html(`/jobs/${site.job}?as=p1`)).not.toContain(call!.wrong);
  });
  it("goes the whole way where a script plays everybody, gates and all, and stays one when its plan is changed", async () => {
    const { job: id } = (await (await site.post("/jobs", { key: "open-0009", brief: { ...brief(), rehearsal: true } })).json()) as {
      job: string;
    };
    const say = async (body: object) => {
      const response = await site.post(`/jobs/${id}/say`, body);
      return { status: response.status, body: await response.json() };
    };
    const changed = brief();
    changed.site.rallyPoint = "the barn door";
    const { revision } = await site.state(id);
    const told = (await say({ as: "Ines", key: "amend-00001", seen: revision, type: "amend", because: "muster moved", brief: changed }))
      .body as { entry: number };
    await say({ as: "Maren", key: "agree-00001", seen: revision, type: "agree", target: told.entry });
    expect((await site.state(id)).rehearsal).toBe(true);
    const { state } = await drive(
      () => site.state(id),
      say as never,
      (s) => s.closed,
    );
    expect(state.closed).toBe(true);
  });
  it("can be opened as one, by form and by script", async () => {
    const { job } = (await (await site.post("/jobs", { key: "open-0002", brief: { ...brief(), rehearsal: true } })).json()) as {
      job: string;
    };
    expect((await site.state(job)).rehearsal).toBe(true);
    const { frozen, names } = readBrief({ ...brief(), rehearsal: true });
    const body = new URLSearchParams(briefToForm(frozen.brief, names, en));
    const sent = await site.app.request("/jobs", { method: "POST", body, headers: { origin: "http://localhost" } });
    expect((await site.state(sent.headers.get("location")!.split("/").at(-1)!)).rehearsal).toBe(true);
  });
  it("of a job that is not there is said to be of none", async () => {
    const response = await site.app.request("/jobs/nothing-here/rehearse", {
      method: "POST",
      headers: { "content-type": "application/x-www-form-urlencoded", origin: "http://localhost", accept: "application/json" },
      body: "key=rehearse-0002",
    });
    expect(response.status).toBe(404);
  });
});
