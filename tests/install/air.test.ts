import { beforeEach, describe, expect, it } from "vitest";
import { AIR_GOOD_FOR_MS, airTooOld } from "../../machines/install/air.ts";
import type { Role } from "../../machines/install/brief.ts";
import { missingNow } from "../../machines/install/job.ts";
import { MINUTE } from "../proof/fixtures.ts";
import { Crew } from "../support/crew.ts";
import { withWeather } from "../support/weather-plan.ts";

let crew: Crew;
beforeEach(() => {
  crew = new Crew(withWeather({})).goTo("strike.people").ready();
});
const heat = (airF: number, role: Role, takenAt = crew.at) =>
  crew.say({ type: "reading", reading: { kind: "heat", airF, humidity: 60, sun: "full", takenAt } }, role);
const cold = (airF: number, role: Role) =>
  crew.say({ type: "reading", reading: { kind: "cold", airF, windMph: 20, takenAt: crew.at } }, role);
const missing = () => missingNow(crew.job, crew.at + 1000);

describe("air in which the schedule gives no work", () => {
  it("refuses what comes next, with the figures, whoever told it", () => {
    heat(98, "crew");
    expect(crew.next()).toMatchObject({ refused: [{ why: "tooHot", airF: 98, humidity: 60, sun: "full" }] });
  });
  it("does the same for the cold", () => {
    cold(-45, "crew");
    expect(crew.next()).toMatchObject({ refused: [{ why: "tooCold", airF: -45, windMph: 20 }] });
  });
  it("leaves making safe open", () => {
    heat(98, "crew");
    expect(crew.say({ type: "makeSafe", because: null }, "crew")).toMatchObject({ did: "makingSafe" });
  });
  it("opens when the lead reads it anew", () => {
    heat(98, "crew");
    crew.at += MINUTE;
    heat(75, "lead");
    expect(missing()).toBeNull();
  });
  it("is not opened by somebody who may not read the wind", () => {
    heat(98, "crew");
    crew.at += MINUTE;
    expect(heat(75, "crew")).toMatchObject({ refused: [{ why: "role" }] });
    expect(missing()).toMatchObject({ why: "tooHot" });
  });
  it("is not opened by a reading from before it", () => {
    heat(98, "crew");
    crew.at += MINUTE;
    expect(heat(75, "lead", crew.at - 10 * MINUTE)).toMatchObject({ refused: [{ why: "olderReading" }] });
  });
  it("does not lapse with age", () => {
    heat(98, "crew");
    crew.at += 5 * MINUTE;
    expect(missing()).toMatchObject({ why: "tooHot" });
  });
  it("is refused after the graver thunder", () => {
    heat(98, "crew");
    crew.say({ type: "reading", reading: { kind: "thunder", takenAt: crew.at } }, "crew");
    expect(missing()).toMatchObject({ why: "gate", gate: "thunder" });
  });
});

describe("a reading that would open", () => {
  const at = 1_800_000_000_000;
  const state = { heat: { airF: 98, humidity: 60, sun: "full", takenAt: at - 3 * AIR_GOOD_FOR_MS } } as const;
  const cooler = (agoMs: number) => ({ kind: "heat", airF: 75, humidity: 60, sun: "full", takenAt: at - agoMs }) as const;
  it("is too old from over an hour on", () => expect(airTooOld(cooler(AIR_GOOD_FOR_MS + 1), state, at)).toBe(true));
  it("opens at an hour", () => expect(airTooOld(cooler(AIR_GOOD_FOR_MS), state, at)).toBe(false));
  it("is never too old where it still stops", () => expect(airTooOld({ ...cooler(2 * AIR_GOOD_FOR_MS), airF: 98 }, state, at)).toBe(false));
});

it("air with work left in it shuts nothing, and is taken from anybody", () => {
  expect(heat(75, "crew")).toMatchObject({ did: "read" });
  expect(missing()).toBeNull();
});
