import { beforeEach, describe, expect, it } from "vitest";
import { readBrief } from "../../server/input/brief.ts";
import type { TruckState } from "../../views/pages/truck/state.ts";
import { truck } from "../../views/text/en/truck.ts";
import { brief } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";
import { readCsv } from "../support/read-csv.ts";

const noted = (kit: object = { stakePlate: { spare: 0.1, unitLb: 12 } }) => ({
  ...brief(),
  kit,
  crew: [...brief().crew, { name: "Wanda", role: "watcher" }],
});
let job: OpenedJob;
beforeEach(async () => {
  job = await openedJob(noted());
});
const at = (path = "") => `/jobs/${job.job}/truck${path}`;
const state = async () => (await (await job.app.request(at(".json"))).json()) as TruckState;
const line = async (item: string) => (await state()).lines.find((l) => l.item === item)!;
const text = (html: string) =>
  html
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll(/\s+/g, " ");
/** The people of the brief, in its order, as the server names them. */
const INES = "p1";
const JORY = "p4";
const LASSE = "p7";
const WANDA = "p8";

/** A list that somebody looks at, on a phone of their own: what a press on it sends is read off the page. */
async function phoneOf(as: string) {
  const seen = async (query = "") =>
    (await job.app.request(`${at(query)}`, { headers: { cookie: `as-${job.job}=${as}; device=phone-of-${as}` } })).text();
  const post = async (fields: Record<string, string>, swap = false) => {
    const r = await job.app.request(at(), {
      method: "POST",
      headers: {
        "content-type": "application/x-www-form-urlencoded",
        origin: "http://localhost",
        cookie: `device=phone-of-${as}`,
        ...(swap ? { "hx-request-type": "partial" } : {}),
      },
      body: new URLSearchParams(fields).toString(),
    });
    return { status: r.status, html: await r.text(), to: decodeURIComponent(r.headers.get("location") ?? "") };
  };
  const fieldsIn = (html: string) =>
    Object.fromEntries([...html.matchAll(/<input type="hidden" name="([^"]+)" value="([^"]*)"/g)].map((m) => [m[1]!, m[2]!]));
  let page = await seen();
  const formOf = (item: string) => fieldsIn(page.split("<form").find((f) => f.includes(`name="item" value="${item}"`))!);
  return {
    look: async () => {
      page = await seen();
      return page;
    },
    seen,
    post,
    /** All of a line on, by the page as it was looked at last. */
    all: (item: string, swap = false) => post(formOf(item), swap),
    /** Another number, on the line's own page. */
    other: async (item: string, value: string) => post({ ...fieldsIn(await seen(`?line=${item}`)), value }),
  };
}

describe("the loading list before the guide asks for it", () => {
  it("is only read, and says at which calls it is ticked", async () => {
    const page = text(await (await phoneOf(INES)).look());
    const calls = (await job.liveJobs.load(job.job)).job.frozen.script.steps;
    const no = (id: string) => calls.findIndex((s) => s.id === id) + 1;
    expect(page).toContain(`Read-only for now. The list is ticked at call ${no("kit.loaded")}, "`);
    expect(page).toContain(`and counted back at call ${no("back.kit")}, "`);
    expect(page).not.toContain(truck.other);
  });
  it("stands in loading order: what is used first is last", async () => {
    const items = (await state()).lines.map((l) => l.item);
    expect(items.at(-1)).toBe("firstAidKit");
    expect(items.indexOf("perimeterStake")).toBeLessThan(items.indexOf("whitePaint"));
    expect(items.indexOf("centerPole")).toBeLessThan(items.indexOf("midPiece"));
  });
  it("says whose share of spares it is, and where a weight is not known", async () => {
    const page = text(await (await phoneOf(INES)).look());
    const { need, spares, count } = await line("stakePlate");
    expect(page).toContain(`${need} needed + ${spares} spares (yard's 10%). 12 lb each, ${(count * 12).toLocaleString("en-US")} lb.`);
    expect(page).toMatch(/needed \+ \d+ spares \(usual 5%\)\. Weight unknown\./);
    expect(page).toContain(
      `The tent: at least ${(count * 12).toLocaleString("en-US")} lb; weight of 11 kinds of things not known. Walls, ground cloths and tools come on top.`,
    );
  });
  it("gives no total where no weight is known, and the whole one where all are", async () => {
    job = await openedJob({ ...noted(), kit: undefined, title: "No weights" });
    expect(text(await (await phoneOf(INES)).look())).toContain("Weight not known: nobody has given what one of each part weighs.");
    const parts = (await state()).lines.filter((l) => l.weighed);
    const kit = Object.fromEntries(parts.map(({ item }) => [item, { unitLb: 10 }]));
    job = await openedJob({ ...noted(kit), title: "All weights" });
    const all = parts.reduce((sum, l) => sum + l.count * 10, 0);
    expect(text(await (await phoneOf(INES)).look())).toContain(`The tent: ${all.toLocaleString("en-US")} lb. Walls,`);
  });
  it("does not weigh what is no part of the tent, and calls that no gap", async () => {
    const page = text(await (await phoneOf(INES)).look());
    expect(page).toContain("2 stake drivers");
    expect(await line("stakeDriver")).toMatchObject({ weighed: false, spares: 0, count: 2, lb: null });
    expect(page).toContain("2 needed, no spares. Not weighed.");
  });
  it("a tick is refused in words, and nothing is counted", async () => {
    const phone = await phoneOf(INES);
    const { to } = await phone.post({ as: INES, seen: "1", key: "tick-0001", gate: "kit.loaded", item: "sidePole", value: "3" });
    expect(to).toContain("Not asked here.");
    expect((await line("sidePole")).loaded).toBeNull();
  });
});

describe("the loading list, ticked", () => {
  beforeEach(async () => {
    await job.to((s) => s.step === "kit.loaded");
  });
  it("one press says that the whole count is on, and leads back to the line with what was taken down", async () => {
    const phone = await phoneOf(JORY);
    const { count } = await line("stakePlate");
    const { status, to } = await phone.all("stakePlate");
    expect(status).toBe(303);
    expect(to.replace(/&seal=[0-9a-f]+/, "")).toBe(`${at()}?reply=${count} stake plates on.#line-stakePlate`);
    expect(await line("stakePlate")).toMatchObject({ loaded: count, is: "all" });
    expect(text(await phone.look())).toContain(`✓ ${count} stake plates All on`);
    const of = (await state()).lines.length;
    expect((await state()).progress).toMatchObject({ all: 1, open: of - 1, of });
  });
  it("two phones tick different lines from lists that were opened before, and neither undoes the other", async () => {
    const [one, two] = [await phoneOf(INES), await phoneOf(JORY)];
    await one.all("sidePole");
    await two.all("stakePlate");
    await one.all("perimeterStake");
    const lines = (await state()).lines.filter((l) => l.loaded !== null).map((l) => l.item);
    expect(lines.sort()).toEqual(["perimeterStake", "sidePole", "stakePlate"]);
  });
  it("a press sent twice counts once", async () => {
    const phone = await phoneOf(INES);
    const before = (await job.entries()).length;
    const [first, second] = [await phone.all("sidePole"), await phone.all("sidePole")];
    expect(second.to).toBe(first.to);
    expect((await job.entries()).length).toBe(before + 1);
  });
  it("another number is taken, named short, and put right later", async () => {
    const phone = await phoneOf(INES);
    const { count } = await line("stakePlate");
    expect((await phone.other("stakePlate", String(count - 2))).to).toContain(`${count - 2} stake plates on: 2 short.`);
    expect(text(await phone.look())).toContain(
      `0 of ${(await state()).lines.length} lines on; 1 short; ${(await state()).lines.length - 1} to go.`,
    );
    expect(text(await phone.look())).toContain(`${count - 2} on: 2 short of ${count}`);
    await phone.all("stakePlate");
    expect((await line("stakePlate")).is).toBe("all");
    await phone.other("stakePlate", "0");
    expect(await line("stakePlate")).toMatchObject({ loaded: 0, is: "short" });
  });
  it("more than the list is no fault, and is told", async () => {
    const phone = await phoneOf(INES);
    await phone.other("stakePlate", "400");
    expect((await state()).progress).toMatchObject({ over: 1, short: 0 });
    const of = (await state()).lines.length;
    expect(text(await phone.look())).toContain(`1 of ${of} lines on; ${of - 1} to go.`);
  });
  it.each(["1.5", "-3", "lots", "5 ft", ""])(
    "%j is refused with a sentence; it stands in its field, and what was counted stays",
    async (typed) => {
      const phone = await phoneOf(INES);
      await phone.other("stakePlate", "7");
      const { status, html } = await phone.other("stakePlate", typed);
      expect(status).toBe(422);
      expect(text(html)).toContain(typed === "" ? "No number was given." : `"${typed}" is no count of stake plates. Give a whole number`);
      expect(html).toContain(`name="value" value="${typed}"`);
      expect((await line("stakePlate")).loaded).toBe(7);
    },
  );
  it("a swap gets the head and its own line, and nothing of another one", async () => {
    const { html } = await (await phoneOf(INES)).all("sidePole", true);
    expect([...html.matchAll(/hx-target="#([^"]+)"/g)].map((m) => m[1])).toEqual(["hurt", "truck-head", "line-sidePole", "notice"]);
    expect(html).not.toContain("line-stakePlate");
  });
  it("after a hold and a carry on an old list is refused once, and comes back whole and fresh", async () => {
    const phone = await phoneOf(INES);
    await job.say({ type: "hold" });
    await job.say({ type: "carryOn", became: null });
    const { html } = await phone.all("sidePole", true);
    expect(text(html)).toContain("Already moved on.");
    expect(html).toContain('hx-target="#truck-lines"');
    await phone.look();
    await phone.all("sidePole");
    expect((await line("sidePole")).is).toBe("all");
  });
  it.each([
    ["a manager", LASSE],
    ["a watcher", WANDA],
  ])("%s is refused in words, and nothing is counted", async (_, who) => {
    const phone = await phoneOf(who);
    expect((await phone.all("sidePole")).to).toMatch(/Not for (manager|watcher)\. Only lead, /);
    expect(text((await phone.other("sidePole", "3")).html)).toContain("Not for");
    expect((await line("sidePole")).loaded).toBeNull();
  });
  it("who has not said who they are is asked first, and has nothing to tick", async () => {
    const html = await (await job.app.request(at())).text();
    expect(text(html)).toContain(truck.who);
    expect(html).not.toContain("all-on");
  });
  it("a thing that is not on the list is refused with a sentence", async () => {
    const phone = await phoneOf(INES);
    const { status, html } = await phone.post({ as: INES, seen: "1", key: "tick-0002", gate: "kit.loaded", item: "marquee", value: "1" });
    expect([status, text(html).includes('"marquee" is not on this list')]).toEqual([422, true]);
    expect(text(await phone.seen("?line=marquee"))).toContain('"marquee" is not on this list');
  });
  it("with every line on, the guide goes on", async () => {
    const phone = await phoneOf(JORY);
    for (const { item } of (await state()).lines) {
      await phone.look();
      await phone.all(item);
    }
    expect(text(await phone.look())).toContain(`All ${(await state()).lines.length} lines on.`);
    await job.say({ type: "next" });
    expect((await job.read()).step).toBe("talk.hazards");
  });
});

describe("the same list at the strike", () => {
  beforeEach(async () => {
    await job.to((s) => s.step === "kit.loaded");
    await (await phoneOf(INES)).other("stakePlate", "400");
    const { lines } = await state();
    const rest = lines.filter((l) => l.item !== "stakePlate").map((l) => [l.item, l.count]);
    await job.say({ type: "answer", gate: "kit.loaded", value: { kind: "counts", n: Object.fromEntries(rest) } });
    await job.to((s) => s.step === "back.kit");
  });
  it("wants back what was loaded, not what was listed", async () => {
    const phone = await phoneOf(JORY);
    expect(text(await phone.look())).toContain("400 stake plates, all back");
    expect(text(await phone.look())).toContain("Count the truck back");
    await phone.all("stakePlate");
    expect(await line("stakePlate")).toMatchObject({ loaded: 400, back: 400, difference: 0, is: "all" });
  });
  it("names each difference on its line: two plates short, one strap over", async () => {
    const phone = await phoneOf(JORY);
    const { count } = await line("perimeterStrap");
    await phone.other("stakePlate", "398");
    await phone.other("perimeterStrap", String(count + 1));
    const page = text(await phone.look());
    expect(page).toContain("398 back: 2 short of 400");
    expect(page).toContain(`${count + 1} back: 1 over ${count}`);
    const of = (await state()).lines.length;
    expect(page).toContain(`0 of ${of} lines back; 1 short; 1 over; ${of - 2} to go.`);
  });
  it("stays to be read once the guide has gone on", async () => {
    await job.to((s) => s.closed);
    const page = text(await (await phoneOf(JORY)).look());
    expect(page).toContain(`All ${(await state()).lines.length} lines back.`);
    expect(page).toContain("Read-only for now.");
  });
  it("as a table: order, counts, weights or unknown, what went out, came back and is missing", async () => {
    const phone = await phoneOf(JORY);
    await phone.other("stakePlate", "398");
    const r = await job.app.request(at(".csv"));
    expect(r.headers.get("content-type")).toBe("text/csv; charset=utf-8; header=present");
    const [head, ...rows] = readCsv(await r.text());
    expect(head).toEqual([...truck.columns]);
    expect(rows.map((row) => row[0])).toEqual(rows.map((_, i) => String(i + 1)));
    const { need, spares, count } = await line("stakePlate");
    expect(rows.find((row) => row[1] === "stake plates")!.slice(2)).toEqual(
      [need, spares, count, 12, count * 12, 400, 398, -2].map(String),
    );
    expect(rows.find((row) => row[1] === "side poles")!.slice(5)).toEqual([
      "unknown",
      "unknown",
      String((await line("sidePole")).loaded),
      "",
      "",
    ]);
    expect(rows.find((row) => row[1] === "horns")!.slice(2)).toEqual(["1", "0", "1", "", "", "1", "", ""]);
  });
});

describe("a list that the plan or the yard changes", () => {
  it("has the yard's new spares after an amendment, and says what was counted against them", async () => {
    await job.to((s) => s.step === "kit.loaded");
    const { need, count } = await line("stakePlate");
    await (await phoneOf(INES)).all("stakePlate");
    const more = readBrief(noted({ stakePlate: { spare: 0.2, unitLb: 12 } }));
    const { no } = await job.say({ type: "amend", because: "soft ground, more plates", to: more.frozen });
    await job.say({ type: "agree", target: no }, "Maren");
    expect(await line("stakePlate")).toMatchObject({ spares: Math.ceil(need * 0.2), loaded: count, is: "short" });
  });
  it("is ticked again where the guide asks for it again, away from its own call", async () => {
    await job.to((s) => s.step === "talk.hazards");
    const more = readBrief(noted({ stakePlate: { spare: 0.2, unitLb: 12 } }));
    const { no } = await job.say({ type: "amend", because: "soft ground, more plates", to: more.frozen });
    await job.say({ type: "agree", target: no }, "Maren");
    expect(await state()).toMatchObject({ gate: "kit.loaded", way: "out" });
    await (await phoneOf(INES)).all("stakePlate");
    expect((await line("stakePlate")).is).toBe("all");
  });
  it("still has what was loaded and is no longer planned: it has to come back", async () => {
    await job.to((s) => s.step === "talk.hazards");
    const { loaded } = await line("quarterPole");
    const without = readBrief({ ...noted(), tent: { ...brief().tent, quarterRings: 0 } });
    const { no } = await job.say({ type: "amend", because: "this top has none", to: without.frozen });
    await job.say({ type: "agree", target: no }, "Maren");
    expect(await line("quarterPole")).toMatchObject({ need: 0, count: 0, loaded });
    expect(text(await (await phoneOf(INES)).look())).toContain("No longer on the list: the plan was changed.");
  });
  it("a job that is not there is told as everywhere", async () => expect((await job.app.request("/jobs/nope/truck")).status).toBe(404));
});
