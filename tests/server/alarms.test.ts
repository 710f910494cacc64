import { beforeEach, describe, expect, it } from "vitest";
import { brief } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";
import { plainBrowser } from "../support/plain-forms.ts";

type Told = {
  entry: number | null;
  outcome: { did?: string } | null;
  went: string;
  reply: string;
  reasons: { why: string; gate?: string; status?: string; text: string }[];
  step: string;
  problem?: string;
  fields?: Record<string, string>;
};

const STOP = "STOP. Everyone out. Make safe.";
const SHELTER = "STOP. Everyone to shelter: the brick barn.";
const HURT = "HOLD. Call 911: Lower meadow, gate 3, Tansy Lane. First aid: green box, truck cab.";
/** Who may not say next: a trainee, and whoever only watches the weather. */
const BYSTANDERS = ["Odd", "Vera"] as const;

let crew: OpenedJob;
let keys: number;
beforeEach(async () => {
  keys = 0;
  crew = await openedJob({ ...brief(), crew: [...brief().crew, { name: "Vera", role: "watcher" }] });
});

const post = async (body: object, device: string) => {
  const response = await crew.app.request(`/jobs/${crew.job}/say`, {
    method: "POST",
    headers: { "content-type": "application/json", cookie: `device=${device}` },
    body: JSON.stringify({ key: `alarm-${String(++keys).padStart(4, "0")}`, ...body }),
  });
  return { status: response.status, ...((await response.json()) as Told) };
};
/** As an office script or a press says it. */
const say = async (body: object, as = "Ines") => post({ as, seen: (await crew.read()).revision, ...body }, `phone-of-${as}`);
/** Into somebody's phone, without any button. */
const speak = (words: string, as: string) => say({ alternatives: [words], talk: false }, as);
const screen = async (as: string) => (await crew.app.request(`/jobs/${crew.job}?as=${as}`)).text();
const entries = async () => (await crew.entries()).map(({ entry }) => entry);
const last = async () => (await entries()).at(-1)!;
/** The first piece is on the ground and asks nothing of its own; more cloth comes next. */
const atTheCloth = () => crew.to((s) => s.step === "lay.end-A" && s.gate === null);
const clockAt = (at: number) =>
  new Intl.DateTimeFormat("en-GB", { timeZone: "America/Chicago", hour: "2-digit", minute: "2-digit" }).format(
    Math.ceil(at / 60_000) * 60_000,
  );

it("a gust over the limit to raise is answered with what it shuts, where nothing is asked for it yet", async () => {
  const told = await say({ type: "reading", kind: "wind", mph: 12, gustMph: 22 }, "Odd");
  expect(told).toMatchObject({ outcome: { did: "read" }, reply: "Got it. Gusts at 20 or over: nothing goes up." });
});

it("with only stakes in the ground there is nothing to make safe: the reading, the limit, what not to do, when to read again", async () => {
  await crew.to((s) => s.gate?.id === "wind.cloth");
  await say({ type: "reading", kind: "wind", mph: 14, gustMph: 22 });
  const told = "Gust 22. Limit 20. Lay no cloth. Read again in 10 min.";
  expect((await crew.read()).missing).toBe(told);
  expect(await say({ type: "next" })).toMatchObject({ went: "refused", reply: told });
});

describe.each(BYSTANDERS)("what can only stop work, from %s", (who) => {
  beforeEach(atTheCloth);

  it("thunder stops it, and next is refused with why and until when", async () => {
    const told = await say({ type: "reading", kind: "thunder" }, who);
    expect(told).toMatchObject({ status: 200, outcome: { did: "read" }, reply: SHELTER });
    const heard = await last();
    expect(heard).toMatchObject({
      no: told.entry,
      command: { type: "reading", reading: { kind: "thunder", takenAt: expect.any(Number) } },
    });
    const next = await say({ type: "next" });
    const until = clockAt(heard.at + 30 * 60_000);
    expect(next).toMatchObject({ went: "refused", reasons: [{ why: "gate", gate: "thunder", status: "outOfLimit" }] });
    expect(next.reply).toBe(`Lightning. Nobody goes on before ${until}. Take shelter; make safe.`);
    crew.clock.pass(29 * 60);
    expect((await say({ type: "next" })).reply).toBe(`Lightning. Nobody goes on before ${until}. Take shelter; make safe.`);
    crew.clock.pass(60);
    expect((await say({ type: "next" })).reasons[0]?.gate).not.toBe("thunder");
  });

  it("an alarm counts whatever its time says, and somebody hurt without a word of how", async () => {
    expect(await say({ type: "reading", kind: "thunder", takenAt: "just now" }, who)).toMatchObject({ outcome: { did: "read" } });
    expect(await say({ type: "hurt" }, who)).toMatchObject({ outcome: { did: "hurt" } });
  });

  it("a hold word at the end of a long sentence makes the work wait", async () => {
    const story = "and then the fellow from the other field came over and asked ".repeat(8);
    expect((await speak(`${story} hold that rope`, who)).went).not.toBe("notUnderstood");
    expect((await crew.read()).held).not.toBeNull();
  });

  it("a warning stops it, and next is refused until somebody who may says that it is over", async () => {
    expect(await say({ type: "reading", kind: "warning" }, who)).toMatchObject({ outcome: { did: "read" }, reply: STOP });
    expect(await last()).toMatchObject({ command: { type: "reading", reading: { kind: "warning" } } });
    const next = await say({ type: "next" });
    expect(next).toMatchObject({ went: "refused", reasons: [{ why: "gate", gate: "warning", status: "outOfLimit" }] });
    expect(next.reply).toMatch(/^Warnings clear until this is done\? No\. Wait until it's lifted\. /);
    const over = { type: "answer", gate: "warning", value: { kind: "yesNo", yes: true } };
    expect(await say(over, who)).toMatchObject({ went: "refused", reasons: [{ why: "role" }] });
    expect(await say(over, "Maren")).toMatchObject({ went: "done" });
    expect((await crew.read()).gate?.id).not.toBe("warning");
  });

  it("a gust of 60 mph stops it, and next is refused with the wind that is wanted", async () => {
    const told = await say({ type: "reading", kind: "wind", mph: 30, gustMph: 60 }, who);
    expect(told).toMatchObject({ status: 200, outcome: { did: "read" }, reply: STOP });
    expect(await crew.read()).toMatchObject({ weather: { is: "stop" } });
    const next = await say({ type: "next" });
    expect(next).toMatchObject({ went: "refused", reasons: [{ why: "gate", gate: "wind.cloth", status: "outOfLimit" }] });
    expect(next.reply).toMatch(/^Gust 60\. Limit 20\. Make safe, then read it again\.$/);
    expect((await crew.read()).step).toBe("lay.end-A");
  });

  it("a gust of 60 mph with a time that is yet to come counts from now", async () => {
    const takenAt = new Date(crew.now() + 3_600_000).toISOString();
    const told = await say({ type: "reading", kind: "wind", mph: 30, gustMph: 60, takenAt }, who);
    expect(told).toMatchObject({ outcome: { did: "read" }, reply: STOP });
    const { wind } = (await crew.liveJobs.load(crew.job)).job.snapshot.context;
    expect(wind).toEqual({ mph: 30, gustMph: 60, fromDeg: null, takenAt: (await last()).at });
    expect((await say({ type: "next" })).reasons).toMatchObject([{ gate: "wind.cloth", status: "outOfLimit" }]);
  });

  it("a gust of 60 mph of a while ago counts after a newer calm reading", async () => {
    const takenAt = new Date(crew.now() - 600_000).toISOString();
    expect(await say({ type: "reading", kind: "wind", mph: 5, gustMph: 8 })).toMatchObject({ outcome: { did: "read" } });
    expect(await say({ type: "reading", kind: "wind", mph: 30, gustMph: 60, takenAt }, who)).toMatchObject({ reply: STOP });
    expect(await crew.read()).toMatchObject({ weather: { is: "stop" } });
    expect((await say({ type: "next" })).reasons).toMatchObject([{ gate: "wind.cloth", status: "outOfLimit" }]);
  });

  it("is what a calm reading is not: that is for those who may", async () => {
    await say({ type: "reading", kind: "wind", mph: 30, gustMph: 60 }, who);
    expect(await say({ type: "reading", kind: "wind", mph: 5, gustMph: 8 }, who)).toMatchObject({
      went: "refused",
      reasons: [{ why: "role" }],
    });
    expect(await crew.read()).toMatchObject({ weather: { is: "stop" } });
  });

  it("spoken into their phone does the same, and nothing is read back first", async () => {
    expect(await speak("I hear thunder", who)).toMatchObject({ went: "done", outcome: { did: "read" }, reply: SHELTER });
    expect(await last()).toMatchObject({ command: { reading: { kind: "thunder" }, heard: "I hear thunder", source: "open" } });
  });
});

describe("everybody out", () => {
  it("spoken by a trainee leads to making safe, with the words as its reason", async () => {
    await crew.to((s) => s.step === "lift.center.C1");
    expect(await speak("everybody out", "Odd")).toMatchObject({ went: "done", outcome: { did: "makingSafe" }, step: "safe.up.pole" });
    expect(await last()).toMatchObject({ command: { type: "makeSafe", because: "everybody out", by: "p6" } });
    expect(await crew.read()).toMatchObject({ phase: "up", makingSafe: true });
  });
  it("spoken again is on its way already: from its first call", async () => {
    await atTheCloth();
    await speak("everybody out", "Odd");
    await say({ type: "next" });
    expect(await speak("everybody out now", "Vera")).toMatchObject({ outcome: { did: "makingSafe" }, step: "safe.ground.tools" });
  });
});

describe("somebody hurt", () => {
  beforeEach(atTheCloth);

  it("spoken by a trainee holds every screen and says what to do first", async () => {
    let woken = 0;
    crew.hub.listen(crew.job, () => woken++);
    const told = await speak("somebody's hurt by the truck", "Odd");
    expect(told).toMatchObject({ went: "done", outcome: { did: "hurt" }, reply: HURT });
    expect(woken).toBe(1);
    expect((await crew.read()).held).toEqual({ by: "Odd", only: null, unrecorded: null });
    for (const as of ["p1", "p2", "p4", "p6"])
      expect(await screen(as), as).toMatch(/HURT: CALL 911.*Lower meadow, gate 3, Tansy Lane.*meet the ambulance.*green box, truck cab/s);
    expect(await say({ type: "next" })).toMatchObject({ went: "refused", reasons: [{ why: "held" }] });
    expect(await last()).not.toMatchObject({ outcome: { did: "moved" } });
  });

  it("told a second time is refused with one sentence, and its words are kept", async () => {
    await speak("somebody's hurt by the truck", "Odd");
    const told = await speak("Jory is bleeding", "Pia");
    const sentence = "Already on hold, somebody's hurt. Odd told it. Your words are kept.";
    expect(told).toMatchObject({ went: "refused", reply: sentence, reasons: [{ why: "alreadyHurt", text: sentence }] });
    expect(await last()).toMatchObject({ no: told.entry, command: { type: "hurt", words: "Jory is bleeding", by: "p5" } });
    const record = await (await crew.app.request(`/jobs/${crew.job}/record`)).text();
    expect(record).toContain("Jory is bleeding");
    expect((await crew.read()).held).toMatchObject({ by: "Odd" });
  });

  it("is not carried on from without a word of what became of it; with one it goes on, and that is in the record", async () => {
    await speak("somebody's hurt by the truck", "Odd");
    const silent = await say({ type: "carryOn" });
    expect(silent).toMatchObject({ went: "refused", reply: "Somebody's hurt. Carry on, and say what became of it." });
    expect(silent.reasons).toMatchObject([{ why: "sayWhatBecame" }]);
    expect(await say({ type: "carryOn", became: "he is fine" }, "Pia")).toMatchObject({ went: "refused", reasons: [{ why: "role" }] });
    expect((await crew.read()).held).not.toBeNull();
    expect(await say({ type: "carryOn", became: "bandaged, back at work" })).toMatchObject({ went: "done", outcome: { did: "carriedOn" } });
    expect((await crew.read()).held).toBeNull();
    expect(await last()).toMatchObject({ command: { type: "carryOn", became: "bandaged, back at work" } });
    expect(await (await crew.app.request(`/jobs/${crew.job}/record`)).text()).toContain("Carry on: bandaged, back at work");
    expect((await say({ type: "next" })).reasons[0]?.why).not.toBe("held");
  });

  it("a bare carry on that is spoken is refused too, and one with what became of it goes on", async () => {
    await speak("somebody's hurt by the truck", "Odd");
    const talk = (words: string) => say({ alternatives: [words], talk: true });
    expect(await talk("carry on")).toMatchObject({ went: "refused", reasons: [{ why: "sayWhatBecame" }] });
    expect(await talk("carry on, they took him to the hospital")).toMatchObject({ went: "done", outcome: { did: "carriedOn" } });
    expect(await last()).toMatchObject({ command: { type: "carryOn", became: "they took him to the hospital" } });
  });

  it("is carried on from by a press without scripts, with the field that asks what became of it", async () => {
    await say({ type: "hold" }, "Pia");
    const browser = plainBrowser(crew.app);
    await browser.open(`/jobs/${crew.job}?as=p1`);
    expect(browser.forms("answers")[0]!.open).toEqual([]);
    await speak("somebody's hurt by the truck", "Odd");
    await say({ type: "hold" }, "Pia");
    await browser.open(`/jobs/${crew.job}`);
    expect(browser.text("hurt")).toContain("Odd told it");
    await browser.send(browser.forms("answers")[0]!, { became: "bandaged, back at work" });
    expect((await crew.read()).held).toBeNull();
    expect(await last()).toMatchObject({ command: { type: "carryOn", became: "bandaged, back at work" } });
  });

  it("words that are only blanks are no word of what became of it", async () => {
    await speak("somebody's hurt by the truck", "Odd");
    const { status, fields } = await say({ type: "carryOn", became: "  " });
    expect([status, fields]).toEqual([422, { became: "Empty. Fill it in." }]);
    expect((await crew.read()).held).not.toBeNull();
  });
});

describe("a reading that cannot be", () => {
  it.each<[string, object, Record<string, string>]>([
    ["a gust under its mean", { mph: 18, gustMph: 12 }, { gustMph: "A gust of 12 mph is under its mean wind of 18 mph. Read it again." }],
    ["a direction that is none", { mph: 8, gustMph: 12, fromDeg: 400 }, { fromDeg: "400 is out of range. From 0 to 360 degrees." }],
    ["a time that is none", { mph: 8, takenAt: "now" }, { takenAt: '"now" is not a time. Write it like 2026-06-01T07:00:00Z.' }],
  ])("%s: one clear sentence, and nothing is recorded", async (_what, reading, fields) => {
    const before = (await entries()).length;
    const told = await say({ type: "reading", kind: "wind", ...reading });
    expect([told.status, told.fields, (await entries()).length]).toEqual([422, fields, before]);
    expect((await crew.read()).weather.is).toBe("unknown");
  });

  it("spoken as a gust under its mean is asked for again, and nothing is recorded", async () => {
    const before = (await entries()).length;
    const told = await say({ alternatives: ["wind 18 gusting 12"], talk: true }, "Maren");
    expect(told).toMatchObject({ went: "notUnderstood", entry: null });
    expect(told.reply).not.toBe("");
    expect((await entries()).length).toBe(before);
  });
});

describe("thunder that was none", () => {
  it("is taken back by words that are read back, by typing and by script, and stands in the record with its reason", async () => {
    await say({ type: "reading", kind: "thunder" }, "Odd");
    const back = await say({ alternatives: ["that wasn't thunder, it was a truck"], talk: true });
    expect(back).toMatchObject({ went: "readBack", reply: expect.stringContaining("No thunder: it was a truck") });
    expect((await crew.read()).weather.is).toBe("stop");
    await say({ alternatives: ["correct"], talk: true, readBack: back.entry });
    expect((await crew.read()).weather.is).not.toBe("stop");

    await say({ type: "reading", kind: "thunder" }, "Odd");
    expect(await say({ type: "reading", kind: "noThunder", because: "the generator" })).toMatchObject({ outcome: { did: "read" } });
    expect(await last()).toMatchObject({ command: { reading: { kind: "noThunder", because: "the generator" } } });
    expect(await (await crew.app.request(`/jobs/${crew.job}/record`)).text()).toContain("No thunder: the generator");
  });
  it("is taken back by nobody else, and not without a reason", async () => {
    await say({ type: "reading", kind: "thunder" }, "Odd");
    expect(await say({ type: "reading", kind: "noThunder", because: "a truck" }, "Odd")).toMatchObject({
      went: "refused",
      reasons: [{ why: "role" }],
    });
    expect(await say({ type: "reading", kind: "noThunder" })).toMatchObject({ status: 422, fields: { because: expect.any(String) } });
    expect((await crew.read()).weather.is).toBe("stop");
  });
  it("by a form on the page of other weather, which is there only while thunder counts", async () => {
    const browser = plainBrowser(crew.app);
    const path = `/jobs/${crew.job}/weather?as=p1`;
    await browser.open(path);
    expect(browser.forms("more").filter(({ fields }) => fields.reading === "noThunder")).toEqual([]);
    await say({ type: "reading", kind: "thunder" }, "Odd");
    await browser.open(path);
    const [form] = browser.forms("more").filter(({ fields }) => fields.reading === "noThunder");
    await browser.send(form!, { because: "fireworks" });
    expect(await last()).toMatchObject({ command: { reading: { kind: "noThunder", because: "fireworks" } } });
    expect((await crew.read()).weather.is).not.toBe("stop");
  });
});
