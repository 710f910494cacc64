import { beforeEach, describe, expect, it } from "vitest";
import { brief, testApp } from "../support/app.ts";
import { openedJob } from "../support/job.ts";

type Answer = { problem: string; fields: Record<string, string>; entry?: number; reply?: string; reasons?: { why: string }[] };
let world: ReturnType<typeof testApp>;
let job: string;
const say = async (body: unknown, raw = false) => {
  const r = await world.post(`/jobs/${job}/say`, body, raw);
  return { status: r.status, body: (await r.json()) as Answer };
};
const entries = async () => (await world.liveJobs.load(job)).entries.length;
const next = (key: string, seen = 0) => ({ as: "Ines", key, seen, type: "next" });

beforeEach(async () => {
  world = testApp();
  const r = await world.post("/jobs", { key: "open-0001", brief: brief() });
  job = ((await r.json()) as { job: string }).job;
});

describe("what cannot be read is refused with a sentence, and nothing is written", () => {
  it.each([
    ["no JSON", "{", true, 400],
    ["a list", [], false, 422],
    ["nobody", { key: "key-00001", seen: 0, type: "next" }, false, 422],
    ["somebody who is not on the job", { ...next("key-00001"), as: "Nobody" }, false, 422],
    ["a malformed key", next("x y"), false, 422],
    ["a word of its own", { ...next("key-00001"), type: "skip" }, false, 422],
    ["both heard and type", { ...next("key-00001"), heard: "next" }, false, 422],
    ["an utterance of 10 kB", { as: "Ines", key: "key-00001", seen: 0, heard: "a".repeat(10_000) }, false, 422],
    ["chatter", { as: "Ines", key: "key-00001", seen: 0, heard: "gimme six more" }, false, 422],
    ["a body of 100 kB", { ...next("key-00001"), note: "a".repeat(100_000) }, false, 413],
  ])("%s", async (_what, body, raw, status) => {
    const answer = await say(body, raw);
    expect(answer.status).toBe(status);
    expect(answer.body.problem).toMatch(/\w+.*[.:]/);
    expect(await entries()).toBe(1);
  });

  it("an unknown job is 404 and says where to look", async () => {
    const r = await world.post("/jobs/no-such/say", next("key-00001"));
    expect([r.status, ((await r.json()) as Answer).problem]).toEqual([404, "There is no job no-such. Look at the list of jobs."]);
  });

  it("a brief with wrong numbers names every field, and opens nothing", async () => {
    const bad = brief();
    const r = await world.post("/jobs", {
      key: "open-0002",
      brief: {
        ...bad,
        tent: { ...bad.tent, midsFt: [15], spacingFt: -1 },
        ticket: { ...bad.ticket, validTo: "soon" },
        crew: bad.crew.slice(3),
      },
    });
    const { fields } = (await r.json()) as Answer;
    expect(r.status).toBe(422);
    expect(Object.keys(fields)).toEqual(expect.arrayContaining(["tent.midsFt", "tent.spacingFt"]));
    expect(await world.journal.jobs()).toHaveLength(1);
  });

  it.each(["", " ", "the old oak", "under the trees at gate 3", "the small tent", "the catering canopy"])(
    "a storm shelter that is none opens nothing: %o",
    async (stormShelter) => {
      const r = await world.post("/jobs", { key: "open-0002", brief: { ...brief(), site: { ...brief().site, stormShelter } } });
      const { fields } = (await r.json()) as Answer;
      const sentence =
        stormShelter.trim() === ""
          ? "Empty. Fill it in."
          : `${stormShelter} is no storm shelter. Name a building or a hard-topped vehicle.`;
      expect([r.status, fields]).toEqual([422, { "site.stormShelter": sentence }]);
      expect(await world.journal.jobs()).toHaveLength(1);
    },
  );

  it("a brief that names no storm shelter at all opens nothing", async () => {
    const { stormShelter: _, ...site } = brief().site;
    const r = await world.post("/jobs", { key: "open-0002", brief: { ...brief(), site } });
    expect([r.status, ((await r.json()) as Answer).fields]).toEqual([
      422,
      { "site.stormShelter": "Nothing is given here, and it is needed." },
    ]);
  });

  it.each([
    ["raiseGustMph", 26, "26 mph is over the guide's own cap of 25, whatever the sheet allows. Enter 25."],
    ["stopGustMph", 31, "31 mph is over the guide's own cap of 30, whatever the sheet allows. Enter 30."],
    ["insideGustMph", 39, "39 mph is over the guide's own cap of 38, whatever the sheet allows. Enter 38."],
    ["raiseGustMph", 0, "0 is out of range. From 1 to 25."],
  ])("no sheet moves %s to %d mph, and the bound is said", async (field, mph, sentence) => {
    const sheet = { ...brief().sheet, [field]: mph };
    const r = await world.post("/jobs", { key: "open-0002", brief: { ...brief(), sheet } });
    expect([r.status, ((await r.json()) as Answer).fields]).toEqual([422, { [`sheet.${field}`]: sentence }]);
    expect(await world.journal.jobs()).toHaveLength(1);
  });

  it("a measure where a paper is asked is refused as the wrong kind", async () => {
    const answer = await say({
      as: "Ines",
      key: "key-00001",
      seen: 0,
      type: "answer",
      gate: "sheet.atHand",
      value: { kind: "measure", n: 3, unit: "in" },
    });
    expect(answer.body.reasons?.[0]?.why).toBe("wrongKind");
  });
});

describe("the value of an answer, field by field", () => {
  const answered = async (value: unknown) => say({ as: "Ines", key: "key-00001", seen: 0, type: "answer", gate: "sheet.atHand", value });
  it.each([
    ["a yes that is neither", { kind: "yesNo", yes: "yes" }, "value.yes", "Say true or false."],
    ["half a thing", { kind: "count", n: 1.5 }, "value.n", "Give a whole number."],
    ["a number in words", { kind: "measure", n: "six", unit: "in" }, "value.n", "Not a number. Give a number in the unit named."],
    ["more inches than there are", { kind: "measure", n: 2e6, unit: "in" }, "value.n", "2000000 is out of range. From 0 to 120000 in."],
    ["yards", { kind: "measure", n: 6, unit: "yd" }, "value.unit", "Not one of: in, ft, deg, lbf, turns, mph, mm, m."],
    ["no length", { kind: "lengths", ft: { AB: 0 } }, "value.ft.AB", "0 is out of range. From 0.1 to 1000 ft."],
    ["less than none", { kind: "counts", n: { sidePole: -1 } }, "value.n.sidePole", "-1 is out of range. From 0 to 100000."],
    [
      "a figure in words",
      { kind: "figures", unit: "count", n: { AB: "ten" } },
      "value.n.AB",
      "Not a number. Give a number in the unit named.",
    ],
    ["a line that nobody can mean", { kind: "each", yes: { gas: "maybe" } }, "value.yes.gas", "Say true or false."],
    ["a paper without a number", { kind: "document", named: " " }, "value.named", "Empty. Fill it in."],
    ["a long number", { kind: "document", named: "7".repeat(81) }, "value.named", "Too long. Keep it under 80 characters."],
    [
      "a kind that there is not",
      { kind: "color" },
      "value.kind",
      "Not one of: yesNo, count, measure, none, lengths, counts, figures, each, document, unknown, paper.",
    ],
  ])("%s", async (_what, value, field, problem) => {
    const { status, body } = await answered(value);
    expect([status, body.fields]).toEqual([422, { [field]: problem }]);
    expect(await entries()).toBe(1);
  });

  it("millimeters are not inches, where nothing is measured either", async () => {
    await answered({ kind: "measure", n: 25.4, unit: "mm" });
    const { command } = (await world.liveJobs.load(job)).entries.at(1)!.entry as unknown as { command: object };
    expect(command).toMatchObject({ value: { kind: "measure", n: 1, unit: "in" } });
  });
});

describe("keys and screens", () => {
  it("the same key twice is answered twice and done once", async () => {
    const body = {
      as: "Ines",
      key: "key-00001",
      seen: 0,
      type: "answer",
      gate: "sheet.atHand",
      value: { kind: "document", named: "RC-80100 rev C" },
    };
    const [first, second] = [await say(body), await say(body)];
    expect(second.body).toEqual(first.body);
    expect(await entries()).toBe(2);
  });

  it("the same key sent again much later is told the same, whatever has been answered since", async () => {
    const sheet = (key: string, named: string) => ({
      as: "Ines",
      key,
      seen: 0,
      type: "answer",
      gate: "sheet.atHand",
      value: { kind: "document", named },
    });
    const wrong = await say(sheet("key-00001", "RC-4040"));
    const early = await say(next("key-00002"));
    await say(sheet("key-00003", "RC-80100 rev C"));
    expect(wrong.body.reply).toMatch(/^RC-4040\. Need RC-80100 rev C\. /);
    expect((await say(sheet("key-00001", "RC-4040"))).body).toEqual(wrong.body);
    expect((await say(next("key-00002"))).body).toMatchObject({ entry: early.body.entry, outcome: { refused: [{ why: "gate" }] } });
  });

  it("half a ring at a mark is no answer, and nothing stands in its place", async () => {
    const crew = await openedJob();
    await crew.to((s) => s.step === "marked");
    const n = { AB: 10.5 };
    const { outcome } = await crew.say({ type: "answer", gate: "marked", value: { kind: "figures", unit: "count", n } });
    expect(outcome).toEqual({ refused: [{ why: "wrongKind", gate: "marked" }] });
    expect((await crew.read()).gate).toMatchObject({ id: "marked", status: "open", given: {} });
  });

  it("the same key with another body is refused", async () => {
    await say(next("key-00001"));
    const again = await say({ ...next("key-00001"), type: "hold" });
    expect([again.status, await entries()]).toEqual([409, 2]);
  });

  it("two screens say next at once and advance once", async () => {
    // Of somebody who may not say next, so that the answer alone does not go on.
    const value = { kind: "document", named: "RC-80100 rev C" };
    await say({ as: "Maren", key: "key-00001", seen: 0, type: "answer", gate: "sheet.atHand", value });
    const both = await Promise.all([say(next("key-0000a", 2)), say({ ...next("key-0000b", 2), as: "Tobias" })]);
    expect(both.map((b) => b.body.reasons?.[0]?.why ?? "moved").sort()).toEqual(["moved", "movedOn"]);
    expect((await world.liveJobs.load(job)).job.snapshot.value).toMatchObject({ procedure: { utilitiesMarked: "permit" } });
  });

  it("two screens give the same good answer at once, and it goes on once", async () => {
    const value = { kind: "document", named: "RC-80100 rev C" };
    const answer = (key: string, as: string) => say({ as, key, seen: 0, type: "answer", gate: "sheet.atHand", value });
    const both = await Promise.all([answer("key-0000a", "Ines"), answer("key-0000b", "Tobias")]);
    expect(both.map((b) => b.body.reasons?.[0]?.why ?? "moved").sort()).toEqual(["moved", "movedOn"]);
    expect((await world.liveJobs.load(job)).job.snapshot.value).toMatchObject({ procedure: { utilitiesMarked: "permit" } });
  });

  it("opening with the same key twice opens one job", async () => {
    const r = await world.post("/jobs", { key: "open-0001", brief: brief() });
    expect(((await r.json()) as { job: string }).job).toBe(job);
    expect(await world.journal.jobs()).toHaveLength(1);
  });
});

describe("a record that was tampered with", () => {
  const spoiled = (at: number) => {
    const read = async (id: string) =>
      (await world.journal.read(id)).map((line) =>
        line.no === at ? { ...line, bytes: line.bytes.map((byte, i) => (i === 20 ? byte ^ 1 : byte)) } : line,
      );
    return testApp({ ...world.journal, read });
  };

  it("in the middle opens for reading only, says at which entry, and takes nothing more", async () => {
    for (const key of ["key-00001", "key-00002", "key-00003"]) await say(next(key));
    const { app, post } = spoiled(3);
    const guide = (await (await app.request(`/jobs/${job}.json`)).json()) as { readOnly: string; entry: number };
    expect([guide.entry, guide.readOnly]).toEqual([2, "Entry 3 of this job does not fit the chain. The job is open for reading only."]);
    expect((await post(`/jobs/${job}/say`, next("key-00009"))).status).toBe(409);
    expect(await entries()).toBe(4);
  });

  it("in its opening is said to be unreadable, in a sentence with what to do", async () => {
    const r = await spoiled(1).app.request(`/jobs/${job}.json`);
    expect([r.status, ((await r.json()) as Answer).problem]).toEqual([409, expect.stringMatching(/cannot be read.*last copy/)]);
  });
});

describe("questions", () => {
  it.each([
    ["how many stakes at the corners", "4 corners, 6 stakes each, 24 in all."],
    ["how many rings on AB", "11 rings on AB."],
    ["what's left", /left/],
    ["where next", /Next comes/],
    ["why", /\w{3}/],
  ])("%s: answered from the plan, nothing recorded", async (heard, reply) => {
    const answer = await say({ as: "Odd", key: "key-00001", seen: 0, heard });
    expect(answer.body.reply).toMatch(reply);
    expect(answer.body.entry).toBeNull();
    expect(await entries()).toBe(1);
  });
});
