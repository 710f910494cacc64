import type { Hash } from "../../machines/digest/digest.ts";
import type { DeviceId, PersonId, WallTime } from "../../machines/install/ids.ts";
import type { JobId } from "../../machines/record/entry.ts";

/** The office as what a pass lets a device into. No job is called so: ids of jobs are never empty. */
export const OFFICE = "";

/** That a device may speak as somebody on a job, or for the office, until a moment. It is kept beyond that: a hold asks for no more. */
export type Pass = {
  readonly device: DeviceId;
  readonly job: JobId | typeof OFFICE;
  readonly person: PersonId;
  readonly until: WallTime;
};

/** What lets people join a job: `leads` lets in those who drive and answer for it too, the other one everybody else. */
export type JoinCode = { readonly code: string; readonly job: JobId; readonly leads: boolean };

/** What an office script shows; only the hash of its secret is kept. */
export type Token = {
  readonly id: string;
  readonly name: string;
  readonly hash: Hash;
  readonly at: WallTime;
  readonly revokedAt: WallTime | null;
};

export const SECURITY_EVENTS = [
  "passphraseSet",
  "signedIn",
  "signedOut",
  "wrongPassphrase",
  "joined",
  "wrongCode",
  "lockedOut",
  "forgedCookie",
  "wrongToken",
  "notAllowed",
  "codesChanged",
  "tokenMade",
  "tokenRevoked",
] as const;
/** Something that concerns who comes in; `job` and `device` where they are known, `what` is a person's id, a token's name or a page. */
export type SecurityEvent = {
  readonly at: WallTime;
  readonly is: (typeof SECURITY_EVENTS)[number];
  readonly address: string;
  readonly job: JobId | null;
  readonly device: DeviceId | null;
  readonly what: string | null;
};

/** So many events are kept: a log that anybody can make grow without end fills the disk that holds are written to. */
export const MAX_EVENTS = 10_000;

/** The key that cookies are signed with, and the office's passphrase, hashed. */
export type SecretName = "cookies" | "passphrase";

/** What is kept about who may come in. A write is done, on disk, when its promise is; it may be rejected with NotWritten. */
export interface AccessStore {
  secret(name: SecretName): Promise<string | null>;
  keepSecret(name: SecretName, value: string): Promise<void>;
  /** Of a job: both, or none where none were made yet. */
  codes(job: JobId): Promise<readonly JoinCode[]>;
  codeCalled(code: string): Promise<JoinCode | null>;
  /** In place of those that the job had. */
  keepCodes(job: JobId, codes: readonly JoinCode[]): Promise<void>;
  passes(device: DeviceId): Promise<readonly Pass[]>;
  /** Those that a device has already are renewed. */
  keepPasses(passes: readonly Pass[]): Promise<void>;
  dropPasses(device: DeviceId, job: Pass["job"]): Promise<void>;
  /** Of every device, as they are kept. */
  allPasses(): Promise<readonly Pass[]>;
  /** Of every device, to one job or the office. */
  dropAllPasses(job: Pass["job"]): Promise<void>;
  /** By the moment they were made, revoked ones too. */
  tokens(): Promise<readonly Token[]>;
  keepToken(token: Token): Promise<void>;
  /** The newest MAX_EVENTS are kept. */
  log(event: SecurityEvent): Promise<void>;
  /** The newest first, so many. */
  events(count: number): Promise<readonly SecurityEvent[]>;
}
