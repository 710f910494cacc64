import parser from "dxf-parser";
import { beforeAll, describe, expect, it } from "vitest";
import { toMm } from "../../machines/tent/tape.ts";
import type { Point, TentPlan } from "../../machines/tent/types.ts";
import { layout } from "../../views/text/en/layout.ts";
import { brief } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

type Entity = { type: string; layer: string; text?: string; position?: { x: number; y: number }; vertices?: { x: number; y: number }[] };
type Dxf = { header: Record<string, unknown>; tables: { layer: { layers: Record<string, unknown> } }; entities: Entity[] };
/** Its declarations are of a module of another kind than the one that Node loads. */
const DxfParser = parser as unknown as new () => { parseSync: (text: string) => unknown };

let job: OpenedJob;
let plan: TentPlan;
beforeAll(async () => {
  const demo = brief();
  const site = { ...demo.site, baselineBearingDeg: 90, street: { edge: "DA", name: "Tansy %%u Lane" } };
  job = await openedJob({ ...demo, tent: { ...demo.tent, shifted: { C: { xFt: 1, yFt: -0.5 } } }, site });
  plan = (await job.liveJobs.load(job.job)).job.frozen.plan;
});
const get = async (query = "") => job.app.request(`/jobs/${job.job}/layout.dxf${query}`);
/** Read back by a parser that has nothing to do with what wrote it. */
const read = async (query = "") => new DxfParser().parseSync(await (await get(query)).text()) as Dxf;
const points = (dxf: Dxf, layer: string) =>
  dxf.entities.filter((e) => e.type === "POINT" && e.layer === layer).map((e) => `${e.position!.x},${e.position!.y}`);

describe("the layout for drawing programs (DXF)", () => {
  it("says what it is", async () => {
    const r = await get();
    expect([r.status, r.headers.get("content-type")]).toEqual([200, "image/vnd.dxf; charset=utf-8"]);
    expect(r.headers.get("content-disposition")).toBe(`attachment; filename="layout-${job.job}.dxf"`);
  });
  it("is in feet, or in millimeters where they are asked for", async () => {
    expect((await read()).header.$INSUNITS).toBe(2);
    expect((await read("?units=mm")).header.$INSUNITS).toBe(4);
    expect((await get("?units=m")).status).toBe(400);
  });
  it("has a layer for each kind of mark, in plain words", async () => {
    const { tables, entities } = await read();
    expect(Object.keys(tables.layer.layers)).toEqual(expect.arrayContaining(Object.values(layout.layers)));
    expect(new Set(entities.map((e) => e.layer))).toEqual(new Set(Object.values(layout.layers)));
  });
  it("has every station, plate and pole in the plan's place", async () => {
    const dxf = await read();
    const at = (all: readonly Point[]) => all.map((p) => `${p.xFt},${p.yFt}`);
    const of = (kind: string) => plan.stations.filter((s) => s.kind === kind);
    const poles = (kind: string) => plan.poles.filter((p) => p.kind === kind);
    expect(points(dxf, "corners")).toEqual(at(of("corner")));
    expect(points(dxf, "seam ends")).toEqual(at(of("seamEnd")));
    expect(points(dxf, "side poles")).toEqual(at(of("side")));
    expect(points(dxf, "stake plates")).toEqual(at(plan.plates));
    expect(points(dxf, "center poles")).toEqual(at(poles("center")));
    expect(points(dxf, "quarter poles")).toEqual(at(poles("quarter")));
  });
  it("has them to the millimeter in millimeters", async () => {
    const dxf = await read("?units=mm");
    const rounded = points(dxf, "stake plates").map((p) => p.split(",").map((n) => Math.round(Number(n)) + 0));
    expect(rounded).toEqual(plan.plates.map((p) => [toMm(p.xFt), toMm(p.yFt)]));
  });
  it("has a footprint whose corners are the stations as they stand", async () => {
    const outline = (await read()).entities.find((e) => e.layer === "footprint")!;
    const corners = ["A", "B", "C", "D"].map((id) => plan.stations.find((s) => s.id === id)!);
    expect(outline.vertices!.map(({ x, y }) => [x, y])).toEqual(corners.map((c) => [c.xFt, c.yFt]));
  });
  it("writes each station's reading, twice for a corner", async () => {
    const texts = (await read()).entities.filter((e) => e.layer === "readings").map((e) => e.text!);
    expect(texts).toHaveLength(plan.stations.length + 4);
    expect(texts).toContain("AB4 40 ft");
  });
  it("draws north where the bearing puts it, and takes no code from a street's name", async () => {
    const here = (await read()).entities.filter((e) => e.layer === "street and north");
    const [foot, tip] = here.find((e) => e.type === "LINE")!.vertices!;
    expect([tip!.x - foot!.x, tip!.y - foot!.y]).toEqual([expect.closeTo(-10, 5), expect.closeTo(0, 5)]);
    expect(here.map((e) => e.text)).toContain("Street: Tansy % %u Lane");
  });
});
