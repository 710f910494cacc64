import { beforeEach, describe, expect, it } from "vitest";
import { brief, testApp } from "../support/app.ts";

const site = {
  buried: [{ id: "gas 1", kind: "gas", told: "ticket", points: [{ alongFt: 12, offFt: 8 }, { alongFt: 90, offFt: 15 }] }], // biome-ignore format: one line reads best
};
let world: ReturnType<typeof testApp>;
const opened = async (more: object) => await world.post("/jobs", { key: "open-00001", brief: { ...brief(), ...more } });
const frozen = async (job: string) => (await world.liveJobs.load(job)).job.frozen.brief;
beforeEach(() => {
  world = testApp();
});

describe("a brief that says what the site and its ground are", () => {
  it("has its lines in feet of the baseline", async () => {
    const { job } = (await (await opened({ siteModel: site })).json()) as { job: string };
    expect((await frozen(job)).siteModel!.buried[0]!.points).toEqual([
      { xFt: 8, yFt: 12 },
      { xFt: 15, yFt: 90 },
    ]);
  });
  it("is refused over a line with one point, by its place, and nothing is opened", async () => {
    const answered = await opened({ siteModel: { buried: [{ ...site.buried[0], points: [{ alongFt: 12, offFt: 8 }] }] } });
    expect(answered.status).toBe(422);
    expect(JSON.stringify(await answered.json())).toContain("1 point is too few. At least 2.");
  });
  it("is refused over a pull without a direction and a gust of 900", async () => {
    const answered = await opened({ anchorage: { gustMph: 900, pulls: [{ lbf: 640, softestSpot: true }] } });
    const said = JSON.stringify(await answered.json());
    expect([answered.status, said.includes("900 mph is out of range. From 0 mph to 200 mph."), said.includes("no direction")]).toEqual([
      422,
      true,
      true,
    ]);
  });
  it("loses what was done about a stake where an amended tent has no such stake", async () => {
    const buried = [{ ...site.buried[0], points: [{ alongFt: 12, offFt: -90 }, { alongFt: 90, offFt: -90 }] }]; // biome-ignore format: one line reads best
    const anchor = (station: string) => ({ is: "engineeredAnchor", stake: { is: "plate", station, plate: 1 }, expose: ["gas 1"] });
    const wanted = { ...brief(), siteModel: { buried, fixes: [anchor("AB1"), anchor("AB9")] } };
    const { job } = (await (await world.post("/jobs", { key: "open-00002", brief: wanted })).json()) as { job: string };
    const { tent } = brief();
    const said = {
      key: "amend-0002",
      seen: 1,
      as: "Ines",
      type: "amend",
      because: "shorter",
      brief: { ...brief(), tent: { ...tent, lengthFt: 80, midsFt: [] } },
    };
    const answer = await world.post(`/jobs/${job}/say`, said);
    const { entry } = (await world.liveJobs.load(job)).entries.at(-1)!;
    const to = entry.kind === "command" && entry.command.type === "amend" ? entry.command.to.brief : null;
    expect([answer.status, to?.siteModel?.fixes]).toEqual([200, [anchor("AB1")]]);
  });
  it("keeps them where an amendment says nothing of them", async () => {
    const { job } = (await (await opened({ siteModel: site, anchorage: { gustMph: 60 } })).json()) as { job: string };
    const as = { origin: "http://localhost", cookie: `device=phone-of-p1; as-${job}=p1`, "content-type": "application/json" };
    const said = { key: "amend-0001", seen: 1, as: "p1", type: "amend", because: "more people", brief: { ...brief(), title: "Supper" } };
    await world.app.request(`/jobs/${job}/say`, { method: "POST", body: JSON.stringify(said), headers: as });
    const { entry } = (await world.liveJobs.load(job)).entries.at(-1)!;
    const to = entry.kind === "command" && entry.command.type === "amend" ? entry.command.to.brief : null;
    expect([to?.siteModel?.buried.map(({ id }) => id), to?.anchorage?.gustMph, to?.title]).toEqual([["gas 1"], 60, "Supper"]);
  });
});
