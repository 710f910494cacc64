import { beforeEach, describe, expect, it } from "vitest";
import { brief } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";
import { all, ofClass, readXml, textOf } from "../support/xml.ts";

let job: OpenedJob;
let keys = 0;
beforeEach(async () => {
  job = await openedJob({ ...brief(), crew: [...brief().crew, { name: "Wim", role: "trainee" }] });
  await job.to((s) => s.step === "lace.S1.AB");
});

type Told = { reply: string; outcome: object | null; reasons: { why: string }[]; entry: number; fields?: Record<string, string> };
const say = async (body: object, headers: Record<string, string> = {}) => {
  const seen = (await job.read()).revision;
  const answer = await job.app.request(`/jobs/${job.job}/say`, {
    method: "POST",
    headers: { "content-type": "application/json", ...headers },
    body: JSON.stringify({ as: "Ines", key: `trouble-${++keys}`, seen, ...body }),
  });
  return { status: answer.status, body: (await answer.json()) as Told };
};
const page = async (path: string) => {
  const headers = { cookie: `device=phone-1; as-${job.job}=p1` };
  return readXml((await (await job.app.request(`/jobs/${job.job}${path}`, { headers })).text()).replace(/^<!DOCTYPE html>/, ""));
};
const send = (fields: Record<string, string>) =>
  job.app.request(`/jobs/${job.job}/say`, {
    method: "POST",
    headers: { "content-type": "application/x-www-form-urlencoded", origin: "http://localhost", cookie: "device=phone-1" },
    body: new URLSearchParams({ as: "p1", key: `trouble-${++keys}`, seen: "9999", ...fields }),
  });
const torn = { type: "outOfUse", thing: { is: "piece", id: "mid-1" }, because: "torn at a ring" };

describe("over HTTP", () => {
  it("a trainee takes a piece out of use, and the reply says what that stops; only a competent person puts it back", async () => {
    const out = await say({ ...torn, as: "Wim" });
    expect(out.body).toMatchObject({
      outcome: { did: "outOfUse" },
      reply: "Mid 1 is out of use. Waiting for it: seam 1, seam 2, and raising.",
    });
    const next = await say({ type: "next" });
    expect(next.body.reasons).toEqual([
      { why: "outOfUse", text: "Mid 1 is out of use: torn at a ring. Mend or swap it, then say it's back." },
    ]);
    const back = { type: "backInUse", thing: torn.thing, because: "mended" };
    expect((await say({ ...back, as: "Wim" })).body.reasons[0]?.why).toBe("role");
    expect((await say(back)).body).toMatchObject({ outcome: { did: "backInUse" }, reply: "Mid 1 is back." });
    expect((await say({ type: "next" })).body.outcome).toMatchObject({ did: "moved" });
  });

  it("a kit line is short, and some of it comes", async () => {
    const straps = (type: string, short: number) => ({ type, thing: { is: "kit", item: "perimeterStrap", short }, because: "counted" });
    expect((await say(straps("outOfUse", 4))).body.reply).toBe("4 ratchet straps short. Waiting for them: strapping and raising.");
    expect((await say(straps("backInUse", 3))).body.reply).toBe("Still short: 1 ratchet strap.");
    expect((await say(straps("backInUse", 1))).body.reply).toBe("No more ratchet straps short.");
  });

  it("what the job does not have is refused by name; what is no count is refused before it is recorded", async () => {
    const nine = await say({ ...torn, thing: { is: "piece", id: "mid-9" } });
    expect(nine.body.reasons[0]?.why).toBe("noSuchThing");
    expect(nine.body.reply).toMatch(/^This top has no mid 9\. It has: .*mid 1/);
    for (const short of [0, 1.5, 10_001, "two"]) {
      const told = await say({ ...torn, thing: { is: "kit", item: "perimeterStrap", short } });
      expect([told.status, Object.keys(told.body.fields ?? {})]).toEqual([422, ["thing.short"]]);
    }
    const item = await say({ ...torn, thing: { is: "kit", item: "toString", short: 1 } });
    expect([item.status, item.body.fields?.["thing.item"]]).toEqual([422, expect.stringContaining('"toString" is not one of')]);
  });

  it("spoken, it is read back and counts on correct", async () => {
    const device = { cookie: "device=phone-1" };
    const heard = await say({ alternatives: ["mid one is torn"], talk: true }, device);
    expect(heard.body).toMatchObject({ outcome: { did: "readBack" }, reply: "Mid 1 is out of use: torn. Correct, or wrong?" });
    expect((await job.read()).outOfUse).toEqual([]);
    await say({ alternatives: ["correct"], talk: true, readBack: heard.body.entry }, device);
    expect((await job.read()).outOfUse).toMatchObject([{ thing: torn.thing, line: "OUT OF USE: mid 1, torn (Ines)" }]);
  });

  it("stakes are those that are driven next, or those that are short", async () => {
    const device = { cookie: "device=phone-1" };
    const stakes = { type: "outOfUse", thing: { is: "kit", item: "interiorStake", short: 2 }, because: "bent" };
    await say(stakes);
    const heard = await say({ alternatives: ["the stakes are here"], talk: true }, device);
    expect(heard.body.reply).toBe("2 interior stakes came. Correct, or wrong?");
    expect((await say({ alternatives: ["short four stakes"], talk: true }, device)).body.reply).toContain("4 perimeter stakes short");
  });
});

describe("on the screen, scripts off", () => {
  it("its page offers every piece and every line of the list; the guide shows what is out as an alarm; its page puts it back", async () => {
    const more = await page("/trouble");
    const options = (name: string) =>
      ofClass(more, name)
        .flatMap(all)
        .filter((e) => e.name === "option")
        .map((e) => e.attributes.value);
    expect(options("take-out")).toEqual(["end-A", "end-D", "mid-1", "end-B", "end-C"]);
    expect(options("short")).toContain("perimeterStrap");
    expect((await send({ type: "outOfUse", is: "piece", id: "mid-1", because: "torn" })).status).toBe(303);
    expect((await send({ type: "outOfUse", is: "kit", item: "perimeterStrap", short: "2", because: "Counted" })).status).toBe(303);
    const lines = ["OUT OF USE: mid 1, torn (Ines)", "SHORT: 2 ratchet straps (Ines)"];
    expect(ofClass(await page(""), "alarm").map(textOf)).toEqual(lines);
    const [first] = ofClass(await page("/trouble"), "put-back").map(all);
    const hidden = first!.filter((e) => e.attributes.type === "hidden").map((e) => [e.attributes.name!, e.attributes.value ?? ""]);
    expect((await send({ ...Object.fromEntries(hidden), because: "swapped" })).status).toBe(303);
    expect(ofClass(await page(""), "alarm").map(textOf)).toEqual(lines.slice(1));
  });

  it("a number typed as no number is refused by its field", async () => {
    const answer = await send({ type: "outOfUse", is: "kit", item: "perimeterStrap", short: "some", because: "Counted" });
    expect(answer.status).toBe(422);
  });
});
