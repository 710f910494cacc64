import { describe, expect, it } from "vitest";
import { allSteps } from "../../machines/install/job.ts";
import { DEFAULTS } from "../../machines/install/limits.ts";
import { HAND_WORK, type HandWorkId, handWorkAt, MAX_DRAWINGS, WITH_HAND_WORK } from "../../machines/picture/hand-work.ts";
import { distance, wayDeg, type XY } from "../../views/drawing/hand-work/geometry.ts";
import { HandWork } from "../../views/drawing/hand-work/hand-work.tsx";
import { FAN_LONG, POLE_LONG } from "../../views/drawing/hand-work/inside-poles.tsx";
import { PULL, SLOPE, TRIANGLE_FT } from "../../views/drawing/hand-work/layout.tsx";
import { HANDLE_DEG, IN_LINE, TOOTH_DEG } from "../../views/drawing/hand-work/ratchet-eased.tsx";
import { TURNS } from "../../views/drawing/hand-work/ratchets.tsx";
import { DRAWN_OFF_DEG, OFF_PLUMB_IN } from "../../views/drawing/hand-work/side-poles.tsx";
import { DRAWN_LEAN_DEG, SHOWING_IN, STAKE_IN, STRAP_DEG, TOO_HIGH_IN, UNITS_PER_IN } from "../../views/drawing/hand-work/stakes.tsx";
import { PAINT_WIDE, ZONE_IN, ZONE_UNITS_PER_IN } from "../../views/drawing/hand-work/tolerance.tsx";
import { en } from "../../views/text/en/en.ts";
import { testApp } from "../support/app.ts";
import { frozenFor } from "../support/briefs.ts";
import { openedJob } from "../support/job.ts";
import { outsideDrawing, overlappingText, pointsIn, textBox } from "../support/strokes.ts";
import { all, type Element, ofClass, readXml, textOf } from "../support/xml.ts";
import { eighty, forty, twenty } from "../tent/tents.ts";

const drawn = (id: HandWorkId): Element => readXml((<HandWork id={id} words={en} />).toString() as string);
const framesOf = (id: HandWorkId): Element[] => all(drawn(id)).filter((e) => e.name === "svg");
const frames = HAND_WORK.flatMap((id) => framesOf(id).map((svg, i) => ({ name: `${id} ${i + 1}`, svg })));
const texts = (svg: Element) => all(svg).filter((e) => e.name === "text");
/** The points of the first thing in a frame that is so named. */
const part = (svg: Element, name: string): XY[] => pointsIn(all(svg).find((e) => e.attributes["data-part"] === name)!) as XY[];
/** The parts of these names in a frame, in the order in which they are drawn: later ones lie over earlier ones. */
const orderIn = (svg: Element, names: readonly string[]) =>
  all(svg)
    .map((e) => e.attributes["data-part"] ?? "")
    .filter((name) => names.includes(name));
const middle = (a: XY, b: XY): XY => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

describe("the drawings of the hand work", () => {
  it("are each drawn in one to four frames, with a line for each of at most 14 words", () => {
    for (const id of HAND_WORK) {
      const { lines } = en.handWork.drawings[id];
      const svgs = framesOf(id);
      expect(svgs.length, id).toBeGreaterThanOrEqual(1);
      expect(svgs.length, id).toBeLessThanOrEqual(4);
      expect(lines.length, id).toBe(svgs.length);
      for (const { does, shows } of lines) {
        expect(does.split(/\s+/).length, does).toBeLessThanOrEqual(14);
        expect(does, id).toMatch(/^[A-Z].*\.$/);
        expect(shows, id).toMatch(/^[A-Z].*\.$/);
      }
      expect(svgs.map((svg) => svg.attributes["aria-label"])).toEqual(lines.map(({ shows }) => shows));
    }
  });

  it("have nothing in them that is no number, and all of it inside of their frame", () => {
    for (const { name, svg } of frames) {
      expect(JSON.stringify(svg), name).not.toMatch(/NaN|undefined|Infinity/);
      expect(outsideDrawing(svg), name).toEqual([]);
    }
  });

  it("are lettered in letters of 12 px or more on a phone 360 px wide, whole and not over each other", () => {
    for (const { name, svg } of frames) {
      const [, , wide] = svg.attributes.viewBox!.split(" ").map(Number);
      // The box of a trainee's lesson is 316 px wide; narrow frames stand two abreast.
      const shownPx = wide! < 200 ? (316 - 16) / 2 : 316;
      for (const text of texts(svg)) {
        expect((Number(text.attributes["font-size"]) * shownPx) / wide!, name).toBeGreaterThanOrEqual(12);
        const { left, right } = textBox(text);
        expect(left >= 0 && right <= wide!, `${name}: ${textOf(text)}`).toBe(true);
      }
      expect(overlappingText(svg), name).toEqual([]);
    }
  });

  it("say right and wrong by a mark of their own, never by a color", () => {
    for (const { name, svg } of frames) expect(JSON.stringify(svg), name).not.toMatch(/#[0-9a-f]{3,6}|rgb|"fill"|"style"/);
  });

  it("are each at a call that there is, at most three to a call", () => {
    const scripts = [twenty, forty, eighty].flatMap((spec) => [
      frozenFor(spec).script,
      frozenFor(spec, { site: { soilKnown: false }, sheet: { pullTestLbf: 900 } }).script,
    ]);
    const calls = new Set(scripts.flatMap((script) => [...allSteps(script), ...script.conditions].map(({ wordsKey }) => wordsKey)));
    expect(WITH_HAND_WORK.filter((key) => !calls.has(key))).toEqual([]);
    expect(WITH_HAND_WORK.filter((key) => handWorkAt(key).length > MAX_DRAWINGS || handWorkAt(key).length === 0)).toEqual([]);
    expect(HAND_WORK.filter((id) => !WITH_HAND_WORK.some((key) => handWorkAt(key).includes(id)))).toEqual([]);
    expect(handWorkAt("constructor")).toEqual([]);
  });
});

/** A stake's lean off plumb, what shows of it and what is in the ground, from its five corners. */
function stakeIn(svg: Element) {
  const [left, right, , tip] = part(svg, "stake") as [XY, XY, XY, XY];
  const head = middle(left, right);
  const [, groundY] = part(svg, "ground")[0]!;
  return { leanDeg: wayDeg(tip, head), showing: groundY - head[1], inGround: tip[1] - groundY };
}

describe("what is drawn is true", () => {
  it("stakes lean by the degrees that are said, away from the tent, inside of what is allowed", () => {
    const leans = framesOf("stakeLean").map((svg) => Math.round(stakeIn(svg).leanDeg));
    expect(leans).toEqual([0, DRAWN_LEAN_DEG, -DRAWN_LEAN_DEG]);
    const { from, to } = DEFAULTS.stakeLeanDeg.is;
    expect(DRAWN_LEAN_DEG > from && DRAWN_LEAN_DEG < to).toBe(true);
    const [apex, first, ...rest] = part(framesOf("stakeLean")[1]!, "fan");
    expect([wayDeg(apex!, first!), wayDeg(apex!, rest.at(-1)!)].map(Math.round)).toEqual([from, to]);
  });

  it("what shows of a stake and what is in the ground are to one scale", () => {
    for (const [svg, showsIn] of [
      [framesOf("showing")[0]!, SHOWING_IN],
      [framesOf("showing")[1]!, TOO_HIGH_IN],
    ] as const) {
      const { showing, inGround } = stakeIn(svg);
      expect(showing / UNITS_PER_IN).toBeCloseTo(showsIn, 1);
      expect(inGround / UNITS_PER_IN).toBeCloseTo(STAKE_IN - showsIn, 1);
    }
  });

  it("three, four, five is square, to scale, at its corner", () => {
    const [a, along, across] = all(framesOf("threeFourFive")[0]!)
      .filter((e) => e.attributes["data-part"] === "corner")
      .map((e): XY => [Number(e.attributes.cx), Number(e.attributes.cy)]) as [XY, XY, XY];
    const perFt = distance(a, along) / TRIANGLE_FT.along;
    expect(distance(a, across) / perFt).toBeCloseTo(TRIANGLE_FT.across, 6);
    expect(distance(along, across) / perFt).toBeCloseTo(TRIANGLE_FT.diagonal, 6);
  });

  it("tapes are level down the slope, and one on the ground comes out short", () => {
    const [good, bad] = framesOf("levelTape") as [Element, Element];
    for (const tape of all(good).filter((e) => e.attributes["data-part"] === "tape")) {
      const ys = pointsIn(tape).map(([, y]) => y);
      expect(Math.max(...ys) - Math.min(...ys)).toBe(8);
    }
    const laid = part(bad, "laid").map(([x]) => x);
    const reach = Math.max(...laid) - Math.min(...laid);
    expect(reach).toBeLessThan(2 * PULL);
    expect(reach).toBeGreaterThan((2 * PULL) / Math.hypot(1, SLOPE) - 2);
  });

  it("the zone of a line is as wide as the rule says on each side of its paint, to scale", () => {
    const xs = part(framesOf("tolerance")[0]!, "zone").map(([x]) => x);
    expect(Math.max(...xs) - Math.min(...xs)).toBe(2 * ZONE_IN * ZONE_UNITS_PER_IN + PAINT_WIDE);
    expect(ZONE_IN).toBe(DEFAULTS.toleranceIn.is);
  });

  it("the fan that nobody stands in is as long as the pole, and so is the way that it reaches", () => {
    const [above, side] = framesOf("standUp") as [Element, Element];
    const [foot, ...rim] = part(above, "fan");
    for (const p of rim) expect(distance(foot!, p)).toBeCloseTo(FAN_LONG, 0);
    const [a, b, c, d] = part(side, "pole") as [XY, XY, XY, XY];
    expect(distance(middle(a, d), middle(b, c))).toBeCloseTo(FAN_LONG, 0);
  });

  it("a pole that is leaned in keeps its length, and ends upright", () => {
    for (const svg of framesOf("leanIn")) {
      const [a, b, c, d] = part(svg, "pole") as [XY, XY, XY, XY];
      expect(distance(middle(a, d), middle(b, c))).toBeCloseTo(POLE_LONG, 0);
    }
    const [a, b, c, d] = part(framesOf("leanIn")[2]!, "pole") as [XY, XY, XY, XY];
    expect(wayDeg(middle(a, d), middle(b, c))).toBeCloseTo(0, 5);
  });

  it("straps of a station run in line with their plates, square across them", () => {
    for (const [i, count] of [1, 2, 3].entries()) {
      const named = (name: string) => all(framesOf("plates")[i]!).filter((e) => e.attributes["data-part"] === name);
      expect(named("plate").length).toBe(count);
      expect(named("head").length).toBe(2 * count);
      for (const [n, plate] of named("plate").entries()) {
        const [a, b, c, d] = pointsIn(plate) as [XY, XY, XY, XY];
        const [from, to] = pointsIn(named("strap")[n]!) as [XY, XY];
        expect(distance(middle(middle(a, b), middle(c, d)), to)).toBeLessThan(0.2);
        const between = Math.abs(wayDeg(middle(a, d), middle(b, c)) - wayDeg(from, to)) % 180;
        // Two plates side by side stand square to the edge: their straps come in a little aslant.
        expect(Math.abs(between - 90)).toBeLessThan(11);
      }
    }
  });

  it("a ratchet is wrapped as often as every job asks, and let out by one tooth of its wheel", () => {
    const turns = part(framesOf("ratchetWrapped")[1]!, "turns");
    expect(turns.length).toBeGreaterThan(20 * TURNS);
    expect(TURNS).toBe(DEFAULTS.minTurns.is);
    const handle = (svg: Element) => {
      const points = part(svg, "handle");
      return wayDeg(middle(points[0]!, points.at(-1)!), points[3]!);
    };
    const [, held, out] = framesOf("ratchetEased") as [Element, Element, Element];
    expect(handle(held)).toBeCloseTo(HANDLE_DEG, 0);
    expect(handle(held) - handle(out)).toBeCloseTo(TOOTH_DEG, 0);
  });

  it("whoever eases a loaded strap stands beside it, all of the body outside of its line", () => {
    const [svg] = framesOf("ratchetEased") as [Element];
    const low = Math.max(...part(svg, "inLine").map(([, y]) => y));
    expect(Math.min(...part(svg, "above").map(([, y]) => y))).toBeGreaterThan(low + 10);
    const [[, strapY]] = part(svg, "strap") as [XY];
    expect(low - strapY).toBe(IN_LINE);
  });

  it("a catch is up while its handle is pressed, and down where it is tried", () => {
    const [pressed, tried] = framesOf("ratchetLocked") as [Element, Element];
    const offWheel = (svg: Element) => {
      const [a, b] = part(svg, "wheel").reduce(
        ([[l, t], [r, u]], [x, y]): [XY, XY] => [
          [Math.min(l, x), Math.min(t, y)],
          [Math.max(r, x), Math.max(u, y)],
        ],
        [
          [999, 999],
          [0, 0],
        ] as [XY, XY],
      );
      return Math.min(...part(svg, "pawl").map((p) => distance(p, middle(a, b))));
    };
    expect(offWheel(pressed)).toBeGreaterThan(offWheel(tried) + 8);
  });

  it("a strap is choked square across its plate, and comes to a stake as steep as from the top of a side pole", () => {
    const pulled = part(framesOf("strapChoked")[1]!, "pulled") as [XY, XY];
    const [a, b] = part(framesOf("strapChoked")[1]!, "plate") as [XY, XY];
    expect(Math.abs(wayDeg(...pulled) - wayDeg(a, b))).toBeCloseTo(90, 5);
    for (const svg of framesOf("stakeLean")) {
      const [low, high] = part(svg, "strap") as [XY, XY];
      expect(wayDeg(low, high)).toBeCloseTo(-STRAP_DEG, 0);
    }
  });

  it("a hook goes through its ring: over it on one side, below it on the other", () => {
    for (const svg of framesOf("ringHook")) expect(orderIn(svg, ["hook", "ring", "over"])).toEqual(["hook", "ring", "over"]);
    const offPoint = framesOf("ringHook").map((svg) => distance(part(svg, "gate").at(-1)!, part(svg, "hook").at(-1)!));
    expect(offPoint[0]).toBeLessThan(4);
    expect(offPoint[1]).toBeGreaterThan(12);
  });

  it("a half hitch starts over its rope, goes around behind it, and is tucked out over its own start", () => {
    const inOrder = ["end", "over", "standing", "start", "tuck", "start", "tuck"];
    expect(orderIn(framesOf("tieOff")[1]!, inOrder)).toEqual(inOrder);
  });

  it("a pole's plate lies right below its ring", () => {
    const [svg] = framesOf("standUp") as [Element];
    const [a, , c] = part(svg, "basePlate") as [XY, XY, XY];
    const [from, to] = part(svg, "pole").slice(1, 3) as [XY, XY];
    expect(middle(a, c)).toEqual(middle(from, to));
  });

  it("what a side pole may be off is what its call takes", () => {
    const step = allSteps(frozenFor(twenty).script).find(({ id }) => id === "plumb")!;
    expect(JSON.stringify(step.gate!.check)).toContain(String(OFF_PLUMB_IN));
  });

  it("a plumb bob hangs straight down from the top of a pole that leans", () => {
    const [svg] = framesOf("plumb") as [Element];
    const [a, b, c, d] = part(svg, "pole") as [XY, XY, XY, XY];
    expect(wayDeg(middle(a, d), middle(b, c))).toBeCloseTo(DRAWN_OFF_DEG, 0);
    const [top, end] = part(svg, "string") as [XY, XY];
    expect(top[0]).toBe(end[0]);
  });
});

describe("where they are shown", () => {
  it("all are on a page of their own, each with its title and its lines, led to from its top", async () => {
    const { app } = testApp();
    const page = await (await app.request("/hand-work")).text();
    for (const id of HAND_WORK) {
      expect(page.includes(`href="#hand-${id}"`), id).toBe(true);
      expect(page.includes(`id="hand-${id}"`), id).toBe(true);
    }
    expect(page.split('class="hand-frame"').length - 1).toBe(frames.length);
    expect(page.includes("The maker&#39;s manual and the sheet come first.")).toBe(true);
    const other = await (await app.request("/hand-work?job=%22%3E")).text();
    expect([page, other].some((html) => html.includes("/jobs/"))).toBe(false);
  });

  it("a call shows its own under how it is done, and what is asked before it shows those first", async () => {
    const crew = await openedJob();
    expect((await crew.read()).handWork).toEqual([]);
    expect((await crew.to((s) => s.gate?.id === "paint")).handWork[0]).toBe(handWorkAt("paint")[0]);
    const at = await crew.to((s) => s.gate?.id === "drive.AB");
    expect(at.handWork).toEqual(handWorkAt("drive.edge"));
    const page = await (await crew.app.request(`/jobs/${crew.job}/call`)).text();
    const shown = ofClass(readXml(`<main>${/<dl class="lesson">.*<\/dl>/s.exec(page)![0]}</main>`), "hand-work");
    expect(shown.map((e) => e.attributes.id)).toEqual(at.handWork.map((id) => `hand-${id}`));
    expect(page.includes(`href="/hand-work?job=${crew.job}"`)).toBe(true);
  });
});
