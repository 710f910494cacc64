import { bench, describe } from "vitest";
import { planTent } from "../../machines/tent/plan.ts";
import { drawn } from "../support/drawn.tsx";
import { eighty, hundred, sixty, specOf, twenty } from "../tent/tents.ts";

const long = { ...eighty, widthFt: 120, lengthFt: 400, midsFt: Array<number>(14).fill(20), quarterRings: 2, centerPoleFt: 34 };
const specs = Object.entries({ "20×20": twenty, "60×120": sixty, "80×100": eighty, "100×200": hundred, "120×400": long }).map(
  ([size, input]) => ({ spec: specOf(input), size, stations: planTent(specOf(input)).stations.length }),
);
const options = { time: 1500, warmupTime: 300 };

// Wanted: plan and layout drawing of a 100×200 in 10 ms at the median, and no worse than in proportion to the stations.
describe("plan and layout drawing", () => {
  for (const { size, spec, stations } of specs)
    bench(`of a ${size}, ${stations} stations`, () => void drawn.layout(planTent(spec)), options);
});
describe("plan and small drawing", () => {
  for (const { size, spec, stations } of specs) bench(`of a ${size}, ${stations} stations`, () => void drawn.tent(planTent(spec)), options);
});
describe("plan alone", () => {
  for (const { size, spec, stations } of specs) bench(`of a ${size}, ${stations} stations`, () => void planTent(spec), options);
});
