import { beforeEach, describe, expect, it } from "vitest";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { brief, testApp } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";
import { textsOf } from "../support/page-text.ts";
import { plainBrowser } from "../support/plain-forms.ts";

const PAGES = ["", "/more", "/plan", "/truck", "/time", "/layout", "/record", "/discrepancy", "/amend"];
const { address, firstAid, rallyPoint } = brief().site;

describe("somebody is hurt", () => {
  let job: OpenedJob;
  beforeEach(async () => {
    job = await openedJob();
  });
  const page = async (path: string, on = job) => textsOf(await (await on.app.request(`/jobs/${on.job}${path}`)).text()).join("\n");
  const told = async (body: object, on = job) => {
    const seen = (await on.read()).revision;
    const answer = await on.post(`/jobs/${on.job}/say`, { key: `hurt-${Math.random().toString(36).slice(2)}`, seen, as: "Jory", ...body });
    return { status: answer.status, ...((await answer.json()) as { reply: string; went: string }) };
  };

  it.each(PAGES)("the page %s says so first: who told it, where to send help, who meets it, first aid, the rally point", async (path) => {
    expect(await page(path)).not.toContain("HURT: CALL 911");
    await told({ heard: "Pia is hurt" });
    const text = await page(path);
    for (const part of ["HURT: CALL 911", address, firstAid, rallyPoint, "Tobias: meet the ambulance at the road."])
      expect(text).toContain(part);
    expect(text).toMatch(/Jory told it at \d\d:\d\d\./);
    expect(text).toContain('"Pia is hurt"');
  });

  it("the loading list that is open on another phone gets it at once", async () => {
    await told({ heard: "somebody's hurt" });
    const stream = await job.app.request(`/jobs/${job.job}/truck/live`);
    const reader = stream.body!.getReader();
    const { value } = await reader.read();
    await reader.cancel();
    expect(new TextDecoder().decode(value)).toContain("HURT: CALL 911");
  });

  it("the reply says the address at once, in at most twenty words", async () => {
    const { reply } = await told({ type: "hurt", words: "pressed" });
    expect(reply).toContain(`HOLD. Call 911: ${address}`);
    expect(reply.split(/\s+/).length).toBeLessThanOrEqual(20);
  });

  it("of a long address the first aid place gives way, never the address", async () => {
    const long = "Gate 4 behind the second barn of the old county fairground, off Mill Lane, past the white church, Elder Falls";
    const on = await openedJob({ ...brief(), site: { ...brief().site, address: long } }, testApp());
    expect((await told({ type: "hurt", words: "pressed" }, on)).reply).toBe(`HOLD. Call 911: ${long}.`);
  });

  it("whoever told it stays with them, and whoever is named may be the one: somebody else meets the ambulance", async () => {
    const meets = async (as: string, heard: string) => {
      const on = await openedJob(brief(), testApp());
      await told({ as, heard }, on);
      return (await on.read()).hurt!.meets;
    };
    expect(await meets("Ines", "somebody's hurt")).toBe("Tobias");
    expect(await meets("Tobias", "somebody's hurt")).toBe("Jory");
    expect(await meets("Jory", "Tobias is hurt")).toBe("Pia");
  });

  it("a press says no words that nobody said", async () => {
    await told({ type: "hurt", words: "pressed" });
    expect((await job.read()).hurt!.said).toBeNull();
    expect((await job.read()).thread.at(-1)!.said).toBe("Somebody's hurt");
  });

  it("in a rehearsal it says that nobody is called for nothing", async () => {
    const on = await openedJob({ ...brief(), rehearsal: true }, testApp());
    await told({ type: "hurt", words: "pressed" }, on);
    expect(await page("", on)).toContain("Rehearsal. Call only if somebody really is hurt.");
  });

  it.each(PAGES)("is never more than two presses away on %s", async (path) => {
    await job.app.request(`/jobs/${job.job}?as=p1`);
    const html = await (await job.app.request(`/jobs/${job.job}${path}`)).text();
    const press = /<input type="hidden" name="type" value="hurt"/;
    const way = html.includes(`href="/jobs/${job.job}/more"`);
    expect(press.test(html) || (way && press.test(await (await job.app.request(`/jobs/${job.job}/more`)).text()))).toBe(true);
  });

  it("nor while something waits to be confirmed", async () => {
    await job.to((s) => s.step === "talk.headcount");
    const headers = { "content-type": "application/json", cookie: "device=phone-of-p1" };
    const { revision: seen } = await job.read();
    const spoken = { as: "p1", key: "six-00001", seen, alternatives: ["six"], talk: true, readBack: null };
    await job.app.request(`/jobs/${job.job}/say`, { method: "POST", headers, body: JSON.stringify(spoken) });
    const html = await (await job.app.request(`/jobs/${job.job}?as=p1`, { headers })).text();
    expect(html).toContain('class="read-back"');
    expect(html).toContain(`href="/jobs/${job.job}/more"`);
  });

  it("is told in one press by whoever says who they are, on a screen that is nobody's yet", async () => {
    const html = await (await job.app.request(`/jobs/${job.job}/more`)).text();
    const forms = html.split("<form").filter((form) => form.includes('name="type" value="hurt"'));
    const ids = forms.map((form) => /name="as" value="(\w+)"/.exec(form)?.[1]);
    expect(ids).toEqual((await job.read()).people.map(({ id }) => id));
  });

  it("without scripts: pressed under More, carried on only with what became of it, hold beside it", async () => {
    const browser = plainBrowser(job.app);
    const held = async (): Promise<GuideState> => job.read();
    await browser.open(`/jobs/${job.job}?as=p1`);
    await browser.open(`/jobs/${job.job}/more`);
    const [first] = browser.forms("hurt-one");
    expect(first!.fields).toMatchObject({ type: "hurt", words: "pressed" });
    await browser.send(first!);
    expect((await held()).hurt).not.toBeNull();
    const [main] = browser.forms("main");
    expect(main!.open).toEqual(["became"]);
    expect(browser.forms("hold")).toHaveLength(1);
    await browser.send(main!, { became: " " });
    expect(browser.text("notice")).toBe("Somebody's hurt. Carry on, and say what became of it.");
    expect((await held()).held).not.toBeNull();
    await browser.send(browser.forms("main")[0]!, { became: "cut hand, taken to the clinic" });
    expect(await held()).toMatchObject({ hurt: null, held: null });
    expect((await held()).thread.at(-1)!.said).toBe("Carry on: cut hand, taken to the clinic");
    expect(browser.text("hurt")).toBe("");
  });
});

describe("an alarm by press", () => {
  it("beside the wind: thunder, a warning, rain, everybody out; and a wind with its gust and where it blows from", async () => {
    const job = await openedJob();
    const browser = plainBrowser(job.app);
    const pressed = async (fits: (fields: Readonly<Record<string, string>>) => boolean) => {
      await browser.open(`/jobs/${job.job}/weather?as=p1`);
      await browser.send(browser.forms("tiles").find(({ fields }) => fits(fields))!);
      return (await job.liveJobs.load(job.job)).entries.at(-1)!.entry;
    };
    await browser.open(`/jobs/${job.job}?as=p1`);
    for (const kind of ["thunder", "warning", "rain"])
      expect(await pressed((f) => f.reading === kind)).toMatchObject({
        command: { type: "reading", reading: { kind } },
        outcome: { did: "read" },
      });
    expect(await pressed((f) => f.type === "makeSafe")).toMatchObject({ command: { type: "makeSafe", because: "everybody out" } });
    const headers = { "content-type": "application/x-www-form-urlencoded", origin: "http://localhost" };
    const wind = { as: "p1", seen: "1", key: "wind-00001", type: "reading", reading: "wind", mph: "8", gustMph: "12", fromDeg: "225" };
    await job.app.request(`/jobs/${job.job}/say`, { method: "POST", headers, body: new URLSearchParams(wind) });
    expect((await job.liveJobs.load(job.job)).job.snapshot.context.wind).toMatchObject({ mph: 8, gustMph: 12, fromDeg: 225 });
    expect(await (await job.app.request(`/jobs/${job.job}/wind`)).text()).toContain('<option value="225">SW</option>');
  });
});
