import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, hexToBytes } from "@noble/hashes/utils.js";
import type { Context } from "hono";
import { getCookie, setCookie } from "hono/cookie";
import type { DeviceId, PersonId } from "../../machines/install/ids.ts";
import type { JobId } from "../../machines/record/entry.ts";
import type { Dependencies } from "../jobs.ts";
import { OFFICE, type Pass, type SecurityEvent } from "../journal/access.ts";
import { NotWritten } from "../journal/journal.ts";
import { isLoopback } from "./loopback.ts";
import { deviceSigned, isDevice, signature, signed } from "./signed-device.ts";
import { tokenShown } from "./tokens.ts";
import type { Visitor } from "./visitor.ts";

declare module "hono" {
  interface ContextVariableMap {
    /** Who this request comes from. */
    visitor: Visitor;
  }
}

const DAY_MS = 24 * 3600 * 1000;
/** A pass of a job is good for so long: a raise, a week of standing, and the strike. */
const JOB_PASS_MS = 14 * DAY_MS;
/** The office signs in again after a day's work. */
const OFFICE_PASS_MS = 12 * 3600 * 1000;
const COOKIE = { httpOnly: true, sameSite: "Lax", path: "/", maxAge: 400 * 24 * 3600 } as const;
const KEY_BYTES = 32;
/** The same thing of the same source is logged once in so long, in ms: a log that anybody can fill hides what counts. */
const LOG_AGAIN_MS = 60_000;

/** More of what something was about is not logged, in characters. */
const MAX_WHAT = 120;

/** Two servers on one machine share its cookies, whatever their ports: each has a name of its own for its device's. */
export const cookieName = (signedWith: Uint8Array): string => `device-${bytesToHex(sha256(signedWith)).slice(0, 8)}`;

/** Who comes in: devices and their passes, and the log of what concerns them. */
export function createAccess({ journal, clock, newId, access: settings }: Dependencies) {
  const store = journal.access;
  /** As they were last read: a hold does not wait for the file. */
  const passes = new Map<DeviceId, readonly Pass[]>();
  let unwritten: readonly Pass[] = [];
  const logged = new Map<string, number>();
  let key: Uint8Array | undefined;

  /** What cookies are signed with; made once, and kept in the file. */
  async function cookieKey(): Promise<Uint8Array> {
    if (key) return key;
    const kept = await store.secret("cookies");
    const made = kept === null ? settings.random(KEY_BYTES) : hexToBytes(kept);
    if (kept === null) await store.keepSecret("cookies", bytesToHex(made));
    key = made;
    return made;
  }

  async function passesOf(device: DeviceId): Promise<readonly Pass[]> {
    const known = passes.get(device) ?? (await store.passes(device));
    passes.set(device, known);
    return known;
  }
  /** Knows every device from here on, so that a hold is asked of no file. To be called before anybody is let in. */
  async function remember(): Promise<void> {
    await cookieKey();
    passes.clear();
    for (const pass of [...(await store.allPasses()), ...unwritten]) passes.set(pass.device, [...(passes.get(pass.device) ?? []), pass]);
  }

  const nameOf = (signedWith: Uint8Array) => (settings.mode === "trials" ? "device" : cookieName(signedWith));

  /** Who a request comes from. A cookie that this server did not give is none, and is logged. */
  async function visitorOf(c: Context): Promise<Visitor> {
    const signedWith = await cookieKey();
    const address = settings.addressOf(c);
    const cookie = getCookie(c, nameOf(signedWith));
    // On a server for trials a device may be called whatever a script wants.
    const trial = settings.mode === "trials" && cookie !== undefined && isDevice(cookie) ? cookie : null;
    const device = trial ?? (cookie === undefined ? null : deviceSigned(cookie, signedWith));
    const shown = c.req.header("authorization");
    // A page elsewhere whose name leads here is not whoever sits at this machine.
    const isHere = settings.mode !== "thisMachine" || isLoopback(new URL(c.req.url).hostname);
    const visitor: Visitor = {
      mode: isHere ? settings.mode : "guarded",
      address,
      device,
      isForged: cookie !== undefined && device === null,
      passes: device === null ? [] : await passesOf(device),
      token: shown === undefined ? null : await tokenShown(store, shown),
      now: clock().wall,
    };
    if (visitor.isForged) await log(visitor, "forgedCookie");
    if (shown !== undefined && visitor.token === null) await log(visitor, "wrongToken");
    return visitor;
  }

  /** The device of a request, by its cookie; a new one gets its name and its cookie here. */
  function deviceFor(c: Context): DeviceId {
    const visitor = c.get("visitor");
    if (visitor.device !== null) return visitor.device;
    const device = newId();
    const value = settings.mode === "trials" ? device : signed(device, key!);
    setCookie(c, nameOf(key!), value, { ...COOKIE, secure: new URL(c.req.url).protocol === "https:" });
    c.set("visitor", { ...visitor, device });
    return device;
  }

  /** A seal on what this server says in an address, so that no link of somebody else's puts words on a page. */
  const seal = (text: string): string => bytesToHex(signature(`said ${text}`, key!));

  async function give(c: Context, job: Pass["job"], people: readonly PersonId[]): Promise<void> {
    const device = deviceFor(c);
    const visitor = c.get("visitor");
    const until = visitor.now + (job === OFFICE ? OFFICE_PASS_MS : JOB_PASS_MS);
    const made = people.map((person): Pass => ({ device, job, person, until }));
    const isNew = (pass: Pass) => !made.some(({ job: of, person }) => pass.job === of && pass.person === person);
    const all = [...(await passesOf(device)).filter(isNew), ...made];
    passes.set(device, all);
    unwritten = [...unwritten, ...made];
    c.set("visitor", { ...visitor, passes: all });
    await writePasses();
  }
  /** Where the disk takes nothing, passes are good until the program ends, and are written with the next. */
  async function writePasses(): Promise<void> {
    try {
      await store.keepPasses(unwritten);
      unwritten = [];
    } catch (error) {
      if (!(error instanceof NotWritten)) throw error;
    }
  }

  /** Lets the device of a request speak as these people on a job. */
  async function letIn(c: Context, job: JobId, people: readonly PersonId[]): Promise<void> {
    await give(c, job, people);
    await log(c.get("visitor"), "joined", { job, what: people.join() });
  }

  /** Lets it in for the office. */
  async function letIntoOffice(c: Context): Promise<void> {
    await give(c, OFFICE, [OFFICE]);
    await log(c.get("visitor"), "signedIn");
  }

  /** It is no longer for the office. */
  async function leaveOffice(c: Context): Promise<void> {
    const { device } = c.get("visitor");
    if (device === null) return;
    forgetOffice((pass) => pass.device === device);
    await store.dropPasses(device, OFFICE);
    await log(c.get("visitor"), "signedOut");
  }

  /** Nobody is for the office any more: its passphrase is another one. */
  async function emptyOffice(): Promise<void> {
    forgetOffice(() => true);
    await store.dropAllPasses(OFFICE);
  }
  /** Out of memory first: whoever is out is out, whatever the disk takes. */
  function forgetOffice(isOut: (pass: Pass) => boolean): void {
    const isKept = (pass: Pass) => pass.job !== OFFICE || !isOut(pass);
    for (const [device, known] of passes) passes.set(device, known.filter(isKept));
    unwritten = unwritten.filter(isKept);
  }

  /** Into the log of what concerns who comes in. A full disk keeps nobody out, and nobody in. */
  async function log(
    { address, device, now }: Visitor,
    is: SecurityEvent["is"],
    { job = null, what = null }: Partial<Pick<SecurityEvent, "job" | "what">> = {},
  ): Promise<void> {
    const name = JSON.stringify([address, device, is, job]);
    const before = logged.get(name);
    const elapsed = clock().elapsedMs;
    if (before !== undefined && elapsed - before < LOG_AGAIN_MS) return;
    if (logged.size > 1000) logged.clear();
    logged.set(name, elapsed);
    try {
      await store.log({ at: now, is, address, job, device, what: what?.slice(0, MAX_WHAT) ?? null });
    } catch (error) {
      if (!(error instanceof NotWritten)) throw error;
    }
  }

  return { visitorOf, deviceFor, seal, remember, emptyOffice, letIn, letIntoOffice, leaveOffice, log, store, random: settings.random };
}
export type Access = ReturnType<typeof createAccess>;
