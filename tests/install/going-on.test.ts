import { describe, expect, it } from "vitest";
import { DAY, PEOPLE } from "../proof/fixtures.ts";
import { Crew } from "../support/crew.ts";

const asks = (gate: string, status = "open", asked = "here") => ({ refused: [{ why: "gate", gate, status, asked }] });

describe("going on", () => {
  it("advances once when two phones say next at the same moment", () => {
    const crew = new Crew().goTo("baseline");
    const seen = crew.revision;
    expect(crew.say({ type: "next" }, "lead", { seen })).toEqual({ did: "moved" });
    expect(crew.say({ type: "next" }, "deputy", { seen })).toEqual({ refused: [{ why: "movedOn", revision: crew.revision }] });
    expect(crew.call).toBe("corner.first");
  });

  it("waits for the crew to say that they heard the talk", () => {
    const crew = new Crew().goTo("talk.briefed");
    expect(crew.next()).toMatchObject(asks("talk.briefed"));
    expect(crew.answer("good")).toEqual({ did: "answered", and: "moved" });
    expect(crew.call).toBe("talk.headcount");
  });

  it("is for the lead and the deputy", () => {
    const crew = new Crew().goTo("baseline");
    for (const role of ["competent", "crew", "trainee", "manager", "watcher", "siteOwner"] as const)
      expect(crew.next(role)).toEqual({ refused: [{ why: "role", is: role, may: ["lead", "deputy"] }] });
    expect(crew.next("deputy")).toEqual({ did: "moved" });
  });

  it("asks again what it goes back over", () => {
    const crew = new Crew().goTo("locate.answers");
    expect(crew.say({ type: "back" })).toEqual({ did: "wentBack" });
    expect(crew.call).toBe("locate.covers");
    expect(crew.next()).toMatchObject(asks("locate.covers"));
  });

  it("does not go back from the first call", () => {
    expect(new Crew().say({ type: "back" })).toEqual({ refused: [{ why: "nothingBefore" }] });
  });
});

describe("a good answer", () => {
  it("goes on by itself where its giver may say next", () => {
    const crew = new Crew().goTo("marked");
    expect(crew.answer("good", "lead")).toEqual({ did: "answered", and: "moved" });
    expect(crew.call).toBe("kit.spread");
  });

  it("of a crew member stays: the lead says next", () => {
    const crew = new Crew().goTo("marked");
    expect(crew.answer("good", "crew")).toEqual({ did: "answered" });
    expect(crew.next()).toEqual({ did: "moved" });
  });

  it("stays under a hold", () => {
    const crew = new Crew().goTo("marked");
    crew.say({ type: "hold" }, "trainee");
    expect(crew.answer("good", "lead", "marked")).toEqual({ did: "answered" });
    expect(crew.call).toBe("marked");
  });

  it("to something else than what is asked stays", () => {
    const crew = new Crew().goTo("baseline");
    expect(crew.answer("good", "lead", "warning")).toEqual({ did: "answered" });
    expect(crew.call).toBe("baseline");
  });

  it("puts a screen that showed the question before out of date", () => {
    const crew = new Crew().goTo("sides.laid");
    const seen = crew.revision;
    const told = crew.answer("good", "crew");
    expect(told).toMatchObject({ did: "answered", asks: { gate: "hats", asked: "before" } });
    expect(crew.say({ type: "answer", gate: "hats", value: { kind: "yesNo", yes: true } }, "lead", { seen })).toMatchObject({
      refused: [{ why: "movedOn" }],
    });
  });
});

describe("a hold", () => {
  it("comes from anybody, and only the lead carries on", () => {
    const crew = new Crew().goTo("baseline");
    expect(crew.say({ type: "hold" }, "trainee")).toEqual({ did: "held" });
    expect(crew.next()).toEqual({ refused: [{ why: "held", by: PEOPLE.trainee }] });
    expect(crew.say({ type: "carryOn", became: null }, "crew")).toMatchObject({ refused: [{ why: "role" }] });
    expect(crew.say({ type: "carryOn", became: null })).toEqual({ did: "carriedOn" });
    expect(crew.next()).toEqual({ did: "moved" });
  });
});

describe("an answer", () => {
  it("out of limit is recorded and keeps the gate shut", () => {
    const crew = new Crew().goTo("stakes.bent");
    expect(crew.answer("bad")).toEqual({ did: "answered" });
    expect(crew.next()).toMatchObject(asks("stakes.bent", "outOfLimit"));
    expect(crew.call).toBe("stakes.bent");
  });

  it("not known about a private line keeps the gate shut", () => {
    const crew = new Crew().goTo("private.lines");
    crew.say({ type: "answer", gate: "private.lines", value: { kind: "unknown" } });
    expect(crew.next()).toMatchObject(asks("private.lines", "unknown"));
  });

  it("about one line of three leaves the other two asked", () => {
    const crew = new Crew().goTo("private.lines");
    crew.say({ type: "answer", gate: "private.lines", value: { kind: "each", yes: { septic: true } } });
    expect(crew.next()).toMatchObject(asks("private.lines"));
  });

  it("about who is under is not for a trainee", () => {
    const crew = new Crew().goTo("under.center.C1");
    expect(crew.answer("good", "trainee")).toMatchObject({ refused: [{ why: "role", is: "trainee" }] });
  });

  it("of a second look has to come from somebody else", () => {
    const crew = new Crew().goTo("laid.looked");
    crew.answer("good", "lead");
    expect(crew.next()).toMatchObject(asks("laid.looked", "samePerson"));
    crew.answer("good", "crew");
    expect(crew.next()).toEqual({ did: "moved" });
  });

  it("to a hard gate is not waived, to a soft one it is", () => {
    const crew = new Crew().goTo("kit.loaded");
    expect(crew.say({ type: "waive", gate: "kit.loaded", because: "loaded in the dark" })).toEqual({ did: "waived" });
    expect(crew.next()).toEqual({ did: "moved" });
    crew.goTo("damage");
    expect(crew.say({ type: "waive", gate: "damage", because: "late" })).toEqual({ refused: [{ why: "hardGate", gate: "damage" }] });
  });

  it("from a locate ticket that has run out is stale", () => {
    const crew = new Crew().goTo("locate.ticket");
    crew.at += 90 * DAY;
    expect(crew.answer("good", "lead")).toEqual({ did: "answered" });
    expect(crew.next()).toMatchObject(asks("locate.ticket", "stale"));
  });
});
