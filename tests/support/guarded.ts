import { scrypt } from "@noble/hashes/scrypt.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import type { AccessMode } from "../../server/access/visitor.ts";
import { createApp } from "../../server/app.tsx";
import { createHub } from "../../server/hub.ts";
import type { Dependencies } from "../../server/jobs.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import { LANGUAGES } from "../../views/text/languages.ts";
import { countedBytes } from "./access.ts";
import { brief, MORNING } from "./app.ts";

export const PASSPHRASE = "harvest supper lower meadow";
/** It as it is kept, with next to no work: what that takes is what one test is about, and no other waits for it. */
const SALT = new Uint8Array(16);
const KEPT = `scrypt$4$1$1$${bytesToHex(SALT)}$${bytesToHex(scrypt(utf8ToBytes(PASSPHRASE), SALT, { N: 16, r: 1, p: 1, dkLen: 32 }))}`;

/** A real server, on which nobody comes in without a pass; `mode` is how it was started. */
export async function guardedApp(mode: AccessMode = "guarded", journal: Journal = sqliteJournal(":memory:")) {
  const ORIGIN = mode === "thisMachine" ? "http://127.0.0.1:4160" : "http://ridgecall.test";
  let now = MORNING;
  let ids = 0;
  /** Where the next request comes from. */
  let address = "192.0.2.1";
  const world: Dependencies = {
    journal,
    hub: createHub(),
    clock: () => ({ wall: now, elapsedMs: now - MORNING }),
    newId: () => `id-${String(++ids).padStart(8, "0")}`,
    wakeWord: "albatross",
    access: { mode, random: countedBytes(), addressOf: () => address },
    languages: LANGUAGES,
  };
  const { app, access, entrance, firstLink, liveJobs } = createApp(world);

  /** A browser that keeps its cookies, behind an address. */
  function browser(from = "192.0.2.1") {
    const cookies = new Map<string, string>();
    const send = async (path: string, init: RequestInit = {}) => {
      address = from;
      const headers = new Headers(init.headers);
      headers.set("origin", ORIGIN);
      headers.set("cookie", [...cookies].map(([name, value]) => `${name}=${value}`).join("; "));
      const answer = await app.request(`${ORIGIN}${path}`, { ...init, headers });
      for (const line of answer.headers.getSetCookie()) {
        const [, name = "", value = ""] = /^([^=]+)=([^;]*)/.exec(line) ?? [];
        cookies.set(name, value);
      }
      return answer;
    };
    const post = (path: string, fields: Readonly<Record<string, string>>) =>
      send(path, {
        method: "POST",
        headers: { "content-type": "application/x-www-form-urlencoded" },
        body: new URLSearchParams(fields).toString(),
      });
    const json = (path: string, body: unknown, headers: Readonly<Record<string, string>> = {}) =>
      send(path, { method: "POST", headers: { "content-type": "application/json", ...headers }, body: JSON.stringify(body) });
    /** Says something on a job as somebody, as the guide's forms do. */
    const say = (job: string, as: string, fields: Readonly<Record<string, string>>) =>
      post(`/jobs/${job}/say`, { as, key: `said-${++said}-by-${as}`, seen: "1", ...fields });
    const signIn = (passphrase = PASSPHRASE) => post("/office/in", { passphrase, to: "/" });
    const text = async (path: string) => (await send(path)).text();
    const cookie = () => [...cookies.keys()].find((name) => name.startsWith("device"))!;
    const device = () => cookies.get(cookie());
    const setDevice = (value: string) => void cookies.set(cookie(), value);
    return { get: send, post, json, say, signIn, text, device, setDevice };
  }
  let said = 0;

  await journal.access.keepSecret("passphrase", KEPT);
  /** Opens a job as the office does; its codes are those that it hands out. */
  const openJob = async (input: object = brief()) => {
    const office = browser("192.0.2.9");
    await office.signIn();
    const { job } = (await (await office.json("/jobs", { key: `opened-${++said}-here`, brief: input })).json()) as { job: string };
    return { job, office, codes: await entrance.codesOf(job) };
  };
  /** Somebody's phone, on a job with one of its codes. */
  const joined = async (job: string, code: string, person: string, from?: string) => {
    const phone = browser(from);
    await phone.post("/join", { job, code, person });
    return phone;
  };
  return {
    app,
    access,
    world,
    browser,
    openJob,
    joined,
    firstLink,
    entrance,
    liveJobs,
    journal,
    pass: (seconds: number) => {
      now += seconds * 1000;
    },
  };
}
export type Guarded = Awaited<ReturnType<typeof guardedApp>>;
