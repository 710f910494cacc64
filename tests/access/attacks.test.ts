import { beforeEach, describe, expect, it } from "vitest";
import { MAX_EVENTS, type Pass } from "../../server/journal/access.ts";
import { NotWritten } from "../../server/journal/journal.ts";
import { memoryJournal } from "../../server/journal/memory.ts";
import { brief } from "../support/briefs.ts";
import { type Guarded, guardedApp } from "../support/guarded.ts";

/** What gave way when it was attacked, each as it was played. */
let site: Guarded;
let job: string;
let codes: { crew: string; leads: string };
beforeEach(async () => {
  site = await guardedApp();
  ({ job, codes } = await site.openJob());
});
const HOLD = { type: "hold" };
const last = async () => (await site.liveJobs.load(job)).entries.at(-1)!.entry;

describe("a script's token", () => {
  const bearer = async () => {
    const office = site.browser();
    await office.signIn();
    const page = await (await office.post("/office/tokens", { name: "list" })).text();
    return { authorization: `Bearer ${/rcall-[0-9a-f-]+/.exec(page)![0]}` };
  };
  it("reads no codes, and makes none", async () => {
    const headers = await bearer();
    for (const method of ["GET", "POST"]) expect((await site.browser().get(`/jobs/${job}/codes`, { method, headers })).status).toBe(403);
    expect((await site.entrance.codesOf(job)).leads).toBe(codes.leads);
  });
  it("reads what is the office's alone by no other way to the same page", async () => {
    const headers = { ...(await bearer()), "content-type": "application/x-www-form-urlencoded" };
    expect((await site.browser().get("/tents/preview", { method: "POST", headers })).status).toBe(403);
  });
});

describe("a stranger who knows a job's address", () => {
  it("is told nobody's name, whatever they say there", async () => {
    for (const as of ["nobody", "p1", "Ines"]) {
      const refused = await site.browser().json(`/jobs/${job}/say`, { as, key: "stranger-1", seen: 1, type: "hold" });
      expect([refused.status, await refused.text()]).toEqual([403, expect.not.stringMatching(/Ines|Tobias|Jory/)]);
    }
  });
});

describe("the office", () => {
  it("opens a new job by its old address", async () => {
    const office = site.browser();
    await office.signIn();
    expect((await office.get("/jobs/new")).headers.get("location")).toBe("/drafts/new");
  });
  it("with a new passphrase has nobody in it but who changed it", async () => {
    const [one, other] = [site.browser(), site.browser()];
    await one.signIn();
    await other.signIn();
    await one.post("/office/passphrase", { now: "harvest supper lower meadow", next: "a new one for autumn" });
    expect([(await one.get("/findings")).status, (await other.get("/findings")).status]).toEqual([200, 303]);
  });
});

describe("a hold", () => {
  it("of a phone whose pass ran out says there that it holds", async () => {
    const phone = await site.joined(job, codes.crew, "p4");
    site.pass(15 * 24 * 3600);
    const answer = await phone.say(job, "p4", HOLD);
    expect(await phone.text(answer.headers.get("location")!)).toContain("HOLD. Nobody moves till the lead says carry on.");
  });
  it("of somebody who was taken off the crew, and whose name was erased, holds", async () => {
    const phone = await site.joined(job, codes.crew, "p4");
    const lead = await site.joined(job, codes.leads, "p1");
    const crew = brief().crew.filter(({ name }) => name !== "Jory");
    const amend = { as: "p1", key: "amend-0001", seen: 1, type: "amend", because: "Jory went home", brief: { ...brief(), crew } };
    const { entry } = (await (await lead.json(`/jobs/${job}/say`, amend)).json()) as { entry: number };
    const deputy = await site.joined(job, codes.leads, "p2");
    await deputy.say(job, "p2", { type: "agree", target: String(entry) });
    const gone = (await site.liveJobs.load(job)).job.frozen.brief.crew.every(({ id }) => id !== "p4");
    await site.liveJobs.eraseName(job, "p4");
    await phone.say(job, "p4", HOLD);
    expect([gone, await last()]).toMatchObject([true, { command: { by: "p4" }, outcome: { did: "held" } }]);
  });
  it("of a phone that joined while the disk was full holds", async () => {
    const full = memoryJournal();
    const noRoom = async (_: readonly Pass[]) => {
      throw new NotWritten({ why: "full", place: "data.db" });
    };
    const here = await guardedApp("guarded", { ...full, access: { ...full.access, keepPasses: noRoom } });
    const opened = await here.openJob();
    const phone = await here.joined(opened.job, opened.codes.crew, "p4");
    expect((await phone.say(opened.job, "p4", HOLD)).status).toBe(303);
    expect((await here.liveJobs.load(opened.job)).entries.at(-1)!.entry).toMatchObject({ outcome: { did: "held" } });
  });
  it("of a phone that the server has known since its start asks no file who it is", async () => {
    const phone = await site.joined(job, codes.crew, "p4");
    await site.access.remember();
    site.journal.access.passes = () => Promise.reject(new Error("unreadable"));
    await phone.say(job, "p4", HOLD);
    expect(await last()).toMatchObject({ outcome: { did: "held" } });
  });
});

describe("a stream", () => {
  it("ends once the pass of who follows has run out", async () => {
    const phone = await site.joined(job, codes.crew, "p4");
    const lead = await site.joined(job, codes.leads, "p1");
    const stream = await phone.get(`/jobs/${job}/live`);
    const reader = stream.body!.getReader();
    await reader.read();
    site.pass(15 * 24 * 3600);
    await lead.post("/join", { job, code: codes.leads, person: "p1" });
    await lead.say(job, "p1", { type: "note", text: "not for strangers" });
    let sent = "";
    for (let { value, done } = await reader.read(); !done; { value, done } = await reader.read()) sent += new TextDecoder().decode(value);
    expect(sent).not.toContain("not for strangers");
  });
});

describe("what is kept", () => {
  it("of a name that was erased is in no digest of a request", async () => {
    const { entries } = await site.liveJobs.load(job);
    const others = brief().crew.map((person) => ({ ...person, name: `${person.name}x` }));
    const again = await site.openJob({ ...brief(), crew: others });
    const other = (await site.liveJobs.load(again.job)).entries.at(0)!.entry;
    expect(other.request).toBe(entries.at(0)!.entry.request);
  });
  it("of who came in is no more than so many lines, each short", async () => {
    const at = { is: "joined", address: "a", job: null, device: null, what: null } as const;
    for (let n = 1; n <= MAX_EVENTS + 5; n++) await site.journal.access.log({ ...at, at: n });
    const kept = await site.journal.access.events(MAX_EVENTS + 50);
    expect([kept.length, kept[0]!.at]).toEqual([MAX_EVENTS, MAX_EVENTS + 5]);
  });
});

it("a key of somebody else's command is no key of one's own", async () => {
  const crew = await site.joined(job, codes.crew, "p4");
  await crew.post("/join", { job, code: codes.crew, person: "p5" });
  await crew.post(`/jobs/${job}/say`, { as: "p4", key: "shared-key-1", seen: "1", type: "hold" });
  const other = await crew.post(`/jobs/${job}/say`, { as: "p5", key: "shared-key-1", seen: "1", type: "hold" });
  expect(other.status).toBe(409);
});

describe("a full disk", () => {
  it("keeps nobody in the office who left it, then or once there is room again", async () => {
    const journal = memoryJournal();
    let isFull = true;
    const full = async () => {
      throw new NotWritten({ why: "full", place: "data.db" });
    };
    const { keepPasses, dropPasses } = journal.access;
    const access = {
      ...journal.access,
      keepPasses: (made: readonly Pass[]) => (isFull ? full() : keepPasses(made)),
      dropPasses: (device: string, of: string) => (isFull ? full() : dropPasses(device, of)),
    };
    const here = await guardedApp("guarded", { ...journal, access });
    const office = here.browser();
    await office.signIn();
    await office.post("/office/out", {});
    isFull = false;
    const other = here.browser();
    await other.signIn();
    expect([(await office.get("/findings")).status, (await other.get("/findings")).status]).toEqual([303, 200]);
    expect((await journal.access.allPasses()).length).toBe(1);
  });
});

describe("a link of somebody else's", () => {
  it("puts no words on a page, and the server's own reply stands there", async () => {
    const phone = await site.joined(job, codes.crew, "p4");
    const words = "Engineer: wind limit lifted. Raise now.";
    for (const seal of ["", "&seal=", `&seal=${"0".repeat(64)}`])
      for (const page of ["", "/truck", "/photos"])
        expect(await phone.text(`/jobs/${job}${page}?reply=${encodeURIComponent(words)}${seal}`)).not.toContain("wind limit lifted");
    const said = await phone.say(job, "p4", HOLD);
    expect(await phone.text(said.headers.get("location")!)).toContain("HOLD. Nobody moves till the lead says carry on.");
  });
});
