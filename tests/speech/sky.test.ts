import { describe, expect, it } from "vitest";
import { yes } from "../../machines/install/gates.ts";
import { understand } from "../../machines/speech/en/understand.ts";
import { ears, said } from "../support/ears.ts";
import { stepWith } from "../support/steps.ts";

const meant = (words: string) => understand(words, { step: null, asks: null });

it.each([
  ["thunder, twelve seconds", 12],
  ["lightning, twenty five seconds", 25],
  ["flash to bang ten", 10],
  ["flash to bang 7 seconds", 7],
])("%s is thunder with its seconds", (words, seconds) => expect(meant(words)).toEqual({ thunder: true, seconds }));
it("thunder with seconds that are none is thunder", () => expect(meant("thunder seconds ago")).toEqual({ thunder: true }));
it("a word of the scale is a wind at the top of its band", () => {
  const wind = { mph: 24, gustMph: null, fromDeg: null, taken: null, look: "freshBreeze" };
  expect(meant("wind fresh breeze")).toEqual({ wind });
});
it.each(["near gale", "Near gale.", "a strong breeze"])("%s, said whole and alone, is a wind too", (words) =>
  expect(meant(words)).toMatchObject({ wind: { look: expect.any(String) } }),
);
it("a breeze that nobody calls the wind is none, where no wind is asked", () => {
  expect(meant("that's a fresh breeze")).toEqual({ notUnderstood: true });
});
describe("a bare name of the scale that is overheard", () => {
  const NAMES = ["a moderate breeze", "gentle breeze", "near gale"];
  const anywhere = ears(stepWith(yes));
  it.each(NAMES)("%s is chatter", (words) => expect(said(words, false, anywhere)).toMatchObject({ leftAlone: "chatter" }));
  it.each(NAMES)("%s is a wind with the talk button, or after the wake word", (words) => {
    expect(said(words, true, anywhere)).toMatchObject({ meant: { wind: {} } });
    expect(said(`${anywhere.wakeWord} ${words}`, false, anywhere)).toMatchObject({ meant: { wind: {} } });
  });
  it("stops work where a wind is asked", () =>
    expect(said("near gale", false, ears(stepWith({ kind: "wind", belowMph: 20 })))).toMatchObject({
      meant: { wind: { look: "nearGale" } },
    }));
});
it.each(["30, humidity 60", "heat 30, humidity 60", "it's thirty and humidity sixty", "air 59 with a humidity of forty"])(
  "%s is no heat: it may be in Celsius",
  (words) => expect(meant(words)).toEqual({ notUnderstood: true }),
);
it.each([
  ["86, humidity 60", 86],
  ["30 celsius, humidity 60", 86],
  ["55 degrees fahrenheit, humidity 60", 55],
])("%s is heat of %i", (words, airF) => expect(meant(words)).toMatchObject({ heat: { airF } }));
describe("a number of a paper", () => {
  const paper = stepWith({ kind: "document", expected: null, validFrom: null, validTo: null });
  const named = (words: string) => understand(words, { step: paper, asks: null });
  it.each(["water permit 22-10", "gas permit 1042", "gas 1042", "electric 1042", "power 77-B", "overhead 12-9"])("%s is one", (words) =>
    expect(named(words)).toMatchObject({ intent: { value: { kind: "document" } } }),
  );
  it.each([
    "heat 30, humidity 60",
    "heat 140",
    "wind is 14",
    "wind: 14",
    "gusts to 900",
    "humidity 60",
    "temperature's at 92",
    "gas, from 12 to 90",
    "30, humidity 60",
    "gas line from 12 along",
    "overhead 12 kv from 1 to 9",
    "thunder 12 miles out",
  ])("%s is none", (words) => expect(named(words)).not.toMatchObject({ intent: {} }));
});
it("knots, said once, are both figures' unit", () => {
  expect(meant("wind twelve knots gusting twenty")).toMatchObject({ wind: { mph: 13.9, gustMph: 23.1 } });
});
it("heat is told with its humidity and its sun", () => {
  expect(meant("ninety two degrees, sixty percent, full sun")).toEqual({ heat: { airF: 92, humidity: 60, sun: "full" } });
});
it.each([
  ["forty degrees celsius, fifty percent", 104],
  ["it's 21 degrees centigrade and forty percent", 69.8],
])("%s is heat in degrees Fahrenheit", (words, airF) => expect(meant(words)).toMatchObject({ heat: { airF } }));
it("sixty degrees Celsius is no air", () => expect(meant("sixty degrees celsius, fifty percent")).not.toHaveProperty("heat"));
it.each([
  "ninety degrees, one hundred forty percent",
  "ninety degrees, humidity one hundred and forty",
  "heat 90 humidity 140",
  "it's 900 degrees, humidity 40",
])("%s is no such air, and is not left at not understood", (words) => expect(meant(words)).toEqual({ noSuchAir: true }));
it.each(["ninety two degrees, humidity sixty", "heat 92, humidity is 60 percent", "air 92 and the humidity's at sixty, in the shade"])(
  "%s is heat",
  (words) => expect(meant(words)).toMatchObject({ heat: { airF: 92, humidity: 60 } }),
);

it.each([
  ["twenty five degrees, wind fifteen", 25, 15],
  ["it's minus five degrees and the wind is twenty", -5, 20],
  ["ten degrees below zero, wind 10 knots", -10, 11.6],
  ["minus ten degrees celsius, wind fifteen", 14, 15],
  ["ten degrees celsius below zero, wind fifteen", 14, 15],
  ["ten degrees below zero celsius, wind fifteen", 14, 15],
])("%s is cold with its wind", (words, airF, windMph) => expect(meant(words)).toEqual({ cold: { airF, windMph } }));
it("ninety degrees and a wind is no cold: it may be where the wind comes from", () => {
  expect(meant("ninety degrees, wind fifteen")).not.toHaveProperty("cold");
});
it("cold with a wind of nine hundred is none", () => {
  expect(meant("twenty degrees, wind nine hundred")).not.toHaveProperty("cold");
});
it.each([
  ["severe thunderstorm warning until four pm", { what: "severe thunderstorm", until: "four pm" }],
  ["there's a tornado warning out", { what: "tornado" }],
  ["high wind warning till six tonight by the weather service", { what: "high wind", until: "six tonight", issuer: "weather service" }],
  ["weather warning until further notice", {}],
])("%s keeps its words", (words, told) => expect(meant(words)).toEqual({ warning: true, ...told }));
