import { expect, it } from "vitest";
import { understand } from "../../machines/speech/en/understand.ts";

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
