import { describe, expect, it } from "vitest";
import { badValue, goodValue } from "../support/answers.ts";
import { Crew } from "../support/crew.ts";

const squared = (crew: Crew, how: typeof goodValue) =>
  crew.say({ type: "answer", gate: "squared", value: how(crew.gate("squared").check) });

describe("a corner mark that was moved", () => {
  it("has its white line drawn again, and the distances taken again that were measured from where it stood, once all is square", () => {
    const crew = new Crew().goTo("squared");
    squared(crew, badValue);
    expect(crew.missing).toBe("squared");
    squared(crew, goodValue);
    expect(crew.next()).toMatchObject({ refused: [{ gate: "white.stakeLine", asked: "again", because: "corner" }] });
    crew.goTo("marked");
    for (const gate of ["white.stakeLine", "locate.covers", "overhead.1", "nearest.gas", "nearest.private", "clear.around"])
      expect(crew.job.snapshot.context.answers[gate]).toBeDefined();
  });
  it("that never had to move has nothing asked again", () => {
    const crew = new Crew().goTo("squared");
    expect(squared(crew, goodValue)).toEqual({ did: "answered", and: "moved" });
  });
});
