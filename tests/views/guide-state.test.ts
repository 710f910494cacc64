import { describe, expect, it } from "vitest";
import { buildGuideState } from "../../views/pages/guide/build-state.ts";
import { en } from "../../views/text/en/en.ts";
import { briefOf, SMALL } from "../proof/fixtures.ts";
import { liveOf } from "../support/every-call.tsx";
import { KeptJob } from "../support/kept-job.ts";

const strip = (job: KeptJob) => {
  const { milestones, progress, toward } = buildGuideState(liveOf(job), null, en);
  return { toward, progress, is: milestones.map(({ is }) => is) };
};

describe("how far a job is", () => {
  it("a milestone is named as what it will be until it is", () => {
    const job = new KeptJob(briefOf(SMALL));
    expect(strip(job)).toMatchObject({
      toward: "Toward: utilities marked",
      progress: { at: 1 },
      is: ["toward", ...Array(6).fill("ahead")],
    });
    job.to("baseline");
    expect(strip(job)).toMatchObject({ toward: "Toward: anchors set", is: ["reached", "toward", ...Array(5).fill("ahead")] });
  });

  it("all seven are reached once the tent stands, and a closed job is at its last call", () => {
    const job = new KeptJob(briefOf(SMALL));
    job.until(() => strip(job).toward === "Standing");
    expect(strip(job).is).toEqual(Array(7).fill("reached"));
    while (job.call !== "closed") job.goOn();
    const { progress, toward } = strip(job);
    expect([toward, progress.at]).toEqual(["Closed", progress.of]);
  });

  it("what keeps next from leading on is said on every screen, as it would be refused", () => {
    const job = new KeptJob(briefOf(SMALL));
    const { missing, gate } = buildGuideState(liveOf(job), null, en);
    expect(missing).toBe(gate!.ask);
  });
});
