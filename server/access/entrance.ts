import { readLetters, shownLetters } from "../../machines/digest/letters.ts";
import type { Clocks } from "../../machines/install/moment.ts";
import type { JobId } from "../../machines/record/entry.ts";
import { Problem } from "../input/problem.ts";
import type { JoinCode, SecurityEvent } from "../journal/access.ts";
import { createQueues } from "../queues.ts";
import type { Access } from "./access.ts";
import { CREW_CODE_LENGTH, LEADS_CODE_LENGTH, makeCode, PASSPHRASE_LENGTH } from "./codes.ts";
import { fitsPassphrase, hashedPassphrase, PASSPHRASE_BOUNDS, SALT_BYTES } from "./passphrase.ts";
import { createThrottle } from "./throttle.ts";
import type { Visitor } from "./visitor.ts";

/** Both codes of a job, as they are shown. */
export type Codes = { readonly crew: string; readonly leads: string };

/** Where codes and the office's passphrase are tried. Wrong ones slow down whoever tries, and what is tried. */
export function createEntrance(access: Access, clock: () => Clocks) {
  const { store, random } = access;
  const throttle = createThrottle();
  const inTurn = createQueues();

  /** The codes of a job; made when they are first asked for. */
  async function codesOf(job: JobId): Promise<Codes> {
    const kept = await store.codes(job);
    const made = kept.length > 0 ? kept : await makeCodes(job);
    const code = (leads: boolean) => shownLetters(made.find((one) => one.leads === leads)?.code ?? "");
    return { crew: code(false), leads: code(true) };
  }
  async function makeCodes(job: JobId): Promise<readonly JoinCode[]> {
    const made = [
      { code: makeCode(CREW_CODE_LENGTH, random), job, leads: false },
      { code: makeCode(LEADS_CODE_LENGTH, random), job, leads: true },
    ];
    await store.keepCodes(job, made);
    return made;
  }
  /** New codes in place of those that somebody else may have seen; who joined stays. */
  async function renewCodes(job: JobId, by: Visitor): Promise<void> {
    await makeCodes(job);
    await access.log(by, "codesChanged", { job });
  }

  /**
   * Who has joined something is known by their device: a crew behind one address is not slowed by a stranger there. Where whoever
   * sits at a machine plays the demo, to have joined says nothing.
   */
  function sourceOf({ address, device, passes, now, mode }: Visitor): string {
    const hasJoined = mode === "guarded" && passes.some(({ until }) => until > now);
    return device !== null && hasJoined ? `device ${device}` : `address ${address}`;
  }

  type Tried = { readonly visitor: Visitor; readonly target: string; readonly is: SecurityEvent["is"]; readonly job: JobId | null };
  /** Lets `fits` look unless one has to wait. Throws a Problem that says how long, or what was wrong. */
  async function tried<T>({ visitor, target, is, job }: Tried, fits: () => Promise<T | null>): Promise<T> {
    const trial = { source: sourceOf(visitor), target };
    const { elapsedMs: now } = clock();
    const wait = throttle.wait(trial, now);
    if (wait > 0) throw new Problem(429, (w) => w.join.wait(Math.ceil(wait / 1000)));
    throttle.begin(trial, now);
    const found = await fits();
    if (found !== null) {
      throttle.right(trial, now);
      return found;
    }
    await access.log(visitor, is, { job });
    if (throttle.wait(trial, now) > 0) await access.log(visitor, "lockedOut", { job });
    throw new Problem(403, (w) => (is === "wrongCode" ? w.join.wrongCode : w.office.wrongPassphrase));
  }

  /** What a code as it was typed lets into. `job` is the one that it was asked for at, where that is known: another job's code is wrong there. */
  const tryCode = (visitor: Visitor, typed: string, job: JobId | null): Promise<JoinCode> =>
    tried({ visitor, target: `job ${job ?? "any"}`, is: "wrongCode", job }, async () => {
      const found = await store.codeCalled(readLetters(typed));
      return found && (job === null || found.job === job) ? found : null;
    });

  /** Whether it is the office's passphrase; resolves where it is. */
  const tryPassphrase = (visitor: Visitor, passphrase: string): Promise<true> =>
    tried({ visitor, target: "office", is: "wrongPassphrase", job: null }, async () => {
      const kept = await store.secret("passphrase");
      if (kept === null || passphrase.length > PASSPHRASE_BOUNDS.to) return null;
      // It takes 32 MiB: one after the other.
      return (await inTurn("passphrase", () => fitsPassphrase(passphrase, kept))) ? true : null;
    });

  /** Sets the office's passphrase. Throws a Problem where it is too short or too long. */
  async function setPassphrase(passphrase: string): Promise<void> {
    const { from, to } = PASSPHRASE_BOUNDS;
    const { length } = passphrase.normalize("NFKC").trim();
    if (length < from || length > to) throw new Problem(422, (w) => w.office.passphraseLength(length, from, to));
    await store.keepSecret("passphrase", await hashedPassphrase(passphrase, random(SALT_BYTES)));
    await access.emptyOffice();
  }

  /**
   * At the start: sets the one that was given, or creates one if there is none yet. Resolves to the one that was created, to be
   * printed once, or `null`.
   */
  async function firstPassphrase(given: string | null): Promise<string | null> {
    const kept = await store.secret("passphrase");
    if (given !== null && kept !== null && (await fitsPassphrase(given, kept))) return null;
    if (given !== null) await setPassphrase(given);
    if (given !== null || kept !== null) return null;
    const made = shownLetters(makeCode(PASSPHRASE_LENGTH, random));
    await setPassphrase(made);
    return made;
  }

  return { codesOf, renewCodes, tryCode, tryPassphrase, setPassphrase, firstPassphrase };
}
export type Entrance = ReturnType<typeof createEntrance>;
