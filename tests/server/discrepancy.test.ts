import { beforeEach, describe, expect, it } from "vitest";
import { type OpenedJob, openedJob } from "../support/job.ts";

const FORM = { "content-type": "application/x-www-form-urlencoded", origin: "http://localhost" };

describe("the cloth or the site says otherwise", () => {
  let crew: OpenedJob;
  let rings: number;
  let counts: Record<string, number>;
  beforeEach(async () => {
    crew = await openedJob();
    await crew.to((s) => s.step === "marked");
    const { edges } = (await crew.liveJobs.load(crew.job)).job.frozen.plan;
    rings = edges[0]!.rings;
    counts = Object.fromEntries(edges.map((e) => [e.name, e.rings]));
  });
  const post = async (fields: Record<string, string>) => {
    const answer = await crew.app.request(`/jobs/${crew.job}/discrepancy?as=p1`, {
      method: "POST",
      headers: FORM,
      body: new URLSearchParams(fields).toString(),
    });
    return { status: answer.status, html: await answer.text(), to: answer.headers.get("location") ?? "" };
  };
  const hidden = (html: string) =>
    Object.fromEntries(
      [...html.matchAll(/<input type="hidden" name="([^"]+)" value="([^"]*)"/g)].map(([, name, value]) => [name!, value!]),
    );
  /** Every edge's marks as the plan has them, but for one. */
  const marksBut = (edge: string, n: number) => ({ ...counts, [edge]: n });
  const found = (): Record<string, string> => ({
    what: "rings",
    edge: "AB",
    counted: String(rings + 1),
    because: "counted twice, the cloth has one more",
  });

  it("a count that is out of the plan leads there, filled in", async () => {
    expect((await crew.read()).gate!.cure).toBeNull();
    await crew.say({ type: "answer", gate: "marked", value: { kind: "figures", unit: "count", n: marksBut("AB", rings + 1) } });
    const { gate } = await crew.read();
    expect(gate!.cure).toEqual({ fixes: "plan", to: `discrepancy?what=rings&edge=AB&counted=${rings + 1}` });
    const page = await (await crew.app.request(`/jobs/${crew.job}/${gate!.cure!.to}`)).text();
    expect(page).toContain(`name="counted" value="${rings + 1}"`);
  });

  it("a count of rings in the cloth that is out of the plan leads there too", async () => {
    await crew.to((s) => s.step === "rings");
    await crew.say({ type: "answer", gate: "rings", value: { kind: "figures", unit: "count", n: marksBut("CD", rings - 1) } });
    expect((await crew.read()).gate!.cure?.to).toBe(`discrepancy?what=rings&edge=CD&counted=${rings - 1}`);
  });

  it("no other figure that is out of its limit leads there", async () => {
    await crew.to((s) => s.step === "stakes.size");
    const n = { thinnest: 0.5, shortest: 42 };
    await crew.say({ type: "answer", gate: "stakes.size", value: { kind: "figures", unit: "in", n } });
    expect((await crew.read()).gate).toMatchObject({ id: "stakes.size", status: "outOfLimit", cure: null });
  });

  it("shows what would change, what is asked again and where it goes on; nothing is recorded yet", async () => {
    const before = (await crew.entries()).length;
    const { status, html } = await post(found());
    expect(status).toBe(200);
    expect(html).toContain(`AB: ${rings + 1} rings, not ${rings}.`);
    expect(html).toMatch(/Stake plates: \d+, not \d+\./);
    expect(html).toContain("answers are asked again");
    expect(html).toContain("The guide goes on at: ");
    expect((await crew.entries()).length).toBe(before);
  });

  it("put forward by the lead and agreed to by a second person, it is the plan; both versions stay in the record", async () => {
    const shown = await post(found());
    const put = await post({ ...hidden(shown.html), put: "yes" });
    expect(put.status).toBe(303);
    expect(decodeURIComponent(put.to)).toContain(`AB: ${rings + 1} rings, not ${rings}.`);
    const proposed = (await crew.read()).proposed!;
    expect(proposed.changes[0]).toBe(`AB: ${rings + 1} rings, not ${rings}.`);
    expect((await crew.say({ type: "agree", target: proposed.entry }, "p1")).outcome).toEqual({ refused: [{ why: "sameAsProposer" }] });
    expect((await crew.say({ type: "agree", target: proposed.entry }, "p6")).outcome).toHaveProperty("refused");
    expect((await crew.say({ type: "agree", target: proposed.entry }, "p3")).outcome).toEqual({ did: "amended" });
    const { job } = await crew.liveJobs.load(crew.job);
    expect(job.frozen.plan.edges[0]!.rings).toBe(rings + 1);
    const record = (await (await crew.app.request(`/jobs/${crew.job}/record.json`)).json()) as { entries: never[] };
    const plans = JSON.stringify(
      record.entries.flatMap((e: { opened?: object; command?: { to?: object } }) => e.opened ?? e.command?.to ?? []),
    );
    expect(plans).toContain(`"rings":${rings},`);
    expect(plans).toContain(`"rings":${rings + 1},`);
  });

  it("each version can be looked at by its entry, and says that it is not the plan in force", async () => {
    const shown = await post(found());
    await post({ ...hidden(shown.html), put: "yes" });
    const { entry } = (await crew.read()).proposed!;
    const plan = async (no: number | string) => {
      const page = await crew.app.request(`/jobs/${crew.job}/layout?entry=${no}`);
      return { status: page.status, html: await page.text() };
    };
    expect((await plan(entry)).html).toContain(`This is the plan of entry ${entry} of the record.`);
    expect((await plan(1)).html).not.toContain("This is the plan of entry");
    await crew.say({ type: "agree", target: entry }, "p3");
    expect((await plan(1)).html).toContain("This is the plan of entry 1 of the record.");
    expect((await plan(entry)).html).not.toContain("This is the plan of entry");
    expect(await (await crew.app.request(`/jobs/${crew.job}/record`)).text()).toContain(`/layout?entry=${entry}`);
    for (const none of [2, 0, "one"]) expect((await plan(none)).status, String(none)).toBe(404);
  });

  it("changes nothing else: the ticket's times, the crew and the sheet stay as they were to the letter", async () => {
    const { brief } = (await crew.liveJobs.load(crew.job)).job.frozen;
    const shown = await post(found());
    await post({ ...hidden(shown.html), put: "yes" });
    await crew.say({ type: "agree", target: (await crew.read()).proposed!.entry }, "p3");
    const { tent, ...rest } = (await crew.liveJobs.load(crew.job)).job.frozen.brief;
    const { tent: wasTent, ...was } = brief;
    expect(rest).toEqual(was);
    expect(tent).toEqual({ ...wasTent, rings: { AB: rings + 1 } });
  });

  it("a pole more and the same pole fewer leave the plan as it was", async () => {
    const { plan } = (await crew.liveJobs.load(crew.job)).job.frozen;
    const agree = async (fields: Record<string, string>) => {
      const shown = await post({ ...fields, because: "as the cloth is" });
      expect(shown.status, shown.html).toBe(200);
      await post({ ...hidden(shown.html), put: "yes" });
      expect((await crew.say({ type: "agree", target: (await crew.read()).proposed!.entry }, "p3")).outcome).toEqual({ did: "amended" });
      return (await crew.liveJobs.load(crew.job)).job.frozen.plan;
    };
    const more = await agree({ what: "poleMore", kind: "quarter", along: "10 ft 6 in", across: "30" });
    expect(more.poles.length).toBe(plan.poles.length + 1);
    const added = more.poles.find((p) => p.row === "added")!;
    expect(added).toMatchObject({ xFt: 30, yFt: 10.5, kind: "quarter" });
    expect(await agree({ what: "poleFewer", pole: added.id })).toEqual(plan);
  });

  it("a corner is moved from where it is wanted now, once and once more", async () => {
    const move = async (fields: Record<string, string>) => {
      const shown = await post({ what: "corner", corner: "C", because: "a root", ...fields });
      await post({ ...hidden(shown.html), put: "yes" });
      await crew.say({ type: "agree", target: (await crew.read()).proposed!.entry }, "p3");
    };
    await move({ away: "", toward: "-6" });
    await move({ away: "3 1/2 in", toward: "-6 in" });
    expect((await crew.liveJobs.load(crew.job)).job.frozen.brief.tent.shifted).toEqual({ C: { xFt: 0.291667, yFt: -1 } });
  });

  it.each([
    [{ what: "rings", edge: "AB", counted: "300" }, /300 rings along AB/],
    [{ what: "rings", edge: "AB", counted: "a few" }, /&quot;a few&quot; is not a number/],
    [{ what: "rings", edge: "AB", counted: "" }, /Nothing is given here\. It takes a number\./],
    [{ what: "poleMore", kind: "quarter", along: "500", across: "30" }, /outside the tent/],
    [{ what: "poleFewer", pole: "Z9" }, /There is no pole &quot;Z9&quot;/],
    [{ what: "corner", corner: "C", away: "40", toward: "0" }, /more than cloth gives/],
  ])("%o is refused with the value and why, and what was typed stays", async (fields, why) => {
    const { status, html } = await post({ ...fields, because: "because" });
    expect(status).toBe(422);
    expect(html).toMatch(why);
    if ("counted" in fields) expect(html).toContain(`name="counted" value="${fields.counted}"`);
    expect(html).toContain('value="because"');
  });
  it("without a reason it is asked for", async () => {
    const { status, html } = await post({ ...found(), because: " " });
    expect(status).toBe(422);
    expect(html).toContain("Empty. Fill it in.");
  });
  it("something that nobody can say otherwise is refused", async () =>
    expect((await post({ what: "weather", because: "x" })).status).toBe(422));
});

describe("anything else of the plan, by the form of the whole job", () => {
  it("shows what would change before it is put forward", async () => {
    const crew = await openedJob();
    const form = await (await crew.app.request(`/jobs/${crew.job}/amend?as=p1`)).text();
    const given = Object.fromEntries(
      [...form.matchAll(/<input[^>]* name="([^"]+)"[^>]* value="([^"]*)"/g)].map(([, name, value]) => [name!, value!]),
    );
    const chosen = Object.fromEntries(
      [...form.matchAll(/<select[^>]* name="([^"]+)"[^>]*>(.*?)<\/select>/g)].map(([, name, options]) => [
        name!,
        /<option value="([^"]*)" selected/.exec(options!)?.[1] ?? /<option value="([^"]*)"/.exec(options!)![1]!,
      ]),
    );
    const answer = await crew.app.request(`/jobs/${crew.job}/amend?as=p1`, {
      method: "POST",
      headers: FORM,
      body: new URLSearchParams({ ...given, ...chosen, "site.rallyPoint": "the barn door", show: "changes", because: "cattle" }).toString(),
    });
    const html = await answer.text();
    expect(html).toContain("<li>Rally point: the barn door; was gate 3, by the road.</li>");
    expect(html.match(/<div class="changes">.*?<\/ul>/)![0].match(/<li>/g)).toHaveLength(1);
    expect((await crew.entries()).length).toBe(1);
  });
});

describe("a job that was closed while a change waited", () => {
  it("is shown as it ended, takes no change any more, and says so", async () => {
    const crew = await openedJob();
    const { frozen } = (await crew.liveJobs.load(crew.job)).job;
    await crew.to((s) => s.step === "strike.ground");
    await crew.say({ type: "amend", because: "a ring more", to: frozen });
    expect((await crew.read()).proposed).not.toBeNull();
    await crew.to((s) => s.closed);
    const page = await crew.app.request(`/jobs/${crew.job}?as=p1`);
    expect([page.status, (await crew.read()).proposed]).toEqual([200, null]);
    const sent = { what: "rings", edge: "AB", counted: "12", because: "one more", show: "changes" };
    for (const path of ["discrepancy", "amend"]) {
      const body = new URLSearchParams(sent).toString();
      const answer = await crew.app.request(`/jobs/${crew.job}/${path}?as=p1`, { method: "POST", headers: FORM, body });
      expect([path, answer.status, await answer.text()]).toEqual([path, 409, expect.stringContaining("The job is closed.")]);
    }
  });
});
