import { beforeEach, describe, expect, it } from "vitest";
import { createThrottle, FREE_TRIES, MAX_WRONG_AN_HOUR, type Throttle } from "../../server/access/throttle.ts";
import { type Guarded, guardedApp } from "../support/guarded.ts";

describe("whoever tries codes", () => {
  const at = (source: string, target = "job-1") => ({ source, target });
  const wrongly = (throttle: Throttle, times: number, trial = at("a")) => {
    for (let n = 0; n < times; n++) throttle.begin(trial, 0);
  };

  it("has some tries free, then waits twice as long each time, up to a quarter of an hour", () => {
    const throttle = createThrottle();
    wrongly(throttle, FREE_TRIES - 1);
    expect(throttle.wait(at("a"), 0)).toBe(0);
    const waits = Array.from({ length: 9 }, () => {
      wrongly(throttle, 1);
      return throttle.wait(at("a"), 0) / 1000;
    });
    expect(waits).toEqual([15, 30, 60, 120, 240, 480, 900, 900, 900]);
    expect(throttle.wait(at("a"), 899_000)).toBe(1000);
    expect(throttle.wait(at("b"), 0)).toBe(0);
  });
  it("is not forgiven what was wrong by a right one in between, and is after an hour", () => {
    const throttle = createThrottle();
    for (let n = 0; n < FREE_TRIES; n++) {
      wrongly(throttle, 1);
      throttle.begin(at("a"), 0);
      throttle.right(at("a"), 0);
    }
    expect(throttle.wait(at("a"), 0)).toBeGreaterThan(0);
    expect(throttle.wait(at("a"), 3_600_000)).toBe(0);
  });
  it("from ever so many places finds a target shut for the rest of an hour, and no other", () => {
    const throttle = createThrottle();
    for (let n = 0; n < MAX_WRONG_AN_HOUR; n++) throttle.begin(at(`address ${n}`), 0);
    expect([throttle.wait(at("new"), 60_000), throttle.wait(at("new", "job-2"), 60_000)]).toEqual([3_540_000, 0]);
    expect(throttle.wait(at("new"), 3_600_000)).toBe(0);
  });
  it("takes no room without end, however many addresses it comes from", () => {
    const throttle = createThrottle();
    for (let n = 0; n < 20_000; n++) throttle.begin(at(`address ${n}`, `job ${n}`), 0);
    wrongly(throttle, FREE_TRIES, at("mine", "mine"));
    expect(throttle.wait(at("mine", "mine"), 0)).toBeGreaterThan(0);
  });
});

describe("at the door", () => {
  let site: Guarded;
  let job: string;
  let codes: { crew: string; leads: string };
  beforeEach(async () => {
    site = await guardedApp();
    ({ job, codes } = await site.openJob());
  });
  const wrongly = async (phone: ReturnType<Guarded["browser"]>, times: number, at: string | null = job) => {
    for (let n = 0; n < times; n++) await phone.get(`/join?${new URLSearchParams({ code: "AAAAAA", ...(at ? { job: at } : {}) })}`);
  };

  it("wrong codes lock an address out for a while, the right one too, and a wait opens it again", async () => {
    const phone = site.browser("198.51.100.7");
    await wrongly(phone, FREE_TRIES, null);
    const locked = await phone.get(`/join?code=${codes.crew}`);
    expect([locked.status, await locked.text()]).toEqual([429, expect.stringContaining("Wait 15 seconds")]);
    site.pass(16);
    expect((await phone.get(`/join?code=${codes.crew}`)).status).toBe(200);
    expect((await site.journal.access.events(20)).map(({ is, address }) => [is, address])).toEqual(
      expect.arrayContaining([
        ["wrongCode", "198.51.100.7"],
        ["lockedOut", "198.51.100.7"],
      ]),
    );
  });
  it("many at once count each: no more are looked at than one after the other", async () => {
    const phone = site.browser("198.51.100.9");
    const all = await Promise.all(Array.from({ length: 30 }, () => phone.get("/join?code=AAAAAA")));
    expect(all.filter(({ status }) => status === 403)).toHaveLength(FREE_TRIES);
    expect(all.filter(({ status }) => status === 429)).toHaveLength(30 - FREE_TRIES);
  });
  it("a right code in between forgives nothing, and a phone on one job is slowed at another", async () => {
    const other = await site.openJob();
    const known = await site.joined(job, codes.crew, "p4", "198.51.100.7");
    const answers: number[] = [];
    for (let n = 0; n < FREE_TRIES + 2; n++) {
      await known.get(`/join?job=${job}&code=${codes.crew}`);
      answers.push((await known.get(`/join?job=${other.job}&code=AAAAAA`)).status);
    }
    expect(answers.slice(FREE_TRIES)).toEqual([429, 429]);
  });
  it("one stranger's wrong codes keep no newcomer with the right one out", async () => {
    for (let n = 0; n < 9; n++) {
      await wrongly(site.browser("198.51.100.7"), 1);
      site.pass(1000);
    }
    expect((await site.browser("203.0.113.5").get(`/join?job=${job}&code=${codes.crew}`)).status).toBe(200);
  });
  it("who joined something already is not slowed by others behind the same address", async () => {
    const known = await site.joined(job, codes.crew, "p4", "198.51.100.7");
    await wrongly(site.browser("198.51.100.7"), FREE_TRIES + 3);
    expect((await known.get(`/join?job=${job}&code=${codes.crew}`)).status).toBe(200);
    expect((await known.say(job, "p4", { type: "hold" })).status).toBe(303);
  });
  it("wrong passphrases lock the office's door, and one that is far too long is not worked on", async () => {
    const desk = site.browser("198.51.100.8");
    for (let n = 0; n < FREE_TRIES; n++) expect((await desk.signIn("x".repeat(300))).status).toBe(403);
    expect((await desk.signIn()).status).toBe(429);
    site.pass(16);
    expect((await desk.signIn()).status).toBe(303);
  });
});
