import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { cornerMarks, inPairs, type Mark } from "../../machines/picture/mark.ts";
import type { Picture, SquarePicture, WindFacts } from "../../machines/picture/picture.ts";
import { LENGTHS, lengthFt, type Marks, toBaselineFrame } from "../../machines/site/lengths.ts";
import { squared } from "../../machines/site/squaring.ts";
import { CORNERS, EDGES } from "../../machines/tent/types.ts";
import { CallPicture, type CallPictureProps, WindDial } from "../../views/drawing/call/call-picture.tsx";
import { ACROSS_A_PHONE, type Box, DOWN_A_PHONE, HALF_A_DESK, TURNS, usualTurn } from "../../views/drawing/call/small-frame.ts";
import { en } from "../../views/text/en/en.ts";
import { exact, says } from "../support/given-away.ts";
import { moved, rectangle, TAPING, taped, without } from "../support/marks.ts";
import { everyPicture, JOBS, type Seen } from "../support/pictures.ts";
import { outsideMarks, pseudoLanguage } from "../support/pseudo-language.ts";
import { all, type Element, ofClass, readXml, textOf } from "../support/xml.ts";
import { eighty, forty, hundred, planOf, sixty, twenty } from "../tent/tents.ts";

type More = Partial<Omit<CallPictureProps, "picture" | "plan">>;
const svgOf = ({ picture, plan, brief }: Pick<Seen, "picture" | "plan"> & Partial<Pick<Seen, "brief">>, more: More = {}): string =>
  (
    <CallPicture picture={picture} plan={plan} words={en} turn={usualTurn(plan, more.box)} surroundings={brief?.site ?? {}} {...more} />
  ).toString() as string;
const draw = (seen: Parameters<typeof svgOf>[0], more: More = {}): Element => readXml(svgOf(seen, more));
const texts = (svg: Element) => all(svg).filter((e) => e.name === "text");
const written = (svg: Element) => texts(svg).map(textOf);
const named = (svg: Element, attribute: string) => all(svg).flatMap((e) => e.attributes[attribute] ?? []);
const sizeOf = (e: Element) => Number(e.attributes["font-size"]);

/** How wide a bold text is, in px, and where it stands. */
const boxOf = (e: Element) => {
  const [x, y, px] = [Number(e.attributes.x), Number(e.attributes.y), sizeOf(e)];
  const wide = textOf(e).length * px * 0.56;
  const left = { start: x, end: x - wide, middle: x - wide / 2 }[e.attributes["text-anchor"] ?? "middle"]!;
  return { text: textOf(e), left, right: left + wide, top: y - px * 0.4, bottom: y + px * 0.4 };
};
/** The texts and arrowheads that a box cuts off. */
const outside = (svg: Element, { widePx, highPx }: Box): string[] => [
  ...texts(svg)
    .map(boxOf)
    .filter(({ left, right, top, bottom }) => left < 0 || right > widePx || top < 0 || bottom > highPx)
    .map(({ text }) => text),
  ...all(svg)
    .filter((e) => e.name === "polygon")
    .map((e) => e.attributes.points!)
    .filter((points) => points.split(/[ ,]/).some((n, i) => Number(n) < 0 || Number(n) > (i % 2 === 0 ? widePx : highPx))),
];
/** Texts that lie over each other. */
const overlapping = (svg: Element): string[] => {
  const boxes = texts(svg).map(boxOf);
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .flatMap((b) => (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom ? [`${a.text} / ${b.text}`] : [])),
  );
};

const NOWHERE: Picture = { kind: "plan", about: [], done: [], next: [], counts: false };
const plan = planOf(eighty);

describe.each(Object.entries(JOBS))("the drawing at every call of %s", (_name, brief) => {
  const seen = everyPicture(brief);
  const sent = seen.map((s) => svgOf(s));
  const drawn = seen.map((s, i) => ({ ...s, svg: readXml(sent[i]!) }));

  it("never gives away the number that is asked for", () => {
    for (const { checks, svg, call, asked } of drawn) {
      const said = all(svg)
        .filter((e) => ["text", "title", "desc"].includes(e.name))
        .map(textOf);
      for (const n of checks.flatMap(exact))
        expect(
          said.filter((text) => says(text, n)),
          `${call.id}, asked ${asked}, wants ${n}`,
        ).toEqual([]);
    }
  });

  it("shows nothing that could be counted where a number of things is asked", () => {
    const asking = drawn.filter(({ picture }) => picture.kind === "plan" && picture.counts);
    expect(asking.length).toBeGreaterThan(5);
    for (const { svg, call } of asking) {
      expect([...named(svg, "data-station"), ...named(svg, "data-pole")], call.id).toEqual([]);
      expect(
        ofClass(svg, "drawn-about")
          .flatMap(all)
          .filter((e) => e.name === "rect"),
        call.id,
      ).toEqual([]);
    }
  });

  it("has the letter of every corner once, in the largest letters of a place that is not meant", () => {
    for (const { svg, picture, call } of drawn) {
      if (picture.kind === "wind") continue;
      const letters = texts(svg).filter((e) => (CORNERS as readonly string[]).includes(textOf(e)));
      expect(letters.map(textOf).sort(), call.id).toEqual(["A", "B", "C", "D"]);
      expect(letters.map(sizeOf), call.id).toEqual([18, 18, 18, 18]);
    }
  });

  it("is written in letters that can be read at arm's length, all upright, all in the picture", () => {
    const { widePx, highPx } = ACROSS_A_PHONE;
    const bad = drawn.flatMap(({ svg, call }) =>
      texts(svg).flatMap((e) => {
        const [x, y] = [Number(e.attributes.x), Number(e.attributes.y)];
        const isInside = x > 0 && x < widePx && y > 0 && y < highPx;
        return sizeOf(e) >= 14 && isInside && e.attributes.transform === undefined ? [] : `${call.id}: ${textOf(e)}`;
      }),
    );
    expect(bad).toEqual([]);
  });

  it("is small on the wire", () => expect(Math.max(...sent.map((svg) => gzipSync(svg).length))).toBeLessThan(8000));

  it("keeps its ids from call to call, and has no others", () => {
    for (const { svg, picture, call } of drawn) {
      const fills = picture.kind === "square" ? [] : ["picture-hatch", "picture-light"];
      expect(named(svg, "id"), call.id).toEqual(["picture", ...fills]);
    }
  });

  it("is in the colors of the page and in no others", () => {
    const colors = new Set(drawn.flatMap(({ svg }) => [...named(svg, "fill"), ...named(svg, "stroke")]));
    const known = ["none", "currentColor", "var(--drawn-ground, Canvas)", "url(#picture-hatch)", "url(#picture-light)"];
    expect([...colors].filter((color) => !known.includes(color))).toEqual([]);
  });

  it("keeps to what a strict content policy allows, and every number is a number", () => {
    for (const svg of sent) {
      expect(svg).not.toMatch(/ style=|<style|<script| on[a-z]+=/);
      expect(svg).not.toMatch(/NaN|undefined|Infinity/);
    }
  });

  it("is told in sentences to who cannot see it, first thing in the drawing", () => {
    for (const { svg, call } of drawn) {
      const [title, desc] = svg.children as Element[];
      expect([title!.name, desc!.name, svg.attributes.role], call.id).toEqual(["title", "desc", "img"]);
      for (const text of [textOf(title!), textOf(desc!)]) {
        expect(text, call.id).toMatch(/^[A-Z].*[.d\da-z]$/);
        expect(text, call.id).not.toMatch(/undefined|NaN|null|\[object/);
      }
    }
  });

  it("says every word through the words of its screen", () => {
    const { words } = pseudoLanguage();
    const ids = /(?<![\p{L}\d])(?:[A-D]{1,2}\d*|[CQX]\d+|[A-D]–[A-D])(?![\p{L}\d])/gu;
    for (const s of seen) {
      const svg = draw(s, { words, surroundings: {} });
      const said = all(svg)
        .filter((e) => ["text", "title", "desc"].includes(e.name))
        .map(textOf);
      expect(
        said.filter((text) => /\p{L}/u.test(outsideMarks(text).replaceAll(ids, ""))),
        s.call.id,
      ).toEqual([]);
    }
  });
});

describe("a thing is told apart by its shape, not by its color", () => {
  const lay: Picture = {
    kind: "plan",
    about: [{ is: "piece", id: "mid-1" }],
    done: [{ is: "piece", id: "end-A" }],
    next: [{ is: "piece", id: "end-B" }],
    counts: false,
  };
  const svg = draw({ picture: lay, plan });
  const areaIn = (name: string) =>
    all(ofClass(svg, name).find((g) => all(g).some((e) => e.name === "polygon"))!).find((e) => e.name === "polygon")!.attributes;
  it("what the call is about is hatched in a thick outline, with its order and its name", () => {
    expect(areaIn("drawn-about")).toMatchObject({ fill: "url(#picture-hatch)", "stroke-width": "4" });
    expect(written(svg)).toEqual(expect.arrayContaining(["3", "mid 1"]));
  });
  it("what was done is lightly filled, with a check mark", () => {
    expect(areaIn("drawn-done")).toMatchObject({ fill: "url(#picture-light)", "stroke-width": "1" });
    expect(all(ofClass(svg, "drawn-done")[0]!).filter((e) => e.name === "polyline").length).toBeGreaterThan(0);
  });
  it("what comes next is dashed", () => expect(areaIn("drawn-next")["stroke-dasharray"]).toBeDefined());
  it("all three are told by name", () => {
    expect(textOf((svg.children as Element[])[0]!)).toBe("Here: mid 1.");
    expect(textOf((svg.children as Element[])[1]!)).toBe("Done: end piece A. Next: end piece B. Seen from above, A–B on top.");
  });
});

describe("numbers that are worked by stand large", () => {
  const large = (picture: Picture) =>
    texts(draw({ picture, plan }))
      .filter((e) => sizeOf(e) > 18)
      .map(textOf);
  const about = (mark: Extract<Picture, { kind: "plan" }>["about"][number]): Picture => ({
    ...(NOWHERE as typeof NOWHERE & { kind: "plan" }),
    about: [mark],
  });
  it.each([
    ["the baseline", about({ is: "length", name: "AB" }), ["100 ft"]],
    ["three, four, five", about({ is: "angle", alongFt: 80, acrossFt: 60, diagonalFt: 100 }), ["80 ft", "60 ft", "100 ft"]],
    ["how far it is to the ring", about({ is: "half", id: "S1.AB", way: "out" }), ["20 ft"]],
    ["the setback", about({ is: "setback" }), ["6 ft out"]],
    ["an edge by its letters", about({ is: "stakeLine", edge: "BC" }), ["B–C"]],
  ] as const)("%s", (_what, picture, wanted) => expect(large(picture)).toEqual(wanted));
});

describe("the way a plan is turned", () => {
  const at = (svg: Element, corner: string) => texts(svg).find((e) => textOf(e) === corner)!.attributes;
  it("puts its long side across a phone, and up a phone held upright", () => {
    expect([eighty, hundred, twenty].map((t) => usualTurn(planOf(t)))).toEqual([90, 90, 0]);
    expect(usualTurn(plan, DOWN_A_PHONE)).toBe(0);
    expect(usualTurn(plan, HALF_A_DESK)).toBe(90);
  });
  it.each(TURNS)("by %i°: corner A is where it belongs, clockwise from there B, C and D", (turn) => {
    const svg = draw({ picture: NOWHERE, plan }, { turn });
    const corners = CORNERS.map((c) => [
      Number(at(svg, c).x) < ACROSS_A_PHONE.widePx / 2,
      Number(at(svg, c).y) < ACROSS_A_PHONE.highPx / 2,
    ]);
    const clockwise = [
      [true, false],
      [true, true],
      [false, true],
      [false, false],
    ];
    expect(corners).toEqual(clockwise.map((_, i) => clockwise[(i + turn / 90) % 4]));
  });
  it.each([
    ["a street and its name", { street: { edge: "CD", name: "Tansy Lane" } }, ["Tansy", "Lane"], 0],
    ["a street above or below", { street: { edge: "CD", name: "Tansy Lane" } }, ["Tansy Lane"], 90],
    ["north", { baselineBearingDeg: 40 }, ["N"], 90],
  ] as const)("shows %s where it is known", (_what, surroundings, wanted, turn) =>
    expect(written(draw({ picture: NOWHERE, plan }, { surroundings, turn }))).toEqual(expect.arrayContaining([...wanted])),
  );
  it.each(TURNS)("by %i°: north stands on the north side of the plan, and points away from it", (turn) => {
    for (const baselineBearingDeg of [0, 40, 95, 180, 230, 300]) {
      const svg = draw(
        { picture: NOWHERE, plan },
        { surroundings: { baselineBearingDeg, street: { edge: "CD", name: "Tansy Lane" } }, turn },
      );
      const [north] = ofClass(svg, "drawn-north");
      const deg = Number(/rotate\((-?[\d.]+)/.exec(named(north!, "transform")[0]!)![1]);
      const [ux, uy] = [Math.sin((deg * Math.PI) / 180), -Math.cos((deg * Math.PI) / 180)];
      const letter = texts(north!)[0]!.attributes;
      const corners = CORNERS.map((c) => [Number(at(svg, c).x), Number(at(svg, c).y)] as const);
      const onSide = [
        Number(letter.x) > Math.max(...corners.map(([x]) => x)) && ux,
        Number(letter.x) < Math.min(...corners.map(([x]) => x)) && -ux,
        Number(letter.y) > Math.max(...corners.map(([, y]) => y)) && uy,
        Number(letter.y) < Math.min(...corners.map(([, y]) => y)) && -uy,
      ].filter((part) => part !== false);
      expect(Math.max(...onSide), `${baselineBearingDeg}`).toBeGreaterThan(0.7);
    }
  });
  it.each(TURNS)("by %i°: the wind blows at the tent from its own side, where a call hangs on it", (turn) => {
    for (const windFromDeg of [0, 40, 130, 220, 310]) {
      const picture = { ...NOWHERE, about: [{ is: "edge", edge: "AB" }], windFromDeg } as Picture;
      const svg = draw({ picture, plan }, { surroundings: { baselineBearingDeg: 40 }, turn });
      const [wind] = ofClass(svg, "drawn-wind");
      expect(written(wind!)).toEqual(["Wind"]);
      const line = all(wind!).find((e) => e.name === "line")!.attributes;
      const deg = windFromDeg - 40 + turn;
      const [ux, uy] = [Math.sin((deg * Math.PI) / 180), -Math.cos((deg * Math.PI) / 180)];
      const [fx, fy] = [Number(line.x1) - Number(line.x2), Number(line.y1) - Number(line.y2)];
      expect((fx * ux + fy * uy) / Math.hypot(fx, fy)).toBeGreaterThan(0.99);
      expect((Number(line.x1) - 164) * ux + (Number(line.y1) - 85) * uy).toBeGreaterThan(30);
      expect(textOf((svg.children as Element[])[1]!)).toMatch(/The wind comes from [NESW]+\./);
      expect([...outside(svg, ACROSS_A_PHONE), ...overlapping(svg)]).toEqual([]);
    }
  });
  const AROUND: Mark[][] = [
    [
      { is: "edge", edge: "AB" },
      { is: "edge", edge: "CD", back: true },
    ],
    [{ is: "angle", alongFt: 40, acrossFt: 30, diagonalFt: 50 }],
    [{ is: "setback" }, { is: "stakeLine", edge: "AB" }],
  ];
  it.each(TURNS)("by %i°: no two texts lie over each other, and none is cut off", (turn) => {
    const trouble = [sixty, hundred, forty].flatMap((tent) => {
      const turned = planOf(tent);
      const marks: Mark[][] = [
        ...turned.pieces.map(({ id }): Mark[] => [{ is: "piece", id }]),
        turned.pieces.map(({ id }): Mark => ({ is: "piece", id })),
        ...turned.rows.map(({ quarters, centers }): Mark[] => [{ is: "poles", ids: quarters.length > 0 ? quarters : centers }]),
        ...turned.seams.flatMap(({ halves }) => halves.map(({ id }): Mark[] => [{ is: "half", id, way: "out" }])),
        ...AROUND,
        CORNERS.map((corner): Mark => ({ is: "corner", corner })),
      ];
      return marks.flatMap((about) => {
        const svg = draw(
          { picture: { ...NOWHERE, about } as Picture, plan: turned },
          { turn, surroundings: { baselineBearingDeg: 100, street: { edge: "BC", name: "Tansy Lane" } } },
        );
        return [
          ...overlapping(svg),
          ...texts(svg)
            .map(boxOf)
            .filter((b) => b.left < 0 || b.right > 328 || b.top < 0 || b.bottom > 170),
        ].map((bad) => `${tent.lengthFt} ${JSON.stringify(about[0])}: ${typeof bad === "string" ? bad : bad.text}`);
      });
    });
    expect(trouble).toEqual([]);
  });
  it.each(TURNS)("by %i°: three, four, five has all three of its lengths", (turn) => {
    const about: Mark[] = [{ is: "angle", alongFt: 80, acrossFt: 60, diagonalFt: 100 }];
    for (const tent of [sixty, eighty, hundred])
      for (const baselineBearingDeg of [10, 100]) {
        const svg = draw({ picture: { ...NOWHERE, about } as Picture, plan: planOf(tent) }, { turn, surroundings: { baselineBearingDeg } });
        expect(written(svg)).toEqual(expect.arrayContaining(["80 ft", "60 ft", "100 ft"]));
      }
  });
  it("a name that would cover its piece is left out, its number stays", () => {
    const about: Mark[] = [{ is: "piece", id: "end-A" }];
    const on = (box: Box) => written(draw({ picture: { ...NOWHERE, about } as Picture, plan: planOf(sixty) }, { turn: 0, box }));
    expect(on({ widePx: 120, highPx: 130 })).toEqual(["A", "B", "C", "D", "1"]);
    expect(on(ACROSS_A_PHONE)).toContain("end A");
  });
  it.each(TURNS)("by %i°: how far out the stake line is stands beside it", (turn) => {
    const about: Mark[] = [...EDGES.map((edge): Mark => ({ is: "stakeLine", edge })), { is: "setback" }];
    const svg = draw(
      { picture: { ...NOWHERE, about } as Picture, plan: planOf(sixty) },
      { turn, surroundings: { baselineBearingDeg: 100 } },
    );
    expect(written(svg)).toContain("6 ft out");
  });
  it("a plan that lies the narrow way shows the part that a call is about, large, at the tent's full width", () => {
    const turned = planOf(sixty);
    const poles = turned.rows.find(({ quarters }) => quarters.length === 3)!.quarters;
    const drawnAt = (about: Mark[], turn: 0 | 90) => draw({ picture: { ...NOWHERE, about } as Picture, plan: turned }, { turn });
    const wide = (svg: Element) => {
      const xs = CORNERS.map((c) => Number(texts(svg).find((e) => textOf(e) === c)!.attributes.x));
      return Math.max(...xs) - Math.min(...xs);
    };
    expect(wide(drawnAt([{ is: "edge", edge: "AB" }], 0))).toBeLessThan(120);
    const svg = drawnAt([{ is: "poles", ids: poles }], 0);
    expect(wide(svg)).toBeGreaterThan(200);
    expect(written(svg)).toEqual(expect.arrayContaining([...poles, "A", "B", "C", "D"]));
  });
  it("north is turned with the plan", () => {
    const turnOf = (turn: 0 | 90) => {
      const [north] = ofClass(draw({ picture: NOWHERE, plan }, { turn, surroundings: { baselineBearingDeg: 40 } }), "drawn-north");
      return Number(/rotate\((-?[\d.]+)/.exec(named(north!, "transform")[0]!)![1]);
    };
    expect(turnOf(90) - turnOf(0)).toBe(90);
  });
});

it("an edge that is walked back has its arrowhead at its first corner", () => {
  const headOf = (mark: Mark): number[] => {
    const about = ofClass(draw({ picture: { ...NOWHERE, about: [mark] } as Picture, plan }, { turn: 0 }), "drawn-about").flatMap(all);
    const head = about.filter((e) => e.name === "polygon").at(-1)!;
    return head.attributes.points!.split(" ")[0]!.split(",").map(Number);
  };
  const edge = (name: "AB" | "CD", back?: true): Mark => ({ is: "edge", edge: name, ...(back && { back }) });
  expect(headOf(edge("CD", true))[1]).toBe(headOf(edge("AB"))[1]);
  expect(headOf(edge("CD"))[1]).toBeGreaterThan(headOf(edge("AB"))[1]!);
});

it("an edge that is walked shows the stations on it; not where they are counted", () => {
  const dots = (counts: boolean) =>
    ofClass(draw({ picture: { ...NOWHERE, about: [{ is: "edge", edge: "AB" }], counts } as Picture, plan }), "drawn-about")
      .flatMap(all)
      .filter((e) => e.name === "circle").length;
  expect([dots(false), dots(true)]).toEqual([plan.edges.find((e) => e.name === "AB")!.between.length, 0]);
});

it("corners that are worked in opposite pairs are numbered by pairs, and it is told", () => {
  const svg = draw({ picture: { ...NOWHERE, about: inPairs(cornerMarks()) } as Picture, plan });
  expect(written(svg).filter((text) => /^\d$/.test(text))).toEqual(["1", "2", "1", "2"]);
  expect(textOf((svg.children as Element[])[1]!)).toContain("First corners A and C, then B and D.");
});

describe("a larger box", () => {
  it("has the names of poles and the numbers of stations", () => {
    const svg = draw({ picture: NOWHERE, plan }, { box: HALF_A_DESK });
    expect(written(svg)).toEqual(expect.arrayContaining(["C1", "Q10", "9"]));
  });
  it("names nothing that could be counted where a number is asked", () => {
    const svg = draw({ picture: { ...NOWHERE, counts: true } as Picture, plan }, { box: HALF_A_DESK });
    expect(written(svg).sort()).toEqual(["A", "B", "C", "D"]);
  });
});

describe("the corner marks", () => {
  const want = rectangle(80, 100);
  const target = { want, inPer50Ft: 1, taping: TAPING };
  const judged = (ft: Readonly<Record<string, number>>): SquarePicture => ({
    kind: "square",
    want: toBaselineFrame(want),
    lengths: LENGTHS.map((name) => {
      const wantFt = lengthFt(want, name);
      const readFt = ft[name] ?? null;
      const offIn = readFt === null ? 0 : (readFt - wantFt) * 12;
      return { name, wantFt, withinIn: 1, readFt, offIn, good: readFt !== null && Math.abs(offIn) <= 1 };
    }),
    next: LENGTHS.find((name) => ft[name] === undefined) ?? "AB",
    found: Object.keys(ft).length === 0 ? null : squared(ft, target),
  });
  const marksOff: Marks = moved(moved(want, "C", -3.5, -5), "D", 4, 0);
  const drawSquare = (ft: Readonly<Record<string, number>>) => draw({ picture: judged(ft), plan });

  it("before anything is read: every length that is wanted, the one to tape now in larger letters", () => {
    const svg = drawSquare({});
    expect(
      written(svg)
        .filter((t) => / (?:ft|in)/.test(t))
        .sort(),
    ).toEqual(["100 ft", "100 ft", "128 ft 3/4 in", "128 ft 3/4 in", "80 ft", "80 ft"]);
    expect(
      texts(svg)
        .filter((e) => sizeOf(e) > 18)
        .map(textOf),
    ).toEqual(["100 ft"]);
  });
  it("what was read is checked off, and by how much it is off", () => {
    const svg = drawSquare({ AB: 100, BC: 80.25 });
    expect(all(svg).filter((e) => e.name === "polyline" && e.attributes["stroke-linecap"] === "round").length).toBe(2);
    expect(written(svg)).toContain("3 in long");
  });
  it("which marks to move: the same ways and lengths as are said, and how many times larger it is drawn", () => {
    const ft = taped(marksOff);
    const svg = drawSquare(ft);
    const said = en.findingText({ kind: "lengths", squared: squared(ft, target) });
    expect(said).toContain("C: 3 1/2 in away from B and 5 in outward.");
    expect(written(svg)).toEqual(expect.arrayContaining(["3 1/2 in", "5 in", "4 in"]));
    expect(textOf((svg.children as Element[])[1]!)).toContain(said);
    expect(written(svg).find((t) => t.startsWith("Errors"))).toMatch(/^Errors drawn \d+ times too big$/);
  });
  it.each(TURNS)("full screen on a phone, turned by %i°: every way of a mark with an arrow and in words, all in the picture", (turn) => {
    const box = { widePx: 328, highPx: 450 };
    const svg = draw({ picture: judged(taped(marksOff)), plan }, { box, turn });
    expect(written(svg)).toEqual(expect.arrayContaining(["3 1/2 in away from B", "5 in outward", "4 in toward A"]));
    expect(outside(svg, box)).toEqual([]);
  });
  it.each(TURNS)("beside a call, turned by %i°: no arrow and no length is cut off, and no two lie over each other", (turn) => {
    const svg = draw({ picture: judged(taped(moved(moved(want, "C", -13.125, -12.625), "D", 12.125, -13.375))), plan }, { turn });
    expect(outside(svg, ACROSS_A_PHONE)).toEqual([]);
    expect(overlapping(svg)).toEqual([]);
  });
  it("what is drawn larger is drawn by the factor that it says", () => {
    const svg = drawSquare(taped(marksOff));
    const [wantedFigure, figure] = all(svg)
      .filter((e) => e.name === "polygon")
      .map((e) => e.attributes.points!.split(" ").map((p) => p.split(",").map(Number)));
    const pxPerFt = Math.abs(wantedFigure![1]![0]! - wantedFigure![0]![0]!) / 100;
    const times = Number(/\d+/.exec(written(svg).find((t) => t.startsWith("Errors"))!)![0]);
    const offPx = Math.hypot(figure![3]![0]! - wantedFigure![3]![0]!, figure![3]![1]! - wantedFigure![3]![1]!);
    expect(offPx).toBeCloseTo((4 / 12) * pxPerFt * times, 0);
  });
  it("a length that cannot be right is marked, with what was read", () => {
    const svg = drawSquare({ ...taped(want), AC: taped(want).AC + 1 });
    expect(written(svg)).toEqual(expect.arrayContaining(["129 ft 3/4 in?", "Tape again"]));
  });
  it("no length is to be taped again that was not taped", () => {
    const svg = drawSquare(without(taped({ ...want, C: { xFt: 13, yFt: 26 } }), "BD"));
    expect(written(svg)).toContain("Tape again");
    const bold = ofClass(svg, "drawn-length-strong").map((e) => e.attributes["data-length"]);
    expect(bold.sort()).toEqual(["AB", "AC", "BC", "CD", "DA"]);
  });
  it("square: a check mark and the word", () => {
    const svg = drawSquare(without(taped(want), "BD"));
    expect(written(svg)).toContain("Square");
    expect(all(svg).filter((e) => e.name === "polyline" && e.attributes["stroke-linecap"] === "round").length).toBe(2);
  });
});

describe("the wind", () => {
  const facts: WindFacts = {
    reading: { mph: 9, gustMph: 14, fromDeg: 310, minAgo: 6 },
    is: "good",
    belowMph: 20,
    limits: [
      { is: "raise", mph: 20 },
      { is: "stop", mph: 25 },
      { is: "evacuate", mph: 30 },
    ],
    windward: ["AB"],
    baselineBearingDeg: 40,
    widthFt: 80,
    lengthFt: 100,
  };
  const dial = (more: Partial<WindFacts>) => readXml((<WindDial facts={{ ...facts, ...more }} words={en} />).toString());
  const dashed = (svg: Element) => all(svg).filter((e) => e.name === "path" && e.attributes["stroke-dasharray"]).length;

  it("has what blows and what it gusts to, its age, and each limit by number and by name", () => {
    expect(written(dial({}))).toEqual(
      expect.arrayContaining(["9 gust 14", "mph, 6 min ago", "Under 20", "20", "25", "30", "raise 20", "stop 25", "out 30", "From NW"]),
    );
  });
  it("marks the edge that it comes at", () => {
    const thick = all(dial({})).filter((e) => e.name === "polyline" && e.attributes["stroke-width"] === "6");
    expect(thick).toHaveLength(1);
  });
  it("draws no tent where nobody knows how the wind comes at it", () =>
    expect(written(dial({ baselineBearingDeg: null, windward: [] }))).not.toContain("A"));
  it("an old reading is dashed, and says so", () => {
    expect([dashed(dial({})), dashed(dial({ is: "stale" }))]).toEqual([0, 2]);
    expect(written(dial({ is: "stale" }))).toContain("Too old");
  });
  it("none is a question mark, and says so", () =>
    expect(written(dial({ is: "none", reading: null }))).toEqual(expect.arrayContaining(["?", "No reading"])));
  it("too much is a filled sign, and says so", () => {
    const sign = all(dial({ is: "over", reading: { mph: 19, gustMph: 28, fromDeg: null, minAgo: 0 } })).filter(
      (e) => e.name === "polygon" && e.attributes.points!.split(" ").length === 8,
    );
    expect(sign.map((e) => e.attributes.fill)).toEqual(["currentColor"]);
  });
  it("is told in a sentence", () => {
    const [title, desc] = dial({ is: "stale" }).children as Element[];
    expect(textOf(title!)).toBe("Wind 9 gusting 14 mph, 6 min ago, too old");
    expect(textOf(desc!)).toBe("Needs a gust under 20. Limits: raise 20, stop 25, out 30. From NW. Wind comes at A–B.");
  });
});
