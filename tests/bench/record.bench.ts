import { bench, describe } from "vitest";
import { foldAll } from "../../machines/record/findings.ts";
import { buildRecordState } from "../../views/pages/record/build-state.ts";
import { en } from "../../views/text/en/en.ts";
import { longRecord } from "../support/long-record.ts";

const short = await longRecord(500);
const long = await longRecord(5000);
const page = async ({ job }: typeof short) => {
  await (await job.app.request(`/jobs/${job.job}/record`)).text();
};
const options = { time: 1500, warmupTime: 300 };

// Ten times the entries may take ten times as long, and some for the memory; a hundred times would be each with all.
describe("folding a record", () => {
  bench("of 500 entries", () => void foldAll(short.held.entries), options);
  bench("of 5,000 entries", () => void foldAll(long.held.entries), options);
});
describe("a record in words", () => {
  bench("of 500 entries", () => void buildRecordState(short.held, en), options);
  bench("of 5,000 entries", () => void buildRecordState(long.held, en), options);
});
describe("the page of a record", () => {
  bench("of 500 entries", () => page(short), options);
  bench("of 5,000 entries", () => page(long), options);
});
