import { bench, describe } from "vitest";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { testApp } from "../support/app.ts";
import { lineAfter, openingLine } from "../support/entries.ts";

async function withJobs(jobs: number) {
  const journal = sqliteJournal(":memory:");
  for (let n = 0; n < jobs; n++) {
    const opening = openingLine(`job-${n}`);
    await journal.open(opening, {});
    await journal.append(lineAfter(opening));
  }
  return testApp(journal);
}
const [few, many] = [await withJobs(200), await withJobs(2000)];
const read = async ({ app }: Awaited<ReturnType<typeof withJobs>>, path: string) => {
  await (await app.request(path)).text();
};
const options = { time: 1500, warmupTime: 300 };

describe("the findings of all jobs, as a page", () => {
  bench("of 200 jobs", () => read(few, "/findings"), options);
  bench("of 2,000 jobs", () => read(many, "/findings"), options);
});
describe("the findings of all jobs, as data", () => {
  bench("of 200 jobs", () => read(few, "/findings.json"), options);
  bench("of 2,000 jobs", () => read(many, "/findings.json"), options);
});
describe("the list of jobs", () => {
  bench("of 200 jobs", () => read(few, "/"), options);
  bench("of 2,000 jobs", () => read(many, "/"), options);
});
