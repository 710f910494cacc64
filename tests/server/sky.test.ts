import { beforeEach, describe, expect, it } from "vitest";
import { sayFromForm } from "../../server/input/form.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

let crew: OpenedJob;
let keys: number;
beforeEach(async () => {
  keys = 0;
  crew = await openedJob();
});

type Told = { status: number; went: string; reply: string; fields?: Record<string, string> };
const post = async (body: string, type: string): Promise<Told> => {
  const headers = { "content-type": type, cookie: "device=phone-of-Ines", accept: "application/json" };
  const response = await crew.app.request(`/jobs/${crew.job}/say`, { method: "POST", headers, body });
  return { status: response.status, ...((await response.json()) as Omit<Told, "status">) };
};
const around = async (as: string) => ({ as, seen: (await crew.read()).revision, key: `sky-key-${String(++keys).padStart(4, "0")}` });
const say = async (body: object, as = "Ines") => post(JSON.stringify({ ...(await around(as)), ...body }), "application/json");
const page = async (path: string) => (await crew.app.request(`/jobs/${crew.job}${path}?as=Ines`)).text();
const reading = async () => {
  const { command } = (await crew.entries()).at(-1)!.entry as never as { command: { reading: Record<string, unknown> } };
  return command.reading;
};
const wind = (more: object) => say({ type: "reading", kind: "wind", mph: 6, gustMph: 9, ...more });

describe("a wind", () => {
  it("in a lee, under the limit, renews nothing and says what to do", async () => {
    expect(await wind({ exposure: "lee" })).toMatchObject({ went: "refused", reply: expect.stringContaining("Read it in the open") });
    expect((await crew.read()).weather.is).toBe("unknown");
  });
  it("in a lee, over the limit, still counts, and does not make the reading before it younger", async () => {
    await wind({});
    crew.clock.pass(20 * 60);
    expect(await wind({ gustMph: 22, exposure: "lee" })).toMatchObject({ went: "done" });
    expect((await crew.read()).weather).toMatchObject({ is: "caution", reading: expect.stringContaining("20 min") });
  });
  it("by a word of the scale counts at the top of its band", async () => {
    await say({ type: "reading", kind: "windByLook", look: "lightBreeze" });
    expect(await reading()).toMatchObject({ mph: 7, gustMph: null, look: "lightBreeze" });
  });
  it("by a word of the scale with a gust over its band keeps both", async () => {
    await say({ type: "reading", kind: "windByLook", look: "lightBreeze", gustMph: 11 });
    expect(await reading()).toMatchObject({ mph: 7, gustMph: 11, look: "lightBreeze" });
  });
  it("by a word that may gust to the stop limit stops work", async () => {
    await say({ type: "reading", kind: "windByLook", look: "freshBreeze" });
    expect((await crew.read()).weather.is).toBe("stop");
  });
  it.each(["storm", "nearGale", "freshBreeze"])("by %s, which stops work, with a gust under it is taken at the word", async (look) => {
    expect(await say({ type: "reading", kind: "windByLook", look, gustMph: 15 }, "Odd")).toMatchObject({ status: 200, went: "done" });
    expect((await crew.read()).weather.is).toBe("stop");
    expect(await reading()).toMatchObject({ look, gustMph: null });
  });
  it("in knots is kept in mph", () => {
    const fields = { as: "Ines", key: "sky-form-1", seen: "1", type: "reading", reading: "wind", mph: "5", gustMph: "10", unit: "knots" };
    expect(sayFromForm(fields)).toMatchObject({ kind: "wind", mph: 5.8, gustMph: 11.6 });
  });
  it("that rises toward the limit is told beside the call with when it is there", async () => {
    for (const gustMph of [8, 10, 12, 14, 16]) {
      await wind({ gustMph });
      crew.clock.pass(3 * 60);
    }
    expect((await crew.read()).weather.sky).toEqual([
      expect.stringMatching(/^Wind rising: at this rate 20 in (?:two|three|four) minutes\.$/),
    ]);
  });
  it("that does not rise is told of with nothing", async () => {
    for (const gustMph of [12, 10, 13, 11]) {
      await wind({ gustMph });
      crew.clock.pass(3 * 60);
    }
    expect((await crew.read()).weather.sky).toEqual([]);
  });
  it("that gusts to more than open ground makes it says so on its page", async () => {
    await wind({ mph: 6, gustMph: 14 });
    expect(await page("/wind")).toContain("gusty for open ground");
  });
});

describe("the lightning clock", () => {
  it.each(["", "/wind", "/weather", "/air", "/plan", "/truck", "/record", "/layout"])("stands on %s of the job", async (path) => {
    await say({ type: "reading", kind: "thunder", seconds: 12 }, "Odd");
    crew.clock.pass(4 * 60);
    const html = await page(path);
    expect(html).toMatch(/Thunder <b data-ago-s="24\d">4<\/b> min ago, 2\.4 mi off: inside 6 mi/);
    expect(html).toMatch(/<b data-left-s="15\d\d">2[56]:\d\d<\/b>/);
  });
  it("is gone once it was quiet for long enough", async () => {
    await say({ type: "reading", kind: "thunder" });
    crew.clock.pass(31 * 60);
    expect(await page("")).not.toContain("data-left-s");
  });
  it.each([-1, 900, "ten-ish"])("seconds of %s are no count: the thunder stops work all the same", async (seconds) => {
    const told = await say({ type: "reading", kind: "thunder", seconds }, "Odd");
    expect(told.reply).toContain(`"${seconds}" is no count of seconds: from 0 to 300. The thunder counts.`);
    expect((await crew.read()).weather.is).toBe("stop");
  });
  it("beside an answer the stop says how far it was", async () => {
    await say({ type: "reading", kind: "thunder", seconds: 12 });
    expect(await page("")).toMatch(/class="stop-left">.*, 2\.4 mi\)/s);
  });
  it("thunder far off stops work like any other", async () => {
    await say({ type: "reading", kind: "thunder", seconds: 60 });
    expect((await crew.read()).weather).toMatchObject({ is: "stop", lightning: { miles: 12, withinStop: false } });
  });
  it("a later thunder that nobody counted has no distance", async () => {
    await say({ type: "reading", kind: "thunder", seconds: 10 });
    crew.clock.pass(60);
    await say({ type: "reading", kind: "thunder" });
    expect((await crew.read()).weather.lightning).toMatchObject({ miles: null });
  });
});

describe("thunder at some job", () => {
  const off = async (path: string) => (await crew.app.request(path)).text();
  it.each(["/tents", "/office", "/drafts/new"])("stands on %s, which is of no job, until it was quiet for long enough", async (path) => {
    await say({ type: "reading", kind: "thunder" }, "Odd");
    const { title } = (await crew.liveJobs.load(crew.job)).job.frozen.brief;
    expect(await off(path)).toContain(`class="lightning elsewhere">Thunder at ${title}: hold until `);
    crew.clock.pass(31 * 60);
    expect(await off(path)).not.toContain("lightning elsewhere");
  });
});

describe("heat and cold", () => {
  it("at the danger level the call says to stop heavy work, where the schedule gives none", async () => {
    await say({ type: "reading", kind: "heat", airF: 98, humidity: 60, sun: "full" });
    expect((await crew.read()).weather.sky[0]).toContain("stop heavy work.");
  });
  it("shows index, work, rest and water on its page, and is too old after an hour", async () => {
    await say({ type: "reading", kind: "heat", airF: 92, humidity: 35, sun: "none" });
    const html = await page("/air");
    for (const part of ["Heat index 92", "Work 45 min, rest 15", "1 qt a person each hour", "NIOSH"]) expect(html).toContain(part);
    crew.clock.pass(61 * 60);
    expect(await page("/air")).toContain("Too old: read it again.");
  });
  it("told more than an hour ago is asked for again beside the call", async () => {
    await say({ type: "reading", kind: "heat", airF: 70, humidity: 35, sun: "none" });
    crew.clock.pass(61 * 60);
    expect((await crew.read()).weather.sky).toEqual(["Heat and cold: read 61 min ago. Read again."]);
  });
  it("cold shows the wind chill, frostbite and gloves", async () => {
    await say({ type: "reading", kind: "cold", airF: -5, windMph: 20 });
    const html = await page("/air");
    for (const part of ["Feels like -29", "frostbite in 30 min", "Gloves on."]) expect(html).toContain(part);
  });
});

it("a warning is kept with what it says, until when and who put it out, and shown until it is called off", async () => {
  await say({ type: "reading", kind: "warning", what: "severe thunderstorm", until: "18:00", issuer: "weather service" }, "Odd");
  expect(await page("/weather")).toContain("Warning: severe thunderstorm until 18:00, by weather service");
  await say({ type: "answer", gate: "warning", value: { kind: "yesNo", yes: true } });
  expect(await page("/air")).not.toContain("severe thunderstorm");
});

it("a spoken warning is recorded with its words", async () => {
  await say({ heard: "severe thunderstorm warning until four pm" }, "Odd");
  expect(await reading()).toMatchObject({ kind: "warning", what: "severe thunderstorm", until: "four pm" });
});
it("a humidity of 140, told in words, is answered with its limit", async () => {
  expect(await say({ heard: "ninety degrees, humidity one hundred and forty" })).toMatchObject({
    status: 422,
    problem: "That's no heat. Air is from -80 to 135 °F, humidity from 0 to 100%. Say it again. Nothing was recorded.",
  });
});
it("a cold told in words is an entry with its air and wind", async () => {
  await say({ heard: "twenty five degrees, wind fifteen" });
  expect(await reading()).toMatchObject({ kind: "cold", airF: 25, windMph: 15 });
});
it("a wind in the form keeps its height and where it was read", () => {
  const fields = { as: "Ines", key: "sky-form-2", seen: "1", type: "reading", reading: "wind", mph: "5", heightFt: "8", exposure: "lee" };
  expect(sayFromForm(fields)).toMatchObject({ kind: "wind", heightFt: 8, exposure: "lee" });
});

it("a warning keeps all that is read out in one breath", async () => {
  const what = "severe thunderstorm with hail the size of golf balls and gusts to seventy miles an hour, moving northeast";
  await say({ type: "reading", kind: "warning", what }, "Odd");
  expect(await page("/weather")).toContain(`Warning: ${what}`);
});
it("a warning of 10,000 letters counts, and says that it goes on", async () => {
  const told = await say({ type: "reading", kind: "warning", what: "storm ".repeat(1700), until: "x".repeat(10_000) }, "Odd");
  expect(told).toMatchObject({ status: 200, went: "done" });
  const { what } = await reading();
  expect(what).toHaveLength(300);
  expect(what).toMatch(/…$/);
});
it("a warning that is cut in the middle of an emoji counts, without the half of it", async () => {
  const what = `${"x".repeat(298)}😀!`;
  expect(await say({ type: "reading", kind: "warning", what }, "Odd")).toMatchObject({ status: 200, went: "done" });
  expect((await crew.read()).weather.is).toBe("stop");
  expect(await reading()).toMatchObject({ what: `${"x".repeat(298)}…` });
});
it.each([`${"x".repeat(19)}😀`, "\ud83d", { toString: 1 }, [[]]])("thunder with seconds of %j counts", async (seconds) => {
  expect(await say({ type: "reading", kind: "thunder", seconds }, "Odd")).toMatchObject({ status: 200, went: "done" });
  expect((await crew.read()).weather.is).toBe("stop");
});

describe("a number that nobody can mean is refused with its limit", () => {
  it.each([
    [{ kind: "wind", mph: -5 }, "mph", "-5 is out of range. From 0 to 200 mph."],
    [{ kind: "wind", mph: 900 }, "mph", "900 is out of range. From 0 to 200 mph."],
    [{ kind: "wind", mph: 5, gustMph: 900 }, "gustMph", "900 is out of range. From 0 to 200 mph."],
    [{ kind: "wind", mph: 14, gustMph: 9 }, "gustMph", "A gust of 9 mph is under its mean wind of 14 mph. Read it again."],
    [{ kind: "wind", mph: 14, heightFt: 900 }, "heightFt", "900 ft is out of range. From 0 ft to 100 ft."],
    [{ kind: "wind", mph: 14, exposure: "roof" }, "exposure", '"roof" is not one of: open, lee.'],
    [{ kind: "windByLook", look: "gale", gustMph: -5 }, "gustMph", "-5 is out of range. From 0 to 200 mph."],
    [
      { kind: "windByLook", look: "gentleBreeze", gustMph: 9 },
      "gustMph",
      "A gust of 9 mph is under gentle breeze, which counts as 12 mph. Read it again.",
    ],
    [{ kind: "heat", airF: 900, humidity: 60 }, "airF", "900 °F is out of range. From -80 °F to 135 °F."],
    [{ kind: "cold", airF: 900, windMph: 5 }, "airF", "900 °F is out of range. From -80 °F to 135 °F."],
    [{ kind: "cold", airF: 5, windMph: 900 }, "windMph", "900 mph is out of range. From 0 mph to 200 mph."],
    [{ kind: "heat", airF: 92, humidity: 140 }, "humidity", "140% is out of range. From 0% to 100%."],
    [{ kind: "cold", airF: -200, windMph: 5 }, "airF", "-200 °F is out of range. From -80 °F to 135 °F."],
  ])("%j", async (body, field, sentence) => {
    expect(await say({ type: "reading", ...body })).toMatchObject({ status: 422, fields: { [field]: sentence } });
  });
  it("and so is a word that is none of the scale", async () => {
    const told = await say({ type: "reading", kind: "windByLook", look: "stiff breeze" });
    expect(told.fields!.look).toContain('"stiff breeze" is not one of: calm, light air');
  });
});

describe("a form that cannot be recorded", () => {
  it("names what is wrong by the words of its field", async () => {
    const fields = { ...(await around("Ines")), type: "reading", reading: "heat", air: "92", humidity: "140" };
    const body = new URLSearchParams(Object.entries(fields).map(([name, is]) => [name, String(is)])).toString();
    const headers = { "content-type": "application/x-www-form-urlencoded", cookie: "device=phone-of-Ines", origin: "http://localhost" };
    const html = await (await crew.app.request(`/jobs/${crew.job}/say`, { method: "POST", headers, body })).text();
    expect(html).toContain("Humidity: 140% is out of range. From 0% to 100%.");
    expect(html).not.toContain("in the body");
  });
});
it("where a unit is chosen beside it, the wind's field names none", async () => {
  const html = await page("/wind");
  expect(html).not.toContain("Wind, mph");
});
