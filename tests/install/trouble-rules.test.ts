import { describe, expect, it } from "vitest";
import { digest } from "../../machines/digest/digest.ts";
import { decide } from "../../machines/install/decide.ts";
import { stateDigest } from "../../machines/install/job.ts";
import { briefOf, commandOf, frozenOf, MIDDLE, opened, SECOND, SMALL } from "../proof/fixtures.ts";
import { Crew } from "../support/crew.ts";
import { back, crewAt, lacks, out, piece, short } from "../support/trouble.ts";
import { hundred } from "../tent/tents.ts";

describe("who may say it", () => {
  it("anybody takes out of use; only one who may answer for lives puts back", () => {
    for (const role of ["lead", "deputy", "competent", "crew", "trainee", "watcher", "manager", "siteOwner"] as const) {
      const crew = crewAt("damage");
      expect(crew.say(out(piece("mid-1")), role)).toEqual({ did: "outOfUse" });
      const may = ["lead", "deputy", "competent"].includes(role);
      expect(crew.say(back(piece("mid-1")), role)).toMatchObject(may ? { did: "backInUse" } : { refused: [{ why: "role", is: role }] });
    }
  });

  it("what the job does not have is refused by name, with what there is", () => {
    const crew = new Crew().goTo("damage");
    expect(crew.say(out(piece("mid-9")))).toEqual({ refused: [{ why: "noSuchThing", thing: piece("mid-9"), has: ["top"] }] });
    expect(crew.say(back(piece("toString")))).toMatchObject({ refused: [{ why: "noSuchThing" }] });
    expect(crew.say(out(short(1, "quarterPole")))).toMatchObject({ refused: [{ why: "noSuchThing" }] });
  });

  it("what is not out is not put back", () =>
    expect(new Crew().goTo("damage").say(back(piece("top")))).toEqual({ refused: [{ why: "notOutOfUse", thing: piece("top") }] }));

  it("back, said against a screen that did not show the last report, is refused", () => {
    const crew = crewAt("damage");
    crew.say(out(piece("mid-1")));
    const seen = crew.revision;
    crew.say(out(piece("mid-1"), "and a second tear"), "crew");
    expect(crew.say(back(piece("mid-1")), "lead", { seen })).toMatchObject({ refused: [{ why: "movedOn" }] });
  });

  it("a closed job takes neither", () => {
    const crew = new Crew().goTo("closed");
    expect(crew.say(out(piece("top")))).toEqual({ refused: [{ why: "jobClosed" }] });
    expect(crew.say(back(piece("top")))).toEqual({ refused: [{ why: "jobClosed" }] });
  });
});

describe("the rest of the guide", () => {
  it("holds, makes safe and stands down as ever", () => {
    const crew = crewAt("raise.B");
    crew.say(out(piece("mid-1")));
    expect(crew.say({ type: "hold" }, "trainee")).toEqual({ did: "held" });
    expect(crew.say(back(piece("mid-1")))).toEqual({ did: "backInUse" });
    crew.say(out(piece("mid-1")));
    expect(crew.say({ type: "carryOn", became: null })).toEqual({ did: "carriedOn" });
    expect(crew.say({ type: "standDown", because: "no spare mid" })).toEqual({ did: "standingDown" });
    expect(crew.goTo("strike.stakes").call).toBe("strike.stakes");
  });

  it("goes on from making safe only when the piece is back", () => {
    const crew = crewAt("raise.B");
    crew.say(out(piece("mid-1")));
    crew.say({ type: "makeSafe", because: "torn" });
    crew.goTo("safe.up.looked").answer("good");
    for (let i = 0; crew.missing !== null && i < 9; i++) crew.oneMore();
    expect(crew.next()).toMatchObject(lacks("piece.mid-1"));
    crew.say(back(piece("mid-1")));
    crew.goTo("sides.laid");
  });

  it("an amendment that has no such piece drops it, and one that has keeps it", () => {
    const crew = new Crew(briefOf(hundred)).goTo("damage");
    crew.say(out(piece("mid-5")));
    crew.say(out(piece("mid-1")));
    crew.amend(frozenOf(briefOf(MIDDLE)));
    expect(Object.keys(crew.job.snapshot.context.outOfUse)).toEqual(["piece.mid-1"]);
  });

  it("nothing of a strike or of making safe needs anything", () => {
    const { script } = frozenOf(briefOf(MIDDLE));
    const free = [...script.steps.filter((s) => s.phase === "struck"), ...Object.values(script.escapes).flat()];
    expect(free.flatMap((s) => s.needs)).toEqual([]);
    expect(script.steps.filter((s) => /^out\.|^sides\.feet|^pins\.both|^straps\.locked/.test(s.id)).flatMap((s) => s.needs)).toEqual([]);
  });

  it("the same commands again lead to the same state", () => {
    const said = [out(piece("top")), out(short(4)), back(short(3)), back(piece("top")), out(piece("top"), "again")];
    const play = () =>
      said.reduce(
        (job, ask, i) => decide(job, commandOf(ask, job.snapshot.context.lastAt + SECOND, i + 2, i + 1))[0],
        opened(briefOf(SMALL)),
      );
    const [first, second] = [play(), play()];
    expect(stateDigest(first)).toBe(stateDigest(second));
    expect(stateDigest(first)).toBe(digest.of({ value: first.snapshot.value, context: first.snapshot.context }));
    expect(Object.keys(first.snapshot.context.outOfUse)).toEqual(["kit.perimeterStrap", "piece.top"]);
  });
});
