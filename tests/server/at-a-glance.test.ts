import { rmSync } from "node:fs";
import { join } from "node:path";
import Database from "libsql";
import { describe, expect, it } from "vitest";
import { FLAGS } from "../../machines/record/findings.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { brief, testApp } from "../support/app.ts";
import { lineAfter, openingLine } from "../support/entries.ts";
import { openedJob } from "../support/job.ts";
import { scratchFolder } from "../support/scratch.ts";

type World = ReturnType<typeof testApp>;
const page = async ({ app }: Pick<World, "app">) => (await app.request("/findings/jobs")).text();
const data = async ({ app }: Pick<World, "app">) =>
  (await (await app.request("/findings/jobs.json")).json()) as {
    jobs: { job: string; title: string; counts: Record<string, number>; times: { phase: string; ms: number }[]; lastHash: string }[];
    together: { jobs: number; counts: Record<string, number>; times: { phase: string; ms: number }[] };
    rehearsals: { title: string }[];
    unreadable: string[];
  };
/** A page's rows as they read: without tags, a space for each. */
const rows = (html: string) =>
  [...html.matchAll(/<tr[^>]*>(.*?)<\/tr>/gs)].map((m) =>
    m[1]!
      .replaceAll(/<[^>]*>/g, " ")
      .replaceAll(/\s+/g, " ")
      .trim(),
  );
const wrong = { type: "answer", gate: "sheet.atHand", value: { kind: "document", named: "RC-4040" } } as const;

async function twoJobs() {
  const world = testApp();
  const lower = await openedJob({ ...brief(), title: "Lower meadow" }, world);
  const upper = await openedJob({ ...brief(), title: "Upper meadow" }, world);
  await lower.say({ type: "next" });
  lower.say(wrong);
  await upper.say({ type: "next" });
  return { world, lower, upper };
}

describe("all jobs at a glance", () => {
  it("stand job by job, the newest first, with what each is and where it stands", async () => {
    const { world } = await twoJobs();
    const [, together, upper, lower] = rows(await page(world));
    expect(together).toMatch(/^All together 2 jobs 2 0 1 0 0 0 0 0 0 Utilities marked: \d+ s$/);
    expect(upper).toMatch(/^Upper meadow 80 × 100 ft, 2 entries Utilities marked 1 0 0 0 0 0 0 0 0 Utilities marked: \d+ s$/);
    expect(lower).toMatch(/^Lower meadow 80 × 100 ft, 3 entries Utilities marked 1 0 1 0 0 0 0 0 0 Utilities marked: \d+ s$/);
  });
  it("lead from each count to the record with only those entries, and nowhere from none", async () => {
    const { world, lower } = await twoJobs();
    const links = [...(await page(world)).matchAll(/href="(\/jobs\/[^"]*show=[^"]*)"/g)].map((m) => m[1]!);
    expect(links.filter((l) => l.includes(lower.job))).toEqual([
      `/jobs/${lower.job}/record?show=refused`,
      `/jobs/${lower.job}/record?show=outOfLimit`,
    ]);
    for (const link of links) expect(await (await world.app.request(link)).text()).toContain('class="marked');
  });
  it("follow every entry at once", async () => {
    const { world, upper } = await twoJobs();
    const before = (await data(world)).together.counts.refused!;
    await upper.say({ type: "next" });
    expect((await data(world)).together.counts.refused).toBe(before + 1);
  });
  it("have in their sums what the jobs have, phase by phase", async () => {
    const { world, upper } = await twoJobs();
    await upper.to((s) => s.phase === "anchorsSet");
    const { jobs, together } = await data(world);
    for (const mark of FLAGS) expect(together.counts[mark]).toBe(jobs.reduce((sum, j) => sum + j.counts[mark]!, 0));
    const spent = jobs.flatMap((j) => j.times).filter((t) => t.phase === "utilitiesMarked");
    expect(together.times.find((t) => t.phase === "utilitiesMarked")!.ms).toBe(spent.reduce((sum, t) => sum + t.ms, 0));
  });
  it("give each job's last hash, to be compared with a copy kept elsewhere", async () => {
    const { world, lower } = await twoJobs();
    expect((await data(world)).jobs.find((j) => j.job === lower.job)!.lastHash).toBe((await lower.entries()).at(-1)!.hash);
  });
  it("say that there is none where no job was opened", async () => expect(await page(testApp())).toContain("No job to look at yet."));
  it("are led to from what there is to look at, and show a person's words as text only", async () => {
    const world = testApp();
    await openedJob({ ...brief(), title: "<b>bold</b>" }, world);
    expect(await (await world.app.request("/findings")).text()).toContain('href="/findings/jobs"');
    expect(await page(world)).toContain("&lt;b&gt;bold&lt;/b&gt;");
  });
});

it("a rehearsal stands apart, marked, and in no sum", async () => {
  const { world } = await twoJobs();
  const before = (await data(world)).together;
  const trainee = await openedJob({ ...brief(), title: "Practice", rehearsal: true }, world);
  await trainee.say({ type: "next" });
  const { together, rehearsals, jobs } = await data(world);
  expect([together, rehearsals.map((r) => r.title), jobs.length]).toEqual([before, ["Practice"], 2]);
  const [real, practice] = (await page(world)).split("<h2>Rehearsals</h2>");
  expect([real!.includes("Practice"), practice!.includes("REHEARSAL"), practice!.includes("Practice")]).toEqual([false, true, true]);
});

describe("a job whose record is spoiled", () => {
  async function spoiled(sql: string, look: string[] = []) {
    const folder = scratchFolder("findings");
    const file = join(folder, "data.db");
    const journal = openJournal(file);
    for (const name of ["job-1", "job-2"]) {
      const opening = openingLine(name);
      await journal.open(opening, {});
      await journal.append(lineAfter(opening));
    }
    await journal.close();
    const db = new Database(file);
    db.exec(`DROP TRIGGER entries_stay; ${sql}`);
    db.close();
    const again = openJournal(file);
    const world = testApp(again);
    for (const path of look) await world.app.request(path);
    const seen = { html: await page(world), ...(await data(world)) };
    await again.close();
    rmSync(folder, { recursive: true });
    return seen;
  }
  it("in its opening is not left out: it is listed, with what to do", async () => {
    const { html, jobs, unreadable } = await spoiled("UPDATE entries SET bytes = x'00' WHERE job = 'job-2' AND no = 1");
    expect([jobs.map((j) => j.title), unreadable]).toEqual([["Tent of job-1"], ["job-2"]]);
    expect(html).toMatch(/Record cannot be read\.<\/b> The first entry of job job-2 .*Put your last copy of the data file in its place/);
  });
  it("further on is counted up to there once it was looked at, and says so", async () => {
    const { html, jobs } = await spoiled("UPDATE entries SET bytes = x'00' WHERE job = 'job-2' AND no = 2", ["/jobs/job-2/record"]);
    expect(jobs).toHaveLength(2);
    expect(html).toContain("Entry 2 does not fit the chain. It and what follows are not counted.");
  });
});

it("2,000 jobs are told from what is kept of them: the journal is asked once, and gives no entry", async () => {
  const kept = sqliteJournal(":memory:");
  for (let n = 0; n < 2000; n++) await kept.open(openingLine(`job-${n}`), {});
  const asked: string[] = [];
  const counting = new Proxy(kept, {
    get: (journal, name: keyof typeof kept) => {
      asked.push(name);
      return journal[name];
    },
  });
  const world = testApp(counting);
  asked.length = 0;
  const html = await page(world);
  expect([asked, rows(html).length]).toEqual([["folds"], 2002]);
});
