import { describe, expect, it } from "vitest";
import { seeded } from "../../machines/rehearsal/seeded.ts";

const draws = (seed: number, ...labels: string[]) => {
  const { int } = seeded(seed, ...labels);
  return Array.from({ length: 20 }, () => int(0, 999));
};

describe("choices by a seed", () => {
  it("are the same for the same seed and labels", () => {
    expect(draws(7, "a", "b")).toEqual(draws(7, "a", "b"));
  });
  it("are others for another seed, another label, or labels cut otherwise", () => {
    const streams = [draws(7, "ab"), draws(8, "ab"), draws(7, "a", "b"), draws(7), draws(-7, "ab"), draws(2 ** 40, "ab")];
    expect(new Set(streams.map(String)).size).toBe(streams.length);
  });
  it("come as whole numbers from one end to the other, both included", () => {
    const { int } = seeded(3);
    const seen = new Set(Array.from({ length: 200 }, () => int(-1, 2)));
    expect([...seen].sort((a, b) => a - b)).toEqual([-1, 0, 1, 2]);
  });
  it("put a list in another order and lose nothing of it", () => {
    const list = Array.from({ length: 30 }, (_, i) => i);
    const mixed = seeded(5).shuffle(list);
    expect(mixed).not.toEqual(list);
    expect([...mixed].sort((a, b) => a - b)).toEqual(list);
  });
  it("cannot be had of a seed that is no number, nor of an empty list", () => {
    expect(() => seeded(Number.NaN)).toThrow();
    expect(() => seeded(1).pick([])).toThrow("nothing to pick from");
  });
});
