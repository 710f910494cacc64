import { describe, expect, it } from "vitest";
import { missingNow, questionAt } from "../../machines/install/job.ts";
import { back, crewAt, lacks, out, piece, short } from "../support/trouble.ts";

describe("a piece torn while lacing", () => {
  it("stops its own seam at once, from anybody, and goes on when it is mended", () => {
    const crew = crewAt("lace.S1.AB");
    expect(crew.say(out(piece("mid-1")), "trainee")).toEqual({ did: "outOfUse" });
    expect(crew.next()).toMatchObject(lacks("piece.mid-1"));
    expect(crew.next()).toMatchObject({ refused: [{ things: [{ thing: piece("mid-1"), because: "torn at a ring" }] }] });
    expect(crew.call).toBe("lace.S1.AB");
    expect(crew.say(back(piece("mid-1")), "competent")).toEqual({ did: "backInUse" });
    expect(crew.job.snapshot.context.outOfUse).toEqual({});
    expect(crew.next()).toEqual({ did: "moved" });
  });

  it("stops no seam that it is not part of", () => {
    const crew = crewAt("lace.R-DA.DA");
    crew.say(out(piece("mid-1")), "crew");
    crew.goTo("looked.R-DA.DA");
    expect(crew.answer("good")).toMatchObject({ did: "answered", asks: { why: "outOfUse", keys: ["piece.mid-1"] } });
    expect(crew.call).toBe("looked.R-DA.DA");
    expect(crew.next()).toMatchObject(lacks("piece.mid-1"));
  });

  it("lets the cloth be strapped down and looked over as it lies", () => {
    const crew = crewAt("damage");
    crew.say(out(piece("mid-1")));
    expect(crew.goTo("rings").call).toBe("rings");
  });

  it("is not laid, and its gate asks nothing else meanwhile", () => {
    const crew = crewAt("groundCloth");
    crew.say(out(piece("end-A")));
    expect(crew.answer("good")).toMatchObject({ did: "answered", asks: { why: "outOfUse" } });
    expect(crew.call).toBe("groundCloth");
    expect(missingNow(crew.job, crew.at)).toMatchObject({ why: "outOfUse" });
    expect(questionAt(crew.job, crew.at)).toBeNull();
  });

  it("is not gone back to either", () => {
    const crew = crewAt("looked.S1.AB");
    crew.say(out(piece("mid-1")));
    expect(crew.say({ type: "back" })).toMatchObject(lacks("piece.mid-1"));
    expect(crew.call).toBe("looked.S1.AB");
  });

  it("found after its seams were laced, stops every lift", () => {
    const crew = crewAt("raise.B");
    crew.say(out(piece("end-C")), "watcher");
    expect(crew.next()).toMatchObject(lacks("piece.end-C"));
    const under = crewAt("poles.pinned").goTo("under.hands").ready();
    under.say(out(piece("end-C")), "watcher");
    expect(under.next()).toMatchObject(lacks("piece.end-C"));
  });
});

describe("with people under", () => {
  it("the lift is finished and they come out, and nobody goes under the next line", () => {
    const crew = crewAt("lift.quarters.hip-DA");
    crew.say(out(piece("mid-1")), "trainee");
    expect(crew.answer("good")).toEqual({ did: "answered", and: "moved" });
    expect(crew.call).toBe("tied.quarters.hip-DA");
    expect(crew.answer("good")).toMatchObject({ did: "answered", and: "moved" });
    expect(crew.call).toBe("out.quarters.hip-DA");
    expect(crew.answer("good")).toMatchObject({ did: "answered", asks: { why: "outOfUse" } });
    expect(crew.call).toBe("out.quarters.hip-DA");
  });

  it("a lift that has not begun does not begin; making safe is open", () => {
    const crew = crewAt("under.quarters.hip-DA");
    crew.say(out(piece("mid-1")));
    expect(crew.next()).toMatchObject(lacks("piece.mid-1"));
    expect(crew.say({ type: "makeSafe", because: "torn" }, "trainee")).toEqual({ did: "makingSafe" });
    expect(crew.call).toBe("safe.up.pole");
  });
});

describe("short of kit", () => {
  it("short straps stop threading and lifting, but not lacing, nor what is up from being finished", () => {
    const crew = crewAt("lace.S1.AB");
    crew.say(out(short(2), "left at the yard"), "crew");
    crew.goTo("looked.R-BC.BC");
    expect(crew.answer("good")).toMatchObject({ asks: { why: "outOfUse", keys: ["kit.perimeterStrap"] } });
    const up = crewAt("raise.B");
    up.say(out(short(1)));
    expect(up.next()).toMatchObject(lacks("kit.perimeterStrap"));
    // What stands is pulled through and locked with what there is.
    const pulled = crewAt("pins.both");
    pulled.say(out(short(1)));
    expect(pulled.answer("good")).toMatchObject({ and: "moved" });
  });

  it("short stakes stop driving, poles raising, and only their own lines", () => {
    const crew = crewAt("stakes.bent");
    crew.say(out(short(3, "sidePole")));
    crew.say(out(short(4, "perimeterStake")));
    expect(crew.answer("good")).toMatchObject({ asks: { keys: ["kit.perimeterStake"] } });
    crew.say(back(short(4, "perimeterStake")), "deputy");
    crew.goTo("sides.laid");
    expect(crew.answer("good")).toMatchObject({ asks: { keys: ["kit.sidePole"] } });
  });

  it("some that came leave the rest short; a second report never makes it fewer", () => {
    const crew = crewAt("sides.laid");
    crew.say(out(short(4)));
    crew.say(out(short(1)), "trainee");
    expect(crew.job.snapshot.context.outOfUse["kit.perimeterStrap"]).toMatchObject({ thing: { short: 4 } });
    expect(crew.say(back(short(3)))).toEqual({ did: "backInUse", left: 1 });
    expect(crew.job.snapshot.context.outOfUse["kit.perimeterStrap"]).toMatchObject({ thing: { short: 1 } });
    expect(crew.say(back(short(9)))).toEqual({ did: "backInUse" });
    expect(crew.job.snapshot.context.outOfUse).toEqual({});
  });
});
