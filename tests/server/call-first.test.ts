import { beforeEach, describe, expect, it } from "vitest";
import type { Reading } from "../../machines/install/commands.ts";
import { brief, testApp } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";
import { type PlainBrowser, plainBrowser } from "../support/plain-forms.ts";

let job: OpenedJob;
let browser: PlainBrowser;
beforeEach(async () => {
  await on(brief());
});
async function on(input: object) {
  job = await openedJob(input, testApp());
  browser = plainBrowser(job.app);
}

/** The guide on somebody's phone, as HTML. */
const html = async (path = "", as = "p1") =>
  (await job.app.request(`/jobs/${job.job}${path}${path.includes("?") ? "&" : "?"}as=${as}`)).text();
const plain = (text = "") =>
  text
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll("&#39;", "'")
    .replaceAll(/\s+/g, " ")
    .trim();
const article = (page: string) => /<article.*?<\/article>/s.exec(page)![0];
/** What is said largest. */
const largest = (page: string) => plain(/<h1\b[^>]*>(.*?)<\/h1>/s.exec(article(page))?.[1]);
const part = (page: string, name: string) => plain(new RegExp(`<(\\w+)[^>]*class="${name}[^"]*"[^>]*>(.*?)</\\1>`, "s").exec(page)?.[2]);
const read = (reading: Partial<Reading> & { kind: string }) =>
  job.say({ type: "reading", reading: { takenAt: job.now(), ...reading } as Reading });
const wind = (mph: number, gustMph: number) => read({ kind: "wind", mph, gustMph, fromDeg: null, place: null });
const mains = async () => {
  await browser.open(`/jobs/${job.job}?as=p1`);
  return browser.forms("main").map(({ fields }) => fields.type);
};

describe("wherever the weather says stop", () => {
  it("thunder with a pole in hand: why, the shelter by its name, and Make safe as the one main press", async () => {
    await job.to((s) => s.step.startsWith("lift.") && s.gate?.id === s.step);
    await read({ kind: "thunder" });
    const page = await html();
    expect(part(page, "stop-first")).toMatch(
      /^STOP: lightning, not before \d\d:\d\d \( ?\d\d:\d\d ?\) Finish or lower what's in hand\. Then to shelter: the brick barn\.$/,
    );
    expect(await mains()).toEqual(["makeSafe"]);
    expect(browser.text("call-stopped")).toContain((await job.read()).call!.say);
  });

  it("a gust beside a number pad: the same, and the count is one press away", async () => {
    await job.to((s) => s.step.startsWith("out.") && s.gate?.id === s.step);
    await wind(20, 31);
    expect(part(await html(), "stop-first")).toMatch(/^STOP: gust 31, limit 25 Finish or lower what's in hand\. Then to shelter: /);
    expect(await mains()).toEqual(["makeSafe"]);
    const [, pick] = /href="[^"]*(\?pick=it\.\d+)"/.exec(await html())!;
    const answering = await html(pick!);
    expect(part(answering, "stop-first")).toMatch(/^STOP: gust 31/);
    expect(answering).toContain('class="keypad');
  });

  it("with nothing in hand everybody goes at once; a shelter that nobody knows is asked for", async () => {
    await on({ ...brief(), site: { ...brief().site, stormShelter: null } });
    await read({ kind: "warning" });
    expect(part(await html(), "stop-first")).toBe("STOP: weather warning Everybody to shelter: not known, ask the lead.");
    expect(part(await (await job.app.request(`/jobs/${job.job}`)).text(), "stop-first")).toMatch(/^STOP/);
  });

  it("a call that is making safe stays the largest, and somebody hurt goes before it", async () => {
    await read({ kind: "thunder" });
    await job.say({ type: "makeSafe", because: null });
    const page = await html();
    expect([part(page, "stop-first"), largest(page)]).toEqual(["", "Stop. Tools down, drivers off."]);
    expect(await mains()).toEqual(["next"]);
    await job.say({ type: "hurt", words: "his hand" });
    expect(part(await html(), "stop-first")).toBe("");
  });
});

describe("what is asked before the next work is the largest, not the call that is done", () => {
  it("paint and flags, in their own words, with what they come before", async () => {
    await job.to((s) => s.gate?.id === "paint");
    const state = await job.read();
    const page = await html();
    expect(largest(page)).toBe("Look at the locate paint and flags where you'll drive.");
    expect(part(page, "again")).toBe("Before you drive stakes:");
    expect(part(page, "ask")).toBe("Paint and flags still there?");
    if (state.call!.asks) expect(article(page)).not.toContain(state.call!.say);
  });

  it("a call that asks nothing is still to be done: it stays, smaller", async () => {
    await job.to((s) => s.step === "strike.ease" && s.gate?.id === "under.hands");
    const page = await html();
    expect(largest(page)).toBe("Name the hands for each pole. With a machine: operator and spotter.");
    expect(plain(article(page))).toContain("Before you go under: Name the hands");
    expect(part(page, "first")).toBe("Now: Ease straps a click at a time, opposite sides together. None off.");
  });
});

describe("no wires at all", () => {
  it("counts only once it was asked for itself, without scripts too", async () => {
    await on({ ...brief(), site: { ...brief().site, overheadKv: [] } });
    await job.to((s) => s.step === "overhead.1" && s.gate?.id === "overhead.1");
    await browser.open(`/jobs/${job.job}?as=p1`);
    expect(browser.forms("answers").filter(({ fields }) => fields.kind === "none")).toEqual([]);
    const [, pick] = /href="[^"]*(\?pick=none\.\d+)"/.exec(await html())!;
    const page = await html(pick!);
    expect(largest(page)).toMatch(/^No wires at all\?/);
    await browser.open(`/jobs/${job.job}${pick}`);
    const [yes, ...more] = browser.forms("answers");
    expect([yes!.fields.kind, more]).toEqual(["none", []]);
    expect((await job.read()).step).toBe("overhead.1");
    await browser.send(yes!);
    expect((await job.read()).step).not.toBe("overhead.1");
  });
});

describe("a change of the plan that waits", () => {
  const put = async (change: object) => {
    await job.post(`/jobs/${job.job}/say`, {
      key: "amend-00001",
      as: "Ines",
      seen: (await job.read()).revision,
      type: "amend",
      because: "Known now.",
      brief: { ...brief(), site: { ...brief().site, ...change } },
    });
  };

  it("shows the second one what changes, with Agree as the main press; who put it forward sees that it waits", async () => {
    await put({ firstAid: "box in the cab" });
    const page = await html("", "p2");
    expect(largest(page)).toMatch(/^First aid: box in the cab; was .* Right\?$/);
    expect(plain(article(page))).toContain("Ines wants to change the plan: Known now.");
    expect(plain(article(page))).not.toContain("now..");
    await browser.open(`/jobs/${job.job}?as=p2`);
    expect(browser.forms("main").map(({ fields }) => fields.type)).toEqual(["agree"]);
    const own = await html();
    expect(plain(article(own))).toContain("Waiting for somebody else to agree.");
    expect(await mains()).not.toContain("agree");
    expect(plain(await html("", "p4"))).toContain("Waiting for somebody else to agree.");
  });

  it("is looked at first where more changes than a call has room for", async () => {
    await put({
      firstAid: "box in the cab",
      address: "The far end of the upper meadow, gate 7, Tansy Lane",
      rallyPoint: "the oak at gate 7",
    });
    const page = await html("", "p2");
    expect(largest(page)).toBe("3 changes to the plan. Look at them before you agree.");
    expect(page).toMatch(/class="button main"[^>]*>Look at it</);
  });
});

describe("what stands in the thread", () => {
  it("says the call with each answer, and nothing twice", async () => {
    await job.to((s) => s.step.startsWith("looked.S2") && s.gate?.id === s.step);
    await job.answerWell();
    const [line] = (await job.read()).thread.slice(-1);
    expect(line!.said).toBe("Seam 2, AB half: 0 missed");
    expect([line!.reply, line!.to]).not.toContain("0.");
    await job.to((s) => s.gate === null);
    const { call } = await job.read();
    await job.say({ type: "next" });
    expect((await job.read()).thread.at(-1)).toMatchObject({ said: "Next", to: call!.say, reply: "" });
  });
});

describe("what a screen has and what it has not", () => {
  it("a phone that is nobody's says how HOLD is come to", async () => {
    expect(part(await (await job.app.request(`/jobs/${job.job}`)).text(), "no-hold")).toBe(
      "Pick who you are, and HOLD is here. Till then: shout, horn.",
    );
    expect(part(await html(), "no-hold")).toBe("");
  });

  it("More has thunder beside somebody hurt, and the job stood down", async () => {
    await browser.open(`/jobs/${job.job}/more?as=p1`);
    expect(browser.forms("alarms").map(({ fields }) => fields.type)).toEqual(["hurt", "reading"]);
    expect(await html("/more")).toContain(`href="/jobs/${job.job}/stand-down"`);
    await browser.send(browser.forms("alarms")[1]!);
    expect((await job.read()).weather.stop).not.toBeNull();
  });

  it("a closed job has no HOLD and no Talk", async () => {
    await job.to((s) => s.closed);
    const page = await html();
    expect([page.includes('class="hold"'), page.includes("data-talk")]).toEqual([false, false]);
  });

  it("the number for help is one press", async () => {
    await job.say({ type: "hurt", words: "his hand" });
    for (const path of ["", "/more", "/plan"]) expect(await html(path)).toMatch(/<a href="tel:911">HURT: CALL 911<\/a>/);
  });
});
