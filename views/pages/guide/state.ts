import type { Role } from "../../../machines/install/brief.ts";
import type { TileInput } from "../../../machines/install/checks/tile-input.ts";
import type { Fields } from "../../../machines/install/checks/value-form.ts";
import type { Check, Gate, Paper, Value } from "../../../machines/install/gates.ts";
import type { GateId, PersonId } from "../../../machines/install/ids.ts";
import type { Status, UnmetStatus } from "../../../machines/install/refusals.ts";
import type { PhaseId } from "../../../machines/install/step.ts";
import type { Thing } from "../../../machines/install/thing.ts";
import type { Weather } from "../../../machines/install/weather.ts";
import type { HandWorkId } from "../../../machines/picture/hand-work.ts";
import type { HurtState } from "../../parts/hurt-state.ts";
import type { LightningFacts } from "../../parts/lightning-facts.ts";
import type { Cure } from "./cure.ts";
import type { SiteState } from "./site-state.ts";
import type { StopState } from "./stop.ts";
import type { WatchState } from "./watch-state.ts";

/** All that a screen shows of a job, in words; the same facts go out as JSON. */
export type GuideState = {
  readonly job: string;
  readonly title: string;
  /** The last entry; `turn` is the last one that changed what "next" means, and what a command is made against. */
  readonly entry: number;
  readonly revision: number;
  readonly phase: string;
  readonly phaseName: string;
  readonly step: string;
  /** The call that it stands at, counted from 1, and all calls of the job; a closed job stands at the last. */
  readonly progress: { readonly at: number; readonly of: number };
  /** The milestones of a raise in order: which are reached, and which is worked toward. */
  readonly milestones: readonly Milestone[];
  /** What is worked toward, in words: a milestone is named as what it will be until it is. */
  readonly toward: string;
  /** `place`: where in the tent its poles stand, which the drawing shows where there is room for one; `asks` where it has a gate of its own. */
  readonly call: {
    readonly say: string;
    readonly place: string | null;
    readonly why: string;
    readonly wrong: string;
    readonly well: string;
    readonly asks: boolean;
  } | null;
  /** The drawings of hand work at this call: those of what is asked first, then the call's own. */
  readonly handWork: readonly HandWorkId[];
  /** A trainee's: each call shows unfolded what it is for. */
  readonly rehearsal: boolean;
  /** What a rehearsal that answers back shows of its site; `null` for any other job. */
  readonly site: SiteState | null;
  readonly gate: GateState | null;
  /** Somebody stopped the work, or only said to wait; `unrecorded` is why that is not in the record, where it is not. */
  readonly held: { readonly by: string; readonly only: "paused" | null; readonly unrecorded: string | null } | null;
  /** Somebody is hurt, until the lead says what became of it. */
  readonly hurt: HurtState | null;
  /** What the weather allows, in words; `reading` is the last wind as the strip has room for it; `stop` is what stands first while it stops work. */
  readonly weather: {
    readonly is: Weather;
    readonly words: string;
    readonly reading: string;
    /** A newer wind of whoever watches the standing tent, in short and in words; `null` where there is none. */
    readonly watched: { readonly short: string; readonly words: string } | null;
    readonly stop: StopState | null;
    /** The lightning clock, while thunder stops work. */
    readonly lightning: LightningFacts | null;
    /** What else is to be known of it before the next work: a rising wind, heat, cold; at most two lines. */
    readonly sky: readonly string[];
    /** The gravest of it in one line of a phone; `null` where there is nothing. */
    readonly skyBrief: string | null;
  };
  /** What whoever watches a standing tent by a weather plan sees; `null` for any other. */
  readonly watch: WatchState | null;
  /** What keeps "next" from leading on and what to do, as it would be refused; `null` where nothing does. */
  readonly missing: string | null;
  /** Whether that is a thing out of use: it is brought back on a page of its own. */
  readonly lacks: boolean;
  /** What was heard on this screen's device and waits for "correct". */
  readonly readBack: { readonly entry: number; readonly words: string; readonly leftS: number } | null;
  /** Pieces that are out of use and kit lines that are short, each with its line on the screen. */
  readonly outOfUse: readonly { readonly thing: Thing; readonly line: string }[];
  readonly makingSafe: boolean;
  readonly closed: boolean;
  /** An amendment that waits for somebody else. */
  readonly proposed: Proposed | null;
  readonly people: readonly { readonly id: string; readonly name: string; readonly role: Role; readonly roleName: string }[];
  readonly thread: readonly ThreadLine[];
  /** Set where the record does not replay: the job can be read, not driven. */
  readonly readOnly: string | null;
  /** What is about to go wrong with the record. */
  readonly warning: string | null;
  /** That somebody set the clock, and what it does to the ages of things. */
  readonly clock: string | null;
};

export type Milestone = { readonly phase: PhaseId; readonly name: string; readonly is: "reached" | "toward" | "ahead" };

/** What changes, in sentences; what is asked again; calls put behind where the job stands; and the call that it goes on at. */
export type Effect = {
  readonly changes: readonly string[];
  readonly asksAgain: readonly string[];
  readonly added: readonly string[];
  readonly goesOnAt: string;
};
export type Proposed = Effect & {
  readonly entry: number;
  readonly by: string;
  readonly byId: PersonId;
  readonly because: string;
  /** Whether it cannot be agreed to before everybody is out from under. */
  readonly later: boolean;
};

export type GateState = {
  readonly id: GateId;
  /** Whose gate it is: the call's own, an earlier call's that is asked again, or what the next work needs. */
  readonly asked: "here" | "again" | "before";
  /** Its own words, whose question stands under them; and over them what they come before, where that is so. */
  readonly say: string;
  readonly before: string | null;
  /** Why it is asked again. */
  readonly because: string | null;
  readonly hard: boolean;
  readonly check: Check;
  readonly ask: string;
  readonly limit: string;
  readonly source: string;
  readonly status: Status;
  readonly statusWords: string;
  readonly value: string | null;
  /** The entry of its answer; 0 where there is none. */
  readonly answered: number;
  /** What there is to answer with. */
  readonly tile: TileInput<Value>;
  /** What was answered, part by part. */
  readonly given: Readonly<Record<string, number>>;
  /** What is wanted of each part. */
  readonly want: Readonly<Record<string, number>>;
  /** What the answer comes to, where that is more than its value: which mark to move, what is short. */
  readonly found: string | null;
  readonly ifNot: string;
  /** What is asked once more before "none" counts; `null` where that is no answer. */
  readonly none: string | null;
  /** Where the job is put right when the answer is true and the job is not. */
  readonly cure: Cure | null;
  readonly paper: Paper | null;
  /** The paper that waits for a second person to see it: who showed it, and the fields that say it was seen. */
  readonly shown: { readonly by: PersonId; readonly name: string; readonly fields: Fields } | null;
  readonly roles: Gate["roles"];
  /** Whose answer this must not be. */
  readonly notBy: string | null;
};

export type ThreadLine = {
  readonly no: number;
  readonly time: string;
  readonly who: string;
  /** The call that came after; what it was said to, where it does not speak for itself; and what was said, in words. */
  readonly call: string;
  readonly to: string | null;
  readonly said: string;
  /** Spoken into the phone of the one who is named, and so no proof of who spoke. */
  readonly spoken: boolean;
  readonly reply: string;
  readonly refused: boolean;
};

export type Reason = { readonly why: string; readonly gate?: GateId; readonly status?: UnmetStatus; readonly text: string };
