import { beforeEach, describe, expect, it } from "vitest";
import type { CommandEntry } from "../../machines/record/entry.ts";
import { sayTo } from "../../server/routes/say.ts";
import { en } from "../../views/text/en/en.ts";
import { brief } from "../support/briefs.ts";
import { walk } from "../support/crew-lead.ts";
import { type Guarded, guardedApp } from "../support/guarded.ts";
import { standOf } from "../support/stand.ts";
import { WEATHER_PLAN } from "../support/weather-plan.ts";

let site: Guarded;
let job: string;
let codes: { crew: string; leads: string };
beforeEach(async () => {
  site = await guardedApp();
  ({ job, codes } = await site.openJob());
});

const HOLD = { type: "hold" };
const last = async () => (await site.liveJobs.load(job)).entries.at(-1)!.entry as CommandEntry;
const log = async () => (await site.journal.access.events(100)).map(({ is }) => is);

describe("the code of a crew", () => {
  it("lets in a hand by their name, who holds the work from then on", async () => {
    const phone = site.browser();
    const page = await phone.text(`/join?code=${codes.crew.toLowerCase().replaceAll("-", " ")}`);
    expect(page).toContain("Jory");
    const led = await phone.post("/join", { code: codes.crew, person: "p4" });
    expect(led.headers.get("location")).toBe(`/jobs/${job}?as=p4`);
    expect(await phone.text(`/jobs/${job}?as=p4`)).toContain("Jory, crew");
    expect((await phone.say(job, "p4", HOLD)).status).toBe(303);
    expect(await last()).toMatchObject({ command: { type: "hold", by: "p4", role: "crew" }, outcome: { did: "held" } });
  });
  it("neither names nor lets in those who lead, answer for it, or look over it", async () => {
    const phone = site.browser();
    const page = await phone.text(`/join?code=${codes.crew}`);
    for (const name of ["Ines", "Tobias", "Maren", "Lasse"]) expect(page).not.toContain(name);
    const refused = await phone.post("/join", { code: codes.crew, person: "p1" });
    expect([refused.status, await refused.text()]).toEqual([403, expect.stringContaining("Ines can&#39;t get on with that code.")]);
    expect((await phone.say(job, "p1", HOLD)).status).toBe(403);
  });
  it("says nothing of who is on a job to a wrong one", async () => {
    const wrong = await site.browser().get("/join?code=AAA-AAA");
    expect([wrong.status, await wrong.text()]).toEqual([403, expect.not.stringContaining("Jory")]);
  });
});

describe("the code of those who lead", () => {
  it("lets the lead in, who drives", async () => {
    const phone = await site.joined(job, codes.leads, "p1");
    const { gate } = (await (await phone.get(`/jobs/${job}.json`)).json()) as { gate: { id: string } };
    await phone.say(job, "p1", { type: "answer", gate: gate.id, kind: "yesNo", value: "yes" });
    expect(await last()).toMatchObject({ command: { by: "p1", role: "lead" } });
  });
  it("of another job is wrong here", async () => {
    const other = await site.openJob();
    const phone = site.browser();
    const refused = await phone.post("/join", { job, code: other.codes.leads, person: "p1" });
    expect([refused.status, await refused.text()]).toEqual([403, expect.stringContaining("no code for this")]);
    expect((await phone.get(`/jobs/${job}`)).status).toBe(303);
  });
  it("once it is replaced, the old one lets nobody in, and whoever is on stays on", async () => {
    const lead = await site.joined(job, codes.leads, "p1");
    await lead.post(`/jobs/${job}/codes`, {});
    expect((await site.browser().get(`/join?code=${codes.leads}`)).status).toBe(403);
    expect((await lead.get(`/jobs/${job}/record`)).status).toBe(200);
    expect(await log()).toContain("codesChanged");
  });
  it("stands on its page as a square and in letters, with where phones find it", async () => {
    const page = await (await site.joined(job, codes.leads, "p1")).text(`/jobs/${job}/codes`);
    expect(page).toContain(codes.crew);
    expect(page).toContain(codes.leads);
    expect(page).toContain("http://ridgecall.test/join");
    expect(page.match(/<svg class="qr-code"/g)).toHaveLength(2);
  });
});

describe("one phone", () => {
  it("speaks as nobody but who joined on it, whatever it sends", async () => {
    const phone = await site.joined(job, codes.crew, "p4");
    const entries = (await site.liveJobs.load(job)).entries.length;
    for (const as of ["p1", "p2", "Ines", "p5", "p99", "", "__proto__", "constructor"]) {
      const refused = await phone.say(job, as, HOLD);
      expect([as, refused.status >= 400]).toEqual([as, true]);
    }
    expect((await site.liveJobs.load(job)).entries.length).toBe(entries);
    expect(await phone.text(`/jobs/${job}?as=p1`)).not.toContain("Ines, lead</a>");
  });
  it("serves two who joined on it, one after the other", async () => {
    const phone = await site.joined(job, codes.leads, "p1");
    await phone.post("/join", { job, code: codes.leads, person: "p3" });
    for (const as of ["p1", "p3"]) {
      await phone.say(job, as, { type: "note", text: `by ${as}` });
      expect(await last()).toMatchObject({ command: { by: as } });
    }
    const people = await phone.text(`/jobs/${job}/people`);
    expect(people).toContain("Maren");
    expect(people).not.toContain('value="p4"');
  });
  it("whose pass ran out sees the call no more, and still holds, tells of thunder and calls for help", async () => {
    const phone = await site.joined(job, codes.crew, "p4");
    site.pass(15 * 24 * 3600);
    const page = await phone.get(`/jobs/${job}`);
    expect([page.status, await page.text()]).toEqual([403, expect.stringMatching(/pass ran out.*HOLD.*hurt/s)]);
    expect((await phone.get(`/jobs/${job}/live`)).status).toBe(403);
    for (const [fields, did] of [
      [HOLD, "held"],
      [{ type: "reading", reading: "thunder" }, "read"],
      [{ type: "hurt", words: "a hand" }, "hurt"],
    ] as const) {
      await phone.say(job, "p4", fields);
      expect(await last()).toMatchObject({ outcome: { did }, command: { by: "p4" } });
    }
    const refused = await phone.say(job, "p4", { type: "note", text: "still here" });
    expect([refused.status, await refused.text()]).toEqual([403, expect.stringContaining("Only hold and help get through")]);
  });
  it("whose pass ran out sees how long thunder stops the work", async () => {
    const phone = await site.joined(job, codes.crew, "p4");
    site.pass(15 * 24 * 3600);
    await phone.say(job, "p4", { type: "reading", reading: "thunder", seconds: "12" });
    expect(await phone.text(`/jobs/${job}`)).toMatch(/Thunder .* min ago, .*2\.4 mi off.*<b data-left-s="\d+">/s);
  });
  it("with a forged or bent cookie is nobody, is told so, and it is logged", async () => {
    const phone = await site.joined(job, codes.leads, "p1");
    const [device = ""] = phone.device()!.split(".");
    const bent = [`${device}.${"0".repeat(64)}`, device, "nonsense", `other-device.${phone.device()!.split(".")[1]}`];
    for (const cookie of bent) {
      phone.setDevice(cookie);
      expect((await phone.get(`/jobs/${job}`)).status).toBe(303);
      expect((await phone.say(job, "p1", HOLD)).status).toBe(403);
      phone.setDevice(cookie);
      expect(await phone.text("/join")).toContain("is from another server");
    }
    expect(await log()).toContain("forgedCookie");
  });
  it("keeps its cookies from scripts and from other sites", async () => {
    const set = (await site.browser().post("/join", { job, code: codes.crew, person: "p4" })).headers.getSetCookie();
    expect(set.find((line) => line.startsWith("device-"))).toMatch(/HttpOnly.*SameSite=Lax|SameSite=Lax.*HttpOnly/);
  });
});

describe("a watcher", () => {
  it("sees nothing before the tent stands, and holds all the same", async () => {
    const crew = [
      { name: "Ines", role: "lead" },
      { name: "Tobias", role: "deputy" },
      { name: "Wanda", role: "watcher" },
    ];
    const watched = await site.openJob({ ...brief(), crew });
    const phone = await site.joined(watched.job, watched.codes.crew, "p3");
    const page = await phone.get(`/jobs/${watched.job}`);
    expect([page.status, await page.text()]).toEqual([403, expect.stringMatching(/isn&#39;t standing yet.*HOLD/s)]);
    await phone.say(watched.job, "p3", HOLD);
    expect((await site.liveJobs.load(watched.job)).entries.at(-1)!.entry).toMatchObject({ outcome: { did: "held" } });
  });
  it("is let in once the tent is looked over, and agrees to the weather plan on their own phone", async () => {
    const crew = [...brief().crew, { name: "Wanda", role: "watcher" }];
    const as = `p${crew.length}`;
    const watched = await site.openJob({ ...brief(), crew, weatherPlan: WEATHER_PLAN });
    const how = { source: "office", device: "office", speaks: () => "anything" as const } as const;
    const tell = async (body: object) => ({ status: 200, body: (await sayTo(site.liveJobs, watched.job, body, how, en)).reply });
    await walk(
      async () => standOf(await site.liveJobs.load(watched.job)),
      tell,
      ({ step }) => step === "storm.agreed",
    );
    const phone = await site.joined(watched.job, watched.codes.crew, as);
    const shown = await phone.get(`/jobs/${watched.job}`);
    const { revision } = (await (await phone.get(`/jobs/${watched.job}.json`)).json()) as { revision: number };
    await phone.say(watched.job, as, { type: "answer", gate: "storm.agreed", kind: "yesNo", value: "yes", seen: String(revision) });
    const { entry } = (await site.liveJobs.load(watched.job)).entries.at(-1)!;
    expect([shown.status, entry]).toEqual([200, expect.objectContaining({ outcome: expect.objectContaining({ did: "answered" }) })]);
    expect(entry).toMatchObject({ command: { by: as, role: "watcher", gate: "storm.agreed" } });
  });
});

describe("names and codes from outside", () => {
  it.each([
    ["5 kB", "x".repeat(5000)],
    ["markup", "<script>alert(1)</script>"],
    ["an inherited name", "__proto__"],
    ["nothing but dashes", "--- ---"],
  ])("a code that is %s is answered with the page that asks for one, and nothing of it stands there unescaped", async (_what, code) => {
    const answer = await site.browser().get(`/join?${new URLSearchParams({ code })}`);
    expect(answer.status).toBeLessThan(500);
    expect(await answer.text()).not.toContain("<script>alert");
  });
  it.each(["x".repeat(5000), "<b>p4</b>", "__proto__", "constructor", "p99"])("a person %s is nobody on the job", async (person) => {
    const answer = await site.browser().post("/join", { code: codes.leads, person });
    expect(answer.status).toBe(403);
  });
});
