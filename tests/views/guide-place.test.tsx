import { describe, expect, it } from "vitest";
import { currentStep, questionAt } from "../../machines/install/job.ts";
import { drawnOf } from "../../views/drawing/call/drawn.ts";
import { buildGuideState } from "../../views/pages/guide/build-state.ts";
import { Call } from "../../views/pages/guide/call.tsx";
import { en } from "../../views/text/en/en.ts";
import { SECOND } from "../proof/fixtures.ts";
import { LEADS_SCREEN } from "../support/access.ts";
import { liveOf } from "../support/every-call.tsx";
import { KeptJob } from "../support/kept-job.ts";
import { JOBS } from "../support/pictures.ts";

/** The call of a job as a phone shows it. */
async function callAt(kept: KeptJob): Promise<string> {
  const live = liveOf(kept);
  const screen = {
    guide: buildGuideState(live, null, en),
    drawn: drawnOf(live, 0),
    me: "p1",
    access: LEADS_SCREEN,
    newKey: () => "key",
    words: en,
  };
  return (<Call {...screen} />).toString();
}

describe("where a number pad takes the room of the drawing", () => {
  const kept = new KeptJob(JOBS["the demo job"]);
  it.each([
    ["under.quarters.line-1", "Second row from the D–A end."],
    ["tied.center.C1", "Nearest the D–A end."],
    ["strike.under.center.C2", "Nearest the B–C end."],
    ["lower.quarters.hip-BC", "The row nearest the B–C end."],
  ])("%s says where its poles stand", async (call, words) => {
    kept.until(() => kept.call === call && questionAt(kept.job, kept.at + SECOND)?.gate.id === call);
    expect(currentStep(kept.job)?.id).toBe(call);
    expect(await callAt(kept)).toContain(`<p class="place">${words}</p>`);
  });
});

it("where there is room the drawing shows it, and the words do not say it again", async () => {
  const kept = new KeptJob(JOBS["the demo job"]).to("lift.center.C1");
  expect(await callAt(kept)).not.toContain('class="place"');
});
