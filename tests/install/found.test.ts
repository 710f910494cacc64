import { describe, expect, it } from "vitest";
import { contextOf, replyTo } from "../../machines/conversation/reply-to.ts";
import type { Role } from "../../machines/install/brief.ts";
import { type Found, named } from "../../machines/install/found.ts";
import { foundIn } from "../../machines/install/found-in.ts";
import { gistOf } from "../../machines/record/glance.ts";
import { frozenBefore } from "../../machines/record/in-force.ts";
import { briefOf, frozenOf, SMALL } from "../proof/fixtures.ts";
import { Crew } from "../support/crew.ts";
import { KeptJob } from "../support/kept-job.ts";
import { FAR_OFF, NEAR_AB1, onSite } from "../support/site-briefs.ts";
import { at, wire } from "../support/sites.ts";

const line = { ...NEAR_AB1, id: "gas 1", told: "found" } as const;
const GAS: Found = { is: "buried", line };
const tell = (crew: Crew, what: Found = GAS, role: Role = "lead") =>
  crew.say({ type: "found", what, to: foundIn(crew.job.frozen, what) }, role);

describe("a line that was found", () => {
  it.each(["trainee", "watcher", "crew"] as const)("counts at once, whoever tells it: a %s", (role) => {
    const crew = new Crew().goTo("drive.AB");
    expect(tell(crew, GAS, role)).toMatchObject({ did: "found" });
    expect(crew.job.frozen.brief.siteModel?.buried.map(({ id }) => id)).toEqual(["gas 1"]);
  });
  it("shuts the way on where stakes are being driven, and is what every phone asks next", () => {
    const crew = new Crew().goTo("drive.AB");
    tell(crew, GAS, "crew");
    expect(crew.missing).toBe("site.stakes");
    for (const by of ["lead", "deputy"] as const)
      expect(crew.next(by)).toMatchObject({ refused: [{ why: "gate", gate: "site.stakes", asked: "again" }] });
  });
  it("is corrected by a lead and a second person, and the job goes on where it stood", () => {
    const crew = new Crew().goTo("drive.AB");
    tell(crew);
    expect(crew.amend(frozenOf(onSite({ buried: [{ ...FAR_OFF, id: "gas 1" }] })))).toEqual({ did: "amended" });
    expect(crew.goTo("drive.BC").call).toBe("drive.BC");
  });
  it("makes what was shown before out of date on every screen", () => {
    const crew = new Crew().goTo("drive.AB");
    const seen = crew.revision;
    tell(crew);
    expect(crew.say({ type: "next" }, "deputy", { seen })).toMatchObject({ refused: [{ why: "movedOn" }] });
  });
  it("takes the guide away from nobody under the cloth: what they do is finished first", () => {
    const crew = new Crew().goTo("under.center.C1");
    crew.oneMore();
    for (let i = 0; i < 20 && !crew.job.snapshot.context.answers["under.center.C1"]; i++) crew.oneMore();
    const call = crew.call;
    expect(tell(crew)).toMatchObject({ did: "found" });
    expect(crew.call).toBe(call);
    expect(crew.missing ?? "").not.toMatch(/^site\.|marks/);
  });
  it("drops a change that waits: it was made for the site as it was known before", () => {
    const crew = new Crew().goTo("drive.AB");
    const target = crew.entry;
    crew.say({ type: "amend", because: "shorter", to: frozenOf(onSite({})) });
    tell(crew);
    expect(crew.say({ type: "agree", target }, "competent")).toEqual({ refused: [{ why: "noProposal" }] });
  });
  it("is refused with anything else in it: another title, another plan, a looser limit", () => {
    const crew = new Crew().goTo("drive.AB");
    const to = foundIn(crew.job.frozen, GAS);
    const others = [
      { ...to, brief: { ...to.brief, title: "Supper" } },
      { ...to, plan: frozenOf(briefOf({ ...SMALL, spacingFt: 20 })).plan },
      { ...to, limits: { ...to.limits, stopGustMph: { ...to.limits.stopGustMph, is: 60 } } },
      foundIn(to, { is: "buried", line: { ...line, id: "gas 2" } }),
    ];
    for (const other of others) expect(crew.say({ type: "found", what: GAS, to: other })).toEqual({ refused: [{ why: "notOnlyFound" }] });
  });
  it("leaves a wire of the same voltage on the list: whether the two are one is for two people to say", () => {
    const crew = new Crew(briefOf(SMALL, { site: { overheadKv: [7.2] } })).goTo("overhead.1");
    const found = { is: "overhead", line: wire([at(300, 0), at(300, 50)], { id: "overhead 1" }) } as const;
    const gate = (id: string) => crew.job.frozen.script.steps.find((step) => step.id === id)?.gate?.check;
    const before = gate("overhead.1");
    expect(tell(crew, found, "trainee")).toMatchObject({ did: "found" });
    expect([gate("overhead.1"), gate("overhead.2")]).toMatchObject([before, { kind: "figures" }]);
  });
  it("is refused on a site that has as many lines as it may be told with, and stays flagged", () => {
    const lines = Array.from({ length: 500 }, (_, i) => ({ ...FAR_OFF, id: `water ${i}` }));
    const crew = new Crew(onSite({ buried: lines }));
    expect(tell(crew)).toEqual({ refused: [{ why: "siteFull", most: 500 }] });
  });
  it("is refused under a name that a line has already", () => {
    const crew = new Crew(onSite({ buried: [{ ...FAR_OFF, id: "gas 1" }] }));
    expect(tell(crew)).toEqual({ refused: [{ why: "notOnlyFound" }] });
  });
  it("takes no wire off the list by being one more", () => {
    const { frozen } = new Crew(briefOf(SMALL, { site: { overheadKv: [500, null] } })).job;
    const wired = foundIn(frozen, { is: "overhead", line: wire([at(90, 0), at(90, 50)], { id: "overhead 1" }) });
    expect(wired.limits.overheadFt.is).toEqual([...frozen.limits.overheadFt.is, 10]);
  });
});

describe("its names", () => {
  it("are the next of their kind that are free", () => {
    const { siteModel } = onSite({ buried: [line], overhead: [wire([at(0, 0), at(1, 1)], { id: "gas 2" })] });
    const { id: _, ...unnamed } = line;
    expect(named(siteModel, { is: "buried", line: unnamed })).toMatchObject({ line: { id: "gas 3" } });
    expect(named(siteModel, { is: "buried", line: { ...unnamed, kind: "reclaimedWater" } })).toMatchObject({
      line: { id: "reclaimed water 1" },
    });
  });
});

describe("its entry", () => {
  const kept = () => new KeptJob(briefOf(SMALL)).to("drive.AB");
  it("is what is in force from then on, spoken or pressed", () => {
    const pressed = kept();
    const { no } = pressed.say({ type: "found", what: GAS, to: foundIn(pressed.job.frozen, GAS) });
    expect(frozenBefore(no + 1, pressed.earlier).brief).toEqual(pressed.job.frozen.brief);
    const spoken = kept();
    const heard = spoken.say({ type: "readBack", intent: { type: "found", what: GAS, to: foundIn(spoken.job.frozen, GAS) } });
    expect(spoken.job.frozen.brief.siteModel).toBeUndefined();
    const confirmed = spoken.say({ type: "correct", target: heard.no });
    expect(confirmed.outcome).toMatchObject({ did: "found" });
    expect(frozenBefore(confirmed.no + 1, spoken.earlier).brief.siteModel?.buried).toHaveLength(1);
  });
  it("says what it shuts", () => {
    const job = kept();
    const entry = job.say({ type: "found", what: GAS, to: foundIn(job.job.frozen, GAS) });
    const then = {
      ...contextOf({ job: job.job, entries: [] as never, now: { at: job.at, wall: job.at, doubtMs: 0 } }, entry),
      earlier: job.earlier,
    };
    expect(replyTo(entry, then)).toMatchObject({ is: "found", shuts: [{ of: ["AB1"], distance: 18, wanted: 36 }], dropped: false });
  });
  it("says that a change which waited for a second person is dropped by it", () => {
    const job = kept();
    job.say({ type: "amend", because: "shorter", to: frozenOf(onSite({})) });
    job.say({ type: "note", text: "here" });
    const entry = job.say({ type: "found", what: GAS, to: foundIn(job.job.frozen, GAS) });
    const now = { at: job.at, wall: job.at, doubtMs: 0 };
    const then = { ...contextOf({ job: job.job, entries: [] as never, now }, entry), earlier: job.earlier };
    expect(replyTo(entry, then)).toMatchObject({ is: "found", dropped: true });
  });
  it("carries its plan once: not in what a list of jobs keeps of it", () => {
    const job = kept();
    const { command } = job.say({ type: "readBack", intent: { type: "found", what: GAS, to: foundIn(job.job.frozen, GAS) } });
    expect(JSON.stringify(gistOf(command)).length).toBeLessThan(500);
  });
});
