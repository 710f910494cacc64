import { describe, expect, it } from "vitest";
import { onSite } from "../../machines/install/crew.ts";
import { limitText } from "../../views/text/en/limits.ts";
import { briefOf, frozenOf, MIDDLE, people, SMALL } from "../proof/fixtures.ts";
import { Crew } from "../support/crew.ts";

const makeSafe = { type: "makeSafe", because: "a ring tore" } as const;
const under = () => new Crew().goTo("lift.center.C1");
const anotherHand = frozenOf(briefOf(SMALL, { crew: [...people, { id: "nell", role: "crew" }] }));

/** How many a crew of so many may count in. */
const goUnder = (crew: number) => {
  const here = onSite(people).slice(0, crew);
  const { script } = frozenOf(briefOf(SMALL, { crew: here }));
  return script.steps.find((step) => step.id === "under.center.C1")!.gate!.check;
};

describe("with people under", () => {
  it("whoever calls and whoever counts them out stay outside: never the whole crew goes in", () => {
    expect([3, 4].map(goUnder)).toEqual([
      { kind: "count", from: 2, to: 2 },
      { kind: "count", from: 2, to: 2 },
    ]);
    expect(goUnder(5)).toMatchObject({ to: 3 });
  });

  it("a crew of two puts nobody under: it wants more people", () => {
    expect(goUnder(2)).toMatchObject({ from: 2, to: 1 });
    expect(limitText({ check: { kind: "count", from: 2, to: 1 } })).toBe("more people on the crew");
  });

  it("a gust lets the lift in hand be finished, tied, and everybody counted out, and nothing begin", () => {
    const crew = under();
    crew.gust(60, "trainee");
    expect(crew.answer("good")).toEqual({ did: "answered", and: "moved" });
    expect(crew.call).toBe("tied.center.C1");
    expect(crew.answer("good")).toEqual({ did: "answered", and: "moved" });
    expect(crew.call).toBe("out.center.C1");
    expect(crew.answer("good", "deputy")).toMatchObject({ did: "answered", asks: { gate: "wind.cloth", status: "outOfLimit" } });
    expect(crew.call).toBe("out.center.C1");
  });

  it("nobody is counted in under stop, nor with a wind that is old", () => {
    const crew = new Crew().goTo("under.center.C1");
    crew.at += 11 * 60_000;
    expect(crew.next()).toMatchObject({ refused: [{ gate: "wind.lift", status: "stale" }] });
    crew.gust(60, "trainee");
    expect(crew.next()).toMatchObject({ refused: [{ gate: "wind.lift", status: "outOfLimit" }] });
    crew.gust(8);
    expect(crew.missing).toBe("afterBlow");
    crew.answer("good");
    expect(crew.missing).toBe("under.center.C1");
  });

  it("a hand who comes before the count in is briefed first", () => {
    const crew = new Crew().goTo("under.center.C1");
    crew.amend(anotherHand, "Nell came");
    expect(crew.missing).toBe("talk.briefed");
  });

  it("a line is tied by people who were counted in, and are counted out", () => {
    const crew = new Crew().goTo("tied.center.C1");
    crew.gust(60, "trainee");
    crew.answer("good");
    expect(crew.call).toBe("out.center.C1");
    expect(crew.say({ type: "standDown", because: "storm" })).toEqual({ refused: [{ why: "peopleUnder" }] });
  });

  it("whoever ties where the sheet has all ties at the end is counted too", () => {
    const crew = new Crew(briefOf(SMALL, { sheet: { interiorTies: "afterAll" } })).goTo("under.ties");
    crew.gust(30, "trainee");
    expect(crew.next()).toMatchObject({ refused: [{ gate: "wind.lift", status: "outOfLimit" }] });
    crew.gust(8);
    crew.goTo("tied.center.C1");
    expect(crew.say({ type: "back" })).toEqual({ refused: [{ why: "peopleUnder" }] });
    crew.answer("good");
    expect(crew.call).toBe("out.ties");
    expect(crew.answer("good", "lead")).toMatchObject({ did: "answered" });
    expect(crew.next()).toMatchObject({ refused: [{ gate: "out.ties", status: "samePerson" }] });
  });

  it("fewer than two go under for no pole", () => {
    const crew = new Crew().goTo("under.center.C1");
    while (crew.missing !== "under.center.C1") crew.oneMore();
    crew.say({ type: "answer", gate: "under.center.C1", value: { kind: "count", n: 1 } });
    expect(crew.next()).toMatchObject({ refused: [{ gate: "under.center.C1", status: "outOfLimit" }] });
    crew.say({ type: "answer", gate: "under.center.C1", value: { kind: "count", n: 2 } });
    expect(crew.call).toBe("lift.center.C1");
  });

  it("no second line is gone under while it blows", () => {
    const crew = new Crew(briefOf(MIDDLE, { site: { soilKnown: true } })).goTo("out.quarters.hip-DA");
    crew.gust(60, "trainee");
    expect(crew.answer("good", "deputy", "out.quarters.hip-DA")).toMatchObject({ did: "answered" });
    expect(crew.next()).toMatchObject({ refused: [{ gate: "wind.lift", status: "outOfLimit" }] });
    expect(crew.call).toBe("out.quarters.hip-DA");
    crew.gust(8);
    expect(crew.next()).toMatchObject({ refused: [{ gate: "afterBlow", asked: "before", because: "blow" }] });
    expect(crew.answer("good")).toMatchObject({ and: "moved" });
    expect(crew.call).toBe("under.quarters.line-1");
  });

  it("a wind that only got old shuts no lift that they went in for in time", () => {
    const crew = new Crew().goTo("under.center.C1").ready();
    crew.gust(8);
    crew.at += 9 * 60_000;
    crew.answer("good", "lead", "under.center.C1");
    crew.next();
    expect(crew.call).toBe("lift.center.C1");
  });

  it("the count in is not gone back over", () => {
    const crew = under();
    expect(crew.say({ type: "back" })).toEqual({ refused: [{ why: "peopleUnder" }] });
    expect(crew.call).toBe("lift.center.C1");
  });

  it("the job is not stood down: they come out first", () => {
    const crew = under();
    expect(crew.say({ type: "standDown", because: "called off" })).toEqual({ refused: [{ why: "peopleUnder" }] });
    crew.goTo("groundCloth.out");
    expect(crew.say({ type: "standDown", because: "called off" })).toEqual({ did: "standingDown" });
  });

  it("an amendment waits for the count out", () => {
    const crew = under();
    const target = crew.entry;
    crew.say({ type: "amend", because: "Nell came", to: anotherHand });
    expect(crew.say({ type: "agree", target }, "competent")).toEqual({ refused: [{ why: "peopleUnder" }] });
    crew.goTo("groundCloth.out");
    expect(crew.say({ type: "agree", target }, "competent")).toEqual({ did: "amended" });
  });

  it("making safe is open to anybody, counts everybody, and goes on at the count in", () => {
    const crew = under();
    expect(crew.say(makeSafe, "trainee")).toEqual({ did: "makingSafe" });
    expect(crew.call).toBe("safe.up.pole");
    crew.goTo("safe.up.looked");
    expect(crew.answer("good", "lead")).toMatchObject({ did: "answered" });
    expect(crew.next()).toMatchObject({ refused: [{ gate: "safe.up.looked", status: "samePerson" }] });
    crew.answer("good", "deputy", "safe.up.looked");
    expect(crew.missing).toBe("talk.briefed");
    crew.goTo("under.center.C1");
    expect(crew.job.snapshot.context.answers["under.center.C1"]).toBeUndefined();
  });
});

describe("a finished lift", () => {
  it("is gone back over from its count in, with all of its counts again", () => {
    const crew = new Crew().goTo("groundCloth.out");
    expect(crew.say({ type: "back" })).toEqual({ did: "wentBack" });
    expect(crew.call).toBe("under.center.C1");
    const { answers } = crew.job.snapshot.context;
    expect([answers["under.center.C1"], answers["lift.center.C1"], answers["out.center.C1"]]).toEqual([undefined, undefined, undefined]);
  });

  it("is not gone back under while it blows", () => {
    const crew = new Crew().goTo("groundCloth.out");
    crew.gust(30);
    expect(crew.say({ type: "back" })).toMatchObject({ refused: [{ gate: "wind.lift", status: "outOfLimit" }] });
  });

  it("is never asked again how many went under", () => {
    const crew = new Crew().goTo("tension.corners");
    crew.amend(anotherHand);
    const { answers } = crew.job.snapshot.context;
    expect([answers["under.center.C1"], answers["out.center.C1"]]).not.toContain(undefined);
  });
});

describe("making safe before anything is up", () => {
  it("leads to the rally point, a count, and a look by somebody else", () => {
    const crew = new Crew().goTo("damage");
    crew.say(makeSafe, "crew");
    expect(crew.call).toBe("safe.ground.tools");
    crew.goTo("damage");
    expect(crew.job.snapshot.context.resumeAt).toBeNull();
  });
});
