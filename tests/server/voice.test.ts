import { beforeEach, describe, expect, it } from "vitest";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { brief } from "../support/app.ts";
import { openedJob } from "../support/job.ts";

type Told = { entry: number | null; went: string; reply: string; heard: string | null; reasons: { why: string }[]; problem?: string };

/** The demo job at the stakes of edge AB, where it asks how much is showing; what driving needs is answered. */
async function atTheStakes() {
  const { app, clock, liveJobs, job, to } = await openedJob();
  await to((s) => s.step === "drive.AB" && s.gate?.id === "drive.AB");
  let keys = 0;
  const read = async (device = "office") =>
    (await (await app.request(`/jobs/${job}.json`, { headers: { cookie: `device=${device}` } })).json()) as GuideState;
  const send = async (body: object, device = "phone-of-ines") => {
    const response = await app.request(`/jobs/${job}/say`, {
      method: "POST",
      headers: { "content-type": "application/json", cookie: `device=${device}` },
      body: JSON.stringify(body),
    });
    return { status: response.status, body: (await response.json()) as Told };
  };
  const say = async (said: string | string[], { as = "Ines", device = "phone-of-ines", talk = true, seen = -1 } = {}) => {
    const { revision } = await read();
    const around = { as, key: `spoken-${String(++keys).padStart(5, "0")}`, seen: seen < 0 ? revision : seen };
    const readBack = (await read(device)).readBack?.entry ?? null;
    return (await send({ ...around, alternatives: [said].flat(), talk, readBack }, device)).body;
  };
  const entries = async () => (await liveJobs.load(job)).entries;
  const now = async (device: string) => (await app.request(`/jobs/${job}/now`, { headers: { cookie: `device=${device}` } })).text();
  const answered = async () => (await liveJobs.load(job)).job.snapshot.context.answers["drive.AB"]?.value ?? null;
  return { say, send, read, now, clock, entries, answered, last: async () => (await entries()).at(-1)!.entry };
}
let site: Awaited<ReturnType<typeof atTheStakes>>;
beforeEach(async () => {
  site = await atTheStakes();
});

describe("a spoken answer", () => {
  it("is read back with the question, its value and the limit it is outside of, and counts for nothing yet", async () => {
    const told = await site.say("eight showing");
    expect(told).toMatchObject({ went: "readBack", heard: "eight showing" });
    expect(told.reply).toMatch(/\? 8 in; needed: .*6 in.*\. Correct, or wrong\?$/);
    expect(await site.answered()).toBeNull();
  });
  it("is taken on correct, and refused with the value and the limit when the guide is told to go on", async () => {
    await site.say("eight showing");
    const told = await site.say("correct");
    expect(told).toMatchObject({ went: "done", reply: expect.stringMatching(/^8 in\. Need at most 6 in\. /) });
    expect(await site.say("next")).toMatchObject({ went: "refused", reply: expect.stringMatching(/^8 in\. Need at most 6 in\. /) });
    expect((await site.read()).gate).toMatchObject({ status: "outOfLimit", value: "8 in" });
  });
  it("is shown on the phone that heard it, and on no other", async () => {
    await site.say("five showing");
    expect((await site.read("phone-of-ines")).readBack).toMatchObject({ words: expect.stringContaining("5 in") });
    expect((await site.read("phone-of-tobias")).readBack).toBeNull();
  });
  it("is dropped on wrong", async () => {
    await site.say("five showing");
    expect(await site.say("wrong", { talk: false })).toMatchObject({ went: "done", reply: expect.stringMatching(/^Scrapped/) });
    expect(await site.say("correct")).toMatchObject({ went: "refused", reasons: [{ why: "noReadBack" }] });
    expect(await site.answered()).toBeNull();
  });
  it("gives way to a second one meanwhile", async () => {
    await site.say("fifteen showing");
    await site.say("five showing");
    expect(await site.say("correct")).toMatchObject({ went: "done", reply: expect.stringMatching(/^5 in\. /) });
    expect(await site.answered()).toEqual({ kind: "measure", n: 5, unit: "in" });
    expect((await site.read()).step).toBe("drive.BC");
  });
  it("is not confirmed by a correct that began before it was on the screen", async () => {
    await site.say("fifteen showing");
    const { revision } = await site.read();
    const told = await site.send({ as: "Ines", key: "early-correct", seen: revision, alternatives: ["correct"], talk: true });
    expect(told.body).toMatchObject({ went: "refused", reasons: [{ why: "noReadBack" }] });
    expect(await site.answered()).toBeNull();
  });
  it("said wrongly as yes is asked for the right word, and nothing is taken", async () => {
    await site.say("five showing");
    expect(await site.say("yes")).toMatchObject({ went: "notUnderstood", reply: 'Say "correct", or "wrong".' });
    expect((await site.say("correct")).went).toBe("done");
  });
  it("is over after twenty seconds of silence", async () => {
    await site.say("five showing");
    expect(await site.now("phone-of-ines")).toContain("read-back");
    site.clock.pass(20);
    expect(await site.now("phone-of-ines")).not.toContain("read-back");
    expect(await site.say("correct")).toMatchObject({ went: "refused", reasons: [{ why: "noReadBack" }] });
    expect((await site.read("phone-of-ines")).readBack).toBeNull();
  });
  it("is confirmed by a press on the same phone", async () => {
    const { entry } = await site.say("five showing");
    const { revision } = await site.read();
    const told = await site.send({ as: "Ines", key: "press-correct-1", seen: revision, type: "correct", target: entry });
    expect(told.body.went).toBe("done");
    expect(await site.answered()).toEqual({ kind: "measure", n: 5, unit: "in" });
  });
  it("is confirmed neither on another phone nor by another person", async () => {
    await site.say("five showing");
    expect((await site.say("correct", { as: "Tobias", device: "phone-of-tobias" })).reasons[0]?.why).toBe("noReadBack");
    expect((await site.say("correct", { as: "Tobias" })).reasons[0]?.why).toBe("noReadBack");
    expect((await site.say("correct")).went).toBe("done");
  });
  it("confirmed after somebody moved the guide is refused as moved on", async () => {
    await site.say("five showing");
    await site.say("hold", { as: "Pia", device: "phone-of-pia", talk: false });
    await site.say("albatross carry on", { talk: false });
    expect((await site.say("correct")).reasons[0]?.why).toBe("movedOn");
  });
  it("that nobody may give is refused before it is read back", async () => {
    expect(await site.say("five showing", { as: "Lasse", device: "phone-of-lasse" })).toMatchObject({
      went: "refused",
      reasons: [{ why: "role" }],
    });
  });
});

describe("in the record", () => {
  it("stands what was heard, by which way of speaking, and what was confirmed", async () => {
    await site.say(["ate showing", "eight showing"]);
    expect(await site.last()).toMatchObject({
      kind: "command",
      command: { type: "readBack", source: "talk", heard: "eight showing", device: "phone-of-ines" },
      outcome: { did: "readBack" },
    });
    const { no } = await site.last();
    await site.say("albatross correct", { talk: false });
    expect(await site.last()).toMatchObject({ command: { type: "correct", target: no, source: "wake" }, outcome: { did: "answered" } });
  });
  it("chatter, questions and what was not caught leave nothing", async () => {
    const before = (await site.entries()).length;
    expect(await site.say("gimme six more", { talk: false })).toMatchObject({ went: "leftAlone", reply: "" });
    expect(await site.say("eight showing", { talk: false })).toMatchObject({
      went: "leftAlone",
      reply: expect.stringContaining("albatross"),
    });
    expect(await site.say("gimme six more")).toMatchObject({ went: "notUnderstood" });
    expect(await site.say(["fifteen showing", "fifty showing"])).toMatchObject({
      went: "notUnderstood",
      reply: expect.stringMatching(/^15 in, or 50 in\?/),
    });
    expect(await site.say("how many stakes at the corners", { talk: false })).toMatchObject({
      went: "question",
      reply: expect.stringContaining("in all"),
    });
    expect(await site.say("why", { talk: false })).toMatchObject({ went: "question" });
    expect((await site.entries()).length).toBe(before);
  });
  it("a note said into an open microphone stands as it was said", async () => {
    await site.say("note: torn loop, seam two, eight foot out", { talk: false });
    expect(await site.last()).toMatchObject({ command: { type: "note", text: "torn loop, seam two, eight foot out", source: "open" } });
  });
});

describe("stopping by voice", () => {
  it("somebody who is no longer in the crew still holds from their phone, and does nothing else", async () => {
    const smaller = brief();
    smaller.crew = smaller.crew.filter((p) => p.name !== "Odd");
    const { revision } = await site.read();
    const told = await site.send({
      as: "Ines",
      key: "amend-crew-1",
      seen: revision,
      type: "amend",
      because: "Odd went home",
      brief: smaller,
    });
    await site.send({ as: "Maren", key: "agree-crew-1", seen: revision, type: "agree", target: told.body.entry });
    expect((await site.say("hold", { as: "p6", device: "phone-of-odd", talk: false })).went).toBe("done");
    expect((await site.read()).held).toMatchObject({ by: "Odd" });
    expect(await site.say("carry on", { as: "p6", device: "phone-of-odd" })).toMatchObject({ went: "refused", reasons: [{ why: "role" }] });
  });
  it("a hold from anybody holds at once, on a screen that is behind the times too", async () => {
    expect(await site.say("hold", { as: "Odd", device: "phone-of-odd", talk: false, seen: 0 })).toMatchObject({ went: "done" });
    expect((await site.read()).held).toMatchObject({ by: "Odd", only: null });
    expect(await site.say("carry on", { talk: false })).toMatchObject({ went: "leftAlone" });
  });
  it("a hold on a hold starts the count over: a carry on that was on its way lets go of neither", async () => {
    await site.say("hold", { as: "Pia", device: "phone-of-pia", talk: false });
    const { revision } = await site.read();
    await site.say("stop stop", { as: "Odd", device: "phone-of-odd", talk: false });
    expect(await site.say("carry on", { seen: revision })).toMatchObject({ went: "refused", reasons: [{ why: "movedOn" }] });
    expect((await site.read()).held).toMatchObject({ by: "Odd" });
  });
  it("a hold word inside a sentence makes the work wait, until the lead's bare carry on", async () => {
    await site.say("hold that rope", { as: "Pia", device: "phone-of-pia", talk: false });
    expect((await site.read()).held).toMatchObject({ by: "Pia", only: "paused" });
    expect(await site.say("next")).toMatchObject({ went: "refused", reasons: [{ why: "paused" }] });
    expect(await site.say("carry on", { talk: false, as: "Pia", device: "phone-of-pia" })).toMatchObject({ reasons: [{ why: "role" }] });
    expect((await site.say("carry on", { talk: false })).went).toBe("done");
    expect((await site.read()).held).toBeNull();
  });
});

describe("what cannot have been said", () => {
  it.each([
    ["ten thousand characters", { alternatives: ["next ".repeat(2000)] }, /^Too long/],
    ["eleven guesses", { alternatives: Array(11).fill("next") }, /^Too many/],
    ["no guess at all", { alternatives: [] }, /^Heard nothing/],
    ["guesses and typed words at once", { alternatives: ["next"], heard: "next" }, /^Send one of/],
  ])("%s: one clear line, and nothing recorded", async (_, body, line) => {
    const before = (await site.entries()).length;
    const { status, body: told } = await site.send({ as: "Ines", key: "bad-spoken-1", seen: 0, ...body });
    expect(status).toBe(422);
    expect(Object.values((told as unknown as { fields: Record<string, string> }).fields).some((f) => line.test(f))).toBe(true);
    expect((await site.entries()).length).toBe(before);
  });
  it("the same words sent twice with one key are one entry", async () => {
    const { revision } = await site.read();
    const body = { as: "Ines", key: "spoken-twice-1", seen: revision, alternatives: ["five showing"], talk: true };
    const first = await site.send(body);
    expect((await site.send(body)).body.entry).toBe(first.body.entry);
    expect((await site.read("phone-of-ines")).readBack).not.toBeNull();
  });
});

describe("a wind reading with its time", () => {
  it("is read back with the time, and never under nothing", async () => {
    const told = await site.say("wind 8 gusting 11 at half past three", { as: "Maren" });
    expect(told.reply).toBe("Wind 8 gusting 11 mph, taken at 03:30. Correct, or wrong?");
    expect(await site.say("wind minus 14", { as: "Maren" })).toMatchObject({
      went: "notUnderstood",
      reply: expect.stringContaining("0 to 200"),
    });
  });
  it("is taken at the time that was said, by the clock at the site", async () => {
    await site.say("wind 8 gusting 11 five minutes ago", { as: "Maren" });
    const heard = await site.last();
    await site.say("correct", { as: "Maren" });
    expect(heard).toMatchObject({ command: { intent: { reading: { mph: 8, gustMph: 11 } } } });
    const { at, command } = heard as unknown as { at: number; command: { intent: { reading: { takenAt: number } } } };
    expect(Math.round((at - command.intent.reading.takenAt) / 60_000)).toBe(5);
  });
  it("from later than now is the last time that the clock showed it", async () => {
    await site.say("wind 8 gusting 11 at half past three", { as: "Maren" });
    const { at, command } = (await site.last()) as unknown as { at: number; command: { intent: { reading: { takenAt: number } } } };
    expect(command.intent.reading.takenAt).toBeLessThan(at);
    expect(new Date(command.intent.reading.takenAt).getUTCMinutes()).toBe(30);
  });
});
