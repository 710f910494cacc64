import { beforeAll, describe, expect, it } from "vitest";
import { edgeTapes, stakeLines, toMm } from "../../machines/tent/tape.ts";
import type { TentPlan } from "../../machines/tent/types.ts";
import { brief } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";
import { all, ofClass, readXml, textOf } from "../support/xml.ts";

let job: OpenedJob;
let plan: TentPlan;
beforeAll(async () => {
  const demo = brief();
  job = await openedJob({ ...demo, site: { ...demo.site, baselineBearingDeg: 37, street: { edge: "DA", name: "Tansy <Lane> & Co" } } });
  plan = (await job.liveJobs.load(job.job)).job.frozen.plan;
});
const get = async (path: string, id = job.job) => {
  const r = await job.app.request(`/jobs/${id}${path}`);
  return { status: r.status, headers: r.headers, body: await r.text() };
};
const words = (html: string) =>
  html
    .replace(/<[^>]+>/g, " ")
    .replace(/\u00a0/g, " ")
    .replace(/\s+/g, " ");

describe("the layout page", () => {
  it("is reached from the plan, and has the drawing before the tables", async () => {
    expect((await get("/plan")).body).toContain(`href="/jobs/${job.job}/layout"`);
    const { status, body } = await get("/layout");
    expect(status).toBe(200);
    expect(body.indexOf("<svg")).toBeGreaterThan(0);
    expect(body.indexOf("<svg")).toBeLessThan(body.indexOf("<table"));
  });
  it("has a caption and heads for rows and columns in each table", async () => {
    const { body } = await get("/layout");
    for (const [table] of body.matchAll(/<table[\s\S]*?<\/table>/g)) {
      expect(table).toMatch(/<table[^>]*><caption><b>[^<]+<\/b>/);
      expect(table).toContain('<th scope="col">');
      expect(table.split("<tr>").length - 2).toBe(table.split('<th scope="row">').length - 1);
    }
  });
  it("has every station, plate, pole, piece and seam in its tables, with what they read", async () => {
    const text = words((await get("/layout")).body.split("</svg>")[1]!);
    for (const s of plan.stations) expect(text).toMatch(new RegExp(` ${s.id} \\d`));
    for (const { id } of plan.poles) expect(text).toContain(` ${id} `);
    for (const { id } of plan.seams) expect(text).toContain(` ${id} `);
    for (const { id } of plan.pieces) expect(text).toContain(id.replace("-", " "));
    expect(text).toContain("AB4.1 45 ft 67 ft 2 square out AB4.2 47 ft 65 ft 2 square out");
    expect(text).toContain("A–C, diagonal 128 ft 3/4 in B–D, diagonal 128 ft 3/4 in Setback of the stake line 6 ft");
    expect(text).toMatch(/ A\.2 [^A-Z]* corner diagonal /);
    expect(text).toContain("A to B bears 37° by compass");
  });
  it("is in millimeters where they are asked for", async () => {
    const text = words((await get("/layout?units=mm")).body);
    expect(text).toContain("Lengths in millimeters.");
    expect(text).toContain("A–C, diagonal 39033");
  });
  it("is made for A4, or for Letter where that is asked for, and says which is chosen", async () => {
    expect((await get("/layout")).body).toContain('class="layout a4"');
    const { body } = await get("/layout?paper=letter&units=mm");
    expect(body).toContain('class="layout letter"');
    expect([...body.matchAll(/aria-current="true">([^<]+)/g)].map((m) => m[1])).toEqual(["Millimeters", "Letter"]);
  });
  it.each([
    ["/layout?units=yards", "&quot;yards&quot; is not a unit of this sheet. Use ft or mm."],
    ["/layout?units=", "&quot;&quot; is not a unit of this sheet. Use ft or mm."],
    ["/layout?paper=a3", "&quot;a3&quot; is not a paper of this sheet. Use a4 or letter."],
    ["/layout.svg?units=<b>", "&quot;&lt;b&gt;&quot; is not a unit of this sheet. Use ft or mm."],
  ])("%s is refused, and says what to do", async (path, sentence) => {
    const { status, body } = await get(path);
    expect(status).toBe(400);
    expect(body).toContain(sentence);
  });
  it.each(["/layout", "/layout.svg", "/layout.json", "/marks.csv"])("%s of no job is not found", async (path) => {
    const { status, body } = await get(path, "nowhere");
    expect(status).toBe(404);
    expect(body).toContain("There is no job nowhere");
  });
  it("draws no north and no street where the brief has none", async () => {
    const bare = await openedJob();
    const page = await (await bare.app.request(`/jobs/${bare.job}/layout`)).text();
    expect(page).not.toMatch(/drawn-north|drawn-street/);
    expect(words(page)).toContain("Nobody has taken the compass bearing of A to B, so no north is drawn.");
  });
});

describe("the drawing to take along", () => {
  it("is XML of its own, light, in a font that any machine has, with nothing that depends on our pages", async () => {
    const { headers, body } = await get("/layout.svg");
    expect(headers.get("content-type")).toBe("image/svg+xml; charset=utf-8");
    expect(headers.get("content-disposition")).toBe(`attachment; filename="layout-${job.job}.svg"`);
    const svg = readXml(body);
    expect([svg.name, svg.attributes.xmlns, svg.attributes["font-family"]]).toEqual(["svg", "http://www.w3.org/2000/svg", "sans-serif"]);
    const [title, ground] = svg.children.filter((c) => typeof c !== "string");
    expect([title!.name, ground!.name, ground!.attributes.fill]).toEqual(["title", "rect", "#ffffff"]);
    expect(body).not.toMatch(/currentColor|Canvas|system-ui|href=/);
    expect(Number.parseFloat(svg.attributes.width!)).toBeLessThanOrEqual(194);
    expect(svg.attributes.width).toMatch(/mm$/);
  });
  it("has the north and the street that the brief gives, and its words as they are", async () => {
    const svg = readXml((await get("/layout.svg")).body);
    expect(all(ofClass(svg, "drawn-north")[0]!).map(textOf)).toContain("A to B bears 37°");
    expect(textOf(ofClass(svg, "drawn-street")[0]!)).toBe("Street: Tansy <Lane> & Co");
  });
  it("has the same marks as the page", async () => {
    const ids = (text: string) => [...text.matchAll(/data-(?:station|plate|pole|seam|piece)="([^"]+)"/g)].map((m) => m[1]);
    expect(ids((await get("/layout.svg")).body)).toEqual(ids((await get("/layout")).body));
  });
});

describe("all marks as a table", () => {
  const table = async () => {
    const { headers, body } = await get("/marks.csv");
    const rows = body.split("\r\n");
    expect(rows.pop()).toBe("");
    const [head, ...marks] = rows.map((row) => row.split(","));
    const cell = (row: string[], column: string) => row[head!.indexOf(column)]!;
    return { headers, head: head!, marks, cell };
  };
  it("says what it is", async () => {
    const { headers } = await table();
    expect(headers.get("content-type")).toBe("text/csv; charset=utf-8; header=present");
    expect(headers.get("content-disposition")).toBe(`attachment; filename="marks-${job.job}.csv"`);
  });
  it("has each station, plate and pole once, where the plan has it, in feet and in millimeters", async () => {
    const { head, marks, cell } = await table();
    expect(new Set(marks.map((m) => m.length))).toEqual(new Set([head.length]));
    expect(new Set(marks.map((m) => cell(m, "mark"))).size).toBe(marks.length);
    const places = [...plan.stations, ...plan.plates, ...plan.poles].map((p) => `${p.xFt},${p.yFt},${toMm(p.xFt)},${toMm(p.yFt)}`);
    const read = marks.map((m) => ["x ft", "y ft", "x mm", "y mm"].map((c) => cell(m, c)).join(","));
    expect(read.sort()).toEqual(places.sort());
  });
  it("has places below zero as numbers, not as text", async () => {
    const { marks, cell } = await table();
    const a = marks.find((m) => cell(m, "mark") === "A.2")!;
    expect(["x ft", "y ft", "x mm", "y mm"].map((c) => cell(a, c))).toEqual(["-6", "-6", "-1829", "-1829"]);
  });
  it("has the readings of the tapes, the bearings, the plates and the stakes", async () => {
    const { marks, cell } = await table();
    const of = (id: string) => marks.find((m) => cell(m, "mark") === id)!;
    for (const { marks: tape, to } of edgeTapes(plan))
      for (const m of tape.filter((t) => t.station !== to)) expect(Number(cell(of(m.station), "reading mm"))).toBe(toMm(m.readingFt));
    for (const { marks: line } of stakeLines(plan))
      for (const m of line) {
        const row = of(`${m.station}.${m.plate}`);
        expect(["reading mm", "back reading mm", "bearing", "stakes"].map((c) => Number(cell(row, c)))).toEqual([
          toMm(m.readingFt),
          toMm(m.backFt),
          m.bearingDeg,
          m.stakes,
        ]);
      }
    for (const s of plan.stations)
      expect([cell(of(s.id), "plates"), cell(of(s.id), "stakes")]).toEqual([String(s.plates), String(s.stakes)]);
    expect(cell(of("AB4"), "reading")).toBe("40 ft");
  });
});

describe("the layout as data", () => {
  it("has the tapes, the stake lines and the places of the plan", async () => {
    const data = JSON.parse((await get("/layout.json")).body);
    expect(data.edges).toEqual(edgeTapes(plan));
    expect(data.stakeLines).toEqual(stakeLines(plan));
    expect(data).toMatchObject({
      setbackFt: 6,
      baselineBearingDeg: 37,
      street: { edge: "DA" },
      stations: plan.stations,
      plates: plan.plates,
    });
  });
  it("says that north is not known by null", async () => {
    const bare = await openedJob();
    const data = (await (await bare.app.request(`/jobs/${bare.job}/layout.json`)).json()) as object;
    expect(data).toMatchObject({ baselineBearingDeg: null, street: null });
  });
});
