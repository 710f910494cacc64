import { bench, describe } from "vitest";
import { openDatabase } from "../../server/journal/data-file.ts";
import { journalIn, sqliteJournal } from "../../server/journal/sqlite.ts";
import { testApp } from "../support/app.ts";
import { lineAfter, openingLine } from "../support/entries.ts";
import { seedOversight } from "./seed-oversight.ts";

async function withJobs(jobs: number) {
  const journal = sqliteJournal(":memory:");
  for (let n = 0; n < jobs; n++) {
    const opening = openingLine(`job-${n}`);
    await journal.open(opening, {});
    await journal.append(lineAfter(opening));
  }
  return testApp(journal);
}
/** What is kept of so many jobs of 200 entries each, without the entries: no page reads them. */
function overseen(jobs: number) {
  const db = openDatabase(":memory:");
  const journal = journalIn(db, ":memory:");
  seedOversight(db, jobs);
  return testApp(journal);
}
const [few, many] = [await withJobs(200), await withJobs(2000)];
const [hundred, thousand, tenThousand] = [overseen(100), overseen(1000), overseen(10_000)];
const read = async ({ app }: ReturnType<typeof testApp>, path: string) => {
  const answer = await app.request(path);
  if (answer.status !== 200) throw new Error(`${path}: ${answer.status} ${(await answer.text()).slice(0, 200)}`);
  await answer.text();
};
const options = { time: 1500, warmupTime: 300 };

// Flat in jobs: the first page of 10,000 takes no longer than that of 100.
describe("what to look at, the first page", () => {
  bench("of 100 jobs", () => read(hundred, "/findings"), options);
  bench("of 1,000 jobs", () => read(thousand, "/findings"), options);
  bench("of 10,000 jobs", () => read(tenThousand, "/findings"), options);
});
// What is looked for takes longer with the findings that it leaves. One in four jobs has this lead, one in ten this tent.
describe.each([
  ["a kind and a phase", "/findings?kind=alwaysExact&phase=anchorsSet"],
  ["what was let stand", "/findings?state=accepted"],
  ["a page far back", "/findings?before=1760000000000~job-1~stale~1"],
  ["a tent", "/findings?tent=40x80"],
  ["a lead", "/findings?lead=Ines+3"],
  ["one of the crew", "/findings?crew=Ömer+17"],
  ["a week", "/findings?from=2026-01-05&to=2026-01-11"],
  ["a lead, a kind and a year", "/findings?lead=Ines+3&kind=waived&from=2025-06-01&to=2026-05-31"],
])("looking for %s", (_what, path) => {
  bench("in 1,000 jobs", () => read(thousand, path), { time: 500, warmupTime: 100 });
  bench("in 10,000 jobs", () => read(tenThousand, path), { time: 500, warmupTime: 100 });
});

describe("all jobs at a glance, as a page", () => {
  bench("of 200 jobs", () => read(few, "/findings/jobs"), options);
  bench("of 2,000 jobs", () => read(many, "/findings/jobs"), options);
});
describe("all jobs at a glance, as data", () => {
  bench("of 200 jobs", () => read(few, "/findings/jobs.json"), options);
  bench("of 2,000 jobs", () => read(many, "/findings/jobs.json"), options);
});
describe("the list of jobs", () => {
  bench("of 200 jobs", () => read(few, "/"), options);
  bench("of 2,000 jobs", () => read(many, "/"), options);
});
