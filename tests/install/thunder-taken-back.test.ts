import { describe, expect, it } from "vitest";
import type { Role } from "../../machines/install/brief.ts";
import { weatherAt } from "../../machines/install/weather.ts";
import { MINUTE, SECOND } from "../proof/fixtures.ts";
import { Crew } from "../support/crew.ts";

const takenBack = (crew: Crew, role: Role = "lead") =>
  crew.say({ type: "reading", reading: { kind: "noThunder", takenAt: crew.at, because: "it was a truck" } }, role);
const stops = (crew: Crew) => weatherAt(crew.job.snapshot.context, crew.at) === "stop";
const calm = () => {
  const crew = new Crew().goTo("stakes.corners");
  crew.gust(8);
  return crew;
};

describe("thunder that was none", () => {
  it.each(["lead", "deputy", "competent"] as const)("is taken back by the %s, with what it was: work may go on", (role) => {
    const crew = calm();
    crew.thunder("crew");
    expect(stops(crew)).toBe(true);
    expect(takenBack(crew, role)).toMatchObject({ did: "read" });
    expect(stops(crew)).toBe(false);
  });
  it.each(["crew", "trainee", "watcher", "manager"] as const)("is not taken back by the %s", (role) => {
    const crew = calm();
    crew.thunder("crew");
    expect(takenBack(crew, role)).toMatchObject({ refused: [{ why: "role" }] });
    expect(stops(crew)).toBe(true);
  });
  it("leaves one that was heard before it: that still stops work, for its own half hour", () => {
    const crew = calm();
    crew.thunder("crew");
    crew.at += 10 * MINUTE;
    crew.thunder("deputy");
    takenBack(crew);
    expect(stops(crew)).toBe(true);
    crew.at += 19 * MINUTE;
    expect(stops(crew)).toBe(true);
    crew.at += 2 * MINUTE;
    crew.gust(8);
    expect(stops(crew)).toBe(false);
  });
  it("each of several is taken back on its own", () => {
    const crew = calm();
    for (let n = 0; n < 3; n++) crew.thunder("crew");
    takenBack(crew);
    takenBack(crew);
    expect(stops(crew)).toBe(true);
    takenBack(crew);
    expect(stops(crew)).toBe(false);
  });
  it("a clock that was set makes none of them older", () => {
    const crew = calm();
    crew.thunder("crew");
    crew.at += SECOND;
    crew.thunder("deputy");
    crew.pass(40 * MINUTE, { doubtMs: 40 * MINUTE });
    takenBack(crew);
    expect(stops(crew)).toBe(true);
  });
  it("where none counts, there is none to take back", () => {
    const crew = calm();
    expect(takenBack(crew)).toMatchObject({ refused: [{ why: "noThunderNear" }] });
    crew.thunder("crew");
    crew.at += 31 * MINUTE;
    expect(takenBack(crew)).toMatchObject({ refused: [{ why: "noThunderNear" }] });
  });
  it("a warning and too much wind still stop work", () => {
    const crew = calm();
    crew.thunder("crew");
    crew.gust(60);
    takenBack(crew);
    expect(stops(crew)).toBe(true);
  });
});
