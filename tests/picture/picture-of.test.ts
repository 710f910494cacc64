import { describe, expect, it } from "vitest";
import { allSteps, questionAt } from "../../machines/install/job.ts";
import { keyOf, type Mark } from "../../machines/picture/mark.ts";
import type { PlanPicture } from "../../machines/picture/picture.ts";
import { pictureOf } from "../../machines/picture/picture-of.ts";
import { hasPlace } from "../../machines/picture/places.ts";
import { CORNERS, type Corner, EDGES, type TentPlan } from "../../machines/tent/types.ts";
import { calls } from "../../views/text/en/calls.ts";
import { frozenOf, MINUTE } from "../proof/fixtures.ts";
import { KeptJob } from "../support/kept-job.ts";
import { everyPicture, JOBS, type Seen, seenNow, WAYS_OUT, waysOut } from "../support/pictures.ts";

const demo = JOBS["the demo job"];
const planned = ({ picture }: Seen): PlanPicture => {
  if (picture.kind !== "plan") throw new Error(`a picture of the ${picture.kind}`);
  return picture;
};
const keys = (marks: readonly Mark[]) => marks.map(keyOf);

/** Whether a plan has the thing that a mark points at. */
function isIn(mark: Mark, plan: TentPlan): boolean {
  const halves = plan.seams.flatMap((s) => s.halves);
  switch (mark.is) {
    case "piece":
      return plan.pieces.some(({ id }) => id === mark.id);
    case "half":
      return halves.some(({ id }) => id === mark.id);
    case "station":
      return plan.stations.some(({ id }) => id === mark.id);
    case "corner":
      return CORNERS.includes(mark.corner);
    case "edge":
    case "stakeLine":
      return EDGES.includes(mark.edge);
    case "poles":
      return mark.ids.length > 0 && mark.ids.every((id) => plan.poles.some((p) => p.id === id));
    case "length":
      return mark.name === "AB";
    case "angle":
      return mark.alongFt <= plan.lengthFt && mark.acrossFt <= plan.widthFt && mark.diagonalFt === Math.hypot(mark.alongFt, mark.acrossFt);
    case "setback":
      return plan.spec.setbackFt > 0;
    case "ground":
      return true;
  }
}

it("of every call, way out and condition it is said where it is done", () =>
  expect(Object.keys(calls).filter((wordsKey) => !hasPlace(wordsKey))).toEqual([]));

describe.each(Object.entries(JOBS))("at every call of %s", (_name, brief) => {
  const seen = everyPicture(brief);
  const own = seen.filter((s) => s.picture.kind === "plan" && (s.asked === null || s.asked === s.call.id));

  it("a picture is drawn, up and down and on every way out", () => {
    const drawn = new Set(seen.map(({ call }) => call.id));
    expect(allSteps(frozenOf(brief).script).filter(({ id }) => !drawn.has(id))).toEqual([]);
  });

  it("it points only at what the tent has, at each thing once", () => {
    for (const { picture, plan, call } of seen) {
      if (picture.kind !== "plan") continue;
      for (const marks of [picture.about, picture.done, picture.next]) {
        expect(
          marks.filter((mark) => !isIn(mark, plan)),
          call.id,
        ).toEqual([]);
        expect(new Set(keys(marks)).size, call.id).toBe(marks.length);
      }
    }
  });

  it("nothing that is worked at is drawn as done or as next", () => {
    for (const s of own) {
      const { about, done, next } = planned(s);
      const here = new Set(keys(about));
      expect(
        [...keys(done), ...keys(next)].filter((key) => here.has(key)),
        s.call.id,
      ).toEqual([]);
    }
  });

  it("it points at what the call names: piece, half, corner, edge, line of poles", () => {
    for (const s of own) {
      const { params, wordsKey } = s.call;
      const about = planned(s).about;
      const wanted: Mark | null =
        params.piece !== undefined
          ? { is: "piece", id: String(params.piece) }
          : params.half !== undefined
            ? { is: "half", id: String(params.half), way: "out" }
            : params.corner !== undefined
              ? { is: "corner", corner: params.corner as Corner }
              : params.poles !== undefined && params.row !== undefined
                ? { is: "poles", ids: String(params.poles).split(" ") }
                : null;
      if (wanted) expect(keys(about), s.call.id).toEqual([keyOf(wanted)]);
      if (params.edge !== undefined)
        expect(
          about.map((m) => ("edge" in m ? m.edge : m.is)),
          s.call.id,
        ).toEqual([params.edge]);
      expect(wordsKey, s.call.id).toBeDefined();
    }
  });

  it("what was done before stays done until the last of its kind", () => {
    const lain = own.filter((s) => s.call.wordsKey === "lay.piece");
    for (const [i, s] of lain.entries()) {
      const { done, next } = planned(s);
      expect(keys(done)).toEqual(s.plan.pieces.slice(0, i).map(({ id }) => `piece ${id}`));
      expect(keys(next)).toEqual(s.plan.pieces.slice(i + 1, i + 2).map(({ id }) => `piece ${id}`));
    }
  });
});

describe("on the demo job", () => {
  const at = (call: string) =>
    planned(everyPicture(demo).find((s) => s.call.id === call && s.picture.kind === "plan" && (s.asked ?? call) === call)!);
  it.each<[string, string[], string[], string[]]>([
    ["sheet.atHand", [], [], []],
    ["baseline", ["length AB"], [], []],
    ["corner.first", ["angle"], [], []],
    ["drive.CD", ["stakeLine CD"], ["stakeLine AB", "stakeLine BC"], ["stakeLine DA"]],
    ["stakes.corners", ["corner A", "corner B", "corner C", "corner D"], [], ["stakeLine AB"]],
    ["lay.mid-1", ["piece mid-1"], ["piece end-A", "piece end-D"], ["piece end-B"]],
    ["lace.technique", [], [], ["half R-DA.DA"]],
    ["lace.S1.AB", ["half S1.AB"], ["half R-DA.DA"], ["half S1.CD"]],
    ["looked.S1.AB", ["half S1.AB"], ["half R-DA.DA"], ["half S1.CD"]],
    ["raise.D", ["corner D"], ["corner A", "corner B", "corner C"], ["edge AB"]],
    ["raise.AB", ["edge AB"], ["corner A", "corner B", "corner C", "corner D"], ["edge BC"]],
    ["lift.quarters.line-1", ["poles Q4 Q5"], ["poles Q1 Q2 Q3"], ["poles Q6 Q7"]],
    ["tied.center.C1", ["poles C1"], ["poles Q1 Q2 Q3", "poles Q4 Q5", "poles Q6 Q7", "poles Q8 Q9 Q10"], ["poles C2"]],
    ["lower.center.C1", ["poles C1"], ["poles C2"], ["poles Q8 Q9 Q10"]],
    ["strike.sides.BC", ["edge BC", "edge DA"], ["edge AB", "edge CD"], ["corner A", "corner B", "corner C", "corner D"]],
    ["handover", [], [], []],
  ])("%s", (call, about, done, next) => {
    const picture = at(call);
    expect({ about: keys(picture.about), done: keys(picture.done), next: keys(picture.next) }).toEqual({ about, done, next });
  });

  it.each(["tension.seamEnds", "strike.sides"])("%s: corners in opposite pairs", (call) =>
    expect(at(call).about.flatMap((m) => (m.is === "corner" ? [`${m.corner}${m.pair}`] : []))).toEqual(["A1", "B2", "C1", "D2"]),
  );
  it("the inside stakes are pulled too: their places are marked", () =>
    expect(at("strike.stakes").about.flatMap((m) => (m.is === "poles" ? m.ids : []))).toEqual(
      expect.arrayContaining(["C1", "C2", "Q1", "Q10"]),
    ));

  it("a half is laced out from the center, gone back over from the edge, and felt along", () =>
    expect(["lace.S1.AB", "tied.S1.AB", "looked.S1.AB"].map((call) => at(call).about.map((m) => m.is === "half" && m.way))).toEqual([
      ["out"],
      ["back"],
      ["look"],
    ]));
});

describe("where a call wants opposite sides worked together", () => {
  const TOGETHER = /opposite (?:sides|ones)(?: together|, in step)|both sides alike/i;
  const ways = (marks: readonly Mark[]) =>
    marks.flatMap((m) => (m.is === "edge" || m.is === "stakeLine" ? [m.back ? `${m.edge[1]}${m.edge[0]}` : m.edge] : []));
  const seen = everyPicture(demo).filter(({ call: { wordsKey, params } }) => {
    const { say, well, ifNot } = calls[wordsKey]!;
    return [say(params), well, ifNot ?? ""].some((text) => TOGETHER.test(text));
  });
  it.each(["strike.sides.AB", "strike.sides.BC", "strike.ease", "round.again", "tension.again", "sides.notTight"])("%s is one", (id) =>
    expect(seen.map(({ call }) => call.id)).toContain(id),
  );
  it("the two crews walk abreast: never from opposite ends", () => {
    const all = seen.flatMap(({ picture }) => (picture.kind === "plan" ? [ways(picture.about)] : []));
    expect(all.filter((w) => w.includes("CD") || w.includes("DA"))).toEqual([]);
    expect(all).toContainEqual(["AB", "DC"]);
    expect(all).toContainEqual(["BC", "AD"]);
  });
});

it("a job that is closed has nothing to point at", () => {
  const kept = new KeptJob(demo);
  kept.until(() => kept.call === "strike.ground").goOn();
  expect(kept.call).toBe("closed");
  expect(pictureOf(kept.job, kept.at)).toEqual({ kind: "plan", about: [], done: [], next: [], counts: false });
});

it("where poles are to be counted again, no pole of the call is drawn either", () => {
  const { job, at } = new KeptJob(demo).to("round.again");
  const { context } = job.snapshot;
  const { "poles.pinned": _, ...answers } = context.answers;
  const reopened = { "poles.pinned": { by: "amendment", entry: 1 } } as const;
  const again = { ...job, snapshot: { ...job.snapshot, context: { ...context, answers, reopened } } } as typeof job;
  expect(questionAt(again, at)?.gate.id).toBe("poles.pinned");
  const picture = pictureOf(again, at);
  expect(picture).toMatchObject({ kind: "plan", counts: true });
  expect(picture.kind === "plan" && picture.about.map((m) => m.is)).toEqual(["stakeLine", "stakeLine", "stakeLine", "stakeLine"]);
});

describe("what is asked first is drawn first", () => {
  it("the wind, before cloth is opened", () => {
    const kept = new KeptJob(demo);
    kept.until(() => seenNow(kept).asked === "wind.cloth");
    expect(seenNow(kept).picture).toMatchObject({ kind: "wind", facts: { is: "none", belowMph: 20 } });
  });

  it("what has no place leaves the call where it is", () => {
    const kept = new KeptJob(demo);
    kept.until(() => seenNow(kept).asked === "earsAndEyes");
    expect(seenNow(kept).call.id).not.toBe("earsAndEyes");
    expect(seenNow(kept).picture.kind).toBe("plan");
  });

  it("of a gate that is answered edge by edge, the edges that are left", () => {
    const kept = new KeptJob(demo).to("lean.outward");
    kept.answer("lean.outward", { kind: "figures", unit: "deg", n: { AB: 5, BC: 40 } });
    expect(keys(planned(seenNow(kept)).about)).toEqual(["stakeLine BC", "stakeLine CD", "stakeLine DA"]);
    expect(keys(planned(seenNow(kept)).done)).toEqual(["stakeLine AB"]);
  });

  it("the edges that the wind comes at, where straps go on there first", () => {
    const kept = new KeptJob({ ...demo, site: { ...demo.site, baselineBearingDeg: 0 } }).to("cloth.strapped");
    kept.say({ type: "reading", reading: { kind: "wind", mph: 4, gustMph: 8, takenAt: kept.at, fromDeg: 90, place: null } });
    expect(keys(planned(seenNow(kept)).about)).toEqual(["edge CD"]);
    expect(keys(planned(seenNow(kept)).next)).toEqual(["edge AB", "edge BC", "edge DA"]);
  });
});

it.each([
  ["known: it is drawn", 90, 0, 90],
  ["too old: it is not, as the words do not name a side either", 90, 40 * MINUTE, undefined],
  ["not known", null, 0, undefined],
] as const)("where the wind comes from, at a call that hangs on it, %s", (_what, fromDeg, agoMs, drawn) => {
  const kept = new KeptJob({ ...demo, site: { ...demo.site, baselineBearingDeg: 0 } }).to("cloth.strapped");
  kept.say({ type: "reading", reading: { kind: "wind", mph: 4, gustMph: 8, takenAt: kept.at - agoMs, fromDeg, place: null } });
  const { picture } = seenNow(kept);
  expect(picture.kind === "plan" ? picture.windFromDeg : undefined).toBe(drawn);
});

describe("making safe", () => {
  it.each(WAYS_OUT)("from %s: %s", (call, route) => {
    const seen = waysOut(demo, call);
    expect(seen.map((s) => s.call.id)).toEqual(expect.arrayContaining([`safe.${route}.headcount`, `safe.${route}.looked`]));
    expect(seen.every((s) => s.picture.kind === "plan")).toBe(true);
  });

  it("a pole in hand is the one that was being stood", () => {
    const seen = waysOut(demo, "lift.center.C1");
    expect(keys(planned(seen.find((s) => s.call.id === "safe.up.pole")!).about)).toEqual(["poles C1"]);
  });

  it("a line that nobody went under for was not lowered", () => {
    const kept = new KeptJob(demo).to("under.quarters.line-2");
    kept.say({ type: "standDown", because: "storm" });
    kept.until(() => kept.call.startsWith("lower."));
    expect(kept.call).toBe("lower.quarters.line-1");
    expect(planned(seenNow(kept)).done).toEqual([]);
  });
});

describe("the corner marks", () => {
  const kept = new KeptJob(demo).to("squared");
  const now = () => {
    const { picture } = seenNow(kept);
    return picture.kind === "square" ? picture : null;
  };
  it("have every length wanted, and the one to tape first", () => {
    expect(now()?.lengths.map((l) => [l.name, Math.round(l.wantFt), l.readFt])).toEqual([
      ["AB", 100, null],
      ["BC", 80, null],
      ["CD", 100, null],
      ["DA", 80, null],
      ["AC", 128, null],
      ["BD", 128, null],
    ]);
    expect(now()?.next).toBe("AB");
    expect(now()?.found).toBeNull();
  });

  it("are where five lengths put them; the sixth is the one to tape", () => {
    kept.answer("squared", { kind: "lengths", ft: { AB: 100, BC: 80, CD: 100, DA: 80, AC: Math.hypot(100, 80) } });
    const found = now()?.found;
    expect([found?.is, now()?.next]).toEqual(["square", "BD"]);
    if (found?.is === "square") expect(found.marks.C.xFt).toBeCloseTo(80, 6);
  });
});

describe("the wind", () => {
  const read = (mph: number, gustMph: number | null, agoMs: number) => {
    const kept = new KeptJob(demo);
    kept.until(() => seenNow(kept).asked === "wind.cloth");
    kept.say({ type: "reading", reading: { kind: "wind", mph, gustMph, takenAt: kept.at - agoMs, fromDeg: null, place: null } });
    const { picture } = seenNow(kept);
    return picture.kind === "wind" ? picture.facts.is : picture.kind;
  };
  it.each([
    ["too much", 19, 28, 0, "over"],
    ["too much stays so however old it is", 19, 28, 40 * MINUTE, "over"],
    ["old", 4, 8, 40 * MINUTE, "stale"],
    ["without its gust", 4, null, 0, "noGust"],
    ["good: the cloth is next", 4, 8, 0, "plan"],
  ] as const)("%s", (_what, mph, gustMph, agoMs, is) => expect(read(mph, gustMph, agoMs)).toBe(is));
});
