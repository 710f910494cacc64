import { rmSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { describe, expect, it } from "vitest";
import { openJournal } from "../../server/journal/open-file.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import type { HomeState, ListedJob } from "../../views/pages/home/state.ts";
import { brief, testApp } from "../support/app.ts";
import { openingLine } from "../support/entries.ts";
import { openedJob } from "../support/job.ts";
import { named as people } from "../support/people.ts";
import { scratchFolder } from "../support/scratch.ts";

type World = ReturnType<typeof testApp>;
const HOUR_S = 3600;
const at = (q: string) => `?q=${encodeURIComponent(q)}`;
const page = async ({ app }: Pick<World, "app">, q = "") => (await app.request(`/${at(q)}`)).text();
const jobs = async ({ app }: Pick<World, "app">, q = ""): Promise<readonly ListedJob[]> =>
  ((await (await app.request(`/jobs.json${at(q)}`)).json()) as HomeState).jobs;
const titles = async (world: Pick<World, "app">, q = "") => (await jobs(world, q)).map(({ title }) => title);

const named = (title: string, address: string, lead: string) => {
  const told = brief();
  return {
    ...told,
    title,
    site: { ...told.site, address },
    crew: told.crew.map((person) => (person.role === "lead" ? { ...person, name: lead } : person)),
  };
};
async function threeJobs() {
  const world = testApp();
  const fair = await openedJob(named("County fair", "Larch Lane 4", "Ines"), world);
  const quay = await openedJob(named("Boat parade", "Long quay", "José"), world);
  const lawn = await openedJob(named("Choir night", "The bishop's lawn", "Maren-Ann"), world);
  return { world, fair, quay, lawn };
}

describe("the list of jobs", () => {
  it("says of each what, where, how far, who leads, the weather, the last word and what stands out", async () => {
    const world = testApp();
    const job = await openedJob(named("County fair", "Larch Lane 4", "Ines"), world);
    await job.say({ type: "next" });
    await job.say({ type: "reading", reading: { kind: "wind", mph: 8, gustMph: 11, fromDeg: 225, takenAt: world.now(), place: null } });
    const [listed] = await jobs(world);
    expect(listed).toMatchObject({
      title: "County fair",
      size: "80 × 100 ft",
      address: "Larch Lane 4",
      toward: "Toward: utilities marked",
      lead: "Ines",
      weather: { is: "workable", words: "Wind OK when read", reading: expect.stringMatching(/^07:00: 8 gusting 11 mph from SW$/) },
      last: { by: "Ines", said: "Wind 8 gusting 11 mph from SW", clock: "07:00" },
      findings: 1,
      marks: [{ mark: "refused", name: "Refused", count: 1 }],
      today: true,
    });
    const html = await page(world);
    for (const told of ["Larch Lane 4", "Toward: utilities marked", "Wind OK when read", "8 gusting 11 mph from SW", "Refused: 1"])
      expect(html).toContain(told);
    expect(html).toContain(`href="/jobs/${job.job}/record?show=refused"`);
  });
  it("has those with an entry today at their site first, then the newest", async () => {
    const { world, fair } = await threeJobs();
    world.clock.pass(30 * HOUR_S);
    expect(await titles(world)).toEqual(["Choir night", "Boat parade", "County fair"]);
    await fair.say({ type: "next" });
    expect(await titles(world)).toEqual(["County fair", "Choir night", "Boat parade"]);
    expect(await page(world)).toMatch(/Today.*County fair.*Before today.*Choir night/s);
  });
  it("counts as today what is today where the tent stands", async () => {
    const world = testApp();
    await openedJob({ ...named("Harbor", "Quay", "Ines"), zone: "Europe/London" }, world);
    await openedJob({ ...named("Prairie", "Section 9", "Ines"), zone: "America/Chicago" }, world);
    // From 7 in the morning to 10 at night in Chicago; past midnight in London.
    world.clock.pass(15 * HOUR_S);
    expect((await jobs(world)).map(({ title, today }) => [title, today])).toEqual([
      ["Prairie", true],
      ["Harbor", false],
    ]);
  });
  it("does not let a reading grow old in words: it says when it was read, and then that it is too old", async () => {
    const world = testApp();
    const job = await openedJob(brief(), world);
    await job.say({ type: "reading", reading: { kind: "wind", mph: 8, gustMph: 11, fromDeg: null, takenAt: world.now(), place: null } });
    world.clock.pass(HOUR_S);
    expect((await jobs(world))[0]!.weather).toMatchObject({
      is: "unknown",
      words: "Wind reading too old",
      reading: "07:00: 8 gusting 11 mph",
    });
    world.clock.pass(24 * HOUR_S);
    expect((await jobs(world))[0]!.weather!.reading).toBe("Tue 2 Jun 07:00: 8 gusting 11 mph");
  });
  it("takes no reading for fresh where the clock went back behind the last entry", async () => {
    const world = testApp();
    const job = await openedJob(brief(), world);
    await job.say({ type: "reading", reading: { kind: "wind", mph: 8, gustMph: 11, fromDeg: null, takenAt: world.now(), place: null } });
    world.clock.setWall(-2 * HOUR_S);
    expect((await jobs(world))[0]!.weather!.is).toBe("unknown");
  });
  it("says what stops work, until when where that is known, and that somebody is hurt or holds it", async () => {
    const world = testApp();
    const job = await openedJob(brief(), world);
    await job.say({ type: "reading", reading: { kind: "thunder", takenAt: world.now() } }, "Odd");
    await job.say({ type: "hold" }, "Odd");
    expect(await page(world)).toMatch(/STOP: lightning, not before 07:3\d.*ON HOLD/s);
    await job.say({ type: "hurt", words: "her arm" }, "Odd");
    expect(await page(world)).toContain("SOMEBODY HURT");
  });
  it("has rehearsals apart, marked", async () => {
    const world = testApp();
    await openedJob({ ...brief(), title: "Practice", rehearsal: true }, world);
    await openedJob(named("County fair", "Larch Lane 4", "Ines"), world);
    expect(await page(world)).toMatch(/County fair.*<h2>Rehearsals<\/h2>.*REHEARSAL.*Practice/s);
  });
  it("names nobody whose name was erased, but by the id that the record has", async () => {
    const journal = sqliteJournal(":memory:");
    const world = testApp({ ...journal, allNames: async () => new Map() });
    await openedJob(brief(), world);
    expect((await jobs(world))[0]!.lead).toBe("p1");
  });
});

describe("a search", () => {
  it.each([
    ["a title", "parade", ["Boat parade"]],
    ["a place", "larch lane", ["County fair"]],
    ["a lead, however it is written", "JOSÉ", ["Boat parade"]],
    ["a size", "80 100", ["Choir night", "Boat parade", "County fair"]],
    ["words in any order, from several of them", "jose\u0301 boat", ["Boat parade"]],
    ["nothing but spaces", "   ", ["Choir night", "Boat parade", "County fair"]],
  ])("finds by %s", async (_, q, found) => {
    const { world } = await threeJobs();
    expect(await titles(world, q)).toEqual(found);
  });
  it("that finds nothing says so, and leads back to all", async () => {
    const { world } = await threeJobs();
    const html = await page(world, "regatta");
    expect(html).toContain("No job for &quot;regatta&quot;.");
    expect(html).toContain('<a href="/">Show all jobs</a>');
    expect(html).not.toContain("County fair");
  });
  it("stands in its field again, and is text wherever it is shown", async () => {
    const { world } = await threeJobs();
    const html = await page(world, `"><script>alert(1)</script>`);
    expect(html).not.toContain("<script>alert");
    expect(html).toContain('value="&quot;&gt;&lt;script&gt;alert(1)&lt;/script&gt;"');
  });
  it("is cut where it is longer than any name", async () => {
    const { world } = await threeJobs();
    expect(((await (await world.app.request(`/jobs.json${at("x".repeat(5000))}`)).json()) as HomeState).q).toHaveLength(80);
  });
});

it("what people wrote is text: a title, a place, a name, a note", async () => {
  const world = testApp();
  const job = await openedJob(named("<b>fair</b>", "<i>lane</i>", "Ines"), world);
  await job.say({ type: "note", text: "<u>gate open</u>" });
  expect(await page(world)).not.toMatch(/<b>fair|<i>lane|<u>gate/);
});

it("a job whose fold was written by an older program is listed with all of it once its file is opened", async () => {
  const folder = scratchFolder("old-fold");
  const file = join(folder, "data.db");
  const journal = openJournal(file);
  await openedJob(named("County fair", "Larch Lane 4", "Ines"), testApp(journal));
  const { glance, ...old } = (await journal.folds())[0]!.fold!;
  await journal.close();
  const db = new Database(file);
  db.exec(`UPDATE folds SET version = 5, body = x'${Buffer.from(JSON.stringify(old)).toString("hex")}'`);
  db.close();

  const again = openJournal(file);
  expect((await jobs(testApp(again)))[0]).toMatchObject({ address: "Larch Lane 4", lead: "Ines", last: { said: "Job opened" } });
  await again.close();
  rmSync(folder, { recursive: true });
});

it("2,000 jobs are listed from what is kept of them: folds and names are asked for once, and no entry is read", async () => {
  const kept = sqliteJournal(":memory:");
  for (let n = 0; n < 2000; n++) await kept.open(openingLine(`job-${n}`), people({ p1: `Lead ${n}` }));
  const asked: string[] = [];
  const counting = new Proxy(kept, {
    get: (journal, name: keyof typeof kept) => {
      asked.push(name);
      return journal[name];
    },
  });
  const world = testApp(counting);
  asked.length = 0;
  expect(await titles(world, "Tent of job-1999")).toEqual(["Tent of job-1999"]);
  expect(asked).toEqual(["folds", "allNames"]);
});
