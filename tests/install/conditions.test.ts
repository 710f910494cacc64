import { describe, expect, it } from "vitest";
import { HOUR, MINUTE, PEOPLE, SECOND } from "../proof/fixtures.ts";
import { Crew } from "../support/crew.ts";

const lacks = (gate: string, status = "open") => ({ refused: [{ why: "gate", gate, status, asked: "before" }] });
const at = (call: string) => new Crew().goTo(call);
const lastLaid = () => at(at("damage").job.frozen.script.steps.findLast((s) => s.id.startsWith("lay."))!.id).ready();

describe("a ticket that runs out with the side poles up", () => {
  it("keeps everybody out from under: no pole is stood that could not be tied", () => {
    const crew = at("under.center.C1");
    crew.at = crew.job.frozen.brief.ticket!.validTo + HOUR;
    const asked: string[] = [];
    while (crew.missing !== "locate.ticket" && asked.length < 20) {
      asked.push(crew.missing!);
      crew.oneMore();
    }
    expect([crew.call, crew.missing]).toEqual(["under.center.C1", "locate.ticket"]);
  });
});

describe("cloth that lies loose when the wind gets up", () => {
  it("is strapped down, whatever blows, and nothing goes on after that", () => {
    const crew = lastLaid();
    crew.gust(30, "watcher");
    expect(crew.next()).toEqual({ did: "moved" });
    expect(crew.call).toBe("cloth.strapped");
    expect(crew.answer("good")).toMatchObject({ asks: { gate: "wind.cloth" } });
    expect(crew.call).toBe("cloth.strapped");
  });

  it("is left alone in lightning", () => {
    const crew = lastLaid();
    crew.thunder("watcher");
    expect(crew.next()).toMatchObject(lacks("thunder", "outOfLimit"));
  });

  it("is folded in the strike, whatever blows", () => {
    const crew = at("strike.unlace").ready();
    crew.gust(24, "watcher");
    expect(crew.next()).toEqual({ did: "moved" });
    expect(crew.call).toBe("strike.fold");
  });
});

describe("after a blow, or rain", () => {
  const blown = (call: string) => {
    const crew = at(call).ready();
    crew.gust(45, "watcher");
    crew.gust(8);
    return crew;
  };
  it.each(["laid.looked", "raise.A"])("whatever stands or lies at %s is walked before anything goes on", (call) => {
    const crew = blown(call);
    expect(crew.next()).toMatchObject(lacks("afterBlow"));
    crew.say({ type: "answer", gate: "afterBlow", value: { kind: "count", n: 1 } });
    expect(crew.next()).toMatchObject(lacks("afterBlow", "outOfLimit"));
    crew.say({ type: "answer", gate: "afterBlow", value: { kind: "count", n: 0 } });
    expect(crew.missing).not.toBe("afterBlow");
  });
  it("is never asked where nothing of the kind happened", () => {
    const crew = at("strike.ease");
    expect(crew.job.snapshot.context.answers.afterBlow).toBeUndefined();
  });
  it("rain asks for it too, and again each time", () => {
    const crew = at("raise.A").ready();
    for (const _ of [1, 2]) {
      crew.say({ type: "reading", reading: { kind: "rain", takenAt: crew.at } });
      crew.gust(8);
      expect(crew.next()).toMatchObject({ refused: [{ gate: "afterBlow", because: "rain" }] });
      crew.say({ type: "answer", gate: "afterBlow", value: { kind: "count", n: 0 } });
    }
  });
});

describe("wind", () => {
  it("is a condition of every corner that goes up", () => {
    const crew = at("raise.A");
    crew.gust(30);
    expect(crew.next()).toMatchObject(lacks("wind.lift", "outOfLimit"));
    expect(crew.call).toBe("raise.A");
    crew.ready();
    expect(crew.next()).toEqual({ did: "moved" });
    crew.gust(24);
    expect(crew.next()).toMatchObject(lacks("wind.lift", "outOfLimit"));
    expect(crew.call).toBe("raise.B");
  });

  it("older than ten minutes opens no lift", () => {
    const crew = at("raise.A");
    crew.gust(8);
    crew.at += 11 * MINUTE;
    expect(crew.next()).toMatchObject(lacks("wind.lift", "stale"));
  });

  it("older than thirty minutes opens no cloth", () => {
    const crew = at("laid.order").ready();
    crew.gust(8);
    crew.at += 29 * MINUTE;
    expect(crew.missing).toBeNull();
    crew.at += 2 * MINUTE;
    expect(crew.missing).toBe("wind.cloth");
  });

  it("without its gust is asked for it", () => {
    const crew = at("raise.A");
    const reading = { kind: "wind", mph: 9, gustMph: null, takenAt: crew.at, fromDeg: null, place: null } as const;
    crew.say({ type: "reading", reading });
    expect(crew.next()).toMatchObject(lacks("wind.lift", "noGust"));
  });

  it("of 19 without a gust counts as 29, and stops", () => {
    const crew = at("raise.A");
    crew.say({ type: "reading", reading: { kind: "wind", mph: 19, gustMph: null, takenAt: crew.at, fromDeg: null, place: null } });
    expect(crew.job.snapshot.value).toMatchObject({ weather: "stop" });
  });

  it("at the stop level is taken from a trainee, whatever its time says, and a calm one is not", () => {
    const crew = at("raise.A");
    const blow = { kind: "wind", mph: 45, gustMph: 60, takenAt: crew.at + HOUR, fromDeg: null, place: null } as const;
    expect(crew.say({ type: "reading", reading: blow }, "trainee")).toMatchObject({ did: "read" });
    expect(crew.job.snapshot.context.wind).toMatchObject({ gustMph: 60, takenAt: crew.at });
    expect(crew.gust(8, "trainee")).toMatchObject({ refused: [{ why: "role" }] });
  });

  it("asked for and calm goes on from what was answered, and stays at a corner until somebody says that it stands", () => {
    const loading = at("straps.threaded").ready();
    loading.at += 31 * MINUTE;
    expect(loading.gust(8)).toEqual({ did: "read", and: "moved" });
    const corner = at("raise.A");
    corner.at += 11 * MINUTE;
    expect(corner.gust(8)).toEqual({ did: "read" });
    expect(corner.call).toBe("raise.A");
    expect(corner.next()).toEqual({ did: "moved" });
  });

  it("calm after a stop, or a warning's end, starts nothing by itself", () => {
    const crew = at("straps.threaded").ready();
    crew.gust(60, "trainee");
    expect(crew.gust(8)).toMatchObject({ did: "read", asks: { gate: "afterBlow" } });
    crew.say({ type: "answer", gate: "afterBlow", value: { kind: "count", n: 0 } });
    expect(crew.call).toBe("sides.laid");
    crew.say({ type: "reading", reading: { kind: "warning", takenAt: crew.at } }, "trainee");
    expect(crew.answer("good", "lead", "warning")).toEqual({ did: "answered" });
    expect(crew.call).toBe("sides.laid");
  });

  it("too strong to raise is taken from anybody who says so, and clears nobody to lower", () => {
    const crew = at("raise.A");
    expect(crew.gust(24, "crew")).toMatchObject({ did: "read" });
    expect(crew.next()).toMatchObject(lacks("wind.lift", "outOfLimit"));
    const strike = at("strike.under.center.C1");
    strike.at += 11 * MINUTE;
    strike.gust(22, "crew");
    expect(strike.next()).toMatchObject({ refused: [{ why: "gate" }] });
    expect(strike.missing).not.toBe("strike.under.center.C1");
  });

  it("that is too strong to raise still lets a line be lowered", () => {
    const crew = at("strike.under.center.C1").ready();
    expect(crew.job.snapshot.context.answers["strike.under.center.C1"]).toBeDefined();
    crew.gust(22);
    expect(crew.next()).toEqual({ did: "moved" });
    expect(crew.call).toBe("lower.center.C1");
  });
});

describe("thunder", () => {
  it("is heard from anybody and shuts everything for thirty minutes", () => {
    const crew = at("tension.corners");
    expect(crew.thunder("watcher")).toMatchObject({ did: "read" });
    const heard = crew.at;
    expect(crew.next()).toMatchObject({ refused: [{ why: "gate", gate: "thunder", notBefore: heard + 30 * MINUTE }] });
    expect(crew.say({ type: "next" }, "lead", { at: heard + 29 * MINUTE })).toMatchObject(lacks("thunder", "outOfLimit"));
    expect(crew.say({ type: "next" }, "lead", { at: heard + 31 * MINUTE })).toEqual({ did: "moved" });
  });
});

describe("a weather warning", () => {
  it("comes from anybody, and ends when one who may says so", () => {
    const crew = at("raise.A");
    expect(crew.say({ type: "reading", reading: { kind: "warning", takenAt: crew.at } }, "trainee")).toMatchObject({ did: "read" });
    expect(crew.next()).toMatchObject(lacks("warning", "outOfLimit"));
    expect(crew.answer("good", "trainee", "warning")).toMatchObject({ refused: [{ why: "role" }] });
    crew.answer("good", "competent", "warning");
    expect(crew.next()).toEqual({ did: "moved" });
  });

  it("is asked about again after an hour", () => {
    const crew = at("raise.A");
    crew.at += 61 * MINUTE;
    expect(crew.missing).toBe("warning");
  });

  it("is answered badly by anybody: that can only stop", () => {
    const crew = at("raise.A");
    expect(crew.answer("bad", "trainee", "warning")).toMatchObject({ did: "answered" });
    expect(crew.job.snapshot.context.answers.warning).toMatchObject({ by: PEOPLE.trainee });
  });
});

describe("what was checked for this session", () => {
  it("is asked again after two hours in which nobody said anything", () => {
    const crew = at("raise.A");
    for (let i = 0; i < 5; i++) crew.say({ type: "note", text: "going well" }, "crew", { at: crew.at + HOUR });
    crew.answer("good", "lead", "warning");
    crew.gust(8);
    expect(crew.missing).toBeNull();
    crew.at += 2 * HOUR + SECOND;
    crew.answer("good", "lead", "warning");
    expect(crew.missing).toBe("hats");
  });

  it("is not asked again while it holds", () => {
    const crew = at("raise.B");
    expect(crew.missing).toBeNull();
  });
});

describe("today's crew", () => {
  it("is briefed and counted again next day, where the job stands", () => {
    const crew = at("raise.A");
    crew.at += 15 * HOUR;
    crew.answer("good", "lead", "warning");
    expect(crew.missing).toBe("talk.briefed");
    crew.answer("good");
    expect(crew.missing).toBe("talk.headcount");
    expect(crew.call).toBe("raise.A");
  });

  it("is briefed and counted again for the strike", () => {
    const crew = at("strike.walls");
    expect(crew.job.snapshot.context.answers["talk.briefed"]).toBeDefined();
    const came = new Crew().goTo("strike.people");
    expect(came.job.snapshot.context.answers["talk.briefed"]).toBeUndefined();
    expect(came.job.snapshot.context.reopened["talk.briefed"]).toMatchObject({ by: "strike" });
  });
});

describe("stakes", () => {
  it("need the ticket, the paint, and ears and eyes", () => {
    const crew = at("drive.AB");
    expect(Object.keys(crew.job.snapshot.context.answers)).toEqual(expect.arrayContaining(["locate.ticket", "paint", "earsAndEyes"]));
  });

  it("inside need the ticket, and ears and eyes, before anybody goes under; nobody can look for paint under cloth", () => {
    const crew = at("under.center.C1");
    crew.say({ type: "reading", reading: { kind: "rain", takenAt: crew.at } }, "trainee");
    crew.at += 15 * HOUR;
    const asked: string[] = [];
    while (crew.missing !== "under.center.C1" && asked.length < 30) {
      asked.push(crew.missing!);
      crew.oneMore();
    }
    expect(asked).toContain("earsAndEyes");
    expect(asked).not.toContain("paint");
  });

  it("are not driven by going back either, when the paint is gone", () => {
    const crew = at("lean.inward");
    crew.say({ type: "answer", gate: "paint", value: { kind: "yesNo", yes: false } }, "trainee");
    expect(crew.say({ type: "back" })).toMatchObject(lacks("paint", "outOfLimit"));
  });
});
