import { beforeEach, describe, expect, it } from "vitest";
import { createThrottle, FREE_TRIES } from "../../server/access/throttle.ts";
import { type Guarded, guardedApp } from "../support/guarded.ts";

describe("whoever tries codes", () => {
  it("has some tries free, then waits twice as long each time, up to a quarter of an hour", () => {
    const throttle = createThrottle();
    for (let n = 0; n < FREE_TRIES - 1; n++) throttle.wrong(["a"], 0);
    expect(throttle.wait(["a"], 0)).toBe(0);
    const waits = Array.from({ length: 9 }, () => {
      throttle.wrong(["a"], 0);
      return throttle.wait(["a"], 0) / 1000;
    });
    expect(waits).toEqual([15, 30, 60, 120, 240, 480, 900, 900, 900]);
    expect(throttle.wait(["a"], 899_000)).toBe(1000);
    expect([throttle.wait(["b"], 0), throttle.wait(["b", "a"], 0)]).toEqual([0, 900_000]);
  });
  it("is forgiven by a right one, and after an hour", () => {
    const throttle = createThrottle();
    for (let n = 0; n < 20; n++) throttle.wrong(["a", "b"], 0);
    throttle.right(["a"]);
    expect([throttle.wait(["a"], 0), throttle.wait(["b"], 0)]).toEqual([0, 900_000]);
    expect(throttle.wait(["b"], 3_600_000)).toBe(0);
  });
  it("takes no room without end, however many addresses it comes from", () => {
    const throttle = createThrottle();
    for (let n = 0; n < 20_000; n++) throttle.wrong([`address ${n}`], 0);
    for (let n = 0; n < FREE_TRIES; n++) throttle.wrong(["mine"], 0);
    expect(throttle.wait(["mine"], 0)).toBeGreaterThan(0);
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
  it("from many addresses they lock the job that they are tried at, for strangers", async () => {
    for (let n = 0; n < FREE_TRIES; n++) await wrongly(site.browser(`198.51.100.${n}`), 1);
    expect((await site.browser("203.0.113.5").get(`/join?job=${job}&code=${codes.crew}`)).status).toBe(429);
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
