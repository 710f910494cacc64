import { describe, expect, it } from "vitest";
import { answerTo } from "../../machines/conversation/answer-to.ts";
import { parseQuestion } from "../../machines/speech/en/questions.ts";
import { plain, trimmed } from "../../machines/speech/plain.ts";
import { Crew } from "../support/crew.ts";

const crew = new Crew().goTo("baseline");
const { plan, script } = crew.job.frozen;
const ask = (words: string, at = crew) => {
  const question = parseQuestion(plain(words), trimmed(words));
  if (!question) throw new Error(`"${words}" asks nothing`);
  return answerTo(question, at.job, at.at);
};

describe("what a crew asks is answered from the plan", () => {
  it.each([
    ["how many stakes", { is: "count", what: "stakes", n: plan.stations.reduce((n, s) => n + s.stakes, 0) }],
    ["how many stake plates on the truck", { is: "count", what: "plates", n: plan.plates.length }],
    ["how many stakes at the corners", { is: "each", kind: "corner", n: 4, what: "stakes" }],
    ["how many rings on AB", { is: "count", what: "rings", edge: "AB", n: plan.edges[0]!.rings }],
    ["how many side poles are there on bc", { is: "stations", kind: "side" }],
    ["how many poles in the cab", { is: "count", what: "sidePoles", n: plan.stations.length }],
    ["how many rings", { is: "cannotCount", words: "how many rings" }],
    ["where is A", { is: "place", id: "A", xFt: 0, yFt: 0 }],
    ["where is BC99", { is: "noSuchPlace", words: "where is BC99" }],
    ["where's AB", { is: "edge", edge: "AB", lengthFt: 20 }],
    ["where's the ladder", { is: "notTold", items: ["ladder"] }],
    ["where's first aid", { is: "site", what: "firstAid" }],
    ["where do we meet", { is: "site", what: "rallyPoint" }],
    ["how long is the strap", { is: "strap", spanFt: Math.hypot(plan.spec.sidePoleFt, plan.spec.setbackFt) }],
    ["which side is lace", { is: "noPiece" }],
    ["who said so", { is: "whoSaid", answer: { gate: expect.any(String), by: expect.any(String) } }],
    ["what did we read last", { is: "lastRead", answer: { gate: expect.any(String) } }],
    ["what's the wind", { is: "wind" }],
    ["what's the limit", { is: "limit", gate: null }],
    ["how long to go", { is: "howLong" }],
    ["how many stakes here", { is: "notHere" }],
    ["three four five with a banana", { is: "noTape", words: "banana" }],
    ["3 4 5 with a 4 foot tape", { is: "shortTape", tapeFt: 4 }],
    ["which piece is this", { is: "noPiece" }],
    ["how many to the ring", { is: "noRing" }],
  ])("%s", (words, answer) => expect(ask(words)).toMatchObject(answer));

  it.each(["how many beers", "where is the kettle", "where's Pia at"])("%s names nothing of the plan, and is talk", (words) =>
    expect(parseQuestion(plain(words), trimmed(words))).toBeNull(),
  );
  it("how many here is what this call counts, and never the whole tent's", () => {
    const corners = new Crew().goTo("stakes.corners");
    const { check } = corners.gate("stakes.corners");
    const wanted = check.kind === "figures" ? check.want.stakes!.from! : 0;
    expect(ask("how many stakes here", corners)).toEqual({ is: "hereCount", n: wanted });
    expect(ask("how many stakes", corners)).toEqual({ is: "hereCount", n: wanted });
    const edge = new Crew().goTo("drive.AB");
    const onEdge = plan.stations.filter((s) => s.edge === "AB").reduce((n, s) => n + s.stakes, 0);
    expect(ask("how many stakes here", edge)).toEqual({ is: "count", n: onEdge, what: "stakes", edge: "AB" });
    const laid = new Crew().goTo("sides.laid");
    expect(ask("how many here", laid)).toEqual({ is: "hereCount", n: plan.stations.length });
    expect(ask("what's the limit", laid)).toMatchObject({ is: "limit", gate: { id: "sides.laid" } });
  });
  it("what is left is counted to the end, and to the end of this phase", () => {
    const at = script.steps.findIndex((s) => s.id === "baseline");
    const here = script.steps.slice(at).filter((s) => s.phase === "anchorsSet").length;
    expect(ask("what's left")).toEqual({ is: "left", calls: script.steps.length - at, phase: "anchorsSet", here });
  });
  it("on a way out it is the rest of that, and what comes after it", () => {
    const out = new Crew().goTo("squared");
    out.say({ type: "makeSafe", because: "a squall" });
    const left = script.steps.length - script.steps.findIndex((s) => s.id === "squared");
    const way = script.escapes.ground.length;
    expect(ask("what's left", out)).toEqual({ is: "left", calls: way + left, phase: "ground", here: way });
    out.next();
    expect(ask("what's left", out)).toMatchObject({ calls: way + left - 1, here: way - 1 });
  });
  it("where next is the call after this one", () => {
    const at = script.steps.findIndex((s) => s.id === "baseline");
    expect(ask("where next")).toEqual({ is: "next", step: script.steps[at + 1] });
  });
  it("again and why are of the call that is on", () => {
    expect(ask("again")).toMatchObject({ is: "call", step: { id: "baseline" } });
    expect(ask("why")).toMatchObject({ is: "why", step: { id: "baseline" } });
    for (const words of ["how", "how do we do it", "show me how"])
      expect(ask(words)).toMatchObject({ is: "how", step: { id: "baseline" } });
  });
});
