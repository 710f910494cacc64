import { describe, expect, it } from "vitest";
import type { Intent } from "../../machines/install/commands.ts";
import { currentStep } from "../../machines/install/job.ts";
import { briefOf, HOUR, MIDDLE, MINUTE, SMALL } from "../proof/fixtures.ts";
import { Crew } from "../support/crew.ts";

const standDown: Intent = { type: "standDown", because: "called off" };

describe("standing down", () => {
  it("with stakes in the ground goes to pulling and counting them", () => {
    const crew = new Crew().goTo("straps.choked");
    expect(crew.say(standDown)).toEqual({ did: "standingDown" });
    expect(crew.call).toBe("strike.stakes");
  });

  it("with nothing in the ground closes the job", () => {
    const crew = new Crew().goTo("white.footprint");
    expect(crew.say(standDown)).toEqual({ did: "closed" });
    expect(crew.next()).toEqual({ refused: [{ why: "jobClosed" }] });
  });

  it("sends nobody under for a line that never stood", () => {
    const crew = new Crew(briefOf(MIDDLE, { site: { soilKnown: true } })).goTo("lift.quarters.line-1");
    const [stands, begun, never] = ["quarters.hip-DA", "quarters.line-1", "center.C1"];
    crew.say({ type: "makeSafe", because: "a squall" });
    crew.goTo("safe.up.looked");
    crew.say(standDown);
    const calls: string[] = [];
    while (crew.call !== "strike.sides.AB") {
      if (calls.at(-1) !== crew.call) calls.push(crew.call);
      crew.oneMore();
    }
    expect(calls).toEqual(expect.arrayContaining([`strike.under.${stands}`, `lower.${stands}`, `lower.${begun}`]));
    expect(calls).not.toContain(`strike.under.${never}`);
    expect(calls.at(-1)).toBe("strike.interiorDown");
    crew.say({ type: "back" });
    expect(crew.call).toBe("strike.interiorDown");
  });

  it("with a corner up goes straight on from easing to the side poles, and back", () => {
    const crew = new Crew().goTo("raise.B");
    crew.say(standDown);
    crew.goTo("strike.ease");
    crew.ready().next();
    expect(crew.call).toBe("strike.interiorDown");
    crew.say({ type: "back" });
    expect(crew.call).toBe("strike.ease");
  });

  it("stays open while a stake is missing", () => {
    const crew = new Crew().goTo("straps.choked");
    crew.say(standDown);
    crew.goTo("back.stakes");
    const { check } = currentStep(crew.job)!.gate!;
    const stakes = check.kind === "count" ? check.from : 0;
    crew.say({ type: "answer", gate: "back.stakes", value: { kind: "count", n: stakes - 1 } });
    expect(crew.next()).toMatchObject({ refused: [{ gate: "back.stakes", status: "outOfLimit" }] });
    expect(crew.say(standDown)).toEqual({ refused: [{ why: "alreadyStandingDown" }] });
    expect(crew.say({ type: "answer", gate: "back.stakes", value: { kind: "count", n: stakes } })).toMatchObject({ and: "moved" });
    crew.goTo("strike.ground");
    expect(crew.answer("good")).toEqual({ did: "answered", and: "closed" });
  });
});

describe("a strike", () => {
  it("has people out before anything is asked", () => {
    const crew = new Crew().goTo("strike.people");
    crew.thunder();
    expect(crew.missing).toBe("strike.people");
    expect(crew.answer("good")).toMatchObject({ asks: { gate: "thunder" } });
    expect(crew.call).toBe("strike.people");
  });

  it("sends nobody in for tables, stage and cables while it blows", () => {
    const crew = new Crew().goTo("strike.people").ready();
    crew.gust(30, "watcher");
    expect(crew.next()).toMatchObject({ refused: [{ gate: "wind.lower", status: "outOfLimit" }] });
  });

  it("asks for its own talk and count before the first work", () => {
    const crew = new Crew().goTo("strike.people");
    expect(crew.answer("good")).toMatchObject({ asks: { gate: "talk.briefed", because: "strike" } });
    const asked: string[] = [];
    while (crew.call === "strike.people") {
      if (crew.missing) asked.push(crew.missing);
      crew.oneMore();
    }
    expect(asked).toEqual(expect.arrayContaining(["talk.briefed", "talk.headcount"]));
  });

  it("has its side poles down by opposite sides, each entered in a wind of its own, the corners last", () => {
    const crew = new Crew().goTo("strike.sides.AB");
    crew.gust(26, "watcher");
    expect(crew.next()).toMatchObject({ refused: [{ gate: "wind.lower", status: "outOfLimit" }] });
    crew.ready();
    expect(crew.next()).toEqual({ did: "moved" });
    expect(crew.call).toBe("strike.sides.BC");
    crew.at += 11 * MINUTE;
    expect(crew.next()).toMatchObject({ refused: [{ gate: "wind.lower", status: "stale" }] });
    crew.gust(8);
    crew.next();
    expect(crew.call).toBe("strike.sides");
  });

  it("asks for no locate ticket: nothing is driven", () => {
    const crew = new Crew().goTo("strike.under.center.C1");
    crew.at += 100 * 24 * HOUR;
    const asked: string[] = [];
    while (crew.call === "strike.under.center.C1") {
      if (crew.missing) asked.push(crew.missing);
      crew.oneMore();
    }
    expect(asked).not.toContain("locate.ticket");
    expect(asked).not.toContain("paint");
  });

  it("asks nothing of the raise again", () => {
    const crew = new Crew().goTo("strike.ease");
    crew.gust(60);
    crew.say({ type: "reading", reading: { kind: "rain", takenAt: crew.at } });
    expect(crew.missing).not.toBe("round.again");
  });

  it("lowers line by line, everybody counted out before the next", () => {
    const crew = new Crew().goTo("lower.center.C1");
    expect(crew.say({ type: "back" })).toEqual({ refused: [{ why: "peopleUnder" }] });
    crew.gust(60, "crew");
    expect(crew.answer("good", "deputy")).toMatchObject({ did: "answered", and: "moved" });
    expect(crew.call).toBe("strike.interiorDown");
    expect(crew.answer("good")).toMatchObject({ asks: { gate: "wind.lower", status: "outOfLimit" } });
  });
});

describe("the standing tent", () => {
  it("is not opened under a warning", () => {
    const crew = new Crew().goTo("tension.again");
    crew.say({ type: "reading", reading: { kind: "warning", takenAt: crew.at } }, "watcher");
    crew.answer("good");
    expect(crew.next()).toMatchObject({ refused: [{ gate: "warning", status: "outOfLimit" }] });
    expect(crew.call).toBe("tension.again");
  });

  it("is walked again by somebody else after a blow, where it stands", () => {
    const crew = new Crew().goTo("watch");
    crew.answer("good", "competent");
    crew.gust(45, "watcher");
    expect(crew.next()).toMatchObject({ refused: [{ gate: "wind.lower", status: "outOfLimit", asked: "before" }] });
    crew.gust(8);
    expect(crew.next()).toMatchObject({ refused: [{ gate: "round.again", asked: "again", because: "blow" }] });
    expect(crew.call).toBe("watch");
  });

  it("is not opened in a gust that everybody goes out at, agreed or of the stop level", () => {
    const crew = new Crew().goTo("tension.again").ready();
    crew.gust(16);
    expect(crew.next()).toMatchObject({ refused: [{ gate: "wind.use", status: "outOfLimit" }] });
    crew.gust(60, "watcher");
    expect(crew.next()).toMatchObject({ refused: [{ gate: "wind.lower", status: "outOfLimit" }] });
    crew.gust(8);
    expect(crew.next()).toMatchObject({ refused: [{ gate: "round.again", because: "blow" }] });
  });

  it("is walked every day, and a good walk is no word that it is over", () => {
    const crew = new Crew().goTo("watch").ready();
    expect([crew.call, crew.missing]).toEqual(["watch", null]);
    crew.at += 25 * HOUR;
    const asked: string[] = [];
    while (crew.missing !== null) {
      asked.push(crew.missing);
      crew.oneMore();
    }
    expect(asked).toContain("watch");
    expect(crew.call).toBe("watch");
  });

  it("after everybody was sent out is gone back into by a count, a look, and what it takes to let people in", () => {
    const crew = new Crew().goTo("watch").ready();
    crew.thunder("watcher");
    crew.say({ type: "makeSafe", because: "thunder" }, "watcher");
    crew.goTo("safe.standing.headcount");
    expect(crew.say({ type: "standDown", because: "enough" })).toMatchObject({ refused: [{ gate: "safe.standing.headcount" }] });
    crew.answer("good");
    crew.answer("good");
    expect(crew.next()).toMatchObject({ refused: [{ gate: "thunder" }] });
    expect(crew.call).toBe("safe.standing.looked");
  });

  it("a wind over what was agreed is taken from anybody, and makes no reading fresh", () => {
    const crew = new Crew().goTo("watch").ready();
    const before = crew.job.snapshot.context.wind!.takenAt;
    crew.at += 5 * MINUTE;
    expect(crew.gust(18, "watcher")).toMatchObject({ did: "read" });
    expect(crew.job.snapshot.context.wind).toMatchObject({ gustMph: 18, takenAt: before });
    expect(crew.gust(17, "watcher")).toMatchObject({ refused: [{ why: "role" }] });
  });

  it("after rain is asked for its ground, tensioned again once, and walked", () => {
    const crew = new Crew(briefOf(SMALL, { site: { soilKnown: true } })).goTo("watch");
    crew.say({ type: "reading", reading: { kind: "rain", takenAt: crew.at } }, "watcher");
    const again: string[] = [];
    while (crew.missing !== "watch") {
      again.push(crew.missing!);
      expect(crew.next()).toMatchObject({ refused: [{ asked: "again", because: "rain" }] });
      crew.answer("good");
    }
    expect(again).toEqual(["soil", "tension.again"]);
  });

  it("is tensioned again when its first hour is up, if it was looked at sooner", () => {
    const crew = new Crew().goTo("tension.again");
    crew.answer("good");
    crew.goTo("watch");
    crew.answer("good", "competent");
    expect(crew.missing).toBeNull();
    crew.at += HOUR;
    expect(crew.next()).toMatchObject({ refused: [{ gate: "tension.again", status: "recheckDue", asked: "again" }] });
    crew.answer("good");
    expect(crew.missing).toBeNull();
    crew.at += HOUR;
    expect(crew.missing).toBeNull();
  });

  it("is tensioned again after a real hour, though a clock that was set ahead made it look like one", () => {
    const crew = new Crew().goTo("tension.again");
    // The server's clock is set an hour ahead: whether that hour passed, nobody knows.
    crew.pass(HOUR, { doubtMs: HOUR });
    crew.answer("good");
    crew.goTo("watch");
    crew.answer("good", "competent");
    expect(crew.missing).toBeNull();
    crew.at += HOUR;
    expect(crew.next()).toMatchObject({ refused: [{ gate: "tension.again", status: "recheckDue" }] });
    crew.answer("good");
    expect(crew.missing).toBeNull();
  });

  it("is not, if the first hour was up by then", () => {
    const crew = new Crew().goTo("tension.again");
    crew.at += HOUR;
    crew.answer("good");
    crew.goTo("watch");
    crew.answer("good", "competent");
    crew.at += HOUR;
    expect(crew.missing).toBeNull();
  });
});
