import type { ColdAir, HotAir } from "../weather/air.ts";
import type { BeaufortName } from "../weather/beaufort.ts";
import type { Role } from "./brief.ts";
import type { Found as FoundThing } from "./found.ts";
import type { Value } from "./gates.ts";
import type { DeviceId, EntryNo, GateId, Instant, PersonId } from "./ids.ts";
import type { Moment } from "./moment.ts";
import type { PhotoFacts, PhotoOf, Unfit } from "./photo.ts";
import type { Frozen } from "./step.ts";
import type { Thing } from "./thing.ts";

/** Spoken with the talk button held, after the wake word, or into an open microphone. */
export const SPOKEN = ["talk", "wake", "open"] as const;
export type Spoken = (typeof SPOKEN)[number];
export type CommandSource = "press" | "typed" | "office" | Spoken;

/** Where a wind was read: in the open, or in a lee, which is no reading of the site. */
export const EXPOSURES = ["open", "lee"] as const;
export type Exposure = (typeof EXPOSURES)[number];

export type Reading =
  | {
      readonly kind: "wind";
      readonly mph: number;
      readonly gustMph: number | null;
      /** Where it blows from, in degrees from north, clockwise; `null` where nobody said. */
      readonly fromDeg: number | null;
      readonly takenAt: Instant;
      readonly place: string | null;
      /** How high it was read, ft; absent where nobody said. */
      readonly heightFt?: number;
      readonly exposure?: Exposure;
      /** Told by the look of things, as a word of the scale; absent where a meter read it. */
      readonly look?: BeaufortName;
    }
  | ThunderReading
  | WarningReading
  | { readonly kind: "rain"; readonly takenAt: Instant }
  /** Air in °F, humidity in percent. `sun` null: not told, and counted as full. */
  | ({ readonly kind: "heat"; readonly takenAt: Instant } & HotAir)
  | ({ readonly kind: "cold"; readonly takenAt: Instant } & ColdAir)
  /** The last thunder was none: it is taken back, with what it was. */
  | { readonly kind: "noThunder"; readonly takenAt: Instant; readonly because: string };

export type ThunderReading = {
  readonly kind: "thunder";
  readonly takenAt: Instant;
  /** From the flash to its thunder, s; absent where nobody counted. */
  readonly seconds?: number;
  /** What was given in place of such seconds and is none: the thunder counts all the same. */
  readonly notSeconds?: string;
};

/** As the crew reads it out: what it is, until when, who put it out; each absent where nobody said. */
export type WarningReading = {
  readonly kind: "warning";
  readonly takenAt: Instant;
  readonly what?: string;
  readonly until?: string;
  readonly issuer?: string;
};

/** The words of a press that says nothing more. */
export const PRESSED = "pressed";

/** What is read back when it is spoken, and counts once it is confirmed. */
export type BindingIntent =
  | { readonly type: "answer"; readonly gate: GateId; readonly value: Value }
  | { readonly type: "waive"; readonly gate: GateId; readonly because: string }
  | { readonly type: "standDown"; readonly because: string }
  | { readonly type: "reading"; readonly reading: Reading }
  /** A piece is damaged, or so many of a kit line are short: what needs it waits. */
  | { readonly type: "outOfUse"; readonly thing: Thing; readonly because: string }
  /** Mended, swapped, or so many came. */
  | { readonly type: "backInUse"; readonly thing: Thing; readonly because: string }
  /** One more line, wire or thing on the site. It takes effect at once, as it can only make a job stricter. */
  | Found;

type Found = {
  readonly type: "found";
  readonly what: FoundThing;
  /** The whole job with it: calls and limits follow from it at once. */
  readonly to: Frozen;
};

/** The only vocabulary. What a command asks for, without who, where from and when. */
export type Intent =
  | BindingIntent
  | { readonly type: "next" }
  | { readonly type: "back" }
  | { readonly type: "hold" }
  /** Back to work; after somebody was hurt, with what became of it. */
  | { readonly type: "carryOn"; readonly became: string | null }
  | { readonly type: "makeSafe"; readonly because: string | null }
  | { readonly type: "note"; readonly text: string }
  /** A photo that was taken. It opens nothing: the record alone has it. */
  | ({ readonly type: "photo" } & PhotoOf & PhotoFacts)
  /** What came in place of one, with how many bytes: always refused, so that the record says that somebody tried. */
  | ({ readonly type: "unfitPhoto"; readonly unfit: Unfit; readonly bytes: number } & PhotoOf)
  /** The lead's phone is gone: the deputy leads from here on. */
  | { readonly type: "takeLead" }
  /** Somebody is hurt: work is on hold until the lead says what became of it. The words are as they were said. */
  | { readonly type: "hurt"; readonly words: string }
  /** A hold word inside a sentence: work waits, until the lead's bare "carry on". */
  | { readonly type: "pause" }
  /** Heard and said back: nothing counts yet. Names no gate of its own: what it asks is inside. */
  | { readonly type: "readBack"; readonly intent: BindingIntent }
  /** Confirms or drops what was read back in an entry, from the device that it was heard on. */
  | { readonly type: "correct"; readonly target: EntryNo }
  | { readonly type: "wrong"; readonly target: EntryNo }
  /** The lead's half of an amendment: the whole new job, frozen. */
  | { readonly type: "amend"; readonly because: string; readonly to: Frozen }
  /** The second person's half, naming the entry that proposed it. */
  | { readonly type: "agree"; readonly target: EntryNo }
  | { readonly type: "disagree"; readonly target: EntryNo };

type Amend = Extract<Intent, { type: "amend" }>;
/** What binds, without the job that it would put in force. */
export type BindingGist = Exclude<BindingIntent, Found> | Omit<Found, "to">;
/** What is asked for, without the plan that a change would put in force: all that its words are made from. */
export type Gist =
  | Exclude<Intent, Amend | Found | { type: "readBack" }>
  | Omit<Amend, "to">
  | Omit<Found, "to">
  | { readonly type: "readBack"; readonly intent: BindingGist };

/** The server adds who, in what role, on which device and when; `seen` is the entry the screen showed when the press began. */
export type Command = Intent &
  Moment & {
    readonly key: string;
    readonly seen: EntryNo;
    readonly source: CommandSource;
    readonly heard: string | null;
    readonly by: PersonId;
    readonly role: Role;
    readonly device: DeviceId;
    readonly entry: EntryNo;
  };

export type Did =
  | "moved"
  | "wentBack"
  | "held"
  | "paused"
  | "readBack"
  | "dropped"
  | "carriedOn"
  | "tookLead"
  | "hurt"
  | "answered"
  /** A second person has seen the paper that was shown. */
  | "seen"
  | "waived"
  | "noted"
  | "photographed"
  | "read"
  /** The wind was read by whoever watches the standing tent. */
  | "watched"
  | "proposed"
  | "amended"
  | "discarded"
  | "makingSafe"
  | "goingOn"
  | "standingDown"
  | "outOfUse"
  | "backInUse"
  | "found"
  | "closed";
