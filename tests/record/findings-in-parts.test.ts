import { beforeEach, describe, expect, it } from "vitest";
import { foldAll } from "../../machines/record/findings.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

let job: OpenedJob;
beforeEach(async () => {
  job = await openedJob();
});
const last = async () => foldAll(await job.entries()).flags;

describe("what stands out about an answer that is given in parts", () => {
  it("one of several numbers that is off is a finding once all are given, and none before", async () => {
    await job.to((s) => s.step === "marked");
    const part = (n: Record<string, number>) => job.say({ type: "answer", gate: "marked", value: { kind: "figures", unit: "count", n } });
    await part({ AB: 12, BC: 9 });
    expect(await last()).toEqual([]);
    await part({ CD: 11, DA: 9 });
    expect(await last()).toEqual(["outOfLimit"]);
    await part({ AB: 11 });
    expect(await last()).toEqual([]);
  });
  it("a no to one name of a list is a finding once every name was asked", async () => {
    await job.to((s) => s.step === "private.lines");
    const say = (name: string, yes: boolean) =>
      job.say({ type: "answer", gate: "private.lines", value: { kind: "each", yes: { [name]: yes } } });
    await say("irrigation", false);
    await say("lighting", true);
    expect(await last()).toEqual([]);
    await say("septic", true);
    expect(await last()).toEqual(["outOfLimit"]);
    await say("irrigation", true);
    expect(await last()).toEqual([]);
  });
});
