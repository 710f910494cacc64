import { expect, it } from "vitest";
import { brief } from "../support/app.ts";
import { openedJob } from "../support/job.ts";

const told = (alongFt: number, offFt: number) => ({ alongFt, offFt });
const gas = (id: string, offFt: number) => ({ id, kind: "gas", told: "ticket", points: [told(-20, offFt), told(130, offFt)] });
const first = async (siteModel: object) => {
  const { app, job } = await openedJob({ ...brief(), siteModel });
  return (await (await app.request(`/jobs/${job}/site`)).text()).split('class="verdict"')[1]!.split("</b>")[0]!;
};

it("the page of a site says how many lines and things are short, and of how many, where one of three is", async () => {
  const shown = await first({ buried: [gas("near", -6), gas("far", -90), gas("farther", -120)] });
  expect(shown).toContain("Clearances, 3 lines and things: 1 short.");
});
it("says how many are not known beside those that are short", async () => {
  // So high a voltage is in no table: only its owner knows the clearance.
  const overhead = [{ id: "wire", kv: 1500, points: [told(-200, -300), told(400, -300)] }];
  expect(await first({ buried: [gas("near", -6), gas("far", -90)], overhead })).toContain(
    "Clearances, 3 lines and things: 1 short, 1 not known.",
  );
});
