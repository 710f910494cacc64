import { beforeEach, describe, expect, it } from "vitest";
import { createAccess } from "../../server/access/access.ts";
import { createEntrance } from "../../server/access/entrance.ts";
import { DEMO_KEY } from "../../server/demo.ts";
import { memoryJournal } from "../../server/journal/memory.ts";
import { brief } from "../support/briefs.ts";
import { type Guarded, guardedApp, PASSPHRASE } from "../support/guarded.ts";

let site: Guarded;
beforeEach(async () => {
  site = await guardedApp();
});
const HOLD = { as: "Ines", key: "hold-00001", seen: 1, type: "hold" };

/** A token, as its page shows it once. */
async function tokenOf(guarded = site, name = "nightly list"): Promise<string> {
  const office = guarded.browser();
  await office.signIn();
  const page = await (await office.post("/office/tokens", { name })).text();
  return /rcall-[0-9a-f-]+/.exec(page)![0];
}
const bearer = (token: string) => ({ authorization: `Bearer ${token}` });

describe("the office", () => {
  it("signs in with its passphrase, is led to where it wanted, and nowhere else", async () => {
    const office = site.browser();
    expect((await office.get("/findings")).headers.get("location")).toBe("/office/in?to=%2Ffindings");
    expect((await office.post("/office/in", { passphrase: PASSPHRASE, to: "/findings" })).headers.get("location")).toBe("/findings");
    for (const to of ["//elsewhere.test", "https://elsewhere.test", "/\\elsewhere.test", "javascript:alert(1)"])
      expect((await site.browser().post("/office/in", { passphrase: PASSPHRASE, to })).headers.get("location")).toBe("/");
  });
  it("is out after a day's work", async () => {
    const office = site.browser();
    await office.signIn();
    site.pass(13 * 3600);
    expect((await office.get("/findings")).status).toBe(303);
  });
  it("changes its passphrase with the one in use, and the old one is none", async () => {
    const office = site.browser();
    await office.signIn();
    const short = await office.post("/office/passphrase", { now: PASSPHRASE, next: "short" });
    expect([short.status, await short.text()]).toEqual([422, expect.stringContaining("5 characters. Take 12 to 200")]);
    const wrong = await office.post("/office/passphrase", { now: "not this one", next: "a new one for autumn" });
    expect(wrong.status).toBe(403);
    expect(await (await office.post("/office/passphrase", { now: PASSPHRASE, next: "a new one for autumn" })).text()).toContain(
      "The passphrase is changed, and every other desk is out.",
    );
    expect((await site.browser().signIn()).status).toBe(403);
    expect((await site.browser().signIn("a new one for autumn")).status).toBe(303);
  });
  it("gets in once by the link that is printed at the start", async () => {
    const office = site.browser();
    expect((await office.get("/office/first?key=nonsense")).status).toBe(403);
    expect((await office.get(`/office/first?key=${site.firstLink.key}`)).status).toBe(303);
    expect((await office.get("/findings")).status).toBe(200);
    expect((await site.browser().get(`/office/first?key=${site.firstLink.key}`)).status).toBe(403);
  });
  it("has a passphrase made for it where nobody set one, and it is told once", async () => {
    const world = { ...site.world, journal: memoryJournal() };
    const { firstPassphrase } = createEntrance(createAccess(world), world.clock);
    expect(await firstPassphrase(null)).toMatch(/^([2-9A-HJ-KM-NP-Z]{3}-){4}[2-9A-HJ-KM-NP-Z]{3}$/);
    expect(await firstPassphrase(null)).toBeNull();
  });
  it("sees who came in, and names the events in words", async () => {
    const { job, codes } = await site.openJob();
    await site.joined(job, codes.crew, "p4", "198.51.100.4");
    await site.browser("198.51.100.5").get("/join?code=AAAAAA");
    const office = site.browser();
    await office.signIn();
    const page = await office.text("/office");
    for (const text of ["Got on a job", "from 198.51.100.4", "Wrong code", "from 198.51.100.5", "Signed in"]) expect(page).toContain(text);
  });
});

describe("a script with a token", () => {
  it("opens jobs and reads all there is", async () => {
    const token = await tokenOf();
    const script = site.browser();
    const opened = await script.json("/jobs", { key: "by-script-1", brief: brief() }, bearer(token));
    expect(opened.status).toBe(201);
    const { job } = (await opened.json()) as { job: string };
    for (const path of [
      "/jobs.json",
      "/findings.json",
      "/tents.json",
      `/jobs/${job}.json`,
      `/jobs/${job}/record.json`,
      `/jobs/${job}/truck.csv`,
    ])
      expect([path, (await script.get(path, { headers: bearer(token) })).status]).toEqual([path, 200]);
  });
  it("speaks for no crew on a real job, and for all in a rehearsal", async () => {
    const token = await tokenOf();
    const real = await site.openJob();
    const refused = await site.browser().json(`/jobs/${real.job}/say`, HOLD, bearer(token));
    expect([refused.status, await refused.json()]).toMatchObject([403, { problem: expect.stringContaining("Ines") }]);
    const practice = await site.openJob({ ...brief(), rehearsal: true });
    expect((await site.browser().json(`/jobs/${practice.job}/say`, HOLD, bearer(token))).status).toBe(200);
  });
  it("revoked, bent or missing is a stranger, and is logged", async () => {
    const token = await tokenOf();
    const office = site.browser();
    await office.signIn();
    const [kept] = await site.journal.access.tokens();
    await office.post("/office/tokens/revoke", { id: kept!.id });
    for (const shown of [token, `${token}0`, "rcall-none", ""])
      expect((await site.browser().get("/jobs.json", { headers: bearer(shown) })).status).toBe(403);
    expect((await site.browser().get("/jobs.json")).status).toBe(403);
    expect((await site.journal.access.events(50)).map(({ is }) => is)).toEqual(expect.arrayContaining(["wrongToken", "tokenRevoked"]));
  });
  it("is kept as a hash alone", async () => {
    const token = await tokenOf();
    expect(JSON.stringify(await site.journal.access.tokens())).not.toContain(token.split("-")[2]);
  });
  it("needs a name of some substance and of no more than 60 characters", async () => {
    const office = site.browser();
    await office.signIn();
    for (const name of ["", "  ", "x".repeat(5000)]) expect((await office.post("/office/tokens", { name })).status).toBe(422);
  });
});

it("a command as somebody without a token or a pass is refused, and nothing is recorded", async () => {
  const { job } = await site.openJob();
  const refused = await site.browser().json(`/jobs/${job}/say`, HOLD);
  expect(refused.status).toBe(403);
  expect((await site.liveJobs.load(job)).entries.length).toBe(1);
});

describe("a server on this machine alone, without settings", () => {
  it("lets whoever sits there play the demo as anybody, and nothing else", async () => {
    const alone = await guardedApp("thisMachine");
    const office = alone.browser();
    await office.signIn();
    const { job } = (await (await office.json("/jobs", { key: DEMO_KEY, brief: brief() })).json()) as { job: string };
    const other = await alone.openJob();
    const newcomer = alone.browser();
    expect(await newcomer.text("/")).toContain(`/jobs/${job}`);
    expect(await newcomer.text(`/jobs/${job}?as=p1`)).toContain("Ines, lead");
    expect((await newcomer.say(job, "p1", { type: "hold" })).status).toBe(303);
    expect((await newcomer.get(`/jobs/${other.job}`)).status).toBe(303);
    expect(await newcomer.text("/")).not.toContain(other.job);
    expect((await newcomer.get("/findings")).status).toBe(303);
  });
});

it("a server for trials says so on every page", async () => {
  const trials = await guardedApp("trials");
  const job = (await (await trials.browser().json("/jobs", { key: "trial-0001", brief: brief() })).json()) as { job: string };
  for (const path of [
    "/",
    "/findings",
    "/tents",
    "/join",
    `/jobs/${job.job}`,
    `/jobs/${job.job}/more`,
    `/jobs/${job.job}/record`,
    `/jobs/${job.job}/truck`,
  ])
    expect([path, await trials.browser().text(path)]).toEqual([path, expect.stringMatching(/TRIALS|Trial server/)]);
  const real = await guardedApp();
  expect(await real.browser().text("/")).not.toMatch(/TRIALS|Trial server/);
});
