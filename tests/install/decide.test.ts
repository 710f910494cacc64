import { describe, expect, it } from "vitest";
import type { Intent } from "../../machines/install/commands.ts";
import { currentStep } from "../../machines/install/job.ts";
import { briefOf, DAY, frozenOf, HOUR, MINUTE, PEOPLE, SMALL } from "../proof/fixtures.ts";
import { Crew } from "../support/crew.ts";

const refusedAtGate = (gate: string, status: string) => ({ refused: [{ why: "gate", gate, status }] });
const standDown: Intent = { type: "standDown", because: "called off" };
const makeSafe: Intent = { type: "makeSafe", because: "a ring tore" };

describe("going on", () => {
  it("advances once when two phones say next at the same moment", () => {
    const crew = new Crew().goTo("baseline");
    const seen = crew.revision;
    expect(crew.say({ type: "next" }, "lead", { seen })).toEqual({ did: "moved" });
    expect(crew.say({ type: "next" }, "deputy", { seen })).toEqual({ refused: [{ why: "movedOn", revision: crew.revision }] });
    expect(crew.call).toBe("corner.first");
  });

  it("waits for the toolbox talk to be answered", () => {
    const crew = new Crew().goTo("talk.hazards");
    expect(crew.next()).toEqual(refusedAtGate("talk.hazards", "open"));
    crew.answer("good");
    expect(crew.next()).toEqual({ did: "moved" });
  });

  it("is for the lead and the deputy", () => {
    const crew = new Crew().goTo("baseline");
    for (const role of ["competent", "crew", "trainee", "manager", "watcher", "siteOwner"] as const)
      expect(crew.next(role)).toEqual({ refused: [{ why: "role", is: role, may: ["lead", "deputy"] }] });
    expect(crew.next("deputy")).toEqual({ did: "moved" });
  });

  it("opens the calls behind it again when it goes back", () => {
    const crew = new Crew().goTo("talk.stopSignal");
    crew.answer("good");
    expect(crew.say({ type: "back" })).toEqual({ did: "wentBack" });
    expect(crew.call).toBe("talk.hazards");
    expect(crew.next()).toEqual(refusedAtGate("talk.hazards", "open"));
    expect(crew.job.snapshot.context.answers["talk.stopSignal"]).toBeUndefined();
  });

  it("does not go back from the first call", () => {
    expect(new Crew().say({ type: "back" })).toEqual({ refused: [{ why: "nothingBefore" }] });
  });
});

describe("a hold", () => {
  it("comes from anybody, and only the lead carries on", () => {
    const crew = new Crew().goTo("baseline");
    expect(crew.say({ type: "hold" }, "trainee")).toEqual({ did: "held" });
    expect(crew.next()).toEqual({ refused: [{ why: "held", by: PEOPLE.trainee }] });
    expect(crew.say({ type: "carryOn" }, "crew")).toMatchObject({ refused: [{ why: "role" }] });
    expect(crew.say({ type: "carryOn" })).toEqual({ did: "carriedOn" });
    expect(crew.next()).toEqual({ did: "moved" });
  });

  it("stops even a lift that weather would let finish", () => {
    const crew = new Crew().goTo("raise.A");
    crew.say({ type: "hold" }, "crew");
    expect(crew.next()).toMatchObject({ refused: [{ why: "held" }] });
  });
});

describe("an answer", () => {
  it("out of limit is recorded and keeps the gate shut", () => {
    const crew = new Crew().goTo("stakes.bent");
    expect(crew.answer("bad")).toEqual({ did: "answered" });
    expect(crew.next()).toEqual(refusedAtGate("stakes.bent", "outOfLimit"));
    expect(crew.call).toBe("stakes.bent");
  });

  it("not known about a private line keeps the gate shut", () => {
    const crew = new Crew().goTo("private.septic");
    crew.say({ type: "answer", gate: "private.septic", value: { kind: "unknown" } });
    expect(crew.next()).toEqual(refusedAtGate("private.septic", "unknown"));
  });

  it("about who is under is not for a trainee", () => {
    const crew = new Crew().goTo("under.caller");
    expect(crew.answer("good", "trainee")).toMatchObject({ refused: [{ why: "role", is: "trainee" }] });
  });

  it("of a second look has to come from somebody else", () => {
    const crew = new Crew().goTo("laid.looked");
    crew.answer("good", "lead");
    expect(crew.next()).toEqual(refusedAtGate("laid.looked", "samePerson"));
    crew.answer("good", "crew");
    expect(crew.next()).toEqual({ did: "moved" });
  });

  it("to a hard gate is not waived, to a soft one it is", () => {
    const crew = new Crew().goTo("damage.rope");
    expect(crew.say({ type: "waive", gate: "damage.rope", because: "late" })).toEqual({
      refused: [{ why: "hardGate", gate: "damage.rope" }],
    });
    crew.goTo("softSoles");
    expect(crew.say({ type: "waive", gate: "softSoles", because: "nobody kneels" })).toEqual({ did: "waived" });
    expect(crew.next()).toEqual({ did: "moved" });
  });

  it("from a locate ticket that has run out is stale", () => {
    const crew = new Crew().goTo("locate.ticket");
    crew.answer("good");
    crew.at += 90 * DAY;
    expect(crew.next()).toEqual(refusedAtGate("locate.ticket", "stale"));
  });

  it("with an age is stale on a clock that ran back", () => {
    const crew = new Crew().goTo("sides.warning");
    crew.answer("good");
    expect(crew.say({ type: "next" }, "lead", { at: crew.at - HOUR })).toEqual(refusedAtGate("sides.warning", "stale"));
  });
});

describe("weather", () => {
  it("older than ten minutes does not open the gust gate", () => {
    const crew = new Crew().goTo("sides.gust");
    crew.gust(8);
    crew.at += 11 * MINUTE;
    expect(crew.next()).toEqual(refusedAtGate("sides.gust", "stale"));
    crew.gust(8);
    expect(crew.next()).toEqual({ did: "moved" });
  });

  it("stops work for thirty minutes after thunder", () => {
    const crew = new Crew().goTo("tension.corners");
    crew.say({ type: "reading", reading: { kind: "thunder", takenAt: crew.at } });
    const heard = crew.at;
    expect(crew.next()).toEqual({ refused: [{ why: "stop" }] });
    expect(crew.say({ type: "next" }, "lead", { at: heard + 29 * MINUTE })).toEqual({ refused: [{ why: "stop" }] });
    expect(crew.say({ type: "next" }, "lead", { at: heard + 31 * MINUTE })).toEqual({ did: "moved" });
  });

  it("too strong lets a corner that has begun be finished, and nothing else begin", () => {
    const crew = new Crew().goTo("raise.A");
    crew.gust(30);
    for (const corner of ["raise.B", "raise.C", "raise.D"]) {
      expect(crew.next()).toEqual({ did: "moved" });
      expect(crew.call).toBe(corner);
    }
    crew.next();
    expect(crew.next()).toEqual({ refused: [{ why: "stop" }] });
  });
});

describe("making safe", () => {
  it("takes anybody's word, leads out, and goes on at the wind reading of the lift that was left", () => {
    const crew = new Crew().goTo("feet.upright");
    expect(crew.say(makeSafe, "trainee")).toEqual({ did: "makingSafe" });
    expect(crew.call).toBe("safe.up.pole");
    crew.goTo("safe.up.looked");
    expect(crew.next()).toEqual(refusedAtGate("safe.up.looked", "open"));
    crew.answer("good");
    expect(crew.next()).toEqual({ did: "goingOn" });
    expect(crew.call).toBe("gust.upright");
    expect(crew.job.snapshot.context.answers["under.upright"]).toBeUndefined();
  });
});

describe("standing down", () => {
  it("with stakes in the ground goes to pulling and counting them", () => {
    const crew = new Crew().goTo("straps.choked");
    expect(crew.say(standDown)).toEqual({ did: "standingDown" });
    expect(crew.call).toBe("strike.stakes");
    crew.next();
    expect(crew.call).toBe("back.stakes");
  });

  it("with nothing in the ground closes the job", () => {
    const crew = new Crew().goTo("white.footprint");
    expect(crew.say(standDown)).toEqual({ did: "closed" });
    expect(crew.next()).toEqual({ refused: [{ why: "jobClosed" }] });
  });

  it("stays open while a stake is missing", () => {
    const crew = new Crew().goTo("straps.choked");
    crew.say(standDown);
    crew.next();
    const stakes = Number(currentStep(crew.job)!.params.stakes);
    crew.say({ type: "answer", gate: "back.stakes", value: { kind: "count", n: stakes - 1 } });
    expect(crew.next()).toEqual(refusedAtGate("back.stakes", "outOfLimit"));
    expect(crew.say(standDown)).toEqual({ refused: [{ why: "alreadyStandingDown" }] });
    crew.say({ type: "answer", gate: "back.stakes", value: { kind: "count", n: stakes } });
    expect(crew.next()).toEqual({ did: "moved" });
    crew.goTo("strike.ground").answer("good");
    expect(crew.next()).toEqual({ did: "closed" });
  });
});

describe("an amendment", () => {
  it("takes a second person, opens what it touches again and goes back there", () => {
    const crew = new Crew().goTo("straps.choked");
    const deeper = frozenOf(briefOf(SMALL, { sheet: { stakeLengthIn: 48 } }));
    const proposal = crew.entry;
    expect(crew.say({ type: "amend", because: "soft ground", to: deeper })).toEqual({ did: "proposed" });
    expect(crew.call).toBe("straps.choked");
    expect(crew.say({ type: "agree", target: proposal }, "lead")).toEqual({ refused: [{ why: "sameAsProposer" }] });
    expect(crew.say({ type: "agree", target: proposal }, "competent")).toEqual({ did: "amended" });
    expect(crew.call).toBe("sheet.atHand");
    const { answers } = crew.job.snapshot.context;
    expect(answers["stakes.length"]).toBeUndefined();
    expect(answers["talk.hazards"]).toBeDefined();
  });

  it("that a second person disagrees with changes nothing", () => {
    const crew = new Crew().goTo("straps.choked");
    const { frozen } = crew.job;
    const proposal = crew.entry;
    crew.say({
      type: "amend",
      because: "soft ground",
      to: frozenOf(briefOf(SMALL, { sheet: { stakeLengthIn: 48 } })),
    });
    expect(crew.say({ type: "disagree", target: proposal }, "deputy")).toEqual({ did: "discarded" });
    expect(crew.job.frozen).toBe(frozen);
    expect(crew.say({ type: "agree", target: proposal }, "deputy")).toEqual({ refused: [{ why: "noProposal" }] });
  });
});
