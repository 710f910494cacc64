import { beforeEach, describe, expect, it } from "vitest";
import type { Brief } from "../../machines/install/brief.ts";
import type { Value } from "../../machines/install/gates.ts";
import { status } from "../../machines/install/status.ts";
import { briefOf, DAY, SMALL } from "../proof/fixtures.ts";
import { PAPER } from "../support/answers.ts";
import { Crew } from "../support/crew.ts";

let crew: Crew;
const gate = "stakes.size";
const show = (role: Parameters<Crew["say"]>[1] = "lead", value: Value = PAPER) => crew.say({ type: "answer", gate, value }, role);
const stands = () => status(crew.gate(gate), crew.job.snapshot.context, crew.at);
const paper = (more: object): Value => ({ ...PAPER, ...more }) as Value;
const withZone = (zone: string): Brief => ({ ...briefOf(SMALL), zone });

beforeEach(() => {
  crew = new Crew().goTo(gate);
});

describe("a paper", () => {
  it("that one person showed opens nothing, and says what it waits for", () => {
    expect(show()).toEqual({ did: "answered" });
    expect(stands()).toBe("unseen");
    expect(crew.next()).toMatchObject({ refused: [{ why: "gate", gate, status: "unseen", asked: "here" }] });
  });
  it("counts once a second competent person has looked at it on a phone of their own, and then leads on", () => {
    show();
    const entry = crew.entry;
    expect(show("deputy")).toEqual({ did: "seen", and: "moved" });
    const { seen, by, value } = crew.job.snapshot.context.answers[gate]!;
    expect([by, value, seen]).toEqual(["lena", PAPER, { by: "david", device: "phone of david", entry }]);
    expect(crew.call).not.toBe(gate);
  });
  it("is the same one however its number is spaced and capitalized", () => {
    show();
    expect(show("competent", paper({ by: "a. ENGINEER", document: "eng-1204" }))).toMatchObject({ did: "seen" });
    expect(stands()).toBe("good");
  });
  it("is not seen by the one who showed it, on whatever phone", () => {
    show();
    expect(show()).toEqual({ refused: [{ why: "ownPaper" }] });
    expect(stands()).toBe("unseen");
  });
  it("is not seen on the phone it was shown on", () => {
    show();
    crew.phone = "phone of lena";
    expect(show("deputy")).toEqual({ refused: [{ why: "ownPhone" }] });
    expect(stands()).toBe("unseen");
  });
  it("is neither shown nor seen by a hand", () => {
    const may = ["lead", "deputy", "competent"];
    expect(show("crew")).toEqual({ refused: [{ why: "role", is: "crew", may }] });
    show();
    expect(show("crew")).toEqual({ refused: [{ why: "role", is: "crew", may }] });
    expect(crew.job.snapshot.context.answers[gate]!.seen).toBeUndefined();
  });
  it.each([
    ["of another number", { document: "ENG-1205" }],
    ["of another day", { dated: "2026-05-29" }],
    ["of somebody else", { by: "B. Engineer" }],
  ])("%s is another paper, and waits for its own second look", (_what, more) => {
    show();
    expect(show("deputy", paper(more))).toEqual({ did: "answered" });
    expect(stands()).toBe("unseen");
    expect(show("lead", paper(more))).toMatchObject({ did: "seen", and: "moved" });
  });
  it.each([
    ["no number", { document: " " }],
    ["a number that is a letter", { document: "x" }],
    ["a number without a digit", { document: "letter" }],
    ["a number of three", { document: "A-12" }],
    ["no day", { dated: "" }],
    ["a day that no calendar has", { dated: "2026-02-30" }],
    ["nobody's name", { by: "." }],
  ])("with %s opens nothing, whoever looks at it", (_what, more) => {
    show("lead", paper(more));
    show("deputy", paper(more));
    expect(stands()).not.toBe("good");
  });
  it("goes with the answer: what is asked again is shown again", () => {
    show();
    show("deputy");
    crew.say({ type: "back" });
    expect(crew.job.snapshot.context.answers[gate]).toBeUndefined();
    expect(show("deputy")).toMatchObject({ did: "answered" });
  });
});

describe("the day of a paper", () => {
  it("is today at the latest, as it is today at the site", () => {
    const today = new Date(crew.at).toISOString().slice(0, 10);
    const tomorrow = new Date(crew.at + DAY).toISOString().slice(0, 10);
    expect(show("lead", paper({ dated: tomorrow }))).toEqual({ refused: [{ why: "datedAhead", gate, dated: tomorrow }] });
    expect(show("lead", paper({ dated: today }))).toEqual({ did: "answered" });
  });
  it("begins at the site's own midnight", () => {
    // Noon in London is the next day on Kiritimati, and tomorrow has not begun there.
    crew = new Crew(withZone("Pacific/Kiritimati")).goTo(gate);
    expect(show("lead", paper({ dated: "2026-06-02" }))).toEqual({ did: "answered" });
    crew = new Crew(withZone("America/Denver")).goTo(gate);
    expect(show("lead", paper({ dated: "2026-06-02" }))).toMatchObject({ refused: [{ why: "datedAhead" }] });
  });
});
