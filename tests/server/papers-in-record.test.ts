import { beforeEach, expect, it } from "vitest";
import { PAPER } from "../support/answers.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

let job: OpenedJob;
const show = (by: string) => job.say({ type: "answer", gate: "stakes.size", value: PAPER }, by);
const page = async (path: string) => (await (await job.app.request(path)).text()).replaceAll(/<[^>]+>/g, " ").replaceAll(/\s+/g, " ");

beforeEach(async () => {
  job = await openedJob();
  await job.to((s) => s.step === "stakes.size");
});

it("the record shows a paper large, with whose it is, its number, its date, who showed it and who saw it", async () => {
  const { no } = await show("Ines");
  const [record] = (await page(`/jobs/${job.job}/record`)).split("Opened ");
  expect(record).toContain("Papers in place of a limit Paper ENG-1204 from A. Engineer, dated 2026-05-28");
  expect(record).toContain(`Shown by Ines, entry ${no} NOT SEEN by a second person: it opened nothing`);
  await show("Maren");
  const [seen] = (await page(`/jobs/${job.job}/record`)).split("Opened ");
  expect(seen).toContain(`Shown by Ines, entry ${no} Seen by Maren, entry ${no + 1}`);
  expect(seen).not.toContain("NOT SEEN");
});

it("the record without a paper says nothing of papers", async () => {
  expect(await page(`/jobs/${job.job}/record`)).not.toContain("Papers in place of a limit");
});

it("the record's line and the findings mark it, and lead to it", async () => {
  const { no } = await show("Ines");
  const only = await (await job.app.request(`/jobs/${job.job}/record?show=paper`)).text();
  expect([...only.matchAll(/id="e(\d+)"/g)].map((m) => Number(m[1]))).toEqual([no]);
  const counts = await (await job.app.request("/findings/jobs")).text();
  expect(counts).toContain(`/jobs/${job.job}/record?show=paper`);
  const findings = await (await job.app.request("/findings?kind=paper")).text();
  expect(findings).toContain(`/jobs/${job.job}/record#e${no}`);
});

it("what was said reads as it went: shown, then seen", async () => {
  await show("Ines");
  await show("Maren");
  const record = await page(`/jobs/${job.job}/record`);
  expect(record).toContain("Shown. A second competent person has to look at it, on their own phone.");
  expect(record).toContain("Seen by two.");
});
