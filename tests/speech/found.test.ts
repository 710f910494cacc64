import { describe, expect, it } from "vitest";
import { understand } from "../../machines/speech/en/understand.ts";
import { isBinding, onlyStops } from "../../machines/speech/meanings.ts";

const heard = (words: string) => understand(words, { step: null, asks: null });
const line = (kind: string, ...points: readonly (readonly [alongFt: number, offFt: number])[]) => ({ found: { kind, kv: null, points: points.map(([alongFt, offFt]) => ({ alongFt, offFt })) } }); // biome-ignore format: one line reads best
const wired = (kv: number | null, ...points: Parameters<typeof line>[1][]) => ({ found: { ...line("overhead", ...points).found, kv } });

describe("a line that somebody found", () => {
  it.each([
    ["gas, from 12 along and 8 off to 90 along and 15 off", line("gas", [12, 8], [90, 15])],
    ["gas line from twelve along eight off to ninety along fifteen off", line("gas", [12, 8], [90, 15])],
    ["We found a gas line from 12 along and 8 off to 90 along and 15 off.", line("gas", [12, 8], [90, 15])],
    ["another water main from 3 feet along 2 left to twelve along and five right to 40 along", line("water", [3, -2], [12, 5], [40, 0])],
    ["reclaimed water from 0 along 4 right to 20 along 4 right", line("reclaimedWater", [0, 4], [20, 4])],
    ["gas from 12' 6\" along and 8' off to 90 ft along and 15 ft off to the left", line("gas", [12.5, 8], [90, -15])],
    ["sewer from 3 meters along 1 meter off to 6 meters along 1 meter off", line("sewer", [9.84252, 3.28084], [19.685039, 3.28084])],
    ["gas from minus 5 along 8 off to 90 along 15 off", line("gas", [-5, 8], [90, 15])],
    ["building from ten along twenty left to thirty along twenty left", line("building", [10, -20], [30, -20])],
    ["overhead seven point two kV from 0 along 40 right to 100 along 45 right", wired(7.2, [0, 40], [100, 45])],
    ["overhead line, 138 kilovolts, from 0 along 40 off to 100 along 45 off", wired(138, [0, 40], [100, 45])],
    ["overhead, voltage unknown, from 0 along 40 off to 100 along 45 off", wired(null, [0, 40], [100, 45])],
  ])("%s", (words, meant) => expect(heard(words)).toEqual(meant));

  it.each([
    "gas from 12 along and 8 off",
    "gas from 12 along 8 off to 12 along 8 off",
    "gas from 12 along 8 off to ninety",
    "gas from 12 along 8 off to 90,000 along 8 off",
    "overhead from 0 along 40 off to 100 along 45 off",
    "overhead one twenty kV from 0 along 40 off to 100 along 45 off",
    "soup from 12 along 8 off to 90 along 8 off",
    "does the gas run from 12 along 8 off to 90 along 8 off?",
  ])("is not guessed at: %s", (words) => expect(heard(words)).not.toHaveProperty("found"));

  it("asks again for a number that can be read in two ways", () => {
    expect(heard("gas from one twenty along 8 off to 90 along and 15 off")).toEqual({ ambiguous: { n: [120, 1.2], unit: "ft" } });
  });
  it("is read back before it counts", () => {
    const meant = heard("gas from 12 along 8 off to 90 along 15 off");
    expect([isBinding(meant), onlyStops(meant, 38)]).toEqual([true, false]);
  });
});
