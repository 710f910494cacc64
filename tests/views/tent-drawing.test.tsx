import { describe, expect, test } from "vitest";
import { TentDrawing } from "../../views/drawing/tent.tsx";
import { en } from "../../views/text/en/en.ts";
import { eighty, forty, hundred, planOf, sixty, twenty } from "../tent/tents.ts";

const draw = (input: typeof eighty) => (<TentDrawing plan={planOf(input)} words={en} />).toString();
const values = (svg: string, attribute: string) => [...svg.matchAll(new RegExp(` ${attribute}="([^"]*)"`, "g"))].map((m) => m[1]!);
const words = (svg: string) => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map((m) => m[1]!);

describe.each([
  ["80×100", eighty],
  ["60×120", sixty],
  ["20×20", twenty],
  ["40×80", forty],
  ["100×200", hundred],
])("the drawing of a %s", (_, input) => {
  const plan = planOf(input);
  const svg = draw(input);

  test("shows every station, pole, seam and piece once", () => {
    expect(values(svg, "data-station")).toEqual(plan.stations.map((s) => s.id));
    expect(values(svg, "data-pole")).toEqual(plan.poles.map((p) => p.id));
    expect(values(svg, "data-seam")).toEqual(plan.seams.map((s) => s.id));
    expect(values(svg, "data-piece")).toEqual(plan.pieces.map((p) => p.id));
  });

  test("writes each pole, seam and corner once, and each number along an edge", () => {
    const written = words(svg);
    for (const name of [...plan.poles, ...plan.seams].map((x) => x.id).concat("A", "B", "C", "D")) {
      expect(written.filter((w) => w === name)).toHaveLength(1);
    }
  });

  test("draws a plate for every plate, with its strap", () => {
    expect(svg.split('class="drawn-plate"')).toHaveLength(plan.plates.length + 1);
  });

  test("keeps to what a strict content policy allows and has no number that is none", () => {
    expect(svg).not.toMatch(/ style=|<style|<script| on[a-z]+=/);
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  });

  test("is an image with a title first", () => {
    expect(svg).toMatch(/^<svg [^>]*role="img"[^>]*><title>Tent of \d+ by \d+ ft/);
  });
});

test("the near end is at the bottom and corner A at the left", () => {
  const at = (id: string) => {
    const part = draw(eighty).split(`data-station="${id}"`)[1]!;
    const [, x, y] = /<rect x="([\d.]+)" y="([\d.]+)"/.exec(part)!;
    return { x: Number(x), y: Number(y) };
  };
  expect(at("A").y).toBeGreaterThan(at("B").y);
  expect(at("A").x).toBeLessThan(at("D").x);
});

test("lace and eyelet edges are drawn differently, one of each to a seam", () => {
  const lines = [...draw(forty).matchAll(/<line class="drawn-edge drawn-(lace|eyelet)"[^>]*stroke-dasharray="([^"]+)"/g)];
  const key = 2;
  expect(lines).toHaveLength(3 * 2 + key);
  expect(new Set(lines.map((m) => `${m[1]} ${m[2]}`)).size).toBe(2);
});

test("where bays are short, numbers that would touch are left out but no station is", () => {
  const close = { ...hundred, spacingFt: 2.5 };
  expect(values(draw(close), "data-station")).toHaveLength(planOf(close).stations.length);
  expect(words(draw(close)).length).toBeLessThan(planOf(close).stations.length);
});

test("a name cannot break out of the drawing", () => {
  const plan = planOf(eighty);
  const evil = { ...plan, poles: plan.poles.map((p) => ({ ...p, id: `<script>"` })) };
  expect((<TentDrawing plan={evil} words={en} />).toString()).not.toContain("<script");
});
