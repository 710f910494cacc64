import type { Hash } from "../../../machines/digest/digest.ts";
import type { GateId } from "../../../machines/install/ids.ts";
import type { PhotoFacts } from "../../../machines/install/photo.ts";

/** A photo of a job as its entry says, in words: who took it, when, at which call, and what it is of. */
export type PhotoShown = PhotoFacts & {
  readonly no: number;
  readonly by: string;
  readonly time: string;
  readonly utc: string;
  readonly call: string;
  readonly gate: GateId | null;
  /** What that gate asks; `null` where it is of the call, or the site in general. */
  readonly of: string | null;
  readonly text: string | null;
};

/** What a photo may be of, besides the site in general. */
export type GateToShow = { readonly id: GateId; readonly say: string };

/** What somebody filled in, and what is said of it: a form that was refused keeps all but its file. */
export type PhotoForm = {
  readonly gate: GateId | "";
  readonly text: string;
  readonly message: string | null;
  readonly problems: Readonly<Record<string, string>>;
};

/** Where a photo's bytes are. */
export const photoPath = (job: string, hash: Hash): string => `/jobs/${job}/photos/${hash}`;
