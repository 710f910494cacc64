import { beforeEach, describe, expect, it } from "vitest";
import { brief, testApp } from "../support/app.ts";
import { filled } from "../support/filled.ts";
import { openedJob } from "../support/job.ts";

let world: ReturnType<typeof testApp>;
let job: string;
beforeEach(async () => {
  world = testApp();
  job = ((await (await world.post("/jobs", { key: "open-00001", brief: brief() })).json()) as { job: string }).job;
});
const headers = () => ({ origin: "http://localhost", cookie: `device=phone-of-p1; as-${job}=p1` });
const shown = async (part: string) => await (await world.app.request(`/jobs/${job}/amend?only=${part}`, { headers: headers() })).text();
const send = (part: string, fields: Record<string, string>) =>
  world.app.request(`/jobs/${job}/amend?only=${part}`, { method: "POST", body: new URLSearchParams(fields), headers: headers() });
const proposed = async () => {
  const { entry } = (await world.liveJobs.load(job)).entries.at(-1)!;
  return entry.kind === "command" && entry.command.type === "amend" ? entry.command.to.brief : null;
};

describe("only the part of a plan that a call refused over is changed", () => {
  it("the crew: its names and nothing else are asked, and the rest stays as it stands", async () => {
    const page = await shown("crew");
    expect([page.includes('name="crew.1.name"'), page.includes('name="tent.widthFt"'), page.includes('name="ticket.number"')]).toEqual([
      true,
      false,
      false,
    ]);
    const was = (await world.liveJobs.load(job)).job.frozen.brief;
    const fields = filled(page);
    expect((await send("crew", { ...fields, "crew.8.name": "Nell", "crew.8.role": "crew" })).status).toBe(303);
    const to = (await proposed())!;
    expect(to.crew.length).toBe(was.crew.length + 1);
    expect({ ...to, crew: [] }).toEqual({ ...was, crew: [] });
  });
  it("the ticket: a utility that answered since", async () => {
    const page = filled(await shown("ticket"));
    expect((await send("ticket", { ...page, "ticket.utilities.sewer": "unanswered" })).status).toBe(303);
    const to = (await proposed())!;
    expect(to.ticket!.utilities.at(-1)).toEqual({ kind: "sewer", marked: "unanswered" });
    expect(to.crew.length).toBe(brief().crew.length);
  });
  it("a head count that is off leads there, under the thumb", async () => {
    const crew = await openedJob(brief(), world);
    await crew.to((s) => s.step === "talk.headcount");
    await crew.say({ type: "answer", gate: "talk.headcount", value: { kind: "count", n: 9 } });
    expect((await crew.read()).gate!.cure).toEqual({ fixes: "crew", to: "amend?only=crew" });
    const guide = await (await world.app.request(`/jobs/${crew.job}`, { headers: { cookie: `as-${crew.job}=p1` } })).text();
    expect(guide).toContain(`href="/jobs/${crew.job}/amend?only=crew"`);
  });
  it("a ticket that is not in force leads to its own", async () => {
    const { ticket } = brief();
    const crew = await openedJob({ ...brief(), ticket: { ...ticket, validFrom: "2026-06-10", validTo: "2026-06-20" } }, world);
    await crew.to((s) => s.step === "locate.ticket");
    await crew.say({ type: "answer", gate: "locate.ticket", value: { kind: "document", named: ticket!.number } });
    expect((await crew.read()).gate).toMatchObject({ status: "early", cure: { fixes: "ticket" } });
  });
  it("sent twice is one change, and another one does not push it aside", async () => {
    const page = { ...filled(await shown("crew")), "crew.8.name": "Nell" };
    for (const _ of [1, 2]) expect((await send("crew", page)).status).toBe(303);
    const { entries } = await world.liveJobs.load(job);
    expect(entries.at(-1)!.entry.no).toBe(2);
    const other = await send("crew", { ...page, key: "another-key-1", "crew.8.name": "Bo" });
    expect([other.status, (await other.text()).includes('value="Bo"')]).toEqual([409, true]);
  });
  it("a crew of more than twelve keeps all of them", async () => {
    const crew = Array.from({ length: 20 }, (_, i) => ({
      name: `Hand ${String.fromCharCode(65 + i)}`,
      role: i === 0 ? "lead" : i === 1 ? "deputy" : "crew",
    }));
    job = ((await (await world.post("/jobs", { key: "open-00002", brief: { ...brief(), crew } })).json()) as { job: string }).job;
    const page = filled(await shown("crew"));
    await send("crew", { ...page, "crew.21.name": "Nell" });
    expect((await proposed())!.crew.length).toBe(21);
  });
});
