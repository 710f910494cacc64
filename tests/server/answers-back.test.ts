import { describe, expect, it } from "vitest";
import { storyOf } from "../../machines/rehearsal/story.ts";
import { brief } from "../support/app.ts";
import { rehearsalSite, textOf } from "../support/rehearsal.ts";

const LED = { way: "lead", trouble: "several", seed: "4" } as const;
const AT_POLES = { ...LED, from: "interiorRaised" } as const;

describe("a rehearsal that answers back", () => {
  it("begins where it was asked to, everything before it done as it should be", async () => {
    const site = await rehearsalSite(AT_POLES);
    const { step, thread } = await site.state();
    expect(step).toBe("poles.pinned");
    expect(thread.every(({ refused }) => !refused)).toBe(true);
  });
  it("is the same day again with the same seed", async () => {
    const site = await rehearsalSite(LED);
    const again = await site.rehearse(LED);
    const other = await site.rehearse({ ...LED, seed: "5" });
    const story = async (id: string) => storyOf((await site.liveJobs.load(id)).job.frozen);
    expect(await story(again.id)).toEqual(await story(site.id));
    expect(await story(other.id)).not.toEqual(await story(site.id));
  });
  it("tells what is to be seen where something is asked, and what is right only where it is walked", async () => {
    const led = (await (await rehearsalSite(LED)).state()).site!;
    const walked = (await (await rehearsalSite({ ...LED, way: "walk" })).state()).site!;
    expect(led.look).toMatch(/^You look: .+\.$/);
    expect(led.right).toBeNull();
    expect(walked.right).toBe(`Answer what you see: ${led.look!.slice("You look: ".length)}`);
  });
  it("plays the second person, by somebody else and on no phone of the player's", async () => {
    const site = await rehearsalSite({ from: "interiorRaised" });
    for (const value of ["12", "2", "2"]) {
      const { gate } = await site.state();
      await site.say({ type: "answer", gate: gate!.id, kind: "count", value });
    }
    for (let n = 0; n < 12 && !(await site.state()).step.startsWith("under.quarters.line-1"); n++) {
      const { gate } = await site.state();
      const yes = gate!.check.kind === "yesNo";
      await site.say({ type: "answer", gate: gate!.id, kind: yes ? "yesNo" : "measure", unit: "in", value: yes ? "yes" : "3" });
    }
    const out = (await site.liveJobs.load(site.id)).job.snapshot.context.answers["out.quarters.hip-DA"]!;
    expect(out).toMatchObject({ value: { kind: "count", n: 2 } });
    expect(out.by).not.toBe("p1");
    expect(out.device).toMatch(/^played-/);
  });
  it("lets time go by at a press, and tells in the thread that it did", async () => {
    const site = await rehearsalSite(LED);
    const before = (await site.liveJobs.load(site.id)).now.at;
    expect((await site.wait("30")).status).toBe(303);
    const live = await site.liveJobs.load(site.id);
    expect(live.now.at - before).toBeGreaterThanOrEqual(30 * 60_000);
    expect((await site.state()).thread.at(-1)!.said).toContain("30 minutes go by");
  });
  it("stands still between presses where it is walked, and runs where it is led", async () => {
    for (const [way, runs] of [
      ["walk", false],
      ["lead", true],
    ] as const) {
      const site = await rehearsalSite({ ...LED, way });
      const before = (await site.liveJobs.load(site.id)).now.at;
      site.clock.pass(600);
      expect((await site.liveJobs.load(site.id)).now.at - before >= 600_000, way).toBe(runs);
    }
  });
  it("goes on after a restart as if no time had passed, with no clock in doubt", async () => {
    const site = await rehearsalSite(LED);
    await site.wait("120");
    const before = (await site.liveJobs.load(site.id)).now;
    const again = site.restart(5);
    const after = await again.liveJobs.load(site.id);
    expect(after.now.at - before.at).toBeLessThan(60_000);
    expect(after.jump).toBeNull();
    expect(after.readOnly).toBeNull();
  });
  it("is over when it was really ended, however much time it made up, and rehearsed once more on the day that it is", async () => {
    const site = await rehearsalSite(LED);
    for (let n = 0; n < 14; n++) await site.wait("120");
    await site.player.send(`/jobs/${site.id}/look-back`, { key: site.key() });
    const row = await site.journal.learning.rehearsalOf(site.id);
    expect(row!.over!.at).toBeLessThanOrEqual(site.now());
    const again = await site.player.send(`/jobs/${site.id}/rehearse`, { key: site.key() });
    const id = again.headers.get("location")!.split(/[/?]/)[2]!;
    const { ticket } = (await site.liveJobs.load(id)).job.frozen.brief;
    expect(ticket!.validFrom).toBeLessThan(site.now());
    expect((await site.journal.learning.rehearsalOf(id))!.at).toBeLessThanOrEqual(site.now());
  });
  it("is ended before it is gone over, and then gone over moment by moment", async () => {
    const site = await rehearsalSite(AT_POLES);
    expect(await site.player.text(`/jobs/${site.id}/look-back`)).toContain("End it and go over it");
    // Twelve are there; eleven is no truth, and only stops.
    await site.say({ type: "answer", gate: "poles.pinned", kind: "count", value: "11" });
    await site.player.send(`/jobs/${site.id}/look-back`, { key: site.key() });
    const page = await site.player.text(`/jobs/${site.id}/look-back`);
    for (const text of [
      "Safe, and not what was there",
      "You said</b> How many with every joint pinned? 11",
      "You look: 12.",
      "Answer what you see: 12.",
    ])
      expect(page).toContain(text);
    expect(await site.journal.learning.rehearsalOf(site.id)).toMatchObject({ seed: 4, way: "lead", over: { unsafe: 0, whole: false } });
  });
});

describe("a rehearsal, badly asked for or badly used", () => {
  it.each(["none", "0", "1000000", "-3", "4.5"])("says that %s is no seed, and opens nothing", async (seed) => {
    const site = await rehearsalSite();
    const { answer } = await site.rehearse({ seed });
    expect(answer.status).toBe(422);
    expect(await answer.text()).toContain("is no seed. Type a whole number, 1 to 999999, or leave it empty.");
  });
  it("says which ways there are where it is asked for another", async () => {
    const site = await rehearsalSite();
    const { answer } = await site.rehearse({ way: "run" });
    expect([answer.status, await textOf(answer)]).toEqual([422, expect.stringContaining("is none of these: walk, lead. Pick one.")]);
  });
  it("takes nothing once it is over, but a hold", async () => {
    const site = await rehearsalSite(LED);
    await site.player.send(`/jobs/${site.id}/look-back`, { key: site.key() });
    const late = await site.say({ type: "next" });
    expect([late.status, await textOf(late)]).toEqual([
      409,
      expect.stringContaining("This rehearsal is over. Go over it, or start another one."),
    ]);
    expect((await site.wait("5")).status).toBe(409);
    expect((await site.say({ type: "hold" })).status).toBe(303);
  });
  it("runs on one phone: another one is told so, and may hold", async () => {
    const site = await rehearsalSite(LED);
    await site.say({ type: "next" });
    const other = site.phone();
    const second = await site.say({ type: "next" }, other);
    expect([second.status, await textOf(second)]).toEqual([
      409,
      expect.stringContaining("This rehearsal runs on another phone. Start one of your own."),
    ]);
    expect((await site.say({ type: "hold" }, other)).status).toBe(303);
    expect((await site.state()).held).not.toBeNull();
  });
  it("lets nobody speak for the crew that it plays", async () => {
    const site = await rehearsalSite(LED);
    const answer = await site.say({ as: "p2", type: "next" });
    expect([answer.status, await textOf(answer)]).toEqual([
      403,
      expect.stringContaining("Dell is played by the program here. Speak as the lead."),
    ]);
  });
  it("leaves alone what was said since where the form that opened it is sent once more", async () => {
    const site = await rehearsalSite();
    const fields = { ...LED, key: "again-0001" };
    const { id } = await site.rehearse(fields);
    const moved = async () => (await site.stateOf(id)).entry;
    const { revision, gate } = await site.stateOf(id);
    await site.player.send(`/jobs/${id}/say`, {
      as: "p1",
      seen: String(revision),
      key: site.key(),
      type: "answer",
      gate: gate!.id,
      kind: "document",
      value: gate!.limit,
    });
    const before = await moved();
    expect(before).toBe(2);
    const again = await site.rehearse(fields);
    expect([again.id, await moved()]).toEqual([id, before]);
  });
  it("has no questions of its own: they are asked on the job that it was made from, under one's own name", async () => {
    const site = await rehearsalSite(LED);
    for (const fields of [undefined, { key: site.key() }]) {
      const answer = await site.player.send(`/jobs/${site.id}/learn`, fields);
      expect([answer.status, answer.headers.get("location")]).toEqual([303, `/jobs/${site.job}/learn`]);
    }
    expect(await site.journal.learning.learners()).toEqual([]);
  });
  it("says how long can be waited, and that a real job has no made-up time", async () => {
    const site = await rehearsalSite(LED);
    expect(await (await site.wait("999")).text()).toContain("Type whole minutes, 1 to 120.");
    const real = await site.player.send(`/jobs/${site.job}/wait`, { as: "p1", seen: "1", key: site.key(), minutes: "5" });
    expect([real.status, await textOf(real)]).toEqual([409, expect.stringContaining("This is a real job. Time isn't made up here.")]);
  });
  it("of a job that was taken away meanwhile is gone over all the same, and none is begun from it", async () => {
    const site = await rehearsalSite(LED);
    await site.liveJobs.remove(site.job);
    await site.player.send(`/jobs/${site.id}/look-back`, { key: site.key() });
    const page = await site.player.text(`/jobs/${site.id}/look-back`);
    expect(page).toContain("The job this was made from is gone. The rehearsal stays.");
    const { answer } = await site.rehearse({ seed: "9" });
    expect(answer.status).toBe(404);
  });
  it("is ended and gone over though who led it was erased meanwhile", async () => {
    const site = await rehearsalSite();
    await site.player.send(`/jobs/${site.job}?as=p6`);
    const { id } = await site.rehearse(LED);
    await site.journal.learning.forget((await site.liveJobs.load(site.job)).names.p6!);
    await site.player.send(`/jobs/${id}/look-back`, { key: site.key() });
    const page = await site.player.text(`/jobs/${id}/look-back`);
    expect(page).toContain("How long it took counts for nothing.");
    expect(page).not.toContain("is gone");
    expect(await site.journal.learning.rehearsalOf(id)).toMatchObject({ learner: "", from: "" });
  });
  it("that was taken away itself is said to be gone", async () => {
    const site = await rehearsalSite(LED);
    await site.liveJobs.remove(site.id);
    expect((await site.player.send(`/jobs/${site.id}/look-back`)).status).toBe(404);
    expect((await site.wait("5")).status).toBe(404);
  });
  it("is not begun a thirty-first time in a day by the same learner", async () => {
    const site = await rehearsalSite();
    const { learning } = site.journal;
    const { id: learner } = await learning.learner((await site.liveJobs.load(site.job)).names.p6!, "learner-6");
    const row = { from: site.job, learner, way: "walk", trouble: "none", seed: 1, at: site.now(), over: null } as const;
    for (let n = 0; n < 30; n++) await learning.startRehearsal({ ...row, job: `practice-${n}` });
    await site.player.send(`/jobs/${site.job}?as=p6`);
    const { answer } = await site.rehearse();
    expect([answer.status, await textOf(answer)]).toEqual([429, expect.stringContaining("30 rehearsals in a day is enough.")]);
  });
  it("begins no later than where something is asked that nobody knows", async () => {
    const site = await rehearsalSite();
    const { job } = (await (await site.post("/jobs", { key: "open-0002", brief: { ...brief(), sheet: null } })).json()) as { job: string };
    const answer = await site.player.send(`/jobs/${job}/rehearse`, { key: site.key(), from: "tensioned" });
    expect([answer.status, await textOf(answer)]).toEqual([409, expect.stringContaining("Not known yet on this job: the tent's sheet.")]);
    const first = await site.player.send(`/jobs/${job}/rehearse`, { key: site.key() });
    expect(first.status).toBe(303);
  });
});

describe("a rehearsal beside real jobs", () => {
  it("is in no finding, no count, no forecast and no export of them", async () => {
    const site = await rehearsalSite(LED);
    for (let n = 0; n < 8; n++) await site.say({ type: "next" });
    await site.say({ type: "reading", reading: "wind", mph: "40", gustMph: "60" });
    expect(await site.player.text("/findings.json")).not.toContain(site.id);
    const { jobs: listed, together } = JSON.parse(await site.player.text("/findings/jobs.json")) as { jobs: unknown; together: object };
    expect(JSON.stringify(listed)).not.toContain(site.id);
    expect(together).toMatchObject({ jobs: 1, entries: 1 });
    const real = async (path: string) => (await site.app.request(`/jobs/${site.job}/${path}`)).text();
    const forecast = async () => {
      const { at: _, ...told } = JSON.parse(await real("time.json")) as { at: string };
      return told;
    };
    const before = { time: await forecast(), record: await real("record.csv") };
    await site.player.send(`/jobs/${site.id}/look-back`, { key: site.key() });
    expect({ time: await forecast(), record: await real("record.csv") }).toEqual(before);
    const jobs = (await (await site.app.request("/jobs.json")).json()) as { jobs: { id: string; rehearsal?: boolean }[] };
    expect(JSON.stringify(jobs)).toContain(site.id);
  });
});
