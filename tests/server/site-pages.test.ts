import { request } from "node:http";
import type { AddressInfo } from "node:net";
import { serve } from "@hono/node-server";
import { beforeEach, describe, expect, it } from "vitest";
import { briefFromDraft } from "../../server/draft/draft-brief.ts";
import { en } from "../../views/text/en/en.ts";
import { sayText } from "../../views/text/replies.ts";
import { brief, MORNING, testApp } from "../support/app.ts";
import { filled } from "../support/filled.ts";

const told = (alongFt: number, offFt: number) => ({ alongFt, offFt });
/** A gas line under stakes of edge AB, as it was told. */
const GAS = { id: "gas 1", kind: "gas", told: "ticket", points: [told(-20, -14), told(60, 6), told(130, 20)] };
const WATER = { id: "water 1", kind: "water", told: "ticket", points: [told(140, -40), told(140, 120)] };

let world: ReturnType<typeof testApp>;
let job: string;
const headers = (as: string) => ({ origin: "http://localhost", cookie: `device=phone-of-${as}; as-${job}=${as}` });
const get = async (path: string, as = "p1") => (await world.app.request(`/jobs/${job}${path}`, { headers: headers(as) })).text();
const post = (path: string, fields: Record<string, string>, as = "p1") =>
  world.app.request(`/jobs/${job}${path}`, { method: "POST", body: new URLSearchParams(fields), headers: headers(as) });
const opened = async (siteModel?: object) => {
  world = testApp();
  const answer = await world.post("/jobs", { key: "open-00001", brief: { ...brief(), ...(siteModel ? { siteModel } : {}) } });
  job = ((await answer.json()) as { job: string }).job;
};
const live = () => world.liveJobs.load(job);
const site = async () => (await live()).job.frozen.brief.siteModel;
/** Agreed to by a second person. */
const agreed = async () => {
  const target = (await live()).job.snapshot.context.proposed!.entry;
  const body = JSON.stringify({ key: `agree-${target}-00`, seen: target, as: "p3", type: "agree", target });
  await world.app.request(`/jobs/${job}/say`, { method: "POST", body, headers: { ...headers("p3"), "content-type": "application/json" } });
};
const textOf = (html: string) =>
  html
    .replace(/<script[\s\S]*?<\/script>|<[^>]+>/g, " ")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replace(/\s+/g, " ");

describe("the page of a site", () => {
  beforeEach(() => opened({ buried: [GAS, WATER] }));
  it("has a drawing to press that is dark at night", async () => {
    const svg = await get("/site/drawing.svg");
    expect(svg).toContain("(prefers-color-scheme: dark)");
    expect(svg).toMatch(/<rect[^>]* fill="var\(--ground, #ffffff\)"/);
    expect(svg).not.toContain("#000000");
  });
  it("tells where corners A and B go off its baseline, and so does the layout, with the figures of the calls", async () => {
    await opened({ buried: [WATER], wanted: { cornerA: told(-5, 10.5), headingDeg: 30 } });
    // 100 ft at 30 degrees: 86 ft 7 3/16 in along, 50 ft off.
    const where = "Off the site's baseline: corner A 5 ft back, 10 ft 6 in right; corner B 81 ft 7 in along, 60 ft 6 in right.";
    const call = (await live()).job.frozen.script.steps.find(({ id }) => id === "white.cornerB")!;
    expect(where).toContain(sayText(call, en).slice("Mark corner B: ".length));
    for (const path of ["/site", "/layout"]) expect(textOf(await get(path))).toContain(where);
  });
  it("gives the wanted place its name in the reason of a change", async () => {
    await post("/site/lines", {
      key: "lines-00001",
      of: "wanted",
      go: "on",
      headingDeg: "30",
      "p.1.along": "5",
      "p.1.off": "10",
      "p.1.side": "right",
    });
    expect((await live()).job.snapshot.context.proposed!.because).toBe("Site: wanted place corrected");
  });
  it("says that a line is too near where an engineer's anchor goes, though nothing is shut", async () => {
    const fixes = [{ is: "engineeredAnchor", stake: { is: "plate", station: "AB5", plate: 1 }, expose: ["gas 1"] }];
    await opened({ buried: [{ ...GAS, points: [told(50, -40), told(50, -5)] }], fixes });
    const page = textOf(await get("/site"));
    expect(page).toContain("Too near only where an engineer's anchor goes");
    expect(page).not.toContain("Nothing that was entered is too near");
  });
  it("lets a hold go before a row of readers", async () => {
    const done: string[] = [];
    const readers = Array.from({ length: 10 }, () => get("/site").then(() => done.push("reader")));
    const body = JSON.stringify({ key: "hold-000001", seen: 1, as: "p1", type: "hold" });
    const hold = async () => {
      const { status } = await world.app.request(`/jobs/${job}/say`, { method: "POST", body, headers: { ...headers("p1"), "content-type": "application/json" } }); // biome-ignore format: one line reads best
      done.push(`hold ${status}`);
    };
    await Promise.all([...readers, hold()]);
    expect(done.indexOf("hold 200")).toBeLessThan(10);
    expect(done).toHaveLength(11);
  });
  it.each([
    ["GET", "/site"],
    ["HEAD", "/site"],
    ["GET", "/layout"],
  ])("lets a hold on a connection of its own go before most of a row that asks for %s %s", async (method, path) => {
    const server = await new Promise<ReturnType<typeof serve>>((resolve) => {
      const made = serve({ fetch: world.app.fetch, port: 0, hostname: "127.0.0.1" }, () => resolve(made));
    });
    const { port } = server.address() as AddressInfo;
    const done: string[] = [];
    /** Asked on a new connection; noted down once all of the answer is there. */
    const asked = (what: string, options: object, body = "") =>
      new Promise<void>((resolve, reject) => {
        const sent = request({ host: "127.0.0.1", port, agent: false, ...options }, (answer) => {
          answer.resume().on("end", () => {
            done.push(`${what} ${answer.statusCode}`);
            resolve();
          });
        });
        sent.on("error", reject).end(body);
      });
    const readers = Array.from({ length: 20 }, () => asked("reader", { method, path: `/jobs/${job}${path}`, headers: headers("p1") }));
    await Promise.any(readers);
    const say = { method: "POST", path: `/jobs/${job}/say`, headers: { ...headers("p1"), "content-type": "application/json" } };
    await asked("hold", say, JSON.stringify({ key: "hold-000001", seen: 1, as: "p1", type: "hold" }));
    const before = done.slice(0, -1);
    await Promise.all(readers);
    await new Promise((resolve) => server.close(resolve));
    expect([done[before.length], new Set(before), done.length]).toEqual(["hold 200", new Set(["reader 200"]), 21]);
    expect(before.length).toBeLessThan(10);
  });

  it("tells each clearance with what is needed as a sum and its source, and never a word for good", async () => {
    const page = textOf(await get("/site"));
    expect(page).toContain("AB1: 5 in, short");
    expect(page).toContain("Needed 3 ft = 2 ft tolerance zone + 1 ft stakes beside their mark");
    expect(page).toMatch(/Tolerance zone: .+Colorado 811.+ Stakes beside their mark: common practice, no source\./);
    expect(page).toMatch(/screening check .+ The maker's manual, the local code, locate law, the line's owner and a licensed engineer/);
    expect(page).not.toMatch(/\b(?:ok|safe|all clear)\b/i);
  });
  it("draws lines in their published color with a letter, and rings what is too near", async () => {
    const page = await get("/site");
    expect(page).toMatch(/data-line="gas 1".*stroke="#f5c400"/s);
    expect(page.match(/drawn-too-near/g)!.length).toBeGreaterThan(2);
  });
});

describe("where nobody has entered anything", () => {
  beforeEach(() => opened());

  it("the page says that not entered is not known", async () => {
    expect(textOf(await get("/site"))).toContain("Not entered is not known.");
  });
  it("anybody adds a line, which counts at once", async () => {
    const fields = {
      key: "found-0001",
      of: "buried",
      go: "on",
      kind: "gas",
      told: "found",
      "p.1.along": "12",
      "p.1.off": "8",
      "p.1.side": "left",
      "p.2.along": "90 ft",
      "p.2.off": "15' 6\"",
      "p.2.side": "right",
    };
    expect((await post("/site/lines", fields, "p4")).status).toBe(303);
    expect((await site())!.buried).toMatchObject([{ id: "gas 1", kind: "gas", points: [{ xFt: -8, yFt: 12 }, { xFt: 15.5, yFt: 90 }] }]); // biome-ignore format: one line reads best
  });
  it("a line with one point is told beside its field, and nothing is taken", async () => {
    const answer = await post("/site/lines", { key: "found-0001", of: "buried", go: "on", kind: "gas", "p.1.along": "12" });
    expect([answer.status, (await answer.text()).includes("1 point is too few. At least 2."), await site()]).toEqual([
      422,
      true,
      undefined,
    ]);
  });
  it("a press on the drawing adds a point in whole feet, and takes nothing", async () => {
    const first = await (
      await post("/site/lines", { key: "found-0001", of: "buried", drawn: "", "narrow.x": "30", "narrow.y": "300" })
    ).text();
    const [, along] = /name="p\.1\.along" value="(-?\d+)"/.exec(first)!;
    expect(Number.isInteger(Number(along))).toBe(true);
    const wide = await (await post("/site/lines", { key: "found-0001", of: "buried", drawn: "", "wide.x": "60", "wide.y": "600" })).text();
    expect(wide).toContain(`name="p.1.along" value="${along}"`);
    expect(await site()).toBeUndefined();
  });
});

describe("what was entered wrong", () => {
  beforeEach(() => opened({ buried: [GAS, WATER] }));

  it("is corrected once a second person agrees, and all else of the site stays", async () => {
    const shown = await get("/site/lines?of=buried&id=gas+1");
    expect(shown).toContain('name="p.2.along" value="60"');
    const fields = {
      key: "edit-00001",
      of: "buried",
      id: "gas 1",
      go: "on",
      kind: "gas",
      told: "ticket",
      "p.1.along": "-20",
      "p.1.off": "30",
      "p.1.side": "left",
      "p.2.along": "130",
      "p.2.off": "30",
      "p.2.side": "left",
    };
    expect((await post("/site/lines", fields)).status).toBe(303);
    expect((await site())!.buried[0]!.points).toHaveLength(3);
    await agreed();
    expect((await site())!.buried.map(({ id, points }) => [id, points[0]!.xFt])).toEqual([["gas 1", -30], ["water 1", -40]]); // biome-ignore format: one line reads best
  });
  it("is taken out once a second person agrees", async () => {
    await post("/site/lines", { key: "gone-00001", of: "buried", id: "gas 1", go: "remove" });
    await agreed();
    expect((await site())!.buried.map(({ id }) => id)).toEqual(["water 1"]);
  });
});

describe("a place for the tent", () => {
  beforeEach(() => opened({ buried: [GAS, WATER] }));

  it("is found, shown beside the wanted one, taken by the lead, and the plan's gates follow once a second person agrees", async () => {
    const shown = await (await post("/site/place", { go: "find" })).text();
    expect(textOf(shown)).toContain("The nearest place where nothing that was entered is too near:");
    expect(shown.match(/class="drawn-site-plan"/g)).toHaveLength(2);
    expect((await post("/site/place", { ...filled(shown), go: "take" })).status).toBe(303);
    await agreed();
    expect((await site())!.wanted).not.toBeNull();
    expect(textOf(await get("/site"))).toContain("Clearances: not short.");
  });
  it.each(["/site/lines?of=buried", "/site/import"])("has a key of its own in the form of %s, so that it is taken once", async (path) =>
    expect(filled(await get(path)).key).toMatch(/^[\w.-]{8,80}$/),
  );
  it("is not taken where the site has changed since it was looked for", async () => {
    const by = /name="by" value="([\da-f]+)"/.exec(await (await post("/site/place", { go: "find" })).text())![1]!;
    await post("/site/lines", {
      key: "found-0001",
      of: "buried",
      go: "on",
      kind: "water",
      "p.1.along": "0",
      "p.1.off": "200",
      "p.2.along": "9",
      "p.2.off": "200",
    });
    const answer = await post("/site/place", { go: "take", by, key: "place-0001" });
    expect([answer.status, (await answer.text()).includes("The site or the tent has changed since. Look again.")]).toEqual([409, true]);
  });
});

describe("a GeoJSON file", () => {
  beforeEach(() => opened({ buried: [WATER] }));
  const line = (coordinates: unknown) => ({ type: "FeatureCollection", features: [{ type: "Feature", properties: {}, geometry: { type: "LineString", coordinates } }] }); // biome-ignore format: one line reads best
  const read = async (file: unknown, more: Record<string, string> = {}) => {
    const body = new FormData();
    const fields = { lon: "-105", lat: "40", bearing: "0", as: "gas", replace: "beside", go: "read", key: "import-001", ...more };
    for (const [name, value] of Object.entries({ ...fields, text: typeof file === "string" ? file : JSON.stringify(file) }))
      body.append(name, value);
    const answer = await world.app.request(`/jobs/${job}/site/import`, { method: "POST", body, headers: headers("p1") });
    const html = await answer.text();
    return { status: answer.status, html, page: textOf(html) };
  };
  const NEAR = line([
    [-105.00005, 39.9999],
    [-105.00005, 40.0004],
  ]);

  it("is shown as it was read, with how far off it may be, and taken with a second press beside what stands", async () => {
    const { status, page } = await read(NEAR);
    expect([status, page.includes("Read: 1 buried, 0 overhead, 0 things."), /may put it up to 2 ft 7 in off/.test(page)]).toEqual([
      200,
      true,
      true,
    ]);
    expect((await site())!.buried).toHaveLength(1);
    expect((await read(NEAR, { go: "take" })).status).toBe(303);
    await agreed();
    expect((await site())!.buried.map(({ kind }) => kind)).toEqual(["water", "gas"]);
  });
  it.each([
    ["gas", "That is not JSON. Choose the whole file."],
    ['{"type":"Thing"}', "This cannot be a Thing. Draw it as a line or an area."],
    [line([[-105.000001, 40.000001]]), "1 point is too few. At least 2."],
    [line([[0.000001, 0], [0.000001, 0.001]]), "ft is too far off. At most 5280 ft"], // biome-ignore format: one line reads best
    [line(Array.from({ length: 100_001 }, (_, i) => [-105 + i / 1e9, 40])), "are too many. At most 5,000."],
    ["", "No file was chosen and no text was pasted."],
  ])("that cannot be is refused in a sentence, and nothing of it is taken (%#)", async (file, sentence) => {
    const { status, page } = await read(file, { go: "take" });
    expect([status, page.includes(sentence)], page.slice(0, 900)).toEqual([422, true]);
    expect((await site())!.buried).toHaveLength(1);
  });
  it("that is longer than is taken is refused with how long it may be", async () => {
    const { status, page } = await read("x".repeat(6_000_001));
    expect([status, page.includes("At most 6 MB")]).toEqual([413, true]);
  });
  it("that is long is shown again without what is not read, so that a second press takes the same", async () => {
    const note = '<"&'.repeat(100_000);
    const long = { ...NEAR, features: NEAR.features.map((feature) => ({ ...feature, id: "main", properties: { note } })) };
    const { html } = await read(long);
    expect(html.length).toBeLessThan(60_000);
    const again = /<textarea[^>]*>([^<]*)</.exec(html)![1]!.replaceAll("&quot;", '"');
    expect((await read(again, { go: "take" })).status).toBe(303);
    await agreed();
    expect((await site())!.buried[1]).toMatchObject({ id: "main", kind: "gas", points: [{}, { xFt: expect.any(Number) }] });
    expect((await read(note)).html.length).toBeLessThan(60_000);
    const deep = `{"type":"Feature","geometry":null,"properties":{"deep":${"[".repeat(90_000)}${"]".repeat(90_000)}}}`;
    expect((await read(deep, { as: "" })).status).toBe(422);
  });
  it("is not read where the baseline has no place", async () => {
    const { status, page } = await read(NEAR, { lat: "95", lon: "west" });
    expect([
      status,
      page.includes("95 is out of range. From -90 to 90."),
      page.includes('"west" is not a number of degrees here.'),
    ]).toEqual([422, true, true]);
  });
});

describe("a draft", () => {
  it("keeps lines and the place that was taken, and what they are is in its brief", async () => {
    world = testApp();
    const office = { origin: "http://localhost" };
    const send = (path: string, fields: Record<string, string>) =>
      world.app.request(path, { method: "POST", body: new URLSearchParams(fields), headers: office });
    const begun = await send("/drafts", { "tent.widthFt": "40", "tent.lengthFt": "60", key: "draft-0001" });
    const draft = begun.headers.get("location")!.split("/")[2]!.split("?")[0]!;
    const on = await send(`/drafts/${draft}/site`, { "site.address": "Lower meadow", go: "ground" });
    const path = on.headers.get("location")!;
    const row = (no: number, along: string) => ({ [`p.${no}.along`]: along, [`p.${no}.off`]: "5", [`p.${no}.side`]: "left" });
    const line = { of: "buried", go: "on", kind: "gas", told: "ticket", ...row(1, "-20"), ...row(2, "90") };
    expect((await send(`${path}/lines`, line)).status).toBe(303);
    const page = async (at = path) => textOf(await (await world.app.request(at)).text());
    expect(await page()).toContain("Clearances, 1 line or thing: 1 short.");
    const by = /name="by" value="([\da-f]+)"/.exec(await (await send(`${path}/place`, { go: "find" })).text())![1]!;
    expect((await send(`${path}/place`, { go: "take", by })).status).toBe(303);
    expect(await page()).toContain("Clearances: not short.");
    const { fields } = (await world.journal.drafts.draft(draft))!.body as { fields: Record<string, string> };
    const told = briefFromDraft(fields, MORNING, en) as { siteModel?: { buried: unknown[]; wanted: unknown } };
    expect([told.siteModel!.buried.length, told.siteModel!.wanted !== null, fields["site.address"]]).toEqual([1, true, "Lower meadow"]);
  });
});
